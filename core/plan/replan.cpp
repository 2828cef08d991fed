#include "plan/replan.h"

#include <algorithm>

#include "plan/check.h"
#include "plan/fault.h"
#include "plan/rest_of_day.h"
#include "plan/search/settle.h"

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

/// What has begun did so before now; the limit on arrivals is for the rest.
Problem judgedFromNow(const RestOfDay& rest) {
    Problem problem = rest.problem;
    for (std::size_t i = 0; i < problem.tasks.size(); ++i) {
        auto& early = problem.tasks[i].earliestStart;
        if (!rest.given.isFixed[i])
            early = std::max(early.value_or(*problem.arrival), *problem.arrival);
    }
    problem.arrival.reset();
    return problem;
}

/// The old order and people, at other times where need be; nothing when that breaks a rule.
std::optional<Plan> keptInOrder(const RestOfDay& rest, const Problem& judged) {
    search::Settling settling;
    settling.arrival = *rest.problem.arrival;
    settling.isFixed = rest.given.isFixed;
    settling.former = &rest.wished;
    Plan plan;
    plan.latestArrival = settling.arrival;
    plan.schedule = search::settle(rest.problem, rest.wished, settling);
    if (!check(judged, plan.schedule, rest.given.isFixed).empty()) return std::nullopt;
    return plan;
}

}  // namespace

Result<Replanned, NoPlan> replan(const Problem& problem, const Schedule& schedule,
                                 const Standing& standing, const Search& search,
                                 std::int64_t mostSchedules) {
    RestOfDay rest = restOfDay(problem, schedule, standing);
    if (auto fault = findFault(rest.problem)) return fail(std::move(*fault));
    rest.given.former = &rest.wished;
    Replanned result;
    result.problem = judgedFromNow(rest);
    if (auto kept = keptInOrder(rest, result.problem)) {
        result.plan = std::move(*kept);
    } else {
        Search quick = search;
        quick.budget.schedules = std::min(quick.budget.schedules, mostSchedules);
        auto found = search::solve(rest.problem, quick, rest.given);
        if (!found) return fail(std::move(found.error()));
        result.plan = std::move(*found);
        if (!check(result.problem, result.plan.schedule, rest.given.isFixed).empty())
            return fail(NoPlan{});
    }
    countChanges(rest, result);
    return result;
}

}  // namespace cinder::plan
