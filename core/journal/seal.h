#pragma once

/// The hash chain that makes a changed record show. Every operation of a device in an event
/// carries the hash of that device's previous one, so an entry cannot be altered, removed or put
/// in between without breaking the chain from there on. What a chain cannot show is a record whose
/// end was cut off: for that, compare the last entry of each device with the one the signed sheet
/// names (report/record_sheet.h). Nor one that was rebuilt as a whole: for that, compare the last
/// seal with the one another device has on record.

#include <array>
#include <cstdint>

#include "journal/codec.h"
#include "journal/operation.h"

namespace cinder::journal {

/// BLAKE2b-256 (RFC 7693), from libsodium.
using Seal = std::array<std::uint8_t, 32>;

/// What precedes a device's first operation in an event.
inline constexpr Seal kFirstSeal{};

/// Hash over `previous` and every field of the operation, each with its length in front, so that
/// no two operations share an input. `body` is the stored text, not a re-encoding of it.
[[nodiscard]] Seal seal(const Seal& previous, const Operation& operation, const BodyText& body);

}  // namespace cinder::journal
