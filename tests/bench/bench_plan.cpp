/// Measures the planner on the public benchmark and prints the figures beside published ones.
/// Usage: bench_plan SET [--schedules N] [--exact N] [--every K] [--from N] [--seed N]
///                       [--two] [--open] [--shared DIR]
///   --two searches from two seeds, each on a thread of its own, each with all the schedules.
///   --open names the instances that are not proven.
///   SET: j30 j60 j120, or sm_j10 sm_j20 sm_j30 testset_ubo10 testset_ubo20 testset_ubo50

#include <chrono>
#include <cstring>
#include <iomanip>
#include <iostream>

#include "plan/check.h"
#include "plan/planner.h"
#include "psplib.h"

namespace {

using namespace cinder;
using namespace cinder::plan;

struct Options {
    std::string set;
    std::int64_t schedules = 5000;
    std::int64_t exactNodes = 0;
    std::size_t every = 1;
    std::size_t first = 0;
    std::uint64_t seed = 1;
    bool isVerbose = false;
    bool usesSecondThread = false;
    std::string shared = CINDER_SHARED;
};

struct Tally {
    int solved = 0;
    int optimal = 0;
    int proven = 0;
    int invalid = 0;
    int unsolved = 0;
    int refuted = 0;  ///< proved to have no schedule
    int wrong = 0;    ///< refuted although it has one, or bounded above the best known
    int missed = 0;   ///< has a schedule, none was found
    double overOptimum = 0;
    double overCriticalPath = 0;
    double floor = 0;  ///< of the best known schedules, over the critical path
    double seconds = 0;
};

Options read(int argc, char** argv) {
    Options options;
    for (int k = 1; k < argc; ++k) {
        const auto next = [&] { return k + 1 < argc ? argv[++k] : ""; };
        if (std::strcmp(argv[k], "--schedules") == 0)
            options.schedules = std::atoll(next());
        else if (std::strcmp(argv[k], "--exact") == 0)
            options.exactNodes = std::atoll(next());
        else if (std::strcmp(argv[k], "--every") == 0)
            options.every = static_cast<std::size_t>(std::max(1, std::atoi(next())));
        else if (std::strcmp(argv[k], "--from") == 0)
            options.first = static_cast<std::size_t>(std::max(0, std::atoi(next())));
        else if (std::strcmp(argv[k], "--seed") == 0)
            options.seed = static_cast<std::uint64_t>(std::atoll(next()));
        else if (std::strcmp(argv[k], "--two") == 0)
            options.usesSecondThread = true;
        else if (std::strcmp(argv[k], "--open") == 0)
            options.isVerbose = true;
        else if (std::strcmp(argv[k], "--shared") == 0)
            options.shared = next();
        else
            options.set = argv[k];
    }
    return options;
}

void solve(const bench::Instance& instance, const Options& options, Tally& tally) {
    Search search;
    search.budget.schedules = options.schedules;
    search.seed = options.seed;
    search.usesSecondThread = options.usesSecondThread;
    search.budget.exactNodes = options.exactNodes;
    const auto begin = std::chrono::steady_clock::now();
    const auto plan = makePlan(instance.problem, search);
    tally.seconds +=
        std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
    if (!plan) {
        ++tally.unsolved;
        const bool isProved = plan.error().why != NoPlan::Why::NotFound;
        tally.refuted += isProved ? 1 : 0;
        tally.wrong += isProved && !instance.isInfeasible ? 1 : 0;
        tally.missed += !instance.isInfeasible ? 1 : 0;
        return;
    }
    const auto broken = check(instance.problem, plan->schedule);
    if (!broken.empty()) {
        ++tally.invalid;
        std::cout << instance.name << ": " << describe(instance.problem, broken.front()) << "\n";
        return;
    }
    const int makespan = -plan->latestArrival.count();
    ++tally.solved;
    tally.optimal += makespan <= instance.lower ? 1 : 0;
    const bool isProven = plan->latestArrival == plan->arrivalBound;
    tally.proven += isProven ? 1 : 0;
    const bool isBoundWrong = instance.upper > 0 && -plan->arrivalBound.count() > instance.upper;
    tally.wrong += isBoundWrong ? 1 : 0;
    if (options.isVerbose && !isProven)
        std::cout << instance.name << ": " << makespan << ", proven at least "
                  << -plan->arrivalBound.count() << ", known " << instance.lower << ".."
                  << instance.upper << "\n";
    if (instance.upper > 0)
        tally.overOptimum += 100.0 * (makespan - instance.upper) / instance.upper;
    tally.floor += 100.0 * (instance.upper - instance.criticalPath) / instance.criticalPath;
    tally.overCriticalPath += 100.0 * (makespan - instance.criticalPath) / instance.criticalPath;
}

}  // namespace

int main(int argc, char** argv) {
    const Options options = read(argc, argv);
    const auto instances = bench::readSet(options.shared, options.set);
    if (instances.empty()) return 0;
    Tally tally;
    int count = 0;
    for (std::size_t k = options.first; k < instances.size(); k += options.every) {
        solve(instances[k], options, tally);
        ++count;
    }
    const double solved = std::max(1, tally.solved);
    std::cout << std::fixed << std::setprecision(3) << options.set << " schedules "
              << options.schedules << " instances " << count << " solved " << tally.solved
              << " invalid " << tally.invalid << " at best known lower bound " << tally.optimal
              << " proven " << tally.proven << " refuted " << tally.refuted << " wrong bounds "
              << tally.wrong << " missed " << tally.missed << "\n  over best known "
              << tally.overOptimum / solved << " %  over critical path "
              << tally.overCriticalPath / solved << " % (best known " << tally.floor / solved
              << " %)  " << 1000.0 * tally.seconds / count << " ms each\n";
}
