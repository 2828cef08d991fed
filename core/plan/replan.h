#pragma once

/// A new plan from the middle of the day: what is done or running is fact, the rest is planned
/// again, near to what everybody was told.

#include <span>

#include "plan/dispatch.h"
#include "plan/planner.h"

namespace cinder::plan {

/// The day as it stands; as in `Dispatch::project`.
struct Standing {
    std::span<const Actual> actuals;
    Duration now{0};
    Duration bell{0};
    /// How long what runs will last by the latest forecast; empty: as usual.
    std::span<const Duration> durations = {};
};

struct Replanned {
    /// The same tasks in the same positions, as they now are: what is done lasted as long as it
    /// lasted and needs nobody; what runs needs only the hands still to come, and of work that may
    /// be split there is only what is left; nothing else starts before now. Moments are distances
    /// from the bell as it now stands.
    Problem problem;
    Plan plan;
    /// How many tasks still to start have another person, or another moment by more than two
    /// minutes (late-leaning ones measured from the bell, early-leaning ones by the clock).
    int changedPeople = 0;
    int movedStarts = 0;
};

/// A plan that serves at the bell is found early or not at all, and people are waiting. Our choice.
inline constexpr std::int64_t kQuickSearch = 200;

/// Keeps the old order and people when that still serves at the bell; only otherwise searches, over
/// at most `mostSchedules`.
/// Maximum lags from what is done hold, but for those that are broken already. NotFound names by
/// how much the bell is missed.
[[nodiscard]] Result<Replanned, NoPlan> replan(const Problem& problem, const Schedule& schedule,
                                               const Standing& standing, const Search& search = {},
                                               std::int64_t mostSchedules = kQuickSearch);

}  // namespace cinder::plan
