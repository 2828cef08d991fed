#pragma once

/// Charcoal for the grates an event uses.

#include <map>
#include <vector>

#include "quantity/figure.h"

namespace cinder::quantity {

/// supply/charcoal (grams to load, the larger of two ways to reckon it: cook/coal.h) and
/// supply/charcoal-bags. `cooking` is the time the plan cooks on each grate; for a grate it does
/// not name, batches on one grate are taken one after the other, each as long as it ever lasted,
/// which is more coal than needed rather than less. Empty when nothing lies on a grate; blamed when
/// the fire would have to last longer than coalNeed knows.
[[nodiscard]] std::vector<Figure> reckonCharcoal(Tally& tally,
                                                 const std::map<ResourceId, Duration>& cooking);

}  // namespace cinder::quantity
