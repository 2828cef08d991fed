#pragma once

/// Numbers of the trade that are no law: how long a can burns, how much ice a guest takes. Each is
/// a figure of its own, so a crew that knows better puts its own in place.

#include <span>
#include <string_view>

#include "quantity/figure.h"

namespace cinder::quantity {

struct TradeFact {
    std::string_view key;
    std::string_view english;
    std::string_view spanish;
    double value = 0;
    Unit unit = Unit::Pieces;
    Origin origin = Origin::CommonPractice;
    std::string_view source;
};

[[nodiscard]] std::span<const TradeFact> tradeFacts();

/// The fact called `key` as a figure. `key` is one of tradeFacts().
[[nodiscard]] Figure fact(Tally& tally, std::string_view key);

}  // namespace cinder::quantity
