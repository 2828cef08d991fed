#pragma once

/// How much charcoal to load, when to light it, when to add more.
///
/// Two ways to the mass, kept apart and labelled, because they disagree: by heat, from published
/// heating values, and by the depth of the bed, which is how cooks do it. The advice loads for the
/// larger.

#include <optional>
#include <string_view>
#include <vector>

#include "base/result.h"
#include "base/time.h"
#include "base/units.h"
#include "cook/band.h"
#include "cook/fire.h"

namespace cinder::cook {

enum class FactKind { Published, CommonPractice, FromMemory };

/// A number of the trade with where it comes from, for the page that shows the reckoning.
struct CoalFact {
    std::string_view what;
    double low, high;
    std::string_view unit;
    FactKind kind;
    std::string_view source;
};
[[nodiscard]] const std::vector<CoalFact>& coalFacts();

struct FirePlan {
    Area bed;
    Duration cooking{0};                         ///< from first piece laid to last piece pulled
    FireBelief fire;                             ///< wanted at the grate
    Length depth = Length::fromMillimetres(75);  ///< of the bed when lit
    Mass bag = Mass::fromPounds(40);
    Duration burnIn = std::chrono::minutes(30);
};

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

/// Beside every plan. Sources: US Consumer Product Safety Commission, Document 5012; published
/// grill-safety lists on starter fluid (NFPA tip sheet from memory).
inline constexpr std::string_view kCharcoalCautions[] = {
    "Burn charcoal only in the open air, never in a tent, vehicle or building: its gas kills and "
    "has "
    "no smell. (CPSC Document 5012)",
    "Starter fluid on cold charcoal only; never on warm, glowing or lit coals. (grill-safety "
    "lists)",
    "Local fire codes decide on distance, extinguishers and burn bans.",
};

}  // namespace cinder::cook
