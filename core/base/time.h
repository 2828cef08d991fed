#pragma once

/// Instants, durations and the written form of both.
///
/// An instant is UTC milliseconds; a duration is milliseconds. Neither knows a time zone. What a
/// person reads on a wall is made from an instant and a `UtcOffset`, which the event carries next
/// to its serve time: the core has no time-zone database and needs none.

#include <chrono>
#include <optional>
#include <string>
#include <string_view>

namespace cinder {

using Duration = std::chrono::milliseconds;
using Instant = std::chrono::sys_time<Duration>;
/// East of Greenwich is positive, as in RFC 3339.
using UtcOffset = std::chrono::minutes;

/// An instant together with the offset of the wall clock it was written on.
struct ZonedInstant {
    Instant at;
    UtcOffset offset{0};
    friend bool operator==(const ZonedInstant&, const ZonedInstant&) = default;
};

/// Reads an RFC 3339 `date-time`: "2027-09-18T13:00:00-04:00". Fractions of a second beyond
/// milliseconds are cut; a leap second (":60") is read as the second after it. Returns nothing for
/// anything the standard's grammar (section 5.6) does not allow, and for dates that do not exist.
[[nodiscard]] std::optional<ZonedInstant> parseRfc3339(std::string_view text);

/// Writes the same form, with milliseconds only when there are any. Offset 0 is written "Z".
[[nodiscard]] std::string formatRfc3339(ZonedInstant instant);

/// "13:05" on the wall `offset` east of Greenwich.
[[nodiscard]] std::string formatWallTime(Instant at, UtcOffset offset);

/// Distance to the bell the way a crew says it: "T-1:05" before it, "T+0:10" after it, in hours and
/// minutes rounded towards the bell; `T-0:00` at the bell.
[[nodiscard]] std::string formatBellOffset(Duration fromBell);

}  // namespace cinder
