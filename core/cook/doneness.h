#pragma once

/// Pull targets by doneness and, beside them, the published safe minimum.
///
/// The two are never merged: a target is what the cook aims for, the minimum is what a thermometer
/// must show. Where a target is below the minimum the face says so.

#include <optional>
#include <string_view>

#include "base/time.h"
#include "base/units.h"

namespace cinder::cook {

enum class Meat { IntactBeef, IntactLamb, IntactPork, Fish, GroundMeat, Poultry };
enum class Doneness { Rare, MediumRare, Medium, MediumWell, WellDone };

struct SafeMinimum {
    Temperature temperature;
    Duration hold;            ///< at that temperature; 0 where published as instantaneous
    std::string_view source;  ///< the published rule
};

struct PullTarget {
    Temperature pullAt;
    SafeMinimum minimum;
    /// Pulled here, the piece relies on carry-over, or on a longer hold at a lower temperature, to
    /// reach the published minimum, and only a thermometer can tell whether it did.
    [[nodiscard]] bool isBelowMinimum() const { return pullAt < minimum.temperature; }
};

/// FDA Food Code 2022, 3-401.11(A). Local codes and the licensed food protection manager decide.
[[nodiscard]] SafeMinimum safeMinimum(Meat meat);

/// Pull temperatures are common practice - no source; they allow for some carry-over. Nothing where
/// the doneness is not offered: ground meat and poultry are pulled at their minimum or above, and
/// fish and pork are not offered rare.
[[nodiscard]] std::optional<PullTarget> pullTarget(Meat meat, Doneness doneness);

}  // namespace cinder::cook
