// Prints how the error of the next event's lengths falls over twenty simulated events: the plan as
// first written, the mean of what was seen, the shrunken estimate, and the plan of a crew that
// accepts every suggestion before its next event. Asserts nothing.
//
//     bench_learn [crews]

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <vector>

#include "base/rng.h"
#include "learn/suggestions.h"

namespace {

using namespace cinder;

/// Sum of twelve uniform numbers less six: near enough to a standard normal for a picture.
double normal(Rng& rng) {
    double sum = -6;
    for (int i = 0; i < 12; ++i)
        sum += rng.unit();
    return sum;
}

double ratio(Duration a, Duration b) {
    return static_cast<double>(a.count()) / static_cast<double>(b.count());
}

}  // namespace

int main(int argc, char** argv) {
    const int crews = argc > 1 ? std::max(1, std::atoi(argv[1])) : 2000;
    constexpr int kEvents = 20;
    constexpr plan::HalfMinutes kFirst = std::chrono::minutes{30};
    std::vector<double> plan(kEvents), mean(kEvents), shrunk(kEvents), accepted(kEvents);
    Rng rng(2027);
    for (int crew = 0; crew < crews; ++crew) {
        // A crew that is a little slower than its plans, and differs from step to step.
        const double truth = 0.1 + 0.25 * normal(rng);
        std::vector<learn::Observed> seen;
        std::vector<learn::PastDay> past;
        std::vector<plan::Task> tasks(1);
        auto& usual = tasks.front().duration.usual;
        usual = kFirst;
        double sum = 0;
        for (std::size_t event = 0; event < kEvents; ++event) {
            const double next = truth + 0.3 * normal(rng);
            const double learned = learn::learn(learn::kDurationPrior, seen).mean;
            const double own = seen.empty() ? 0 : sum / static_cast<double>(seen.size());
            plan[event] += std::abs(truth) / crews;
            mean[event] += std::abs(truth - own) / crews;
            shrunk[event] += std::abs(truth - learned) / crews;
            accepted[event] += std::abs(truth - std::log(ratio(usual, kFirst))) / crews;
            learn::Actual actual;
            actual.plannedLength = usual;
            actual.actualLength =
                Duration{std::llround(double(Duration{kFirst}.count()) * std::exp(next))};
            past.push_back({{actual}, {}});
            for (const auto& suggestion : learn::suggestionsFor(tasks, past))
                usual = std::chrono::duration_cast<plan::HalfMinutes>(suggestion.learned);
            seen.push_back({next, false});
            sum += next;
        }
    }
    std::printf("mean error of a step's length, percent, %d steps\n", crews);
    std::printf("events before   plan   mean of events   shrunken   accepted\n");
    for (std::size_t event = 0; event < kEvents; ++event)
        std::printf("%13zu %6.1f %16.1f %10.1f %10.1f\n", event, 100 * std::expm1(plan[event]),
                    100 * std::expm1(mean[event]), 100 * std::expm1(shrunk[event]),
                    100 * std::expm1(accepted[event]));
    return 0;
}
