#pragma once

/// What was last seen of a piece, from which its forecast runs on.
///
/// The fit weighs all readings of a piece alike, and a model that errs in a way it cannot follow (a
/// fire that fades) still misses the newest one. But that one says where the piece is: what is left
/// of the way to the target is told from there, by holding the model to the target and what it
/// stands above the piece.

#include "cook/piece_evidence.h"

namespace cinder::cook {

/// How much is still to come, at the least, where a cook has just found a piece not done: half of
/// what a touch is out by; from memory.
inline constexpr double kNotYetKelvin = 0.5 * kTouchKelvin;
/// How far the fitted model is off at one reading, a standard deviation. Chosen on simulated cooks
/// of a richer model, see bench_cook.
inline constexpr double kDriftKelvin = 2.0;

struct LastSeen {
    /// The newest reading with its tip meant for the middle: a shallow tip says little of the core.
    std::optional<ProbeReading> probe{};
    /// A "not yet" after it, which no reading has answered.
    std::optional<Instant> notYet{};
    [[nodiscard]] bool any() const { return probe || notYet; }
    [[nodiscard]] bool isAtTarget(Temperature target) const {
        return probe && !notYet && probe->reading >= target;
    }
    /// The latest of them; `any()` must hold.
    [[nodiscard]] Instant at() const { return notYet ? *notYet : probe->at; }
};

[[nodiscard]] LastSeen lastSeen(const PieceOnGrate& piece, const PieceReadings& readings);

/// How far a model stands above the piece it is of, and how well that is known.
struct Standing {
    double above = 0;     ///< kelvin
    double variance = 0;  ///< of it, from the thermometer and the place of its tip, K²
};

/// Takes a run of `model` that was just laid to what was last seen.
[[nodiscard]] Standing runToLastSeen(const PieceModel& model, const LastSeen& seen, GrillRun& run);

/// A run at the instant the piece reaches the target.
struct AtPull {
    GrillRun run;
    Standing standing;
    bool isReached = false;  ///< false: not by `latest`, where the run then is
};

/// Runs on from what was last seen: a reading below the target, or a "not yet", is before the pull;
/// one at the target is not.
[[nodiscard]] AtPull runToPull(const PieceModel& model, const LastSeen& seen, const Pair& hidden,
                               Duration latest);

}  // namespace cinder::cook
