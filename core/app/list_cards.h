#pragma once

/// Quantities, line, van and kitchen as the pages show them: finished values.

#include <string>
#include <vector>

#include "base/local_text.h"
#include "event/event.h"
#include "quantity/reckoning.h"

namespace cinder::app {

/// One row of the pack list with what was counted.
struct PackCard : quantity::PackRow {
    /// Whole things, packs or kilograms to count; the row is in when so many are.
    std::int32_t wanted = 1;
    std::int32_t out = 0;
    std::int32_t home = 0;
    /// Went out, is to come back, and has not.
    std::int32_t missing = 0;
    friend bool operator==(const PackCard&, const PackCard&) = default;
};

/// One vessel of the line, as the set-up list names it.
struct StandCard {
    std::string key;  ///< "line/slaw/1"; what a tick names
    DishId dish;
    LocalText name;
    event::Vessel vessel = event::Vessel::Bowl;
    std::int32_t number = 1;  ///< of `count` vessels of the dish
    std::int32_t count = 1;
    std::int32_t table = 1;  ///< from the plates
    bool isOnRiser = false;
    bool isPlaced = false;
    friend bool operator==(const StandCard&, const StandCard&) = default;
};

struct Lists {
    /// As it was reckoned: guests, own values and line as they now stand, the bell where it is.
    event::Event event;
    quantity::Reckoning all;
    std::vector<PackCard> pack;   ///< in the order of the list
    std::vector<StandCard> line;  ///< in serving order
};

}  // namespace cinder::app
