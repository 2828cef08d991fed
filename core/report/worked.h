#pragma once

/// How a figure was reckoned, with its own numbers, so that a person can follow it.

#include <string>
#include <vector>

#include "report/style.h"

namespace cinder::report {

/// A number as one puts it into a reckoner: one unit and never mixed, and to the nearest, where a
/// list rounds up: "6.349 oz", "40.08 lb", "175 min".
[[nodiscard]] std::string factorText(quantity::Amount amount, const Style& style);

/// One line for each step from the event to `figure`, the first ones first: "101 portions x 180 g =
/// 18.18 kg". A step that enters in several places stands once; what went into a person's own value
/// is not asked, and of `figure` itself it is what the app reckons.
[[nodiscard]] std::vector<std::string> workedLines(const quantity::Figure& figure,
                                                   const Style& style);

}  // namespace cinder::report
