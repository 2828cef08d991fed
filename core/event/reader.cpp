#include "event/reader.h"

#include <cmath>

#include "base/time.h"
#include "event/text_guard.h"

namespace cinder::event {

namespace {

constexpr std::size_t kLongestFound = 60;
constexpr std::size_t kLongestName = 200;
constexpr std::size_t kLongestId = 64;

bool isLetter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}
bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

std::string rangeText(Range<double> range) {
    return plainNumber(range.low) + ".." + plainNumber(range.high);
}

/// A BCP 47 tag as far as its shape goes: "es", "es-MX"; "" stands for every language.
bool isLanguage(std::string_view tag) {
    if (tag.empty()) return true;
    std::size_t length = 0;
    bool isFirst = true;
    for (const char c : tag) {
        if (c == '-') {
            if (length == 0 || (isFirst && length < 2)) return false;
            length = 0;
            isFirst = false;
        } else if (!(isLetter(c) || (isDigit(c) && !isFirst)) || ++length > 8) {
            return false;
        }
    }
    return length > (isFirst ? 1U : 0U);
}

std::optional<double> readNumber(const Node& node, Range<double> range,
                                 const char* type = "number") {
    if (!node.value.is_number()) {
        node.blame(Fault::What::WrongType, type);
        return std::nullopt;
    }
    const auto number = node.value.get<double>();
    if (!(number >= range.low && number <= range.high)) {
        node.blame(Fault::What::OutOfRange, rangeText(range));
        return std::nullopt;
    }
    return number;
}

}  // namespace

void Node::blame(Fault::What what, std::string allowed) const {
    if (faults.size() < kMostFaults)
        faults.push_back({what, path, shortText(value), std::move(allowed), {}});
}

Node Node::at(std::size_t index) const {
    return {value[index], joinPath(path, index), faults};
}
Node Node::at(const std::string& member) const {
    return {value.at(member), joinPath(path, member), faults};
}

std::string shortText(const Json& value) {
    if (value.is_object()) return value.empty() ? "{}" : "{…}";
    if (value.is_array()) return value.empty() ? "[]" : "[…]";
    if (value.is_string() && value.get_ref<const std::string&>().size() > kLongestFound) {
        std::string text = value.get_ref<const std::string&>().substr(0, kLongestFound);
        // Not in the middle of a letter.
        while (!text.empty() && (static_cast<unsigned char>(text.back()) & 0xC0U) == 0x80U)
            text.pop_back();
        if (!text.empty() && (static_cast<unsigned char>(text.back()) & 0x80U) != 0)
            text.pop_back();
        return Json(text + "…").dump(-1, ' ', false, Json::error_handler_t::replace);
    }
    return value.dump(-1, ' ', false, Json::error_handler_t::replace);
}

std::string plainNumber(double number) {
    const bool isWhole = number == std::floor(number) && std::abs(number) < 1e15;
    return isWhole ? std::to_string(static_cast<std::int64_t>(number)) : Json(number).dump();
}

void readInto(const Node& node, bool& out) {
    if (!node.value.is_boolean()) return node.blame(Fault::What::WrongType, "boolean");
    out = node.value.get<bool>();
}

void readInto(const Node& node, LocalText& out) {
    if (node.value.is_string()) {
        std::string text;
        readText(node, {1, kLongestName}, text);
        out = LocalText(std::move(text));
        return;
    }
    if (!node.value.is_object()) return node.blame(Fault::What::WrongType, "string|object");
    if (node.value.empty()) return node.blame(Fault::What::OutOfRange, "1..50");
    std::map<std::string, std::string> byLanguage;
    for (const auto& [tag, value] : node.value.items()) {
        const Node text{value, joinPath(node.path, tag), node.faults};
        if (!isLanguage(tag)) text.blame(Fault::What::BadId, "BCP 47");
        readText(text, {1, kLongestName}, byLanguage[tag]);
    }
    out = LocalText(std::move(byLanguage));
}

void readInto(const Node& node, ZonedInstant& out) {
    if (!node.value.is_string()) return node.blame(Fault::What::WrongType, "string");
    if (const auto read = parseRfc3339(node.value.get_ref<const std::string&>())) {
        out = *read;
    } else {
        node.blame(Fault::What::BadTime, "RFC 3339");
    }
}

void readWhole(const Node& node, Range<std::int32_t> range, std::int32_t& out) {
    const Range<double> wide{static_cast<double>(range.low), static_cast<double>(range.high)};
    const auto number = readNumber(node, wide, "integer");
    if (!number) return;
    if (*number != std::floor(*number)) return node.blame(Fault::What::WrongType, "integer");
    out = static_cast<std::int32_t>(*number);
}

void readText(const Node& node, Range<std::size_t> letters, std::string& out) {
    if (!node.value.is_string()) return node.blame(Fault::What::WrongType, "string");
    const auto& text = node.value.get_ref<const std::string&>();
    std::size_t count = 0;
    for (const char c : text)
        count += (static_cast<unsigned char>(c) & 0xC0U) != 0x80U ? 1U : 0U;
    if (count < letters.low || count > letters.high) {
        return node.blame(Fault::What::OutOfRange,
                          std::to_string(letters.low) + ".." + std::to_string(letters.high));
    }
    out = text;
}

void readMinutes(const Node& node, Range<double> range, Duration& out) {
    if (const auto minutes = readNumber(node, range))
        out = Duration{std::llround(*minutes * 60000.0)};
}

void readMillimetres(const Node& node, Range<double> range, Length& out) {
    if (const auto mm = readNumber(node, range)) out = Length::fromMillimetres(*mm);
}

void readCelsius(const Node& node, Range<double> range, Temperature& out) {
    if (const auto celsius = readNumber(node, range)) out = Temperature::fromCelsius(*celsius);
}

void readDecimal(const Node& node, Range<double> range, double& out) {
    if (const auto number = readNumber(node, range)) out = *number;
}

void readTimeZone(const Node& node, std::string& out) {
    if (!node.value.is_string()) return node.blame(Fault::What::WrongType, "string");
    const auto& name = node.value.get_ref<const std::string&>();
    bool isName = !name.empty() && name.size() <= kLongestId && isLetter(name.front());
    for (const char c : name)
        isName =
            isName && (isLetter(c) || isDigit(c) || c == '/' || c == '_' || c == '-' || c == '+');
    if (!isName) return node.blame(Fault::What::BadTime, "IANA");
    out = name;
}

bool isGoodId(std::string_view text) {
    if (text.empty() || text.size() > kLongestId) return false;
    if (!isLetter(text.front()) && !isDigit(text.front())) return false;
    for (const char c : text)
        if (!isLetter(c) && !isDigit(c) && c != '.' && c != '_' && c != '-') return false;
    return true;
}

void readIdText(const Node& node, std::string& out) {
    if (!node.value.is_string()) return node.blame(Fault::What::WrongType, "string");
    const auto& text = node.value.get_ref<const std::string&>();
    if (!isGoodId(text)) return node.blame(Fault::What::BadId, "A-Z a-z 0-9 . _ -");
    out = text;
}

void readStepName(const Node& node, std::string& out) {
    if (!node.value.is_string()) return node.blame(Fault::What::WrongType, "string");
    const auto& text = node.value.get_ref<const std::string&>();
    const auto slash = text.find('/');
    const bool isGood = slash == std::string::npos
                            ? isGoodId(text)
                            : isGoodId(std::string_view(text).substr(0, slash)) &&
                                  isGoodId(std::string_view(text).substr(slash + 1));
    if (!isGood) return node.blame(Fault::What::BadId, "dish/step|step");
    out = text;
}

Members::Members(const Node& node) : node_(node), isObject_(node.value.is_object()) {
    if (!isObject_) node.blame(Fault::What::WrongType, "object");
}

const Json* Members::find(const std::string& name) {
    asked_.insert(name);
    if (!isObject_) return nullptr;
    const auto found = node_.value.find(name);
    return found == node_.value.end() ? nullptr : &*found;
}

std::string Members::childPath(const std::string& name) const {
    return joinPath(node_.path, name);
}

void Members::blameMissing(const std::string& name) const {
    if (node_.faults.size() < kMostFaults)
        node_.faults.push_back({Fault::What::Missing, childPath(name), {}, {}, {}});
}

UnknownMembers Members::unknown() const {
    UnknownMembers rest;
    if (!isObject_) return rest;
    for (const auto& [name, value] : node_.value.items())
        if (!asked_.contains(name)) rest.emplace(name, value.dump());
    return rest;
}

}  // namespace cinder::event
