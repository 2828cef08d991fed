#pragma once

/// Everything an event comes to, with what it still lacks.

#include <optional>
#include <vector>

#include "quantity/departure.h"
#include "quantity/dish_figures.h"
#include "quantity/kitchen.h"
#include "quantity/line.h"
#include "quantity/pack_list.h"
#include "quantity/purchase.h"

namespace cinder::quantity {

struct Reckoning {
    /// In the order of the menu.
    std::vector<DishFigures> dishes;
    std::vector<Buy> purchase;
    /// Chafers, fuel, water, ice, plates, spoons, charcoal (quantity/supplies.h, build/coal.h).
    std::vector<Figure> supplies;
    Line line;
    std::optional<Departure> departure;
    std::vector<PackRow> pack;
    std::vector<KitchenTask> kitchen;
    /// Beside their fields; empty when nothing is missing and nothing contradicts.
    event::Faults faults;
};

/// The figure called `key`, wherever it is; null when there is none.
[[nodiscard]] const Figure* findFigure(const Reckoning& reckoning, std::string_view key);

}  // namespace cinder::quantity
