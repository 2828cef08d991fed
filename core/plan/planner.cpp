#include "plan/planner.h"

#include <algorithm>

#include "plan/bell_side.h"
#include "plan/check.h"
#include "plan/fault.h"
#include "plan/search/bounds.h"
#include "plan/search/evolution.h"
#include "plan/search/settle.h"

namespace cinder::plan {

namespace {

using namespace search;

/// The members on some sides of the bell; everybody else is left out.
Division divisionOf(const std::vector<BellSide>& sides, bool wantsAfter) {
    Division division;
    for (const BellSide side : sides) {
        division.isMember.push_back((side == BellSide::After) == wantsAfter);
        division.isAbsent.push_back(!division.isMember.back());
    }
    division.fixed.tasks.resize(sides.size());
    return division;
}

/// What comes after the bell is planned first, forward and as early as can be: what must be done by
/// the bell then leans against it.
bool planAfterBell(const Problem& problem, const std::vector<BellSide>& sides, std::uint64_t seed,
                   Schedule& into) {
    const Division division = divisionOf(sides, true);
    const auto arena = makeArena(problem, division);
    if (!arena) return false;
    const Project& project = arena->forward;
    if (project.size() == 0) return true;
    Generator maker(project, arena->distances(Direction::Forward));
    OrderRules rules(project, arena->distances(Direction::Forward), project.horizon);
    Rng rng(seed);
    Sequence sequence{Row<Member>(project.size()), {}};
    Draft draft(project);
    Draft best;
    std::int64_t bestCost = 0;
    constexpr int kTries = 60;
    const Slot bell = project.slot(0);
    for (int k = 0; k < kTries; ++k) {
        rules.sample(rng, k == 0 ? 40.0 : 2.0, sequence);
        if (!maker.generate(sequence, bell, draft)) continue;
        const std::int64_t cost = costOf(problem, project, draft, bell);
        if (best.start.size() != 0 && cost >= bestCost) continue;
        best = draft;
        bestCost = cost;
    }
    if (best.start.size() == 0 || best.lateness > 0) return false;
    into = toSchedule(problem, project, best, into);
    return true;
}

/// The tight plan spread over the time there is. A capacity that was smaller earlier in the day can
/// forbid what every order allows; then the tight plan stands.
Schedule relaxed(const Problem& problem, const Plan& plan) {
    Settling settling;
    settling.arrival = problem.arrival.value_or(plan.latestArrival);
    settling.margin = plan.latestArrival - settling.arrival;
    Schedule schedule = settle(problem, plan.schedule, settling);
    return check(problem, schedule).empty() ? schedule : plan.schedule;
}

EndNow endingOf(const Search& search) {
    const auto deadline = search.budget.time && search.budget.clock
                              ? std::optional(search.budget.clock->running() + *search.budget.time)
                              : std::nullopt;
    return [deadline, clock = search.budget.clock, stop = search.stop] {
        return (stop != nullptr && stop->load(std::memory_order_relaxed)) ||
               (deadline && clock->running() >= *deadline);
    };
}

}  // namespace

Result<Plan, NoPlan> makePlan(const Problem& problem, const Search& search) {
    if (auto fault = findFault(problem)) return fail(std::move(*fault));
    const auto sides = bellSides(problem);
    Division division = divisionOf(sides, false);
    if (!planAfterBell(problem, sides, search.seed, division.fixed)) return fail(NoPlan{});
    for (std::size_t i = 0; i < sides.size(); ++i)
        division.isAbsent[i] = false;
    const auto arena = makeArena(problem, division);
    if (!arena) return fail(NoPlan{NoPlan::Why::Malformed, {}, HalfMinutes{0}});

    const Project& backward = arena->backward;
    const Slot bound = std::max(criticalPath(backward), energyBound(backward));
    const FromBell arrivalBound{backward.real(bound)};
    if (problem.arrival && arrivalBound < *problem.arrival)
        return fail(NoPlan{NoPlan::Why::Impossible, {}, *problem.arrival - arrivalBound});

    Evolution evolution(problem, *arena, search.seed);
    evolution.run({search.budget.schedules, bound, endingOf(search)});
    const Draft* best = evolution.best();
    if (best == nullptr) return fail(NoPlan{});
    if (best->lateness > 0)
        return fail(NoPlan{NoPlan::Why::NotFound, {}, HalfMinutes{best->lateness}});
    Plan plan;
    plan.schedule = toSchedule(problem, backward, *best, division.fixed);
    plan.latestArrival = FromBell{backward.real(best->makespan)};
    plan.arrivalBound = arrivalBound;
    plan.schedulesTried = evolution.passes();
    if (problem.arrival && plan.latestArrival < *problem.arrival)
        return fail(NoPlan{NoPlan::Why::NotFound, {}, *problem.arrival - plan.latestArrival});
    plan.schedule = relaxed(problem, plan);
    return plan;
}

}  // namespace cinder::plan
