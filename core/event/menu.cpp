#include "event/menu.h"

#include <algorithm>

namespace cinder::event {

std::int32_t headCount(const Guests& guests) {
    return guests.adults + guests.children;
}

namespace {

template <class Value>
bool holds(const std::vector<Value>& values, Value value) {
    return std::find(values.begin(), values.end(), value) != values.end();
}

}  // namespace

bool isFitFor(const Dish& dish, Diet diet) {
    const bool isWithinVegan = diet == Diet::Vegetarian || diet == Diet::DairyFree;
    return holds(dish.suits, diet) || (isWithinVegan && holds(dish.suits, Diet::Vegan));
}

bool hasAllergen(const Dish& dish, Allergen allergen) {
    return holds(dish.contains, allergen) ||
           (allergen == Allergen::Gluten && holds(dish.contains, Allergen::Wheat)) ||
           (allergen == Allergen::Milk && dish.food == Food::Dairy) ||
           (allergen == Allergen::Egg && dish.food == Food::Egg);
}

std::int32_t pieceCount(const Pieces& pieces, const Guests& guests) {
    if (pieces.total) return *pieces.total;
    const std::int64_t hundredths =
        std::int64_t{pieces.perHundredGuests.value_or(0)} * headCount(guests);
    return static_cast<std::int32_t>((hundredths + 99) / 100);
}

}  // namespace cinder::event
