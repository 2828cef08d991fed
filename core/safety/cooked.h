#pragma once

/// Whether a reading shows that food is cooked. FDA Food Code 2022, 3-401.11 and 3-401.13.

#include <string>

#include "event/menu.h"
#include "safety/limits.h"

namespace cinder::safety {

enum class Cooked : std::uint8_t {
    No,
    AtMinimum,     ///< the temperature of its kind
    ByRoastChart,  ///< 3-401.11(B): lower, and kept long enough
};

/// The minimum of a kind of food. Eggs are taken as pooled, the stricter row, because a buffet
/// holds them; dairy and grain as plants.
[[nodiscard]] Degree cookingMinimum(event::Food food);

/// How long food is kept at its minimum; 0 where none is published.
[[nodiscard]] Duration cookingHold(Degree minimum, const Limits& limits);

/// What a thermometer has to show, and for how long: the published minimum of a kind of food, or
/// the stricter local one.
struct Minimum {
    Temperature temperature;
    Duration hold{0};
    bool isLocal = false;
    std::string source;  ///< where it was published, after whose stricter rule it is
};
[[nodiscard]] Minimum minimumInForce(event::Food food, const Limits& limits);

/// `held` absent: as long as the first row of the rule asks (15 or 17 s). Times longer than that
/// have to be watched. A local limit above the published one, in degrees or in time, leaves no
/// other row in force.
[[nodiscard]] Cooked cookedBy(event::Food food, const Limits& limits, const Reading& reading,
                              std::optional<Duration> held);

/// The row by which `reading` is enough once the food has been kept there for the row's time: of
/// the chart for whole meat, of the lower rows for ground meat, or the minimum with a longer local
/// time. Nothing when it is enough as it is, when no row reaches down to it, and where a local
/// limit leaves no lower row in force.
[[nodiscard]] std::optional<CookRow> rowInReach(event::Food food, const Limits& limits,
                                                const Reading& reading);

}  // namespace cinder::safety
