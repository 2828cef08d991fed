#pragma once

/// What the line and the guests need beside food: chafers and their fuel, water, ice, plates,
/// spoons.

#include <vector>

#include "quantity/dish_figures.h"

namespace cinder::quantity {

/// Keys: supply/chafers, supply/fuel-cans, supply/chafer-water, supply/drinking-water,
/// supply/hand-water, supply/water, supply/ice, supply/plates, supply/napkins, supply/cutlery,
/// supply/cups, supply/spoons, supply/cards. A figure that lacks something is left out and blamed.
[[nodiscard]] std::vector<Figure> reckonSupplies(Tally& tally,
                                                 const std::vector<DishFigures>& dishes);

/// Do the guests pass the line while it is open, and does the kit have the chafers?
void checkService(Tally& tally, const std::vector<Figure>& supplies);

}  // namespace cinder::quantity
