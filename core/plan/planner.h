#pragma once

/// From a problem to a plan. Searches as long as it is allowed to and always says how good the
/// plan is known to be.

#include <atomic>
#include <cstdint>
#include <optional>
#include <vector>

#include "base/clock.h"
#include "base/result.h"
#include "plan/solution.h"

namespace cinder::plan {

/// How long to search. Whatever limit is reached first ends it; a search that has proved its plan
/// best ends by itself.
struct Budget {
    /// Passes of the schedule generation scheme; one cut short counts by the share of tasks it
    /// placed. From four thousand on, a small problem without hands-on work spends a good part of
    /// them on the exact arm, at five schedules a contradiction.
    std::int64_t schedules = 5000;
    /// Needs a clock; the plan then depends on the device's speed.
    std::optional<Duration> time;
    const Clock* clock = nullptr;
    /// Contradictions the exact arm, which follows the search, may learn from on top of that. One
    /// takes about as long as three to five schedules.
    std::int64_t exactNodes = 2000;
};

struct Search {
    Budget budget;
    std::uint64_t seed = 1;
    /// Set from another thread to end the search with what it has.
    const std::atomic<bool>* stop = nullptr;
    /// Searches from a second seed at the same time and keeps the better plan, the first on a tie:
    /// each has all the schedules of the budget. The exact arm and `replan` make no use of it.
    bool usesSecondThread = false;
};

/// Why there is no plan.
struct NoPlan {
    enum class Why {
        Malformed,   ///< an index out of range, a negative duration, a cycle of links …
        NoCrew,      ///< a task asks for a skill or a number of people that nobody has
        TooBig,      ///< a task asks for more of a resource than there is at any time
        Impossible,  ///< a bound proves that the fixed arrival cannot be met
        NotFound,    ///< the budget ended first
    };
    Why why = Why::NotFound;
    std::vector<TaskIndex> tasks;  ///< the tasks to blame, when known
    /// For Impossible: by at least this much; for NotFound: the best plan misses by this much.
    HalfMinutes by{0};
};

struct Plan {
    Schedule schedule;
    /// The crew must be there by then for this schedule to hold.
    FromBell latestArrival{0};
    /// No plan lets the crew arrive later than this. Equal to `latestArrival`: proven best.
    FromBell arrivalBound{0};
    std::int64_t schedulesTried = 0;  ///< the exact arm's contradictions counted in schedules
};

/// Finds a plan that serves at the bell: nothing impossible first, then the latest arrival (or,
/// arrival fixed, the largest smallest slack), then freshness, then fewest hand-overs.
/// Deterministic for a seed when the budget is counted in schedules.
[[nodiscard]] Result<Plan, NoPlan> makePlan(const Problem& problem, const Search& search = {});

}  // namespace cinder::plan
