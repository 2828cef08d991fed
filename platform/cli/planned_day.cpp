#include "cli/planned_day.h"

#include <algorithm>
#include <numeric>

#include "event/fault.h"
#include "plan/build/build.h"

namespace cinder::cli {

namespace {

std::string minutes(plan::HalfMinutes amount) {
    const auto half = amount.count();
    return std::to_string(half / 2) + (half % 2 != 0 ? ".5" : "") + " min";
}

std::string describe(const plan::NoPlan& none, const plan::Problem& problem) {
    using Why = plan::NoPlan::Why;
    std::string words;
    switch (none.why) {
        case Why::Malformed:
            words = "the work contradicts itself: links between steps cannot all hold";
            break;
        case Why::NoCrew:
            words = "nobody can do this: add a person with the skill, or ask for fewer hands";
            break;
        case Why::TooBig:
            words = "this needs more room than the kit has: bring a larger one, or make less";
            break;
        case Why::Impossible:
            words = "impossible: the crew would have to arrive at least " + minutes(none.by) +
                    " earlier";
            break;
        case Why::NotFound:
            words = "no plan found; the best misses by " + minutes(none.by) +
                    ": arrive earlier, or search longer with --schedules";
            break;
    }
    constexpr std::size_t kMostNamed = 8;
    for (std::size_t i = 0; i < std::min(none.tasks.size(), kMostNamed); ++i) {
        const auto task = static_cast<std::size_t>(none.tasks[i]);
        if (task >= problem.tasks.size()) continue;
        words += "\n  " + problem.tasks[task].id.text() + ": " +
                 std::string(problem.tasks[task].name.in("en"));
    }
    return words;
}

}  // namespace

std::vector<std::size_t> PlannedDay::byStart() const {
    std::vector<std::size_t> order(problem.tasks.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [this](std::size_t a, std::size_t b) {
        return plan.schedule.tasks[a].start < plan.schedule.tasks[b].start;
    });
    return order;
}

Outcome<PlannedDay> planDay(event::Event event, const plan::Search& search, const Clock& clock) {
    auto problem = plan::build(event);
    if (!problem) {
        std::string words;
        for (const event::Fault& fault : problem.error())
            words += event::describe(fault) + "\n";
        return fail(Failure{ExitCode::BadEvent, words});
    }
    const Duration began = clock.running();
    auto plan = plan::makePlan(*problem, search);
    const Duration took = clock.running() - began;
    if (!plan) return fail(Failure{ExitCode::NoPlan, describe(plan.error(), *problem)});

    PlannedDay day{std::move(event), *std::move(problem), *std::move(plan), {}, {}, took};
    day.violations = plan::check(day.problem, day.plan.schedule);
    if (day.violations.empty()) {
        const plan::Dispatch dispatch(day.problem, day.plan.schedule);
        const std::vector<plan::Actual> nothingYet(day.problem.tasks.size());
        day.projected = dispatch.project(nothingYet, plan::firstStart(day.plan.schedule));
    }
    return day;
}

}  // namespace cinder::cli
