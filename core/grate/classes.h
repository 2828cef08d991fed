#pragma once

/// Which piece of a batch is a thick one, and where the thick ones lie.

#include <cstdint>
#include <span>
#include <vector>

#include "grate/layout.h"

namespace cinder::grate {

/// Deals `count` pieces out to classes whose shares add up to 100, so that any run of pieces has
/// nearly the mix of the whole: piece `first + i` gets class `result[i]`. Every class is within one
/// piece of its share after any number of pieces. Ties go to the earlier class. Empty when there
/// is no class.
[[nodiscard]] std::vector<std::int32_t> dealClasses(std::span<const std::int32_t> percents,
                                                    std::int32_t first, std::int32_t count);

/// Gives the places of a layout to pieces: the thickest get the places nearest to the middle of
/// the batch, where the coals are hottest (common practice - no source). `thickness[c]` belongs to
/// class c; `classes` has one entry per place. Result: the class at each place.
[[nodiscard]] std::vector<std::int32_t> thickestToTheMiddle(std::span<const Place> places,
                                                            const Footprint& piece,
                                                            std::vector<std::int32_t> classes,
                                                            std::span<const Length> thickness);

}  // namespace cinder::grate
