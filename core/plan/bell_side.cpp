#include "plan/bell_side.h"

namespace cinder::plan {

std::vector<BellSide> bellSides(const Problem& problem) {
    std::vector<BellSide> sides(problem.tasks.size(), BellSide::By);
    for (std::size_t i = 0; i < problem.tasks.size(); ++i) {
        const Task& task = problem.tasks[i];
        if (task.earliestStart && task.earliestStart->count() >= 0)
            sides[i] = BellSide::After;
        else if (task.latestFinish && task.latestFinish->count() > 0)
            sides[i] = BellSide::Across;
    }
    const auto mayFollow = [&](std::size_t i) {
        const auto& limit = problem.tasks[i].latestFinish;
        return sides[i] != BellSide::After && (!limit || limit->count() > 0);
    };
    bool hasChanged = true;
    while (hasChanged) {
        hasChanged = false;
        for (const Link& link : problem.links) {
            const bool follows = link.fromEnd == End::Finish && link.minLag.count() >= 0;
            const auto to = static_cast<std::size_t>(link.to);
            if (!follows || sides[static_cast<std::size_t>(link.from)] != BellSide::After ||
                !mayFollow(to))
                continue;
            sides[to] = BellSide::After;
            hasChanged = true;
        }
    }
    return sides;
}

}  // namespace cinder::plan
