#include "safety/cooked.h"

#include <algorithm>

namespace cinder::safety {

namespace {

/// The shortest watch that counts for the row of the minimum itself.
Duration needed(Degree minimum, const Limits& limits) {
    if (minimum == Degree::CookIntact) return limits.length(Span::CookIntactHold);
    if (minimum == Degree::CookGround) return limits.length(Span::CookGroundHold);
    return Duration{0};
}

}  // namespace

Degree cookingMinimum(event::Food food) {
    using event::Food;
    switch (food) {
        case Food::Poultry:
            return Degree::CookPoultry;
        case Food::GroundMeat:
        case Food::Egg:
            return Degree::CookGround;
        case Food::WholeMeat:
        case Food::Fish:
            return Degree::CookIntact;
        case Food::Plant:
        case Food::Dairy:
        case Food::Grain:
            return Degree::CookPlant;
    }
    return Degree::CookPoultry;
}

Cooked cookedBy(event::Food food, const Limits& limits, const Reading& reading,
                std::optional<Duration> held) {
    const Degree minimum = cookingMinimum(food);
    const Duration watched = held.value_or(needed(minimum, limits));
    if (limits.meets(minimum, reading) && watched >= needed(minimum, limits))
        return Cooked::AtMinimum;
    if (limits.isLocal(minimum)) return Cooked::No;
    if (minimum == Degree::CookGround && rowMet(groundRows(), reading, watched))
        return Cooked::AtMinimum;
    if (food == event::Food::WholeMeat && held && rowMet(roastRows(), reading, *held))
        return Cooked::ByRoastChart;
    return Cooked::No;
}

const CookRow* rowInReach(event::Food food, const Limits& limits, const Reading& reading) {
    if (cookedBy(food, limits, reading, {}) != Cooked::No) return nullptr;
    const auto rows = food == event::Food::WholeMeat               ? roastRows()
                      : cookingMinimum(food) == Degree::CookGround ? groundRows()
                                                                   : std::span<const CookRow>{};
    const CookRow* shortest = nullptr;
    for (const CookRow& row : rows)
        if (cookedBy(food, limits, reading, row.hold) != Cooked::No &&
            (!shortest || row.hold < shortest->hold))
            shortest = &row;
    return shortest;
}

}  // namespace cinder::safety
