#pragma once

/// What is written into the food-safety record: one value for each thing a person did or saw.
/// Nothing is ever written over: a correction is a new fact that names the one it corrects, and
/// both are kept.

#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "base/id.h"
#include "base/time.h"
#include "safety/limits.h"
#include "safety/reading.h"

namespace cinder::safety {

using ThermometerId = Id<struct ThermometerTag>;

/// The name of an entry: the device that made it and its place in that device's chain. The same
/// two as those of the operation that carries it (journal/operation.h).
struct EntryId {
    DeviceId device;
    std::uint64_t sequence = 0;
    friend bool operator==(const EntryId&, const EntryId&) = default;
    friend bool operator<(const EntryId& a, const EntryId& b) {
        return a.device != b.device ? a.device < b.device : a.sequence < b.sequence;
    }
};

/// One pan of a dish by the crew's number; 0 is the dish as a whole, before it is in pans.
struct Pan {
    DishId dish;
    std::int32_t number = 0;
    friend bool operator==(const Pan&, const Pan&) = default;
    friend bool operator<(const Pan& a, const Pan& b) {
        return a.dish != b.dish ? a.dish < b.dish : a.number < b.number;
    }
};

/// What a reading is taken for; decides the limit it is held against.
enum class Purpose : std::uint8_t {
    ArriveCold,
    ArriveHot,
    Cook,
    Reheat,
    ReheatPacked,  ///< made and packed in an inspected plant
    HoldHot,
    HoldCold,
    Cooling,  ///< on the way down; held against the two stages, not against one figure
};

struct FoodMeasured {
    Pan pan;
    Purpose purpose = Purpose::HoldHot;
    Reading reading;
    ThermometerId thermometer;
    /// How long it was kept there, when that was watched. Absent: as long as the first row of the
    /// rule asks (15 or 17 s), which the entry says on its face.
    std::optional<Duration> held;
    /// The entry this one corrects, and why.
    std::optional<EntryId> corrects;
    std::string reason;
    Instant at;
    /// The number of the pan it came out of, on the first entry of a new one: its record goes on.
    std::optional<std::int32_t> from{};
    friend bool operator==(const FoodMeasured&, const FoodMeasured&) = default;
};

/// What the standard lets a crew do about a reading out of limit.
enum class Action : std::uint8_t {
    CookOn,   ///< back to the heat until the thermometer shows the minimum
    Reheat,   ///< to the reheating temperature in all parts, within two hours
    Chill,    ///< into ice or the cold box until it is cold again
    Discard,  ///< or send back at the door
};

struct ActionTaken {
    EntryId entry;  ///< the reading out of limit
    Action action = Action::Discard;
    Instant at;
    friend bool operator==(const ActionTaken&, const ActionTaken&) = default;
};

/// Time alone as the control, FDA Food Code 3-501.19.
enum class TimeRule : std::uint8_t {
    Hot,      ///< 4 h from hot holding, (B)
    Cold,     ///< 4 h from cold holding, (B)
    Fresh,    ///< 4 h, freshly cut produce or a newly opened sealed pack, (B)(2)
    ColdLong  ///< 6 h from cold holding, never above 21 degC, (C)
};

/// The food leaves temperature control; its clock runs from here to the discard and cannot be
/// started again.
struct ControlLeft {
    Pan pan;
    TimeRule rule = TimeRule::Hot;
    Reading reading;
    ThermometerId thermometer;
    Instant at;
    std::optional<std::int32_t> from{};  ///< as of `FoodMeasured`
    friend bool operator==(const ControlLeft&, const ControlLeft&) = default;
};

enum class CoolingRoute : std::uint8_t {
    Cooked,   ///< in two stages, 3-501.14(A)
    Ambient,  ///< made of things at room temperature, 3-501.14(B)
};

struct CoolingBegun {
    Pan pan;
    CoolingRoute route = CoolingRoute::Cooked;
    Instant at;
    friend bool operator==(const CoolingBegun&, const CoolingBegun&) = default;
};

struct PanDiscarded {
    Pan pan;
    Instant at;
    friend bool operator==(const PanDiscarded&, const PanDiscarded&) = default;
};

/// Somebody decides at strike that a pan is kept. Says nothing by itself: whether it may be kept
/// is told by the record.
struct PanKept {
    Pan pan;
    Instant at;
    friend bool operator==(const PanKept&, const PanKept&) = default;
};

/// What a thermometer shows in ice and water at rest.
struct ThermometerTested {
    ThermometerId thermometer;
    Reading reading;
    Instant at;
    friend bool operator==(const ThermometerTested&, const ThermometerTested&) = default;
};

/// What is asked before a fire is lit.
enum class FireItem : std::uint8_t { Extinguisher, Clearance, OpenAir };

struct FireItemReady {
    FireItem item = FireItem::Extinguisher;
    Instant at;
    friend bool operator==(const FireItemReady&, const FireItemReady&) = default;
};

struct FireItemSkipped {
    FireItem item = FireItem::Extinguisher;
    std::string reason;  ///< "" when nobody gave one
    Instant at;
    friend bool operator==(const FireItemSkipped&, const FireItemSkipped&) = default;
};

struct LocalRulesNamed {
    LocalRules rules;
    Instant at;
    friend bool operator==(const LocalRulesNamed&, const LocalRulesNamed&) = default;
};

/// The person in charge signs the day off.
struct RecordSigned {
    std::string name;
    std::string certificate;  ///< of the food protection manager; "" when there is none
    Instant at;
    friend bool operator==(const RecordSigned&, const RecordSigned&) = default;
};

using Fact =
    std::variant<FoodMeasured, ActionTaken, ControlLeft, CoolingBegun, PanDiscarded, PanKept,
                 ThermometerTested, FireItemReady, FireItemSkipped, LocalRulesNamed, RecordSigned>;

/// When it happened.
[[nodiscard]] Instant instantOf(const Fact& fact);

/// A fact with who wrote it down and when.
struct Entry {
    EntryId id;
    Instant written;  ///< by the device's clock
    std::optional<PersonId> person;
    /// A slip of the finger, taken back within a minute: shown, never counted.
    bool isTakenBack = false;
    Fact fact;
    friend bool operator==(const Entry&, const Entry&) = default;
};

}  // namespace cinder::safety
