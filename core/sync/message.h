#pragma once

/// What two devices say to each other, one message at a time. As bytes each is one CBOR map
/// (RFC 8949) with a member "say":
///
///     greet     {"version": n, "device": id, "holder": text}
///     ask       {"asked": ms}                            what does your clock show?
///     answer    {"asked": ms, "received": ms, "answered": ms}
///     heads     {"heads": [{"event": id, "device": id, "sequence": n, "seal": bytes}]}
///     entries   {"entries": [{"event": id, "device": id, "sequence": n, "wall": ms, "counter": n,
///                "person": id or absent, "kind": text, "version": n, "body": text,
///                "seal": bytes}]}                        one after the other, of one chain
///     taken     {"heads": […]}                           what is here now of what was sent
///     refused   {"event": id, "why": "parted"|"storage"} what was sent is not taken
///
/// where ms is milliseconds since 1970-01-01T00:00:00Z and bytes are 32 of them. Members that are
/// not named here are passed over. Greet stays as it is in every version, so that each can say
/// which it speaks.

#include <cstdint>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "base/id.h"
#include "base/result.h"
#include "base/time.h"
#include "journal/entry.h"

namespace cinder::sync {

/// The language of these messages. Devices that speak another exchange nothing.
inline constexpr std::int32_t kVersion = 1;
/// No message is longer; one that claims to be is not read.
inline constexpr std::size_t kMostBytes = std::size_t{16} << 20U;
/// In bytes; a longer name is not read.
inline constexpr std::size_t kLongestHolder = 100;

struct Greet {
    std::int32_t version = kVersion;
    DeviceId device;
    std::string holder;  ///< who holds it, in words; empty: nobody said
    friend bool operator==(const Greet&, const Greet&) = default;
};
struct Ask {
    Instant asked;
    friend bool operator==(const Ask&, const Ask&) = default;
};
struct Answer {
    Instant asked;
    Instant received;
    Instant answered;
    friend bool operator==(const Answer&, const Answer&) = default;
};
struct Heads {
    std::vector<journal::ChainHead> heads;
    friend bool operator==(const Heads&, const Heads&) = default;
};
struct Entries {
    std::vector<journal::Entry> entries;
    friend bool operator==(const Entries&, const Entries&) = default;
};
struct TakenOver {
    std::vector<journal::ChainHead> heads;
    friend bool operator==(const TakenOver&, const TakenOver&) = default;
};
struct Refused {
    enum class Why : std::uint8_t {
        Parted,   ///< one device's record went two ways (an old copy of it was gone on with)
        Storage,  ///< nothing can be noted on that device
    };
    EventId event;
    Why why = Why::Parted;
    friend bool operator==(const Refused&, const Refused&) = default;
};

using Message = std::variant<Greet, Ask, Answer, Heads, Entries, TakenOver, Refused>;

[[nodiscard]] std::string write(const Message& message);

struct Unreadable {
    std::string detail;  ///< for the log
};
/// Bytes from another device: anything may be in them. Nothing in a sound message is left out.
[[nodiscard]] Result<Message, Unreadable> read(std::string_view bytes);

}  // namespace cinder::sync
