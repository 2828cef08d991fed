#include "quantity/yield_chain.h"

#include "quantity/yields.h"

namespace cinder::quantity {

namespace {

using What = event::Fault::What;

Figure published(Tally& tally, const Yield& yield) {
    Figure step;
    step.key = "yield/" + std::string(yield.key);
    step.name = LocalText(std::string(yield.food) + ", " + std::string(yield.state));
    step.amount = {readyForOne(yield), Unit::Ratio};
    step.source = {yield.origin, std::string(yield.source)};
    return tally.reckoned(std::move(step));
}

}  // namespace

std::optional<std::vector<Figure>> yieldChain(Tally& tally, const event::Ingredient& one,
                                              const std::string& where,
                                              const std::string& countedAt) {
    std::vector<Figure> chain;
    if (one.yieldPercent) {
        Figure own =
            Tally::field(both("Yield, the cook's own", "Rendimiento propio"),
                         {*one.yieldPercent / 100.0, Unit::Ratio}, where + "/yieldPercent");
        own.note = one.source;
        chain.push_back(std::move(own));
        return chain;
    }
    if (one.yields.empty()) {
        tally.missing(where + "/yields");
        return std::nullopt;
    }
    bool isWhole = true;
    chain.reserve(one.yields.size());
    for (std::size_t k = 0; k < one.yields.size(); ++k) {
        const std::string here = where + "/yields/" + std::to_string(k);
        const Yield* yield = findYield(one.yields[k]);
        if (yield == nullptr) {
            tally.blame(What::Dangling, here, '"' + one.yields[k] + '"', "the published yields");
            isWhole = false;
        } else if (!countedAt.empty() && isOfCooking(*yield)) {
            tally.blame(What::Contradiction, here, '"' + one.yields[k] + '"', countedAt);
        } else {
            chain.push_back(published(tally, *yield));
        }
    }
    if (!isWhole) return std::nullopt;
    return chain;
}

}  // namespace cinder::quantity
