#pragma once

/// From the tightest plan to the one people follow: every order is kept (who after whom, which
/// place passes to whom, which pieces interrupt which) and the times are chosen anew.

#include <optional>
#include <vector>

#include "plan/solution.h"

namespace cinder::plan::search {

struct Settling {
    /// Nothing that may move starts before it.
    FromBell arrival{0};
    /// How much earlier than its latest moment everything should lie, where maximum lags permit:
    /// the slack in hand against surprises.
    HalfMinutes margin{0};
    /// Tasks that stay where they are; empty: none.
    std::vector<bool> isFixed;
    /// Where tasks lay before, to stay near; null for a fresh plan.
    const Schedule* former = nullptr;
};

/// Early-leaning tasks go to their earliest moment, late-leaning ones to their latest less the
/// margin (or as near as may be to where they were). All limits are differences between two
/// moments, and the larger of two solutions of such a system, moment by moment, is a solution
/// again: the result is the least one above what each task wishes. Pieces of an interrupted task
/// that come to touch are joined. Returns `tight` when the system has no solution from `arrival`.
[[nodiscard]] Schedule settle(const Problem& problem, const Schedule& tight,
                              const Settling& settling);

}  // namespace cinder::plan::search
