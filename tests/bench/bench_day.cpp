/// Measures the planner on whole days and prints the figures: the demo events and invented days of
/// growing size. Every schedule passes the judge first.
/// Usage: bench_day [--standings N] [--demo]

#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <cstring>
#include <ctime>
#include <fstream>
#include <iomanip>
#include <iostream>
#include <sstream>

#include "core/plan/invented_day.h"
#include "event/json.h"
#include "plan/beta_pert.h"
#include "plan/build/build.h"
#include "plan/check.h"
#include "plan/replan.h"

namespace {

using namespace cinder;
using namespace cinder::plan;

/// Of processor time, so that others on the machine do not count.
template <class Work>
double millisecondsOf(Work&& work) {
    const std::clock_t begin = std::clock();
    work();
    return 1000.0 * static_cast<double>(std::clock() - begin) / CLOCKS_PER_SEC;
}

double minutesOf(HalfMinutes span) {
    return static_cast<double>(span.count()) / 2.0;
}

void judge(const std::string& what, const Problem& problem, const Schedule& schedule) {
    const auto broken = check(problem, schedule);
    if (!broken.empty())
        std::cout << "  INVALID " << what << ": " << describe(problem, broken.front()) << "\n";
}

std::string wordOf(NoPlan::Why why) {
    switch (why) {
        case NoPlan::Why::Malformed:
            return "malformed";
        case NoPlan::Why::NoCrew:
            return "no crew";
        case NoPlan::Why::TooBig:
            return "too big";
        case NoPlan::Why::Impossible:
            return "impossible";
        case NoPlan::Why::NotFound:
            break;
    }
    return "not found";
}

/// A moment in the middle of a day on which everything took as long as it happened to take.
struct Moment {
    std::vector<Actual> actuals;
    Duration now{0};
    Duration bell{0};
};

Moment momentOf(const Problem& problem, const Schedule& schedule, Rng& rng) {
    const Dispatch dispatch(problem, schedule);
    std::vector<Duration> durations;
    for (const Task& task : problem.tasks)
        durations.push_back(drawBetaPert(rng, task.duration));
    const Duration first = firstStart(schedule);
    const auto day = dispatch.project({}, first, Duration{0}, durations);
    Moment moment;
    moment.now = Duration{
        static_cast<std::int64_t>(static_cast<double>(first.count()) * (1.0 - 0.9 * rng.unit()))};
    if (rng.below(2) == 0) moment.bell = std::chrono::minutes{static_cast<int>(rng.below(46)) - 15};
    for (const Projected& projected : day) {
        Actual actual;
        if (projected.start <= moment.now) actual.start = projected.start;
        if (projected.finish <= moment.now) actual.finish = projected.finish;
        moment.actuals.push_back(actual);
    }
    return moment;
}

void measureReplan(const Problem& problem, const Schedule& schedule, int standings) {
    Rng rng(7);
    std::vector<double> times;
    std::vector<double> keptTimes;
    int impossible = 0;
    int notFound = 0;
    for (int k = 0; k < standings; ++k) {
        const Moment moment = momentOf(problem, schedule, rng);
        Standing standing;
        standing.actuals = moment.actuals;
        standing.now = moment.now;
        standing.bell = moment.bell;
        Result<Replanned, NoPlan> result = fail(NoPlan{});
        times.push_back(
            millisecondsOf([&] { result = replan(problem, schedule, standing, Search{}); }));
        if (result) {
            keptTimes.push_back(times.back());
            Problem judged = result->problem;
            judged.arrival.reset();  // what is done began before
            judge("re-plan " + std::to_string(k), judged, result->plan.schedule);
        } else if (result.error().why == NoPlan::Why::NotFound) {
            ++notFound;
        } else {
            ++impossible;
        }
    }
    std::sort(times.begin(), times.end());
    std::sort(keptTimes.begin(), keptTimes.end());
    std::cout << "  re-plan over " << standings << " standings: median " << times[times.size() / 2]
              << " ms, 95th percentile " << times[times.size() * 95 / 100] << " ms, worst "
              << times.back() << " ms; kept " << keptTimes.size() << " (95th percentile "
              << (keptTimes.empty() ? 0.0 : keptTimes[keptTimes.size() * 95 / 100])
              << " ms), proven impossible " << impossible << ", not found " << notFound << "\n";
}

void measure(const std::string& name, Problem problem, int standings) {
    Search first;
    first.budget.exactNodes = 0;
    Result<Plan, NoPlan> plan = fail(NoPlan{});
    double firstTime = 0;
    for (first.budget.schedules = 1; !plan && first.budget.schedules <= 4096;
         first.budget.schedules *= 2)
        firstTime = millisecondsOf([&] { plan = makePlan(problem, first); });
    std::cout << name << ": " << problem.tasks.size() << " tasks, " << problem.crew.size()
              << " people; first plan " << (plan ? "" : "(" + wordOf(plan.error().why) + ") ")
              << "in " << firstTime << " ms";
    problem.arrival.reset();
    const double fullTime = millisecondsOf([&] { plan = makePlan(problem, Search{}); });
    if (!plan) {
        std::cout << "; no plan: " << wordOf(plan.error().why) << "\n";
        return;
    }
    judge(name, problem, plan->schedule);
    const HalfMinutes gap = plan->arrivalBound - plan->latestArrival;
    std::cout << "; best in " << fullTime << " ms: arrive " << -minutesOf(plan->latestArrival)
              << " min before the bell, "
              << (gap.count() == 0
                      ? std::string("proven best")
                      : "at most " + std::to_string(gap.count()) + " half-minutes from best")
              << "\n";
    if (standings > 0) measureReplan(problem, plan->schedule, standings);
}

std::optional<Problem> demo(const std::string& name) {
    const std::ifstream file(std::string(CINDER_SOURCE) + "/demo-data/" + name + ".json");
    std::stringstream text;
    text << file.rdbuf();
    const auto event = event::parse(text.str());
    if (!event) return std::nullopt;
    auto problem = build(*event);
    if (!problem) return std::nullopt;
    return std::move(*problem);
}

}  // namespace

int main(int argc, char** argv) {
    int standings = 100;
    bool isDemoOnly = false;
    for (int k = 1; k < argc; ++k) {
        isDemoOnly = isDemoOnly || std::strcmp(argv[k], "--demo") == 0;
        if (std::strcmp(argv[k], "--standings") == 0 && k + 1 < argc)
            standings = std::max(1, std::atoi(argv[++k]));
    }
    std::cout << std::fixed << std::setprecision(1);
    for (const char* name : {"orchard-harvest-lunch", "last-apple-feast", "pruning-day-supper"}) {
        if (const auto problem = demo(name))
            measure(name, *problem, standings);
        else
            std::cout << "skipped " << name << ": not under demo-data\n";
    }
    if (isDemoOnly) return 0;
    for (const int tasks : {20, 50, 100, 200, 400})
        measure("invented day", test::inventDay(3, tasks, std::min(8, 2 + tasks / 40)), 0);
}
