#pragma once

/// When the van leaves.

#include <optional>

#include "quantity/figure.h"

namespace cinder::quantity {

struct Departure {
    Instant leaveBy;
    /// Minutes before the bell; key "leave-by".
    Figure beforeBell;
};

/// Arrival less travel less buffer. `arrival` is the plan's, for an event that names none; without
/// either, or without travel or buffer, there is none and the field is blamed.
[[nodiscard]] std::optional<Departure> reckonDeparture(Tally& tally,
                                                       std::optional<Instant> arrival);

}  // namespace cinder::quantity
