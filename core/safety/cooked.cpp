#include "safety/cooked.h"

#include <algorithm>

namespace cinder::safety {

namespace {

/// Whether a local limit leaves no other row in force than the minimum of the kind.
bool isLocal(Degree minimum, const Limits& limits) {
    return limits.isLocal(minimum) || cookingHold(minimum, limits) != cookingHold(minimum, {});
}

}  // namespace

Duration cookingHold(Degree minimum, const Limits& limits) {
    if (minimum == Degree::CookIntact) return limits.length(Span::CookIntactHold);
    if (minimum == Degree::CookGround) return limits.length(Span::CookGroundHold);
    return Duration{0};
}

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

Minimum minimumInForce(event::Food food, const Limits& limits) {
    const Degree degree = cookingMinimum(food);
    const DegreeLimit& limit = published(degree);
    Minimum minimum{limits.figure(degree, Scale::Celsius), cookingHold(degree, limits),
                    isLocal(degree, limits),
                    std::string(limit.edition) + ", " + std::string(limit.section)};
    if (minimum.isLocal) minimum.source = limits.authority() + "; " + minimum.source;
    return minimum;
}

Cooked cookedBy(event::Food food, const Limits& limits, const Reading& reading,
                std::optional<Duration> held) {
    const Degree minimum = cookingMinimum(food);
    const Duration watched = held.value_or(cookingHold(minimum, {}));
    if (limits.meets(minimum, reading) && watched >= cookingHold(minimum, limits))
        return Cooked::AtMinimum;
    if (isLocal(minimum, limits)) return Cooked::No;
    if (minimum == Degree::CookGround && rowMet(groundRows(), reading, watched))
        return Cooked::AtMinimum;
    if (food == event::Food::WholeMeat && held && rowMet(roastRows(), reading, *held))
        return Cooked::ByRoastChart;
    return Cooked::No;
}

std::optional<CookRow> rowInReach(event::Food food, const Limits& limits, const Reading& reading) {
    if (cookedBy(food, limits, reading, {}) != Cooked::No) return std::nullopt;
    const Degree minimum = cookingMinimum(food);
    // A local time that is longer than the published one has to be watched at the minimum itself.
    const Duration local = cookingHold(minimum, limits);
    if (cookedBy(food, limits, reading, local) != Cooked::No)
        return CookRow{limits.figure(minimum, Scale::Fahrenheit).fahrenheit(),
                       limits.figure(minimum, Scale::Celsius).celsius(), local};
    const auto rows = food == event::Food::WholeMeat  ? roastRows()
                      : minimum == Degree::CookGround ? groundRows()
                                                      : std::span<const CookRow>{};
    std::optional<CookRow> shortest;
    for (const CookRow& row : rows)
        if (cookedBy(food, limits, reading, row.hold) != Cooked::No &&
            (!shortest || row.hold < shortest->hold))
            shortest = row;
    return shortest;
}

}  // namespace cinder::safety
