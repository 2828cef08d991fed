#pragma once

/// What the Fire board shows: the grates to scale with every piece on them, the forecast of each
/// batch, the coals and the pans. Finished values, no rules left to apply.
///
/// **No forecast says safe.** `minimum` is the published minimum a thermometer has to show; it is
/// shown wherever `toPull` is.

#include <optional>
#include <string>
#include <vector>

#include "base/local_text.h"
#include "cook/coal.h"
#include "cook/coal_bed.h"
#include "cook/doneness.h"
#include "cook/forecast.h"
#include "cook/lethality.h"
#include "event/menu.h"
#include "grate/outline.h"

namespace cinder::app {

enum class PieceState : std::uint8_t {
    ToCome,      ///< not on the grate yet
    OverCoals,   ///< cooking
    OnCoolSide,  ///< moved off the coals, still warming
    Due,         ///< should be pulled by now
    Pulled,
};

struct PieceCard {
    std::int32_t number = 0;
    std::int32_t kind = 0;  ///< thickness class, index into the batch's kinds
    PieceState state = PieceState::ToCome;
    grate::Polygon outline;  ///< on the whole grate, from its beginning
    grate::Point centre;     ///< of its box
    std::int32_t angle = 0;  ///< where the narrow end points, see grate::angleDegrees
    /// From now to the pull target, an 80 % band, never below zero; nothing when it is pulled, not
    /// on yet, or the fire will not bring it there.
    std::optional<cook::Band<Duration>> toPull;
    /// The highest its middle climbs after the pull; by the forecast only.
    std::optional<cook::Band<Temperature>> peak;
    std::optional<Temperature> lastReading;
    std::optional<Instant> lastReadAt;
    std::optional<bool> lastJudgement;  ///< true: looked done
    /// What the readings of a piece of whole meat have done by the published roast table, as time
    /// at its 60 °C row. Information only, with cook::kLethalityWarning; nothing under two
    /// readings.
    std::optional<cook::Lethality> roast;
    std::optional<Instant> pulled;
    std::int32_t pan = 0;  ///< where it was pulled into
    friend bool operator==(const PieceCard&, const PieceCard&) = default;
};

/// One thickness class of a batch, with the picture of its core over time.
struct KindCard {
    LocalText name;  ///< empty when the dish has no classes
    Length thickness;
    std::int32_t pieces = 0;
    std::int32_t pulled = 0;
    std::optional<cook::Band<Duration>> toPull;
    /// The piece whose core is drawn: the one with most readings.
    std::optional<std::int32_t> drawnPiece;
    struct CurvePoint {
        Instant at;
        cook::Band<Temperature> core;
        friend bool operator==(const CurvePoint&, const CurvePoint&) = default;
    };
    std::vector<CurvePoint> curve;
    /// Of the drawn piece: turned twice as often, as the method says, half as often.
    std::vector<cook::TurningEffect> turning;
    struct Reading {
        Instant at;
        Temperature shown;
        friend bool operator==(const Reading&, const Reading&) = default;
    };
    std::vector<Reading> readings;  ///< of the drawn piece
    friend bool operator==(const KindCard&, const KindCard&) = default;
};

/// Why there is no forecast: what has to be told first, or why the model has none.
struct MissingFacts {
    bool fire = false;       ///< hand test or grate thermometer
    bool start = false;      ///< start temperature of the meat
    bool thickness = false;  ///< thickness classes of the dish
    bool notMeat = false;    ///< no forecast for this kind of food
    /// The field the model cannot go by ("start"), and how; nothing while it can.
    std::optional<cook::CookError> refused{};
    bool isNeverReached = false;  ///< by the model no piece gets to its target in four hours
    [[nodiscard]] bool any() const {
        return fire || start || thickness || notMeat || refused || isNeverReached;
    }
    friend bool operator==(const MissingFacts&, const MissingFacts&) = default;
};

struct BatchCard {
    TaskId task;
    DishId dish;
    LocalText dishName;
    ResourceId grate;
    bool isLaid = false;
    bool isOver = false;
    /// True: `toPull` is forecast from the fire. False: it is the event's estimate.
    bool isForecast = false;
    MissingFacts missing;
    std::optional<Instant> laid;
    std::optional<Temperature> startTemperature;
    Temperature pullAt;
    /// The minimum in force, for meat: the published one or a stricter local one;
    /// `isBelowMinimum` when the target lies below it.
    std::optional<Temperature> minimum;
    Duration minimumHold{0};
    std::string minimumSource;  ///< where it was published, after whose stricter rule it is
    bool isMinimumLocal = false;
    bool isBelowMinimum = false;
    std::vector<PieceCard> pieces;  ///< by number
    std::vector<KindCard> kinds;
    /// From the first to the last piece, while two or more are on the grate.
    std::optional<cook::Band<Duration>> spread;
    /// The fire against what the hand told: 1 is as felt.
    std::optional<cook::Band<double>> fireFactor;
    std::int32_t readingsSetAside = 0;
    friend bool operator==(const BatchCard&, const BatchCard&) = default;
};

struct CoalCard {
    bool isReady = false;
    std::optional<Instant> ready;              ///< actual or projected
    std::optional<cook::Band<Duration>> left;  ///< until half the heat is gone, never below zero
    std::optional<Instant> topUpBy;
    struct HandTest {
        Instant at;
        Duration held{0};
        std::optional<Temperature> low;  ///< what cooks say it means, as a grate temperature
        std::optional<Temperature> high;
        friend bool operator==(const HandTest&, const HandTest&) = default;
    };
    std::vector<HandTest> handTests;  ///< ascending
    struct Reading {
        Instant at;
        Temperature shown;
        friend bool operator==(const Reading&, const Reading&) = default;
    };
    std::vector<Reading> thermometer;  ///< ascending
    std::vector<std::pair<Instant, Mass>> added;
    /// To load for all that is planned: by published heating values, by depth of the bed as cooks
    /// do it, the larger of the two, and bags of `bag`.
    struct Need {
        cook::Band<Mass> byHeat;
        Mass byDepth;
        Mass load;
        std::int32_t bags = 0;
        Mass bag;
        friend bool operator==(const Need&, const Need&) = default;
    };
    std::optional<Need> need;
    friend bool operator==(const CoalCard&, const CoalCard&) = default;
};

struct GrateCard {
    ResourceId id;
    LocalText name;
    Length length;
    Length width;
    Length coolSide;              ///< the last of the length
    std::vector<TaskId> batches;  ///< lying on it now, by where they begin
    CoalCard coal;
    friend bool operator==(const GrateCard&, const GrateCard&) = default;
};

/// One hotel pan as it fills.
struct PanCard {
    std::int32_t number = 0;
    DishId dish;
    LocalText dishName;
    std::int32_t pulled = 0;  ///< pieces in it
    std::int32_t of = 0;      ///< pieces of the batches that fill it
    Instant first;            ///< the first piece came off
    Instant last;
    friend bool operator==(const PanCard&, const PanCard&) = default;
};

struct FireCards {
    std::vector<GrateCard> grates;   ///< as in the kit
    std::vector<BatchCard> batches;  ///< those laid by start, then those to come
    std::vector<PanCard> pans;       ///< by number, then dish

    [[nodiscard]] const BatchCard* find(const TaskId& task) const;
    friend bool operator==(const FireCards&, const FireCards&) = default;
};

}  // namespace cinder::app
