#pragma once

/// What rides in the van and where: derived from the menu, the kit and the line.

#include <string>
#include <vector>

#include "quantity/line.h"
#include "quantity/purchase.h"

namespace cinder::quantity {

/// Where something rides. Raw food apart from ready food (FDA Food Code 2022, 3-302.11, from
/// memory); fuel and charcoal apart from all food (common practice - no source).
enum class Ride : std::uint8_t {
    ColdBoxReady,
    ColdBoxRaw,
    HotBox,
    FoodCrate,
    LineCrate,
    KitCrate,
    FireCrate,
    Floor
};

struct PackRow {
    /// "pack/chafer"; what a tick names.
    std::string key;
    LocalText name;
    Ride ride = Ride::Floor;
    Amount amount;
    /// Kit comes back and is counted at load-out; food, fuel and paper do not.
    bool comesBack = false;
    friend bool operator==(const PackRow&, const PackRow&) = default;
};

/// By where it rides, then in the order of menu, kit and line. Figures that are not known are left
/// out; their faults say why.
[[nodiscard]] std::vector<PackRow> packList(const event::Event& event,
                                            const std::vector<DishFigures>& dishes,
                                            const std::vector<Figure>& supplies, const Line& line);

/// So many of one row counted.
struct PackCount {
    std::string key;
    std::int64_t count = 0;
};

/// What went out and is to come back, but did not, in the order of the list: for each row how many
/// are missing. Counts of rows that are not on the list, or do not come back, are ignored.
[[nodiscard]] std::vector<PackCount> missingOnTheWayHome(const std::vector<PackRow>& list,
                                                         const std::vector<PackCount>& out,
                                                         const std::vector<PackCount>& home);

}  // namespace cinder::quantity
