#include "event/fault.h"

namespace cinder::event {

namespace {

std::string listed(const std::string& allowed) {
    std::string text;
    for (const char c : allowed) {
        if (c == '|')
            text += ", ";
        else
            text += c;
    }
    return text;
}

std::string where(const Fault& fault) {
    std::string text = fault.path.empty() ? "The document" : fault.path;
    if (fault.place)
        text += " (line " + std::to_string(fault.place->line) + ", column " +
                std::to_string(fault.place->column) + ")";
    return text;
}

std::string range(const std::string& allowed) {
    const auto dots = allowed.find("..");
    if (dots == std::string::npos) return allowed;
    const std::string low = allowed.substr(0, dots);
    const std::string high = allowed.substr(dots + 2);
    return low == high ? "exactly " + low : "from " + low + " to " + high;
}

std::string timeRemedy(const Fault& fault) {
    return fault.allowed == "IANA"
               ? " is no name of a time zone; write one such as \"America/New_York\"."
               : " is no date and time; write it like \"2027-09-18T13:00:00-04:00\".";
}

}  // namespace

std::string describe(const Fault& fault) {
    using What = Fault::What;
    std::string at = where(fault);
    const std::string is = at + ": " + fault.found;
    switch (fault.what) {
        case What::TooLarge:
            return is + " is too large; it may be " + range(fault.allowed) + ".";
        case What::NotUtf8:
            return at + " is not UTF-8 text; save the file in that encoding.";
        case What::NotJson:
            return at + " is not JSON at " + (fault.found.empty() ? "its end" : fault.found) +
                   "; the file may be cut off: complete or correct it there.";
        case What::TooDeep:
            return at + " nests " + fault.found + " levels deep; use " + range(fault.allowed) + ".";
        case What::DuplicateKey:
            return at + " is there twice; remove one of them.";
        case What::Missing:
            return at + " is missing; add it.";
        case What::WrongType:
            return is + " has the wrong type; write a value of type " + listed(fault.allowed) + ".";
        case What::OutOfRange:
            return is + " is out of range; it must be " + range(fault.allowed) + ".";
        case What::NotOneOf:
            return is + " is not known; use one of " + listed(fault.allowed) + ".";
        case What::BadTime:
            return is + timeRemedy(fault);
        case What::BadId:
            return is + " cannot be used as a name here; write it with " + listed(fault.allowed) +
                   ".";
        case What::DuplicateId:
            return is + " is already used at " + fault.allowed + "; choose another id.";
        case What::Dangling:
            return is + " leads nowhere; name one that exists in " + listed(fault.allowed) + ".";
        case What::Cycle:
            return at + ": steps wait for each other, " + fault.found + "; remove one link.";
        case What::Contradiction:
            return is + " does not agree with " + fault.allowed + "; correct one of the two.";
        case What::Nobody:
            return is + " asks for hands that the crew does not have; " +
                   (fault.allowed[0] == '/' ? "give somebody in " + fault.allowed + " the skill."
                                            : "it must be " + range(fault.allowed) + ".");
    }
    return at;
}

}  // namespace cinder::event
