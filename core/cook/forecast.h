#pragma once

/// When each piece is done, how far it climbs in the rest, and how far the batch spreads.
///
/// A forecast starts from the fire, the start temperature and the thickness, and is fitted again,
/// from all readings at once, whenever one is entered. It runs on from what was last seen of a
/// piece (last_seen.h): no piece is due whose newest reading is below the target, and one that
/// reads the target is.
///
/// **A forecast never says safe.** No type here has a value for it: what comes out are instants and
/// temperatures with bands. Whether food may be served is a question for a thermometer at the
/// published minimum (doneness.h), and the answer is in the record, not here.

#include <memory>
#include <optional>

#include "cook/band.h"
#include "cook/last_seen.h"

namespace cinder::cook {

struct CarryOver {
    /// Middle of the piece. One-dimensional conduction climbs higher than roasts measured in
    /// kitchens do (published rises of oven roasts: 3 to 14 °C), so the band runs from the least
    /// published rise to a snug, warm box.
    Band<Temperature> peak;
    Instant peakAt;  ///< of the likely peak
    /// Where the piece would level out if it lost nothing: no rest climbs beyond it.
    Temperature limit;
};

struct PieceForecast {
    PieceNumber number;
    /// When the coldest place reaches the pull target. Nothing when the piece is off the grate, or
    /// when the fire as it is likeliest to be would not bring it there in four hours.
    std::optional<Band<Instant>> pull;
    std::optional<CarryOver> carryOver;  ///< from the likely pull, or the real one
};

/// Of the pieces still on the grate that have a forecast.
struct BatchSpread {
    Band<Instant> first;
    Band<Instant> last;
    Band<Duration> between;
};

struct BatchForecast {
    std::vector<PieceForecast> pieces;
    std::optional<BatchSpread> spread;
    /// The fire's flux against the belief, fitted: 1 is as believed.
    Band<double> fireFactor;
};

struct CurvePoint {
    Instant at;
    Band<Temperature> core;  ///< coldest place
};

struct TurningEffect {
    Duration interval;
    std::optional<Duration> toPull;  ///< since laying; nothing when not reached in four hours
    friend bool operator==(const TurningEffect&, const TurningEffect&) = default;
};

/// A batch with its readings fitted. Single-threaded, immutable once made.
class FittedBatch {
  public:
    /// Errors: those of PieceModel::make and readingsOf.
    [[nodiscard]] static Result<FittedBatch, CookError> fit(Batch batch);

    [[nodiscard]] BatchForecast forecast() const;
    /// The core of one piece on the grate from laying to `until`, a point every `every`. Errors:
    /// `OutOfRange` "piece" for a number that is not in the batch, "every" if not positive.
    [[nodiscard]] Result<std::vector<CurvePoint>, CookError> coreCurve(PieceNumber piece,
                                                                       Instant until,
                                                                       Duration every) const;
    /// Time to pull if the piece had been turned at each of `intervals` from the start. Errors:
    /// `OutOfRange` "piece", "interval" for one under 10 s.
    [[nodiscard]] Result<std::vector<TurningEffect>, CookError> turningEffect(
        PieceNumber piece, std::span<const Duration> intervals) const;

  private:
    struct Timing;
    FittedBatch() = default;
    void fitReadings();
    [[nodiscard]] const PieceModel* find(PieceNumber piece) const;
    /// `model` is one of `models_`.
    [[nodiscard]] LastSeen seenOf(const PieceModel& model) const;
    [[nodiscard]] Timing timing(std::size_t i) const;
    [[nodiscard]] std::optional<CarryOver> carryOver(std::size_t i, const AtPull& at) const;
    [[nodiscard]] double ownDeviation(std::size_t i, const AtPull& likely) const;
    [[nodiscard]] PieceForecast forecastPiece(std::size_t i, Timing& timed) const;
    [[nodiscard]] std::optional<BatchSpread> spreadOf(const std::vector<Timing>& timings) const;
    [[nodiscard]] bool sameCase(std::size_t i, std::size_t j) const;

    std::unique_ptr<const Batch> batch_;  // models point into it
    std::vector<PieceModel> models_;
    std::vector<PieceReadings> readings_;
    SharedFit fit_;
};

}  // namespace cinder::cook
