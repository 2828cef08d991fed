#include "quantity/yields.h"

#include <algorithm>

namespace cinder::quantity {

const Yield* findYield(std::string_view key) {
    const auto all = yields();
    const auto found =
        std::lower_bound(all.begin(), all.end(), key,
                         [](const Yield& yield, std::string_view k) { return yield.key < k; });
    return found != all.end() && found->key == key ? &*found : nullptr;
}

double readyForOne(const Yield& yield) {
    constexpr double kGramsAPound = 453.59237;
    switch (yield.reading) {
        case Printed::Percent:
            return yield.printed / 100.0;
        case Printed::Refuse:
            return 1.0 - yield.printed / 100.0;
        case Printed::Factor:
            return 1.0 / yield.printed;
        case Printed::Ratio:
            return yield.printed;
        case Printed::OuncesAPound:
            return yield.printed / 16.0;
        case Printed::QuarterCups171:
            return yield.printed * 171.0 / 4.0 / kGramsAPound;
    }
    return 1.0;
}

bool isOfCooking(const Yield& yield) {
    return yield.key.starts_with("cy_") || yield.state.find("cooked") != std::string_view::npos;
}

Mass bought(Mass ready, double readyForOne) {
    return Mass::fromGrams(roundedUp(static_cast<double>(ready.grams()) / readyForOne));
}

}  // namespace cinder::quantity
