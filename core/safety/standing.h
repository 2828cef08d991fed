#pragma once

/// How a pan stands by its record: under which control it is, what is open, and what may become of
/// it. Only readings speak for food; a forecast never does. A record with a hole, or one that ran
/// over, cannot be mended by anything written later.
///
/// The rules, each at its limit (limits.h):
///  - hot and cold holding: readings no further apart than `HoldGap`; raw food that is still to be
///    cooked no further than `TimeControl`;
///  - a reading out of limit opens the actions the standard allows; it is closed by one of them and
///    by the reading that shows it worked, within `ReheatWithin` of the bad one, and food is never
///    longer than `TimeControl` between two good ones, all such times of a pan together;
///  - food under time control is served or discarded by its clock and never goes back;
///  - cooling is clocked from the last reading at or above `CoolStart`;
///  - a reading of a thermometer that failed its ice point before or after speaks for nothing.

#include <optional>
#include <span>
#include <vector>

#include "event/menu.h"
#include "safety/facts.h"
#include "safety/limits.h"

namespace cinder::safety {

/// What has to be known of a dish to judge its pans.
struct FoodRule {
    event::Food food = event::Food::Plant;
    /// Raw at first, and cooked on the site.
    bool isCookedHere = false;
    /// From when on there must be a record; absent: from its first reading on.
    std::optional<Instant> since;
    friend bool operator==(const FoodRule&, const FoodRule&) = default;
};

enum class Control : std::uint8_t {
    None,  ///< nothing on record yet
    Cold,
    Hot,
    Time,  ///< time alone
    Cooling,
    Discarded,
};

/// Why food cannot be kept or served any more, whatever is written later.
struct Lost {
    enum class Why : std::uint8_t {
        Gap,                ///< nobody measured for too long
        OutOfControl,       ///< out of limit for too long, or not put right in time
        TimeOver,           ///< the clock of time control ran out
        TooWarm,            ///< above the limit of the long time control, or of fresh food
        CoolingSlow,        ///< a stage of cooling was missed, or it warmed up again
        CookUnrecorded,     ///< handled as cooked, and nothing shows that it was
        CoolingUnrecorded,  ///< it was hot, is cold, and nothing shows how
        ReheatUnrecorded,   ///< it was cold, is hot, and nothing shows how
    };
    Why why = Why::Gap;
    Instant at;                    ///< from when on
    std::optional<EntryId> entry;  ///< the reading that showed it
    friend bool operator==(const Lost&, const Lost&) = default;
};

/// A reading out of limit that is not closed yet.
struct OpenReading {
    EntryId entry;
    Instant at;
    Purpose purpose = Purpose::HoldHot;
    Reading reading;
    std::vector<Action> allowed;
    std::optional<Action> taken;  ///< of the allowed ones
    Instant by;                   ///< the reading that closes it, or the food is lost
    friend bool operator==(const OpenReading&, const OpenReading&) = default;
};

struct TimeClock {
    TimeRule rule = TimeRule::Hot;
    Instant started;
    Instant discardAt;
    friend bool operator==(const TimeClock&, const TimeClock&) = default;
};

struct CoolingClock {
    CoolingRoute route = CoolingRoute::Cooked;
    Instant started;  ///< the last reading at or above the start
    bool hasPassedMiddle = false;
    std::optional<Instant> ended;
    Degree next = Degree::CoolMiddle;  ///< what must be shown next
    Instant by;                        ///< and by when
    friend bool operator==(const CoolingClock&, const CoolingClock&) = default;
};

/// What may become of a pan that is left over.
enum class Leftover : std::uint8_t { Keep, Cool, Discard };

struct Standing {
    Control control = Control::None;
    std::optional<Lost> lost;
    std::vector<OpenReading> open;  ///< by instant
    std::optional<TimeClock> time;
    std::optional<CoolingClock> cooling;
    bool isCooked = false;
    /// Cooked by the roast chart, so that the lower holding limit applies.
    bool isRoast = false;
    std::optional<Instant> lastMeasured;
    std::optional<Reading> lastReading;
    /// A reading must be on record by then, or the food is lost; absent when none is due.
    std::optional<Instant> measureBy;
    Leftover leftover = Leftover::Discard;
    bool mayServe = false;
    /// Of the open readings those without an action: the record cannot be signed off before each
    /// has one.
    std::vector<EntryId> withoutAction;
    friend bool operator==(const Standing&, const Standing&) = default;
};

/// How one pan stands at `now`. Entries in any order and of any pan; those later than `now` are not
/// looked at.
[[nodiscard]] Standing standingOf(const Pan& pan, const FoodRule& rule, const Limits& limits,
                                  std::span<const Entry> entries, Instant now);

/// Whether a reading is within its limit, all else apart: what the keypad shows at once. Cooling
/// readings have no limit of their own and are always within.
[[nodiscard]] bool isWithin(const FoodMeasured& measured, const FoodRule& rule,
                            const Limits& limits, bool isRoast = false);

/// The figure a purpose is held against; nothing for cooling.
[[nodiscard]] std::optional<Degree> limitOf(Purpose purpose, event::Food food,
                                            bool isRoast = false);

/// Whether food under this time control is lost as soon as it is above `Degree::TimeWarmest`.
[[nodiscard]] bool hasWarmest(TimeRule rule);

/// How warm or cold food must be when its time control starts, and how long that lasts.
[[nodiscard]] Degree startOf(TimeRule rule);
[[nodiscard]] Span spanOf(TimeRule rule);

/// Whether this can be the first heating of a sealed pack from an inspected plant (3-403.11(C)):
/// nothing cooked here, never hot before, and nothing but that heating open.
[[nodiscard]] bool mayHeatPacked(const Standing& standing, const FoodRule& rule);

/// Whether fresh things at room temperature can be meant by this food (3-501.19(B)(2)): cut produce
/// and sealed packs newly opened, never meat, poultry, fish or egg.
[[nodiscard]] bool mayBeFresh(event::Food food);
/// The time controls to offer for food that stands like this: hot or cold from that holding, and
/// fresh only while nothing is on record yet, because what was kept cold starts cold.
[[nodiscard]] bool mayLeaveUnder(TimeRule rule, const Standing& standing, event::Food food);

/// The pans of a dish that the record names, ascending; the dish as a whole when it names none.
[[nodiscard]] std::vector<Pan> pansOf(const DishId& dish, std::span<const Entry> entries);

}  // namespace cinder::safety
