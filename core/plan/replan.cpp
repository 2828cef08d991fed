#include "plan/replan.h"

#include <algorithm>

#include "plan/fault.h"
#include "plan/rest_of_day.h"

namespace cinder::plan {

namespace {

constexpr HalfMinutes kUnnoticed{4};  // two minutes

std::vector<PersonIndex> everybodyOn(const PlannedTask& planned) {
    std::vector<PersonIndex> people;
    for (const Piece& piece : planned.pieces)
        people.insert(people.end(), piece.people.begin(), piece.people.end());
    std::sort(people.begin(), people.end());
    people.erase(std::unique(people.begin(), people.end()), people.end());
    return people;
}

void countChanges(const RestOfDay& rest, Replanned& result) {
    for (std::size_t i = 0; i < rest.problem.tasks.size(); ++i) {
        if (rest.given.isFixed[i]) continue;
        const PlannedTask& was = rest.wished.tasks[i];
        const PlannedTask& is = result.plan.schedule.tasks[i];
        result.changedPeople += everybodyOn(was) != everybodyOn(is) ? 1 : 0;
        result.movedStarts += std::chrono::abs(was.start - is.start) > kUnnoticed ? 1 : 0;
    }
}

}  // namespace

Result<Replanned, NoPlan> replan(const Problem& problem, const Schedule& schedule,
                                 const Standing& standing, const Search& search) {
    RestOfDay rest = restOfDay(problem, schedule, standing);
    if (auto fault = findFault(rest.problem)) return fail(std::move(*fault));
    rest.given.former = &rest.wished;
    auto plan = search::solve(rest.problem, search, rest.given);
    if (!plan) return fail(std::move(plan.error()));
    Replanned result;
    result.plan = std::move(*plan);
    countChanges(rest, result);
    // What has begun did so before now; the limit on arrivals was for the rest.
    rest.problem.arrival.reset();
    for (std::size_t i = 0; i < rest.problem.tasks.size(); ++i) {
        auto& early = rest.problem.tasks[i].earliestStart;
        const FromBell now = std::chrono::ceil<HalfMinutes>(standing.now - standing.bell);
        if (!rest.given.isFixed[i] && (!early || *early < now)) early = now;
    }
    result.problem = std::move(rest.problem);
    return result;
}

}  // namespace cinder::plan
