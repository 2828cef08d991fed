#pragma once

/// The exact arm for small problems: branch and bound over orders.
///
/// All limits are least distances between starts. Where the earliest starts overload a resource or
/// the people with a skill, some pair of a minimal overloading set has to be put in order, and each
/// ordered pair is a branch; what an earlier branch has ruled out is added as a distance to the
/// later ones, so that no schedule is looked at twice. Sources: B. De Reyck, W. Herroelen, EJOR 111
/// (1998) for the scheme; M. Bartusch et al., Annals of OR 16 (1988) for forbidden sets; from
/// memory.
///
/// People are counted, not named, and interruptible work is left to the search: with either, the
/// result bounds the makespan from below; without, it is the makespan.

#include "plan/search/arena.h"
#include "plan/search/evolution.h"

namespace cinder::plan::search {

struct ExactLimits {
    std::int64_t nodes = 20'000;
    /// Look only for makespans below it.
    Slot upper = kNoSlot;
    EndNow endNow;
};

struct ExactResult {
    /// The whole tree was seen: no schedule is shorter than `least` (of all, or below `upper`).
    bool isComplete = false;
    /// Starts of the best schedule found below `upper`; empty when there is none.
    Row<Slot> start;
    Slot least = kNoSlot;
    std::int64_t nodes = 0;
};

/// Whether the arm sees all there is to `project`, so that its schedules are plans.
[[nodiscard]] bool isExactFor(const Project& project);

[[nodiscard]] ExactResult solveExactly(const Project& project, const ExactLimits& limits);

}  // namespace cinder::plan::search
