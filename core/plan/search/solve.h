#pragma once

/// From a problem, some of whose tasks may lie fixed, to a plan: what `makePlan` and `replan`
/// share.

#include "plan/planner.h"

namespace cinder::plan::search {

struct Given {
    /// Tasks that lie as in `schedule`; empty: none.
    std::vector<bool> isFixed;
    Schedule schedule;
    /// The plan to stay near, in the problem's frame; null for a fresh plan. The search then ends
    /// with the first plan that keeps `Problem::arrival`, trying the former order first.
    const Schedule* former = nullptr;
};

/// `problem` must have passed `findFault`.
[[nodiscard]] Result<Plan, NoPlan> solve(const Problem& problem, const Search& search,
                                         const Given& given);

}  // namespace cinder::plan::search
