#pragma once

/// Why a promise cannot be kept and what would keep it; every answer is found by planning again.

#include <optional>
#include <string>
#include <vector>

#include "plan/planner.h"

namespace cinder::plan {

/// One change to the event.
struct Remedy {
    enum class Kind : std::uint8_t {
        EarlierArrival,  ///< come `time` earlier
        PrepareAhead,    ///< do the cold work on `dish` before leaving
        MoreOfResource,  ///< have `units` more of `resource`
        OnePersonMore,   ///< with `skills`
        LaterServe,      ///< serve `time` later
        DropDish,        ///< leave `dish` out
    };
    Kind kind = Kind::EarlierArrival;
    HalfMinutes time{0};
    std::vector<SkillIndex> skills;
    std::optional<ResourceIndex> resource;
    std::int32_t units = 0;
    std::optional<DishId> dish;
    /// How much later the crew may come than without the change.
    HalfMinutes gain{0};
    bool isEnough = false;
    friend bool operator==(const Remedy&, const Remedy&) = default;
};

struct Explanation {
    /// The best plan with no arrival given.
    Plan plan;
    /// By how much the arrival misses it; zero or less: the promise is kept, with that to spare.
    HalfMinutes missing{0};
    /// Enough by itself first; then in the order of `Kind`; then by gain. Empty when the promise
    /// is kept. The smallest change of each kind that is enough, or else the largest tried.
    std::vector<Remedy> remedies;
    /// The task by the bell with the least slack, and among those the least sure duration.
    std::optional<TaskIndex> weakest;
    /// Per task, in `plan` begun at the arrival.
    std::vector<Duration> slack;
    /// In `plan`, in order of time; see Dispatch::criticalChain.
    std::vector<TaskIndex> criticalChain;
};

/// Plans `problem` without and with each change, spending `search` on each. Fails as `makePlan`
/// does when there is no plan for any arrival.
[[nodiscard]] Result<Explanation, NoPlan> explain(const Problem& problem,
                                                  const Search& search = {});

/// One sentence in plain English, for the command line.
[[nodiscard]] std::string describe(const Problem& problem, const Remedy& remedy);

}  // namespace cinder::plan
