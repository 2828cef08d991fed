#pragma once

/// What a dish of an event is to the tables of doneness, and what the cook aims for.

#include "cook/doneness.h"
#include "event/menu.h"

namespace cinder::live {

/// Nothing for what is no meat or fish; whole meat that nobody said more of counts as beef.
[[nodiscard]] std::optional<cook::Meat> meatOf(event::Food food, std::optional<event::Meat> meat);

/// Nothing where the doneness is not offered for this meat.
[[nodiscard]] std::optional<cook::PullTarget> pullTargetFor(cook::Meat meat,
                                                            event::Doneness doneness);

/// The dish's own wish; else that of its doneness, or of the next further one where it is not
/// offered; else medium (common practice - no source); else the published minimum. Zero for what is
/// no meat or fish.
[[nodiscard]] Temperature pullTargetOf(event::Food food, std::optional<event::Meat> meat,
                                       std::optional<event::Doneness> doneness,
                                       std::optional<Temperature> wish);

}  // namespace cinder::live
