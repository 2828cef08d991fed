#pragma once

/// What the fire will do with what lies on it: the forecast of every batch from the event's method
/// and the recorded facts. It depends on facts alone and not on the present instant, so it is made
/// once when a fact arrives and kept.
///
/// **A forecast never says safe.** Instants and temperatures with bands come out; whether food may
/// be served is a question for a thermometer at the published minimum, shown beside.

#include "cook/doneness.h"
#include "cook/forecast.h"
#include "live/on_grate.h"

namespace cinder::live {

/// Why there is no forecast: what has to be told first, or why the model has none. The event's
/// estimate stands then.
struct Missing {
    bool fire = false;       ///< a hand test or a grate thermometer
    bool start = false;      ///< the temperature of the meat when it was laid
    bool thickness = false;  ///< no thickness classes
    bool notMeat = false;    ///< the model knows meat and fish only
    /// Everything was told, and the model cannot go by it: the field it stumbles over.
    std::optional<cook::CookError> refused{};
    /// By the model no piece gets to its target in four hours.
    bool isNeverReached = false;
    [[nodiscard]] bool any() const {
        return fire || start || thickness || notMeat || refused || isNeverReached;
    }
    friend bool operator==(const Missing&, const Missing&) = default;
};

struct PieceForecast {
    std::int32_t number = 0;
    std::int32_t kind = 0;
    /// When it reaches the pull target: by the forecast, else by the event's estimate once the
    /// batch is on. Nothing when it is off the grate or the fire will not bring it there.
    std::optional<cook::Band<Instant>> pull;
    std::optional<cook::CarryOver> carryOver;  ///< by the forecast only
    bool isOnCoolSide = false;
    std::optional<Instant> pulled;
    std::int32_t pan = 0;
    std::optional<Temperature> lastReading;
    std::optional<Instant> lastReadAt;
    std::optional<bool> lastJudgement;
};

/// The core of one thickness class over time, for the picture: of its piece with the most readings,
/// else of its first one.
struct KindForecast {
    std::int32_t kind = 0;
    std::int32_t pieces = 0;
    std::int32_t pulled = 0;
    std::optional<cook::Band<Instant>> pull;  ///< of a piece of the class still on the grate
    std::optional<std::int32_t> drawnPiece;
    std::vector<cook::CurvePoint> curve;
    /// What the drawn piece would take from laying to its pull turned twice as often, as the method
    /// says, and half as often; empty without a forecast or for a method that does not turn.
    std::vector<cook::TurningEffect> turning;
};

struct BatchForecast {
    OnGrate batch;
    bool isForecast = false;  ///< false: the instants are the event's estimate
    Missing missing;
    std::optional<Instant> laid;
    std::optional<Instant> over;        ///< the last piece is off, or the batch was finished
    Length begin;                       ///< where the batch begins on its grate
    std::vector<PieceForecast> pieces;  ///< by number
    std::vector<KindForecast> kinds;
    std::optional<cook::BatchSpread> spread;
    cook::Band<double> fireFactor{1, 1, 1};  ///< the fire against what was believed
    Temperature pullAt;
    std::optional<cook::SafeMinimum> minimum;  ///< published; nothing for what is no meat
    /// Readings that no piece can have given, left out: before it was laid, or beside it.
    std::int32_t readingsSetAside = 0;
    /// From laying to the last pull and the time to take off: what the projection and the chance of
    /// being on time go by.
    std::optional<cook::Band<Duration>> lasts;

    /// The next piece to pull, by the likely instant; nothing when none is forecast.
    [[nodiscard]] std::optional<Instant> nextPull() const;
    /// The last piece to pull.
    [[nodiscard]] std::optional<Instant> lastPull() const;
};

struct FireForecast {
    std::vector<BatchForecast> batches;  ///< in the order of onGrates()

    [[nodiscard]] const BatchForecast* find(const TaskId& task) const;
};

/// The forecast of the day. What `before`, the forecast of `dayBefore`, already knows of a batch
/// about which nothing new was said is taken over. Milliseconds per batch with new facts.
[[nodiscard]] FireForecast forecastFire(const Day& day, const Day* dayBefore = nullptr,
                                        const FireForecast* before = nullptr);

}  // namespace cinder::live
