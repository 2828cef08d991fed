#include "sync/message.h"

#include <algorithm>
#include <iterator>
#include <limits>
#include <nlohmann/json.hpp>
#include <optional>
#include <utility>

#include "journal/codec.h"
#include "sync/cbor_guard.h"

namespace cinder::sync {

namespace {

using journal::ChainHead;
using journal::Entry;
using journal::Seal;
using nlohmann::json;

// --- written -------------------------------------------------------------------------------------

std::int64_t millis(Instant at) {
    return at.time_since_epoch().count();
}

json bytesOf(const Seal& seal) {
    return json::binary({seal.begin(), seal.end()});
}

json written(const ChainHead& head) {
    return {{"event", head.event.text()},
            {"device", head.last.device.text()},
            {"sequence", head.last.sequence},
            {"seal", bytesOf(head.seal)}};
}

json written(const Entry& entry) {
    const journal::Operation& op = entry.operation;
    json object = {{"event", op.event.text()},    {"device", op.id.device.text()},
                   {"sequence", op.id.sequence},  {"wall", millis(op.stamp.wall)},
                   {"counter", op.stamp.counter}, {"kind", entry.body.kind},
                   {"version", op.version},       {"body", entry.body.text},
                   {"seal", bytesOf(entry.seal)}};
    if (op.person) object["person"] = op.person->text();
    return object;
}

template <class Part>
json listOf(const std::vector<Part>& parts) {
    auto list = json::array();
    for (const Part& part : parts)
        list.push_back(written(part));
    return list;
}

struct Writer {
    json operator()(const Greet& m) const {
        return {{"say", "greet"},
                {"version", m.version},
                {"device", m.device.text()},
                {"holder", m.holder}};
    }
    json operator()(const Ask& m) const { return {{"say", "ask"}, {"asked", millis(m.asked)}}; }
    json operator()(const Answer& m) const {
        return {{"say", "answer"},
                {"asked", millis(m.asked)},
                {"received", millis(m.received)},
                {"answered", millis(m.answered)}};
    }
    json operator()(const Heads& m) const { return {{"say", "heads"}, {"heads", listOf(m.heads)}}; }
    json operator()(const Entries& m) const {
        return {{"say", "entries"}, {"entries", listOf(m.entries)}};
    }
    json operator()(const TakenOver& m) const {
        return {{"say", "taken"}, {"heads", listOf(m.heads)}};
    }
    json operator()(const Refused& m) const {
        return {{"say", "refused"},
                {"event", m.event.text()},
                {"why", m.why == Refused::Why::Parted ? "parted" : "storage"}};
    }
};

// --- read ----------------------------------------------------------------------------------------

/// Thrown within this file only.
struct Nonsense {
    const char* member;
};

constexpr std::size_t kLongestName = 200;  // of an id or a kind
/// Whole numbers that every reader of CBOR keeps exactly; as milliseconds, 285 thousand years.
constexpr std::int64_t kMost = std::int64_t{1} << 53U;

const json& memberOf(const json& object, const char* member) {
    const auto found = object.is_object() ? object.find(member) : object.end();
    if (found == object.end()) throw Nonsense{member};
    return *found;
}

const std::string& textOf(const json& object, const char* member, std::size_t most) {
    const json& text = memberOf(object, member);
    if (!text.is_string()) throw Nonsense{member};
    const auto& value = text.get_ref<const std::string&>();
    if (value.size() > most) throw Nonsense{member};
    return value;
}

const std::string& nameOf(const json& object, const char* member) {
    const std::string& name = textOf(object, member, kLongestName);
    if (name.empty()) throw Nonsense{member};
    return name;
}

std::int64_t wholeOf(const json& object, const char* member, std::int64_t low, std::int64_t high) {
    const json& number = memberOf(object, member);
    if (!number.is_number_integer()) throw Nonsense{member};
    // Beyond 63 bits an unsigned number would turn into a negative one.
    if (number.is_number_unsigned() && number.get<std::uint64_t>() > std::uint64_t{kMost})
        throw Nonsense{member};
    const auto value = number.get<std::int64_t>();
    if (value < low || value > high) throw Nonsense{member};
    return value;
}

Instant instantOf(const json& object, const char* member) {
    return Instant{Duration{wholeOf(object, member, -kMost, kMost)}};
}

std::int32_t versionOf(const json& object) {
    return static_cast<std::int32_t>(
        wholeOf(object, "version", 0, std::numeric_limits<std::int32_t>::max()));
}

Seal sealOf(const json& object) {
    const json& bytes = memberOf(object, "seal");
    Seal seal{};
    if (!bytes.is_binary() || bytes.get_binary().size() != seal.size()) throw Nonsense{"seal"};
    std::copy(bytes.get_binary().begin(), bytes.get_binary().end(), seal.begin());
    return seal;
}

journal::OperationId operationOf(const json& object) {
    return {DeviceId{nameOf(object, "device")},
            static_cast<std::uint64_t>(wholeOf(object, "sequence", 1, kMost))};
}

ChainHead headOf(const json& object) {
    return {EventId{nameOf(object, "event")}, operationOf(object), sealOf(object)};
}

Entry entryOf(const json& object) {
    Entry entry;
    journal::Operation& op = entry.operation;
    op.event = EventId{nameOf(object, "event")};
    op.id = operationOf(object);
    op.stamp.wall = instantOf(object, "wall");
    op.stamp.counter = static_cast<std::uint32_t>(
        wholeOf(object, "counter", 0, std::numeric_limits<std::uint32_t>::max()));
    if (object.contains("person")) op.person = PersonId{textOf(object, "person", kLongestName)};
    op.version = versionOf(object);
    entry.body = {nameOf(object, "kind"), textOf(object, "body", kMostBytes)};
    entry.seal = sealOf(object);
    op.body = journal::readBody(entry.body.kind, op.version, entry.body.text);
    return entry;
}

template <class Part>
std::vector<Part> partsOf(const json& object, const char* member, Part (*partOf)(const json&)) {
    const json& list = memberOf(object, member);
    if (!list.is_array()) throw Nonsense{member};
    std::vector<Part> parts;
    parts.reserve(list.size());
    std::transform(list.begin(), list.end(), std::back_inserter(parts), partOf);
    return parts;
}

Refused::Why whyOf(const json& object) {
    const std::string& why = nameOf(object, "why");
    if (why == "parted") return Refused::Why::Parted;
    if (why == "storage") return Refused::Why::Storage;
    throw Nonsense{"why"};
}

Message messageOf(const json& object) {
    const std::string& say = nameOf(object, "say");
    if (say == "greet")
        return Greet{versionOf(object), DeviceId{nameOf(object, "device")},
                     textOf(object, "holder", kLongestHolder)};
    if (say == "ask") return Ask{instantOf(object, "asked")};
    if (say == "answer")
        return Answer{instantOf(object, "asked"), instantOf(object, "received"),
                      instantOf(object, "answered")};
    if (say == "heads") return Heads{partsOf(object, "heads", headOf)};
    if (say == "entries") return Entries{partsOf(object, "entries", entryOf)};
    if (say == "taken") return TakenOver{partsOf(object, "heads", headOf)};
    if (say == "refused") return Refused{EventId{nameOf(object, "event")}, whyOf(object)};
    throw Nonsense{"say"};
}

}  // namespace

std::string write(const Message& message) {
    std::string bytes;
    json::to_cbor(std::visit(Writer{}, message), bytes);
    return bytes;
}

Result<Message, Unreadable> read(std::string_view bytes) {
    if (bytes.size() > kMostBytes) return fail(Unreadable{"longer than any message"});
    if (!isPlainCbor(bytes)) return fail(Unreadable{"not the CBOR of a message"});
    const json object = json::from_cbor(bytes, /*strict=*/true, /*allow_exceptions=*/false);
    if (!object.is_object()) return fail(Unreadable{"not a map"});
    try {
        return messageOf(object);
    } catch (const Nonsense& nonsense) {
        return fail(Unreadable{std::string("not sound: ") + nonsense.member});
    }
}

}  // namespace cinder::sync
