#pragma once

/// What a person did, as an immutable value.
///
/// The journal is the only truth: every touch becomes an operation, is stored durably, and only
/// then shown. State is a fold over the operations in clock order. Undo is an operation. Two
/// devices merge by taking the union of their operations, so an operation never says "one more"
/// (which counted twice would be wrong) but always which one: "turn 3 of lamb batch 1".

#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "base/clock.h"
#include "base/id.h"
#include "base/time.h"
#include "journal/debrief_facts.h"
#include "journal/list_facts.h"
#include "journal/piece_facts.h"
#include "journal/service_facts.h"
#include "safety/facts.h"

namespace cinder::journal {

/// Hybrid logical clock: wall time as long as it moves on, a counter when it does not. Total order
/// together with the device. Source: Kulkarni, Demirbas et al., "Logical Physical Clocks and
/// Consistent Snapshots in Globally Distributed Databases", OPODIS 2014, figure 5.
struct Stamp {
    Instant wall;
    std::uint32_t counter = 0;
    friend bool operator==(const Stamp&, const Stamp&) = default;
    // Written out because libc++ 14 has no <=> for time points.
    friend bool operator<(const Stamp& a, const Stamp& b) {
        return a.wall != b.wall ? a.wall < b.wall : a.counter < b.counter;
    }
};

/// The name of an operation everywhere: the device that made it and its place in that device's
/// chain for one event, from 1.
struct OperationId {
    DeviceId device;
    std::uint64_t sequence = 0;
    friend bool operator==(const OperationId&, const OperationId&) = default;
    friend bool operator<(const OperationId& a, const OperationId& b) {
        return a.device != b.device ? a.device < b.device : a.sequence < b.sequence;
    }
};

// --- the kinds -----------------------------------------------------------------------------------
// `at` is when it happened in the event's time, which may be earlier than when it was written.

/// The event as described, whole, as its JSON document. Sent again after every edit.
struct EventDescribed {
    std::string document;
    friend bool operator==(const EventDescribed&, const EventDescribed&) = default;
};
/// The event as it is being written, whole; it may lack a menu and break rules (event/draft.h).
/// Written at every edit, so that nothing a person typed can be lost, and set aside by the next
/// EventDescribed. `field` is the JSON Pointer of what was changed, "" for all of it.
struct EventDrafted {
    std::string document;
    std::string field;
    friend bool operator==(const EventDrafted&, const EventDrafted&) = default;
};
/// A plan for everybody: problem and schedule together, as one JSON document, so that no other
/// device has to search or to build and could come to another result.
struct PlanPublished {
    std::string document;
    friend bool operator==(const PlanPublished&, const PlanPublished&) = default;
};
struct TaskStarted {
    TaskId task;
    Instant at;
    friend bool operator==(const TaskStarted&, const TaskStarted&) = default;
};
struct TaskFinished {
    TaskId task;
    Instant at;
    friend bool operator==(const TaskFinished&, const TaskFinished&) = default;
};
struct TaskSkipped {
    TaskId task;
    Instant at;
    friend bool operator==(const TaskSkipped&, const TaskSkipped&) = default;
};
/// A dish is left out whole: `tasks` is what was still to be done for it.
struct DishLeftOut {
    DishId dish;
    std::vector<TaskId> tasks;
    Instant at;
    friend bool operator==(const DishLeftOut&, const DishLeftOut&) = default;
};
/// Who of the crew is there from now on, and can do what: those who came, those who can do other
/// things than was said, and those who have gone. The others stay as they are; of each person the
/// last word counts.
struct CrewChanged {
    struct Member {
        PersonId person;
        std::string name;
        std::vector<SkillId> skills;
        bool isHere = true;
        friend bool operator==(const Member&, const Member&) = default;
    };
    std::vector<Member> members;
    Instant at;
    friend bool operator==(const CrewChanged&, const CrewChanged&) = default;
};
/// One line of a task's checklist, from 0.
struct LineTicked {
    TaskId task;
    std::int32_t line = 0;
    Instant at;
    friend bool operator==(const LineTicked&, const LineTicked&) = default;
};
/// One turn of a batch on the grate, from 1.
struct Turned {
    TaskId task;
    std::int32_t turn = 0;
    Instant at;
    friend bool operator==(const Turned&, const Turned&) = default;
};
/// The client moves the bell.
struct ServeTimeMoved {
    Instant serve;
    Instant at;
    friend bool operator==(const ServeTimeMoved&, const ServeTimeMoved&) = default;
};
/// Stops one alarm from ringing on every device. `alarm` is the alarm's own name, see live/alarm.h.
struct AlarmAcknowledged {
    std::string alarm;
    Instant at;
    friend bool operator==(const AlarmAcknowledged&, const AlarmAcknowledged&) = default;
};
/// A temperature read at a check of a task, in thousandths of a degree Celsius. No longer written:
/// the food record asks for it (safety::FoodMeasured).
struct TemperatureRead {
    TaskId task;
    std::int64_t milliCelsius = 0;
    Instant at;
    friend bool operator==(const TemperatureRead&, const TemperatureRead&) = default;
};
/// A rehearsal's clock is set: speed changed, or started. See RehearsalClock.
struct RehearsalSet {
    RehearsalClock::Anchor anchor;
    friend bool operator==(const RehearsalSet&, const RehearsalSet&) = default;
};
/// The named operation counts as if it had never been. Undoing an undo brings it back.
struct Undone {
    OperationId operation;
    friend bool operator==(const Undone&, const Undone&) = default;
};
/// A person said that the device's clock, which showed something else than was written, is right:
/// `at` is what it showed. What was written before says nothing about the time any more.
struct ClockFollowed {
    Instant at;
    friend bool operator==(const ClockFollowed&, const ClockFollowed&) = default;
};
/// A kind this version does not know, kept word for word and passed on.
struct Unknown {
    std::string kind;
    std::string body;
    friend bool operator==(const Unknown&, const Unknown&) = default;
};

using Body =
    std::variant<EventDescribed, PlanPublished, TaskStarted, TaskFinished, TaskSkipped, LineTicked,
                 Turned, ServeTimeMoved, AlarmAcknowledged, TemperatureRead, RehearsalSet, Undone,
                 PiecesLaid, HandHeld, GrateRead, PieceRead, PieceJudged, PiecesPulled, PiecesMoved,
                 CoalAdded, safety::Fact, FigureSet, GuestsSet, LineOrdered, Packed, EventDrafted,
                 GuestsPassed, LastGuestPassed, PanLevelTapped, NextPanSet, TaskInterrupted,
                 LessonAnswered, DishLeftOut, CrewChanged, ClockFollowed, Unknown>;

struct Operation {
    EventId event;
    OperationId id;
    Stamp stamp;
    /// Who did it, when the device knows.
    std::optional<PersonId> person;
    std::int32_t version = 1;  ///< of the body's schema
    Body body;
    friend bool operator==(const Operation&, const Operation&) = default;
};

/// The order of the fold: stamp, then device, then sequence.
[[nodiscard]] bool comesBefore(const Operation& a, const Operation& b);

}  // namespace cinder::journal
