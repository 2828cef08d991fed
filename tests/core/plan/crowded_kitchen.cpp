#include "crowded_kitchen.h"

#include <algorithm>

#include "base/rng.h"
#include "orchard.h"

namespace cinder::plan::test {

Problem crowdedKitchen(std::uint64_t seed) {
    Rng rng(seed);
    const auto draw = [&](int low, int high) {
        return low + static_cast<int>(rng.below(static_cast<std::uint32_t>(high - low + 1)));
    };
    Problem problem = emptyKitchen(0);
    problem.resources = {{ResourceId("oven"), LocalText("Oven"), 9, {}},
                         {ResourceId("bench"), LocalText("Bench"), 12, {}}};
    constexpr int kTasks = 100;
    for (int i = 0; i < kTasks; ++i) {
        problem.tasks.push_back(standing(std::to_string(i), HalfMinutes{draw(1, 20)}));
        problem.tasks.back().uses = {{0, draw(0, 6)}, {1, draw(1, 8)}};
        for (int k = draw(0, 2); k > 0 && i > 0; --k)
            problem.links.push_back(
                after(draw(std::max(0, i - 15), i - 1), i, HalfMinutes{draw(0, 3)}));
    }
    return problem;
}

}  // namespace cinder::plan::test
