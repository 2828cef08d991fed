#pragma once

/// What would bring a day that has got late nearer to its bell; each answer is found by planning
/// the rest of the day again.

#include "live/remaining.h"

namespace cinder::live {

/// One change from now on.
struct WayOut {
    enum class Kind : std::uint8_t {
        PlanAgain,      ///< the same work by the same people, in another order
        OnePersonMore,  ///< with `skills`
        DropDish,       ///< nothing more is done for `dish`
    };
    Kind kind = Kind::PlanAgain;
    std::vector<plan::SkillIndex> skills;
    std::optional<DishId> dish;
    /// By how much the bell is missed then, in whole minutes; zero: it is kept.
    Duration late{0};
    friend bool operator==(const WayOut&, const WayOut&) = default;
};

/// What is still to be done for a dish, by the places on the sheet; empty when nothing is, and when
/// something is being done for it just now: then it is not left out whole any more.
[[nodiscard]] std::vector<std::size_t> restFor(const Remaining& remaining, const DishId& dish);

/// The ways out that win two minutes or more, or all that is missing: planning again over going on
/// as planned, the others over planning again too. The least late first, then in the order of
/// `Kind`. Of people only the one who wins most, with the fewest skills; of dishes those that
/// something is still to be done for and nothing is being done for just now. Empty for a day that
/// is not late. A plan is looked for by halving the lateness, so an answer may be better than said,
/// never worse.
[[nodiscard]] std::vector<WayOut> waysOut(const Remaining& remaining,
                                          const plan::Search& search = {});

}  // namespace cinder::live
