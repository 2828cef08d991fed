#include "plan/planner.h"

#include "plan/fault.h"
#include "plan/search/solve.h"

namespace cinder::plan {

Result<Plan, NoPlan> makePlan(const Problem& problem, const Search& search) {
    if (auto fault = findFault(problem)) return fail(std::move(*fault));
    return search::solve(problem, search, search::Given{});
}

}  // namespace cinder::plan
