#pragma once

/// What the readings of one piece say about its two hidden numbers.

#include "cook/piece_model.h"

namespace cinder::cook {

/// Standard deviations of what is read, in kelvin unless named otherwise.
/// Thermometer from the study of what readings identify (reference notes); model chosen on
/// simulated cooks of a richer model, see bench_cook;
/// tip placed to 4 mm and judgement by touch to 5 K from memory.
inline constexpr double kThermometerKelvin = 0.7;
inline constexpr double kModelKelvin = 1.2;
inline constexpr double kTipMetres = 0.004;
inline constexpr double kTouchKelvin = 5.0;

/// What the model expects a probe to show.
struct ExpectedReading {
    double celsius = 0;
    double variance = 0;  ///< from the place of the tip, K²
};

/// Of a tip so far below the face that is up. A tip near the coldest place reads high however it
/// misses, so it is the mean over where it may be; two-point rule for a normal distribution.
[[nodiscard]] ExpectedReading expectProbe(const PieceModel& model, const GrillRun& run,
                                          Length depth);

/// The readings of one piece in the order they were taken. Those after the pull are left out: the
/// hidden numbers are about the grate.
struct PieceReadings {
    std::vector<ProbeReading> probes;
    std::vector<Judgement> judgements;
    [[nodiscard]] bool empty() const { return probes.empty() && judgements.empty(); }
    /// The latest of them.
    [[nodiscard]] Instant last() const;
};

/// Errors: `OutOfOrder` "probe" or "judgement" for one before the piece was laid; `OutOfRange`
/// "depth" for a tip outside the piece, "reading" for one that no piece can show (batch.h).
[[nodiscard]] Result<PieceReadings, CookError> readingsOf(const Batch& batch,
                                                          const PieceOnGrate& piece);

/// The evidence near `at`, by three runs of the model. `cost` becomes minus the log likelihood.
[[nodiscard]] Evidence evidenceNear(const PieceModel& model, const PieceReadings& readings,
                                    const Pair& at, double& cost);

}  // namespace cinder::cook
