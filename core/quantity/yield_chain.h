#pragma once

/// Every factor from bought to ready, published or the cook's own.

#include <optional>
#include <string>
#include <vector>

#include "quantity/figure.h"

namespace cinder::quantity {

/// For the ingredient at `where` (a JSON Pointer); nothing when one factor is not known. Faults go
/// to `tally`. `countedAt` is where the event says that portions are counted, and empty when they
/// are weighed: counted pieces weigh what they weigh raw, so what cooking takes from them is blamed
/// and left out.
[[nodiscard]] std::optional<std::vector<Figure>> yieldChain(Tally& tally,
                                                            const event::Ingredient& one,
                                                            const std::string& where,
                                                            const std::string& countedAt);

}  // namespace cinder::quantity
