#pragma once

/// Figure::worked where it depends on the event: what adds or takes nothing is left out.

#include <cstddef>
#include <vector>

#include "quantity/figure.h"

namespace cinder::quantity {

/// "{0} + {1}" of the first `count` inputs; empty for one, which is no sum.
[[nodiscard]] LocalText sumOf(std::size_t count);

/// The sum of `places` inputs and the share kept in spare, which is the input after them.
[[nodiscard]] LocalText withSpares(std::size_t places);

/// Inputs: adults, children, who takes it, a child's share, seconds. Empty when every guest takes
/// one and there is but one sort of guest.
[[nodiscard]] LocalText workedPortions(const event::Guests& guests, const event::Serving& serving);

/// Inputs: the weight, its share, then each yield.
[[nodiscard]] LocalText workedBought(const std::vector<Figure>& inputs);

/// `needed`, or what the event counts on, which is input 2.
[[nodiscard]] LocalText orCounted(const LocalText& needed);

}  // namespace cinder::quantity
