#include "quantity/reckoning.h"

namespace cinder::quantity {

namespace {

const Figure* within(const Figure& figure, std::string_view key) {
    if (figure.key == key) return &figure;
    return findFigure(figure.inputs, key);
}

const Figure* within(const std::optional<Figure>& figure, std::string_view key) {
    return figure ? within(*figure, key) : nullptr;
}

const Figure* within(const DishFigures& dish, std::string_view key) {
    for (const auto* figure :
         {&dish.portions, &dish.pieces, &dish.weight, &dish.vessels, &dish.onLine})
        if (const Figure* found = within(*figure, key)) return found;
    for (const IngredientFigures& one : dish.ingredients) {
        if (const Figure* found = within(one.weight, key)) return found;
        if (const Figure* found = within(one.pieces, key)) return found;
    }
    return nullptr;
}

}  // namespace

const Figure* findFigure(const Reckoning& reckoning, std::string_view key) {
    for (const DishFigures& dish : reckoning.dishes)
        if (const Figure* found = within(dish, key)) return found;
    for (const Buy& buy : reckoning.purchase)
        if (const Figure* found = within(buy.toBuy, key)) return found;
    if (const Figure* found = findFigure(reckoning.supplies, key)) return found;
    return reckoning.departure ? within(reckoning.departure->beforeBell, key) : nullptr;
}

}  // namespace cinder::quantity
