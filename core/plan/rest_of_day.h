#pragma once

#include "plan/replan.h"
#include "plan/search/solve.h"

namespace cinder::plan {

/// The problem that is left in the middle of a day, and what of it is fact.
struct RestOfDay {
    Problem problem;
    search::Given given;
    /// Where everything still to start would lie had nothing happened: late-leaning tasks, and what
    /// comes after the bell, as far from it as before; early-leaning ones at the same time of day.
    Schedule wished;
};

[[nodiscard]] RestOfDay restOfDay(const Problem& problem, const Schedule& schedule,
                                  const Standing& standing);

}  // namespace cinder::plan
