#pragma once

/// The exact arm: proves small plans best, impossible ones impossible, and bounds the others.
///
/// Starts are numbers between bounds; links, capacities and pairs that cannot overlap narrow them,
/// decisions split what is left, and every contradiction leaves a lesson (BoundsStore). Half of the
/// rounds ask first whether everything fits into the least time not yet refuted, so that a search
/// that runs out of contradictions still leaves a better bound: destructive improvement. Sources:
/// A. Schutt, T. Feydy, P. J. Stuckey, M. G. Wallace, "Solving RCPSP/max by lazy clause
/// generation", J. Scheduling 16 (2013); R. Klein, A. Scholl, EJOR 112 (1999) for destructive
/// bounds; from memory.
///
/// People are counted, not named, and interruptible work is left to the search: with either, the
/// result bounds the makespan from below; without, it is the makespan.

#include "plan/search/arena.h"
#include "plan/search/limits.h"

namespace cinder::plan::search {

struct ExactLimits {
    /// Contradictions to learn from. Memory grows with them, some hundred bytes each.
    std::int64_t contradictions = 2'000;
    /// Look only for makespans below it.
    Slot upper = kNoSlot;
    EndNow endNow;
    /// Starts of a good schedule, to look near; empty: none.
    Row<Slot> hint;
    /// Only a proof that there is nothing below `upper` is wanted: ends at the first schedule.
    bool wantsRefutation = false;
};

struct ExactResult {
    /// No schedule is shorter than `least` (of all, or below `upper`).
    bool isComplete = false;
    /// Starts of the best schedule found below `upper`; empty when there is none.
    Row<Slot> start;
    Slot least = kNoSlot;
    /// No schedule is shorter than it, proven even when the search is not complete.
    Slot bound = 0;
    std::int64_t contradictions = 0;
};

/// Whether the arm sees all there is to `project`, so that its schedules are plans.
[[nodiscard]] bool isExactFor(const Project& project);

[[nodiscard]] ExactResult solveExactly(const Project& project, const ExactLimits& limits);

}  // namespace cinder::plan::search
