#pragma once

/// How much charcoal to load, when to light it, when to add more.
///
/// Two ways to the mass, kept apart and labelled, because they disagree: by heat, from published
/// heating values, and by the depth of the bed, which is how cooks do it. The advice loads for the
/// larger.

#include <vector>

#include "base/result.h"
#include "base/time.h"
#include "base/units.h"
#include "cook/band.h"
#include "cook/fire.h"

namespace cinder::cook {

/// The fire wanted at the grate: a palm bears it for so long. Common practice - no source. A wish:
/// a fire that was felt to be weaker does not make it smaller.
inline constexpr Duration kWantedHand = std::chrono::seconds(3);

/// Depth of the bed, bag and burn-in are common practice - no source.
struct FirePlan {
    Area bed;
    Duration cooking{0};                         ///< from first piece laid to last piece pulled
    FireBelief fire;                             ///< wanted at the grate
    Length depth = Length::fromMillimetres(75);  ///< of the bed when lit
    Mass bag = Mass::fromPounds(40);
    Duration burnIn = std::chrono::minutes(30);
};

/// The coal of a bed of this depth, as poured. Bulk density as for the need.
[[nodiscard]] Mass coalOfBed(Area bed, Length depth = FirePlan{}.depth);

struct TopUp {
    Duration afterLighting;  ///< add then: fresh coal needs its own burn-in
    Mass mass;
};

struct CoalNeed {
    Band<Mass> byHeat;     ///< over the whole time
    Mass byDepth;          ///< first bed and top-ups
    Mass load;             ///< the larger of byDepth and the high end of byHeat
    int bags;              ///< whole bags that hold `load`
    Duration lightBefore;  ///< before the first piece is laid
    std::vector<TopUp> topUps;
};

/// Errors: `NotPositive` for an area, depth, bag or cooking time; `OutOfRange` for a depth above
/// 300 mm or a cooking time above 12 h.
[[nodiscard]] Result<CoalNeed, CookError> coalNeed(const FirePlan& plan);

}  // namespace cinder::cook
