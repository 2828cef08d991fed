#pragma once

/// How sure the promise is. Durations are drawn from their three-point estimates and the plan's
/// orders are kept (Dispatch), many times over.

#include <span>
#include <vector>

#include "plan/dispatch.h"

namespace cinder::plan {

/// The day as it stands; as in `Dispatch::project`.
struct RiskQuery {
    std::span<const Actual> actuals;
    Duration now{0};
    Duration bell{0};
    int draws = 1000;
    std::uint64_t seed = 1;
};

struct Risk {
    /// The share of days on which everything due by the bell was done by it, 0 to 1.
    double onTime = 0;
    /// From the planned bell: on four days of five everything was ready by then.
    Duration ready80{0};
    /// Per task: the share of days on which it had the smallest slack of all, 0 to 1.
    std::vector<double> criticality;
    /// `onTime` had everything not yet started been planned a quarter of an hour earlier.
    double onTimeQuarterHourEarlier = 0;
};

/// Deterministic for a seed. `dispatch` was made from `problem`. A running task is known to last
/// longer than it has lasted so far. About 20 microseconds a draw for a day of a hundred tasks.
[[nodiscard]] Risk assessRisk(const Problem& problem, const Dispatch& dispatch,
                              const RiskQuery& query);

}  // namespace cinder::plan
