// Prints how the error of the next event's lengths falls over twenty simulated events: the plan as
// first written, the mean of what was seen, and the shrunken estimate. Asserts nothing.
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

}  // namespace

int main(int argc, char** argv) {
    const int crews = argc > 1 ? std::max(1, std::atoi(argv[1])) : 2000;
    constexpr int kEvents = 20;
    std::vector<double> plan(kEvents), mean(kEvents), shrunk(kEvents);
    Rng rng(2027);
    for (int crew = 0; crew < crews; ++crew) {
        // A crew that is a little slower than its plans, and differs from step to step.
        const double truth = 0.1 + 0.25 * normal(rng);
        std::vector<learn::Observed> seen;
        double sum = 0;
        for (std::size_t event = 0; event < kEvents; ++event) {
            const double next = truth + 0.3 * normal(rng);
            const double learned = learn::learn(learn::kDurationPrior, seen).mean;
            const double own = seen.empty() ? 0 : sum / static_cast<double>(seen.size());
            plan[event] += std::abs(truth) / crews;
            mean[event] += std::abs(truth - own) / crews;
            shrunk[event] += std::abs(truth - learned) / crews;
            seen.push_back({next, false});
            sum += next;
        }
    }
    std::printf("mean error of a step's length, percent, %d steps\n", crews);
    std::printf("events before   plan   mean of events   shrunken\n");
    for (std::size_t event = 0; event < kEvents; ++event)
        std::printf("%13zu %6.1f %16.1f %10.1f\n", event, 100 * std::expm1(plan[event]),
                    100 * std::expm1(mean[event]), 100 * std::expm1(shrunk[event]));
    return 0;
}
