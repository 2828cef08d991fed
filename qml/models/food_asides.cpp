// What the entry sheet asks once besides the number (food_entry.h).

#include <algorithm>
#include <cmath>

#include "food_entry.h"
#include "safety/cooked.h"

namespace cinder::face {

namespace {

/// Colder than food that is only cold: frozen, or degrees Celsius on the Fahrenheit keys, where
/// what is too warm would pass as cold. Our choice, below where food freezes.
constexpr Temperature kFrozen = Temperature::fromCelsius(-3);
/// Hotter than food is held: it boils, or it is degrees Fahrenheit on the Celsius keys, where what
/// is lukewarm would pass as hot. Our choice.
constexpr Temperature kNearlyBoiling = Temperature::fromCelsius(90);

/// The digits as they were typed: to the tenth, which the way over the other scale would lose.
double digits(double value) {
    return std::round(10 * value) / 10;
}

/// When food that stands like this is lost if nobody does anything. What was put away comes last:
/// it may have been emptied before.
Instant endOf(const app::FoodPanCard& card) {
    const safety::Standing& standing = card.standing;
    if (standing.control == safety::Control::Discarded) return Instant::max();
    if (standing.lost) return Instant::min();
    Instant end = standing.measureBy.value_or(Instant::max());
    for (const safety::OpenReading& open : standing.open)
        end = std::min(end, open.by);
    if (standing.control == safety::Control::Time) end = std::min(end, standing.time->discardAt);
    if (standing.control == safety::Control::Cooling) end = std::min(end, standing.cooling->by);
    return end;
}

}  // namespace

std::vector<const app::FoodPanCard*> FoodEntry::origins() const {
    std::vector<const app::FoodPanCard*> pans;
    if (pan_.number == 0 || card()) return pans;
    for (const app::FoodPanCard& card : day_->food.pans)
        if (card.pan.dish == pan_.dish && card.pan.number > 0) pans.push_back(&card);
    std::stable_sort(pans.begin(), pans.end(),
                     [](const auto* a, const auto* b) { return endOf(*a) < endOf(*b); });
    return pans;
}

std::vector<ChoiceRow> FoodEntry::originRows() const {
    std::vector<ChoiceRow> rows;
    for (const app::FoodPanCard* card : origins())
        rows.push_back({keyOf(card->pan), FoodWords::panNumber(card->pan.number),
                        words_.standing(card->standing), card->pan.number == from_, false});
    rows.push_back({keyOf({pan_.dish, 0}), tr("Out of none of them"),
                    tr("It came in this pan, and nobody has measured it yet"), !from_, false});
    return rows;
}

std::optional<safety::Reading> FoodEntry::otherScale() const {
    if (mode_ != Mode::Measure && mode_ != Mode::Leave) return std::nullopt;
    const safety::Reading typed = this->typed();
    if (typed.scale == safety::Scale::Fahrenheit) {
        if (typed.value >= kFrozen) return std::nullopt;
        return safety::inCelsius(digits(typed.value.fahrenheit()));
    }
    // A shoulder is cooked to such figures day by day.
    const bool isCook = mode_ == Mode::Measure && purpose_ == safety::Purpose::Cook;
    if (isCook || typed.value < kNearlyBoiling) return std::nullopt;
    return safety::inFahrenheit(digits(typed.value.celsius()));
}

std::vector<ChoiceRow> FoodEntry::scaleRows() const {
    const auto other = otherScale();
    if (!other) return {};
    const bool isFrozen = typed().scale == safety::Scale::Fahrenheit;
    return {
        {QStringLiteral("typed"), FoodWords::reading(typed()),
         isFrozen ? tr("It is frozen") : tr("It nearly boils"), false, false},
        {QStringLiteral("other"), FoodWords::reading(*other), tr("The other scale"), false, false}};
}

std::optional<safety::CookRow> FoodEntry::rowToKeep() const {
    if (!day_ || mode_ != Mode::Measure || purpose_ != safety::Purpose::Cook) return std::nullopt;
    for (const app::FoodPanCard& card : day_->food.pans)
        if (card.pan.dish == pan_.dish)
            return safety::rowInReach(card.food, day_->food.limits, typed());
    return std::nullopt;
}

std::vector<ChoiceRow> FoodEntry::heldRows() const {
    const auto row = rowToKeep();
    if (!row) return {};
    const auto roasts = safety::roastRows();
    const bool isRoast = std::find(roasts.begin(), roasts.end(), *row) != roasts.end();
    const safety::Scale scale = typed().scale;
    const QString figure =
        FoodWords::reading(scale == safety::Scale::Celsius ? safety::inCelsius(row->celsius)
                                                           : safety::inFahrenheit(row->fahrenheit));
    const auto ground = safety::groundRows();
    const bool isLocal = !isRoast && std::find(ground.begin(), ground.end(), *row) == ground.end();
    const QString source = isLocal ? toText(day_->food.limits.authority())
                                   : toText(std::string(safety::kFoodCode)) +
                                         (isRoast ? QStringLiteral(", 3-401.11(B)")
                                                  : QStringLiteral(", 3-401.11(A)(2)"));
    return {
        {QStringLiteral("kept"),
         tr("Kept at %1 or above for %2 or longer").arg(figure, Words::span(row->hold)),
         isRoast ? tr("Whole roasts only: %1").arg(source) : source, false, false},
        {QStringLiteral("short"), tr("Not that long"), tr("Asks what you will do"), false, false}};
}

}  // namespace cinder::face
