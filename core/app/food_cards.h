#pragma once

/// The food-safety record as the boards show it at one instant: finished values.

#include <optional>
#include <string>
#include <vector>

#include "base/local_text.h"
#include "live/food_day.h"
#include "safety/checks.h"
#include "safety/record.h"
#include "safety/standing.h"

namespace cinder::app {

struct Snapshot;

/// One pan of one dish.
struct FoodPanCard {
    safety::Pan pan;
    LocalText dish;
    event::Food food = event::Food::Plant;
    safety::Standing standing;
    /// What the next reading is for, and the figure it is held against; the keypad opens with it.
    safety::Purpose nextPurpose = safety::Purpose::HoldHot;
    std::optional<safety::Degree> nextLimit;
    /// Whether a sealed pack heated for the first time can be meant.
    bool mayHeatPacked = false;
    friend bool operator==(const FoodPanCard&, const FoodPanCard&) = default;
};

struct FoodCards {
    std::vector<FoodPanCard> pans;             ///< in the order of the menu, then by number
    std::vector<safety::PlannedCheck> checks;  ///< by instant, done ones included
    /// Forecasts; never shown as if somebody had measured.
    std::vector<live::HoldingWarning> warnings;
    std::vector<safety::FireAnswer> beforeFire;
    std::vector<safety::ThermometerState> thermometers;
    safety::Limits limits;
    /// Readings out of limit without an action, and pans that are lost and not discarded: the
    /// record cannot be signed before both are none.
    std::int32_t withoutAction = 0;
    std::int32_t toDiscard = 0;
    std::optional<safety::RecordSigned> signature;
    std::vector<safety::Entry> entries;  ///< the whole record, in clock order
    friend bool operator==(const FoodCards&, const FoodCards&) = default;
};

/// `day.sheet` must be there and `outlook` be of the same day and instant.
[[nodiscard]] FoodCards makeFoodCards(const live::Day& day, const live::Outlook& outlook,
                                      Instant now);

/// The calls of the record: checks that are due, one for all of one occasion and moment; pans that
/// are lost soon if nobody reads them; the end of each time control; and pans that cool, every half
/// hour until they are cold (`snapshot.food` is there). Added to `snapshot.timers`, which stays by
/// due instant.
void addFoodTimers(const live::Day& day, Snapshot& snapshot);

/// The rule of a dish of the open event; nothing when it needs no record.
[[nodiscard]] std::optional<safety::FoodRule> foodRule(const live::Day& day,
                                                       const live::Outlook& outlook,
                                                       const DishId& dish);

}  // namespace cinder::app
