#pragma once

/// The way of each dish through the day, as the food-safety record needs it, out of event and plan.

#include <vector>

#include "live/day.h"
#include "live/outlook.h"
#include "safety/checks.h"

namespace cinder::live {

/// One for each dish that needs a record, in the order of the menu. Dishes that are kept dry
/// (bread) need none. `day.sheet` must be there and `outlook` be of the same day.
///
/// A dish comes raw when it is cooked on the site and nothing of it was cooked and cooled ahead;
/// what was cooked ahead and is heated on the site is reheated.
[[nodiscard]] std::vector<safety::FoodPlan> foodPlans(const Day& day, const Outlook& outlook);

/// The hot pans that will fall to their limit: a forecast, never a measurement.
struct HoldingWarning {
    safety::Pan pan;
    Temperature limit;
    cook::Band<Instant> fallsTo;  ///< when the content reaches the limit, lid shut
    Instant basedOn;              ///< the last reading it was made from
    friend bool operator==(const HoldingWarning&, const HoldingWarning&) = default;
};

/// How long before the early edge of the forecast a pan is warned of. Our choice: time to act.
inline constexpr Duration kWarnAhead = std::chrono::minutes{30};

/// By the early edge. Only pans under hot holding whose forecast reaches the limit within
/// `kWarnAhead`; none where there is no forecast.
[[nodiscard]] std::vector<HoldingWarning> holdingWarnings(
    const Day& day, const std::vector<safety::FoodPlan>& plans, const safety::Limits& limits,
    Instant now);

}  // namespace cinder::live
