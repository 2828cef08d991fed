#include "invented_day.h"

#include <string>

#include "base/rng.h"
#include "orchard.h"

namespace cinder::plan::test {

namespace {

int between(Rng& rng, int low, int high) {
    return low + static_cast<int>(rng.below(static_cast<std::uint32_t>(high - low + 1)));
}

Task inventTask(Rng& rng, int number) {
    const std::string id = std::to_string(number);
    const SkillIndex skill = between(rng, 0, 1);
    switch (between(rng, 0, 3)) {
        case 0:
            return standing(id, minutes(between(rng, 5, 20)));
        case 1: {
            Task task =
                tended(id, minutes(between(rng, 8, 25)), minutes(between(rng, 3, 6)), skill);
            task.uses = {{0, between(rng, 2, 6)}};
            return task;
        }
        case 2: {
            Task task = handsOn(id, minutes(between(rng, 6, 20)), skill);
            task.shortestPiece = minutes(2);
            return task;
        }
        default: {
            Task task = handsOn(id, minutes(between(rng, 2, 12)), skill);
            if (between(rng, 0, 3) == 0) task.hands[0].people = 2;
            if (between(rng, 0, 2) == 0) task.uses = {{1, 1}};
            return task;
        }
    }
}

}  // namespace

Problem inventDay(std::uint64_t seed, int tasks, int people) {
    Rng rng(seed);
    Problem problem = emptyKitchen(people);
    problem.skills.push_back({SkillId("fire"), LocalText("Fire")});
    for (int p = 0; p < people; ++p)
        if (p < 2 || between(rng, 0, 1) == 0)
            problem.crew[static_cast<std::size_t>(p)].skills.push_back(1);
    problem.stations.push_back({StationId("table"), LocalText("Table")});
    problem.walk = {{minutes(0), minutes(1)}, {minutes(1), minutes(0)}};
    problem.resources.push_back({ResourceId("grate"), LocalText("Grate"), 8, {{minutes(-30), 6}}});
    problem.resources.push_back({ResourceId("burner"), LocalText("Burner"), 2, {}});
    for (int i = 0; i < tasks; ++i) {
        Task task = inventTask(rng, i);
        task.station = between(rng, 0, 1);
        task.lean = between(rng, 0, 1) == 0 ? Lean::Early : Lean::Late;
        task.staleness = between(rng, 0, 3);
        const bool isAfter = i >= tasks - tasks / 6;
        if (isAfter)
            task.earliestStart = FromBell{0};
        else
            task.latestFinish = minutes(-between(rng, 0, 5));
        problem.tasks.push_back(task);
        if (i == 0 || isAfter || between(rng, 0, 2) == 0) continue;
        Link link = after(between(rng, std::max(0, i - 6), i - 1), i, minutes(between(rng, 0, 3)));
        if (between(rng, 0, 3) == 0) link.maxLag = minutes(between(rng, 20, 60));
        problem.links.push_back(link);
    }
    return problem;
}

}  // namespace cinder::plan::test
