#pragma once

/// One dish: portions, pieces, weight, what is bought for it, and what it fills.

#include <optional>
#include <string>
#include <vector>

#include "quantity/figure.h"

namespace cinder::quantity {

struct IngredientFigures {
    event::IngredientId id;
    LocalText name;
    std::optional<event::Pack> pack;
    /// JSON Pointer of the ingredient.
    std::string path;
    /// As bought, before packs.
    std::optional<Figure> weight;
    /// Bought by the piece instead.
    std::optional<Figure> pieces;
};

/// Absent figures lack something the event does not say; a fault says what.
struct DishFigures {
    DishId dish;
    LocalText name;
    /// Whole portions of an adult, seconds and children's portions reckoned in.
    std::optional<Figure> portions;
    std::optional<Figure> pieces;
    /// As it is portioned: ready when weighed, raw when counted.
    std::optional<Figure> weight;
    std::vector<IngredientFigures> ingredients;
    /// Filled pans, or bowls, baskets and boards.
    std::optional<Figure> vessels;
    /// Of these, on the line at one time; the rest waits hot or cold.
    std::optional<Figure> onLine;
};

/// The dish at `index` of the menu. Faults go to `tally`.
[[nodiscard]] DishFigures reckonDish(Tally& tally, std::size_t index);

/// Does every dish declare what its food holds by nature, and is it ticked for no diet that never
/// allows what it is? Not a rule of the event: files of old must still be read.
void checkDeclared(Tally& tally);

/// Does every guest get a portion of each choice, and one that suits the diet and leaves out what
/// the guest must not eat? Where the menu names no choice of mains, of the mains. `dishes` as
/// reckoned, in the order of the menu.
void checkChoices(Tally& tally, const std::vector<DishFigures>& dishes);

}  // namespace cinder::quantity
