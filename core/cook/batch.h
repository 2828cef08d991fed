#pragma once

/// What a forecast is made from: pieces on a grate, what was measured on them, and the fire.

#include <vector>

#include "cook/doneness.h"
#include "cook/fire.h"

namespace cinder::cook {

/// The number by which a piece is called on the grate map.
struct PieceNumber {
    int value = 0;
    friend bool operator==(const PieceNumber&, const PieceNumber&) = default;
};

/// Time a piece spends off the coals, on the cool side of the grate.
struct CoolSpan {
    Instant from;
    std::optional<Instant> until{};  ///< absent: it is still there
    friend bool operator==(const CoolSpan&, const CoolSpan&) = default;
};

struct PieceOnGrate {
    PieceNumber number;
    Length thickness;
    /// Relative standard deviation of `thickness` as the solver should use it: 0.04 for a piece
    /// measured at its thickest place, 0.08 for one only sorted into a class (from memory; pork
    /// loins of one plant vary by 0.108, J. Anim. Sci. 94(11), 4903).
    double thicknessSpread = 0.04;
    /// Edges let heat in too; without them the piece counts as a wide slab.
    std::optional<Length> width{};
    std::optional<Length> length{};
    Temperature start = Temperature::fromCelsius(5);
    Instant laid;
    std::vector<Instant> turns{};     ///< made so far, ascending
    std::vector<CoolSpan> cool{};     ///< ascending
    std::optional<Instant> pulled{};  ///< off the grate
};

struct ThicknessClass {
    Length thickness;
    Temperature start = Temperature::fromCelsius(5);
    int pieces = 1;
};

/// The pieces of a class laid at once, numbered from `first`.
[[nodiscard]] std::vector<PieceOnGrate> piecesOf(const ThicknessClass& kind, PieceNumber first,
                                                 Instant laid);

struct FireReading {
    Instant at;
    FireBelief belief;
};

struct ProbeReading {
    PieceNumber piece;
    Instant at;
    Length depth;  ///< of the tip below the face that was up
    Temperature reading;
};

/// What a probe in a piece can show: nothing in it is colder than it was laid, nor much hotter than
/// boiling while it is wet. Two and three kelvin for the thermometer and a piece that was not laid
/// equally warm (from memory).
struct ReadingRange {
    Temperature least;
    Temperature most;
    [[nodiscard]] bool holds(Temperature reading) const {
        return reading >= least && reading <= most;
    }
};
/// `start` of the piece when it was laid; without it no meat is colder than `kColdestMeat`.
[[nodiscard]] ReadingRange possibleReadings(std::optional<Temperature> start,
                                            Temperature boiling = Temperature::fromCelsius(100));
/// No meat is laid colder; a slip of the finger.
inline constexpr Temperature kColdestMeat = Temperature::fromCelsius(-5);

/// A cook's judgement by touch or look, weak evidence about the middle of the piece. It moves the
/// forecast a little; it never stands in for a thermometer.
struct Judgement {
    enum class Verdict { NotYet, Done };
    PieceNumber piece;
    Instant at;
    Verdict verdict = Verdict::NotYet;
};

struct RestPlace {
    Side handling;  ///< from grate to box: open air, wet face
    Duration handlingFor = std::chrono::minutes(3);
    Side box;
};
/// A warm insulated box: 10 W/m²K to 25 °C while it is carried, then 4 W/m²K to 50 °C; from memory.
[[nodiscard]] RestPlace insulatedBox();

struct Batch {
    /// At about 50 °C; `meatProperties` gives them from a composition.
    ThermalProperties food;
    std::vector<FireReading> fire;  ///< at least one, ascending
    Side air = airSide();
    Temperature boiling = Temperature::fromCelsius(100);
    Duration turnEvery = std::chrono::minutes(5);
    Temperature pullAt;
    RestPlace rest = insulatedBox();
    std::vector<PieceOnGrate> pieces;
    std::vector<ProbeReading> probes{};
    std::vector<Judgement> judgements{};
};

/// Properties at 50 °C with the conductivity measured meat has (`kMeasuredOverParallel`).
[[nodiscard]] Result<ThermalProperties, CookError> meatProperties(const Composition& food);

}  // namespace cinder::cook
