#pragma once

/// Small readers that turn JSON values into values of the event and write down what is wrong,
/// field by field, without stopping at the first fault.

#include <nlohmann/json.hpp>
#include <set>
#include <string>
#include <vector>

#include "base/units.h"
#include "event/event.h"
#include "event/fault.h"
#include "event/range.h"
#include "event/text_guard.h"
#include "event/words.h"

namespace cinder::event {

using Json = nlohmann::ordered_json;

/// A value, where it is, and where its faults go.
struct Node {
    const Json& value;
    std::string path;
    Faults& faults;

    void blame(Fault::What what, std::string allowed) const;
    [[nodiscard]] Node at(std::size_t index) const;
    [[nodiscard]] Node at(const std::string& member) const;
};

/// The value as JSON text for Fault::found: short, never a whole list.
[[nodiscard]] std::string shortText(const Json& value);

/// "5" rather than "5.0", "2.5" as it is.
[[nodiscard]] std::string plainNumber(double number);

void readInto(const Node& node, bool& out);
void readInto(const Node& node, LocalText& out);
void readInto(const Node& node, ZonedInstant& out);
void readWhole(const Node& node, Range<std::int32_t> range, std::int32_t& out);
void readText(const Node& node, Range<std::size_t> letters, std::string& out);
void readMinutes(const Node& node, Range<double> range, Duration& out);
void readMillimetres(const Node& node, Range<double> range, Length& out);
void readCelsius(const Node& node, Range<double> range, Temperature& out);
void readDecimal(const Node& node, Range<double> range, double& out);
void readTimeZone(const Node& node, std::string& out);

/// Letters an id may have: A-Z a-z 0-9 . _ - and for a step's full name one '/'; 1 to 64 of them.
[[nodiscard]] bool isGoodId(std::string_view text);
void readIdText(const Node& node, std::string& out);
void readStepName(const Node& node, std::string& out);

template <class Tag>
void readInto(const Node& node, Id<Tag>& out) {
    std::string text;
    readIdText(node, text);
    out = Id<Tag>(std::move(text));
}

template <class Value>
void readWord(const Node& node, Value& out) {
    if (!node.value.is_string()) return node.blame(Fault::What::WrongType, "string");
    if (const auto value = valueOf<Value>(node.value.template get_ref<const std::string&>())) {
        out = *value;
    } else {
        node.blame(Fault::What::NotOneOf, allWords<Value>());
    }
}

/// Reads a list of `entries.low` to `entries.high`. Entries with faults keep their place, so that
/// paths of later faults stay true.
template <class Entry, class Read>
void readList(const Node& node, Range<std::size_t> entries, std::vector<Entry>& out, Read read) {
    if (!node.value.is_array()) return node.blame(Fault::What::WrongType, "array");
    if (node.value.size() < entries.low || node.value.size() > entries.high) {
        node.blame(Fault::What::OutOfRange,
                   std::to_string(entries.low) + ".." + std::to_string(entries.high));
        if (node.value.size() > entries.high) return;
    }
    out.reserve(node.value.size());
    for (std::size_t i = 0; i < node.value.size(); ++i) {
        Entry entry{};
        read(node.at(i), entry);
        out.push_back(std::move(entry));
    }
}

/// The members of one object: asks for the known ones, keeps the rest.
class Members {
  public:
    explicit Members(const Node& node);

    template <class Value, class Read>
    void required(const std::string& name, Value& out, Read read) {
        if (const Json* value = find(name)) {
            read(Node{*value, childPath(name), node_.faults}, out);
        } else if (isObject_) {
            blameMissing(name);
        }
    }
    template <class Value, class Read>
    void optional(const std::string& name, Value& out, Read read) {
        if (const Json* value = find(name)) read(Node{*value, childPath(name), node_.faults}, out);
    }
    /// The same for a member whose absence means something.
    template <class Value, class Read>
    void optional(const std::string& name, std::optional<Value>& out, Read read) {
        if (const Json* value = find(name)) {
            read(Node{*value, childPath(name), node_.faults}, out.emplace());
        }
    }
    /// To be asked last.
    [[nodiscard]] UnknownMembers unknown() const;

  private:
    [[nodiscard]] const Json* find(const std::string& name);
    [[nodiscard]] std::string childPath(const std::string& name) const;
    void blameMissing(const std::string& name) const;

    const Node& node_;
    bool isObject_ = false;
    std::set<std::string> asked_;
};

}  // namespace cinder::event
