#pragma once

/// What is bought: the same ingredient of several dishes together, in whole packs.

#include <optional>
#include <vector>

#include "quantity/dish_figures.h"

namespace cinder::quantity {

/// A good is what has the same id and the same name: two goods of one id are bought apart.
struct Buy {
    event::IngredientId id;
    LocalText name;
    std::optional<event::Pack> pack;
    std::vector<DishId> dishes;
    /// By weight, or by pieces when it is sold so.
    Figure need;
    /// Whole packs; loose ware in steps of kLooseStep.
    Figure toBuy;
};

/// What a scale at a counter is asked for (common practice - no source); the published buying guide
/// rounds to quarter pounds.
inline constexpr std::int64_t kLooseStepGrams = 100;

/// In the order the menu first names each good. A good whose need is not known in one
/// of its dishes is left out: half a figure would look like a whole one.
[[nodiscard]] std::vector<Buy> reckonPurchase(Tally& tally, const std::vector<DishFigures>& dishes);

/// Whole packs for `need`, both in the same unit. `pack` is positive. The published worked examples
/// of the buying guide are reckoned with this one.
[[nodiscard]] std::int64_t packsFor(double need, double pack);

}  // namespace cinder::quantity
