#include "live/revise_event.h"

#include <algorithm>

#include "event/limits.h"
#include "event/menu.h"

namespace cinder::live {

namespace {

event::Quantities& quantitiesOf(event::Event& event) {
    if (!event.quantities) event.quantities.emplace();
    return *event.quantities;
}

bool isWithin(std::int32_t count) {
    return count >= event::kGuestRange.low && count <= event::kGuestRange.high;
}

}  // namespace

bool revise(event::Event& event, const journal::FigureSet& set) {
    const bool isText = !set.figure.empty() && set.figure.size() <= event::kNameLetters.high;
    const bool isNumber =
        !set.value || (*set.value >= event::kFigure.low && *set.value <= event::kFigure.high);
    if (!isText || !isNumber) return false;
    if (!set.value && !event.quantities) return true;
    auto& overrides = quantitiesOf(event).overrides;
    const auto own = std::find_if(overrides.begin(), overrides.end(),
                                  [&](const auto& one) { return one.figure == set.figure; });
    if (!set.value) {
        if (own != overrides.end()) overrides.erase(own);
    } else if (own != overrides.end()) {
        own->value = *set.value;
        own->note = set.note;
    } else {
        overrides.push_back({set.figure, *set.value, set.note, {}});
    }
    return true;
}

bool revise(event::Event& event, const journal::GuestsSet& set, const event::Guests& described) {
    if (!isWithin(set.adults) || !isWithin(set.children) || set.adults + set.children == 0)
        return false;
    event.guests.adults = set.adults;
    event.guests.children = set.children;
    event.guests.diets = described.diets;
    event.guests.allergens = described.allergens;
    const std::int32_t all = event::headCount(event.guests);
    for (auto& diet : event.guests.diets)
        diet.count = std::min(diet.count, all);
    for (auto& allergen : event.guests.allergens)
        allergen.count = std::min(allergen.count, all);
    return true;
}

bool revise(event::Event& event, const journal::LineOrdered& ordered) {
    std::vector<DishId> order;
    for (const DishId& dish : ordered.dishes) {
        const bool isOnMenu = std::any_of(event.menu.begin(), event.menu.end(),
                                          [&](const event::Dish& one) { return one.id == dish; });
        if (isOnMenu && std::find(order.begin(), order.end(), dish) == order.end())
            order.push_back(dish);
    }
    quantitiesOf(event).lineOrder = std::move(order);
    return true;
}

}  // namespace cinder::live
