#include "plan/search/solve.h"

#include <algorithm>
#include <future>

#include "plan/bell_side.h"
#include "plan/check.h"
#include "plan/search/bounds.h"
#include "plan/search/evolution.h"
#include "plan/search/exact.h"
#include "plan/search/settle.h"
#include "plan/search/window_search.h"

namespace cinder::plan::search {

namespace {

bool isFixed(const Given& given, std::size_t i) {
    return !given.isFixed.empty() && given.isFixed[i];
}

/// The tasks on some sides of the bell, as far as they are not fixed; the others that are not fixed
/// are left out.
Division divisionOf(const std::vector<BellSide>& sides, const Given& given, bool wantsAfter) {
    Division division;
    for (std::size_t i = 0; i < sides.size(); ++i) {
        const bool isMember = (sides[i] == BellSide::After) == wantsAfter && !isFixed(given, i);
        division.isMember.push_back(isMember);
        division.isAbsent.push_back(!isMember && !isFixed(given, i));
    }
    division.fixed = given.schedule;
    division.fixed.tasks.resize(sides.size());
    return division;
}

/// What comes after the bell is planned first, forward and as early as can be: what must be done by
/// the bell then leans against it.
bool planAfterBell(const Problem& problem, const std::vector<BellSide>& sides, const Given& given,
                   std::uint64_t seed, Schedule& into) {
    const Division division = divisionOf(sides, given, true);
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
    const Slot bell =
        std::max(project.slot(0), problem.arrival ? project.slot(problem.arrival->count()) : 0);
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

/// The tight plan spread over the time there is; where that breaks a rule, the tight plan. Nothing
/// when the judge finds that broken too: nobody is shown a plan that cannot be carried out.
std::optional<Schedule> relaxed(const Problem& problem, Plan& plan, const Given& given) {
    Settling settling;
    settling.arrival = problem.arrival.value_or(plan.latestArrival);
    settling.margin = plan.latestArrival - settling.arrival;
    settling.isFixed = given.isFixed;
    settling.former = given.former;
    Problem judged = problem;
    if (!given.isFixed.empty()) judged.arrival.reset();  // what is fixed may have begun before
    Schedule schedule = settle(problem, plan.schedule, settling);
    for (Schedule* const one : {&schedule, &plan.schedule})
        if (check(judged, *one, given.isFixed).empty()) return std::move(*one);
    return std::nullopt;
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

constexpr Member kMostMembers =
    150;  ///< beyond it one contradiction of the exact arm costs too much

/// The budget, shared between the evolution, the windows and the exact arm.
struct Shares {
    std::int64_t schedules = 0;
    std::int64_t windows = 0;
    std::int64_t contradictions = 0;
};

/// What one contradiction takes, in passes over the same problem: measured on the public benchmark
/// 4 to 5 with 30 tasks, 4 with 60 and 3 with 120.
constexpr std::int64_t kSchedulesPerContradiction = 5;

/// A long search of a small problem would mostly repeat itself; the exact arm makes more of the
/// time, at what its contradictions cost. A larger plain problem gives windows a share that grows
/// with its size. The figures are what paid on the public benchmark.
Shares sharesOf(const Project& backward, const Budget& budget) {
    constexpr std::int64_t kLong = 4'000;
    const auto part = [&](double share) {
        return static_cast<std::int64_t>(static_cast<double>(budget.schedules) * share);
    };
    Shares shares{budget.schedules, 0, std::max<std::int64_t>(0, budget.exactNodes)};
    const Member size = backward.size();
    if (size > kMostMembers) shares.contradictions = 0;
    if (backward.isPlain) shares.windows = part(std::clamp((size - 24) / 75.0, 0.0, 0.8));
    shares.schedules -= shares.windows;
    if (budget.schedules < kLong || !isExactFor(backward)) return shares;
    const std::int64_t exact = part(0.5 * std::clamp((74 - size) / 42.0, 0.0, 1.0));
    shares.schedules -= exact;
    shares.contradictions += exact / kSchedulesPerContradiction;
    return shares;
}

/// What must be done by the bell, without what is planned after it: what is proven of this holds
/// for every plan of the whole, however the rest is laid.
struct ByBell {
    Project project;
    bool isWhole = false;  ///< there is no rest
};

/// Lets the exact arm look for something shorter than `found`, or for anything. What it proves goes
/// into the plan's bound, what it took into the plan's count. False when it proves that there is no
/// plan for any arrival.
bool improveExactly(const Project& backward, const ByBell& byBell, const Search& search,
                    std::int64_t contradictions, Slot bound, std::optional<Draft>& found,
                    Plan& plan) {
    const bool isValid = found && found->lateness == 0;
    if (contradictions <= 0 || (isValid && found->makespan <= bound)) return true;
    const Slot shift = byBell.project.slot(backward.real(0));
    ExactLimits limits;
    limits.contradictions = contradictions;
    limits.upper = isValid ? found->makespan + shift : byBell.project.horizon + 1;
    limits.endNow = endingOf(search);
    if (isValid) limits.hint = found->start;
    for (Slot& start : limits.hint)
        start += shift;
    const ExactResult exact = solveExactly(byBell.project, limits);
    plan.schedulesTried += exact.contradictions * kSchedulesPerContradiction;
    const bool isPlan = byBell.isWhole && isExactFor(backward);
    if (exact.start.size() != 0 && isPlan) {
        found = Draft(backward);
        found->start = exact.start;
        for (Member j = 0; j < backward.size(); ++j)
            found->finish[j] = exact.start[j] + backward.duration[j];
        found->makespan = exact.least;
    }
    if (exact.isComplete && exact.start.size() == 0 && !isValid) return false;
    plan.arrivalBound = std::min(plan.arrivalBound, FromBell{byBell.project.real(exact.bound)});
    return true;
}

/// A quick proof, where there is one, that the rest of a day cannot be done from its arrival on:
/// most hopeless requests fall to it, and no search is wasted on them.
bool isHopeless(const Project& byBell, const Search& search, FromBell arrival) {
    constexpr std::int64_t kQuick = 200;
    if (search.budget.exactNodes <= 0 || byBell.size() > kMostMembers) return false;
    ExactLimits limits;
    limits.contradictions = std::min(kQuick, search.budget.exactNodes);
    limits.upper = byBell.slot(arrival.count()) + 1;
    limits.endNow = endingOf(search);
    limits.wantsRefutation = true;
    const ExactResult exact = solveExactly(byBell, limits);
    return exact.isComplete && exact.start.size() == 0;
}

/// What an evolution and a walk through windows come to.
struct Findings {
    std::optional<Draft> draft;
    std::int64_t passes = 0;
};

Findings look(const Problem& problem, const Arena& arena, const Limits& limits,
              std::int64_t windowSchedules, std::uint64_t seed, const Schedule* former) {
    Evolution evolution(problem, arena, seed);
    if (former != nullptr) evolution.admit(*former);
    evolution.run(limits);
    Findings findings{{}, evolution.passes()};
    if (evolution.best() == nullptr) return findings;
    findings.draft = *evolution.best();
    if (windowSchedules <= 0) return findings;
    WindowSearch windows(arena, seed);
    windows.run({windowSchedules, limits.bound, limits.endNow}, *findings.draft);
    findings.passes += windows.passes();
    return findings;
}

/// Two seeds, each on a thread of its own. Neither knows of the other, so that the same seed comes
/// to the same plan however fast they run.
Findings lookTwice(const Problem& problem, const Arena& arena, const Limits& limits,
                   std::int64_t windowSchedules, std::uint64_t seed) {
    constexpr std::uint64_t kOther = 0x9e3779b97f4a7c15ULL;
    // A device that has no thread to give runs one after the other.
    constexpr auto kIfItCan = std::launch::async | std::launch::deferred;
    auto second = std::async(kIfItCan, [&] {
        return look(problem, arena, limits, windowSchedules, seed ^ kOther, nullptr);
    });
    Findings findings = look(problem, arena, limits, windowSchedules, seed, nullptr);
    Findings other = second.get();
    findings.passes += other.passes;
    const auto cost = [&](const Draft& draft) { return costOf(problem, arena.backward, draft, 0); };
    if (other.draft && (!findings.draft || cost(*other.draft) < cost(*findings.draft)))
        findings.draft = std::move(other.draft);
    return findings;
}

}  // namespace

Result<Plan, NoPlan> solve(const Problem& problem, const Search& search, const Given& given) {
    const auto sides = bellSides(problem);
    Division division = divisionOf(sides, given, false);
    const ByBell byBell{compile(problem, division, Direction::Backward),
                        std::none_of(division.isAbsent.begin(), division.isAbsent.end(),
                                     [](bool isAbsent) { return isAbsent; })};
    if (!planAfterBell(problem, sides, given, search.seed, division.fixed)) return fail(NoPlan{});
    division.isAbsent.assign(sides.size(), false);
    const auto arena = makeArena(problem, division);
    if (!arena) return fail(NoPlan{NoPlan::Why::Malformed, {}, HalfMinutes{0}});

    const Project& backward = arena->backward;
    Plan plan;
    plan.arrivalBound = FromBell{
        byBell.project.real(std::max(criticalPath(byBell.project), energyBound(byBell.project)))};
    const Slot bound = backward.slot(plan.arrivalBound.count());
    if (problem.arrival && plan.arrivalBound < *problem.arrival)
        return fail(NoPlan{NoPlan::Why::Impossible, {}, *problem.arrival - plan.arrivalBound});

    Shares shares{search.budget.schedules, 0, 0};
    if (given.former == nullptr) shares = sharesOf(backward, search.budget);
    Limits limits{shares.schedules, bound, endingOf(search)};
    if (given.former != nullptr) {
        if (problem.arrival && isHopeless(byBell.project, search, *problem.arrival))
            return fail(NoPlan{NoPlan::Why::Impossible, {}, HalfMinutes{1}});
        if (problem.arrival)
            limits.bound = std::max(bound, backward.slot(problem.arrival->count()));
    }
    Findings findings =
        search.usesSecondThread && given.former == nullptr
            ? lookTwice(problem, *arena, limits, shares.windows, search.seed)
            : look(problem, *arena, limits, shares.windows, search.seed, given.former);
    plan.schedulesTried += findings.passes;
    std::optional<Draft>& found = findings.draft;
    if (given.former == nullptr) {
        const bool isImpossible =
            !improveExactly(backward, byBell, search, shares.contradictions, bound, found, plan);
        if (isImpossible) return fail(NoPlan{NoPlan::Why::Impossible, {}, HalfMinutes{0}});
        if (problem.arrival && plan.arrivalBound < *problem.arrival)
            return fail(NoPlan{NoPlan::Why::Impossible, {}, *problem.arrival - plan.arrivalBound});
    }
    if (!found) return fail(NoPlan{});
    const Draft* const best = &*found;
    if (best->lateness > 0)
        return fail(NoPlan{NoPlan::Why::NotFound, {}, HalfMinutes{best->lateness}});
    plan.schedule = toSchedule(problem, backward, *best, division.fixed);
    plan.latestArrival = FromBell{backward.real(best->makespan)};
    if (problem.arrival && plan.latestArrival < *problem.arrival)
        return fail(NoPlan{NoPlan::Why::NotFound, {}, *problem.arrival - plan.latestArrival});
    auto schedule = relaxed(problem, plan, given);
    if (!schedule) return fail(NoPlan{});
    plan.schedule = *std::move(schedule);
    return plan;
}

}  // namespace cinder::plan::search
