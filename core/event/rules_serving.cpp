#include "event/rules.h"

#include "event/text_guard.h"

namespace cinder::event {

namespace {

using What = Fault::What;

void checkIngredients(const Serving& serving, const std::string& path, Faults& faults) {
    std::map<IngredientId, std::string> seen;
    std::int32_t percent = 0;
    for (std::size_t i = 0; i < serving.ingredients.size(); ++i) {
        const Ingredient& one = serving.ingredients[i];
        const std::string here = joinPath(path + "/ingredients", i);
        claimId(seen, one.id, here + "/id", faults);
        percent += one.percent;
        if (one.yieldPercent && !one.yields.empty())
            faults.push_back({What::Contradiction,
                              here + "/yieldPercent",
                              std::to_string(*one.yieldPercent),
                              here + "/yields",
                              {}});
        if (!one.pack) continue;
        if (!one.pack->mass && !one.pack->pieces)
            faults.push_back({What::Missing, here + "/pack/grams", {}, {}, {}});
        if (one.pack->mass && one.pack->pieces)
            faults.push_back({What::Contradiction,
                              here + "/pack/pieces",
                              std::to_string(*one.pack->pieces),
                              here + "/pack/grams",
                              {}});
    }
    if (!serving.ingredients.empty() && percent != 100)
        faults.push_back(
            {What::OutOfRange, path + "/ingredients", std::to_string(percent), "100..100", {}});
}

}  // namespace

void checkServing(const Dish& dish, const std::string& path, Faults& faults) {
    std::map<StepId, std::string> ahead;
    for (std::size_t i = 0; i < dish.ahead.size(); ++i)
        claimId(ahead, dish.ahead[i].id, joinPath(path + "/ahead", i) + "/id", faults);
    if (!dish.serving) return;
    const std::string here = path + "/serving";
    if (dish.serving->portion && dish.serving->portionPieces)
        faults.push_back({What::Contradiction,
                          here + "/portionPieces",
                          std::to_string(*dish.serving->portionPieces),
                          here + "/portionGrams",
                          {}});
    checkIngredients(*dish.serving, here, faults);
}

void checkQuantities(const Event& event, Faults& faults) {
    if (!event.quantities) return;
    std::map<DishId, std::string> menu;
    for (const Dish& dish : event.menu)
        menu.emplace(dish.id, std::string());
    std::map<DishId, std::string> placed;
    const auto& order = event.quantities->lineOrder;
    for (std::size_t i = 0; i < order.size(); ++i) {
        const std::string here = joinPath("/quantities/lineOrder", i);
        claimId(placed, order[i], here, faults);
        if (!order[i].empty() && !menu.contains(order[i]))
            faults.push_back({What::Dangling, here, '"' + order[i].text() + '"', "/menu", {}});
    }
    std::map<std::string, std::string> figures;
    const auto& overrides = event.quantities->overrides;
    for (std::size_t i = 0; i < overrides.size(); ++i) {
        const std::string here = joinPath("/quantities/overrides", i) + "/figure";
        const auto [there, isNew] = figures.emplace(overrides[i].figure, here);
        if (!isNew && !overrides[i].figure.empty())
            faults.push_back(
                {What::DuplicateId, here, '"' + overrides[i].figure + '"', there->second, {}});
    }
}

}  // namespace cinder::event
