#pragma once

/// Steam-table pans: what they hold and how large they are.

#include "base/units.h"
#include "event/serving.h"

namespace cinder::quantity {

/// Usable capacity, below the brim. Source: steam-cooker operator manual, typical pan capacities
/// (240, 420 and 625 US fl oz for a full pan 2 1/2, 4 and 6 in deep); makers differ by a tenth.
[[nodiscard]] Volume usableVolume(event::PanSize size, event::PanDepth depth);

/// A size on a table: `length` along it, `width` from the guest away.
struct Footprint {
    Length length;
    Length width;
    friend bool operator==(const Footprint&, const Footprint&) = default;
};

/// Rim to rim. Full 20 3/4 x 12 3/4 in, the others parts of it. Source: trade guide to steam-table
/// pan sizes.
[[nodiscard]] Footprint panFootprint(event::PanSize size);

/// A full-size chafer with its frame, long side along the table: 25 in (24 to 26 in, common
/// practice, from memory) by 14 in (common practice - no source).
[[nodiscard]] Footprint chaferFootprint();

/// Hot water under one full pan: one inch deep (common practice) over 12 by 20 in (trade guide).
[[nodiscard]] Volume chaferWater();

}  // namespace cinder::quantity
