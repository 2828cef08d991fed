#include "plan/solution.h"

#include <algorithm>

namespace cinder::plan {

FromBell firstStart(const Schedule& schedule) {
    if (schedule.tasks.empty()) return FromBell{0};
    return std::min_element(
               schedule.tasks.begin(), schedule.tasks.end(),
               [](const PlannedTask& a, const PlannedTask& b) { return a.start < b.start; })
        ->start;
}

}  // namespace cinder::plan
