#include <algorithm>
#include <nlohmann/json.hpp>

#include "event/json.h"
#include "event/read_event.h"

namespace cinder::event {

namespace {

bool isWithin(const std::string& path, const std::string& outer) {
    return path.size() >= outer.size() && path.compare(0, outer.size(), outer) == 0 &&
           (path.size() == outer.size() || outer.empty() || path[outer.size()] == '/');
}

bool touches(const std::string& a, const std::string& b) {
    return isWithin(a, b) || isWithin(b, a);
}

/// A field that could not be read has a value of nobody's choosing: what the rules say about it
/// would only confuse.
bool isEcho(const Fault& rule, const Faults& shape) {
    using What = Fault::What;
    return std::any_of(shape.begin(), shape.end(), [&](const Fault& unread) {
        if (unread.what == What::DuplicateKey) return false;
        if (touches(rule.path, unread.path)) return true;
        if (!rule.allowed.empty() && rule.allowed[0] == '/' && isWithin(unread.path, rule.allowed))
            return true;
        // A window may hang on both times of the day.
        if ((unread.path == "/serve" || unread.path == "/site/arrival") &&
            rule.path.ends_with("/latestFinish/minutes"))
            return true;
        const bool isDefinition =
            isWithin(unread.path, "/skills") || isWithin(unread.path, "/crew") ||
            isWithin(unread.path, "/site/stations") || isWithin(unread.path, "/kit") ||
            (unread.path.size() > 3 && unread.path.ends_with("/id"));
        return isDefinition && (rule.what == What::Dangling || rule.what == What::Nobody);
    });
}

}  // namespace

Result<Event, Faults> parse(std::string_view document) {
    GuardedText guarded = guardText(document);
    if (!guarded.isReadable) return fail(std::move(guarded.faults));
    Faults faults = std::move(guarded.faults);
    const Json json = Json::parse(document, nullptr, false);

    Event event;
    readEvent(Node{json, {}, faults}, event);
    Faults rules = findFaults(event);
    for (auto& rule : rules)
        if (faults.size() < kMostFaults && !isEcho(rule, faults)) faults.push_back(std::move(rule));
    if (!faults.empty()) return fail(std::move(faults));
    return event;
}

}  // namespace cinder::event
