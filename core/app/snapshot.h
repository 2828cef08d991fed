#pragma once

/// What the boards show at one instant: finished values, no rules left to apply. The view models
/// turn them into words; the command line prints them.

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "app/fire_cards.h"
#include "app/food_cards.h"
#include "app/list_cards.h"
#include "app/service_cards.h"
#include "base/local_text.h"
#include "base/units.h"
#include "live/alarm.h"
#include "live/outlook.h"
#include "plan/problem.h"

namespace cinder::app {

using live::TaskState;

struct ChecklistLine {
    LocalText text;
    bool isTicked = false;
    friend bool operator==(const ChecklistLine&, const ChecklistLine&) = default;
};

/// One task as every board shows it: how it stands, with its names and what was said about it.
struct TaskCard : live::TaskOutlook {
    TaskId id;
    LocalText name;
    std::optional<LocalText> dish;
    std::optional<std::int32_t> batch;
    std::optional<std::int32_t> batchCount;
    plan::TaskKind kind = plan::TaskKind::SetUp;
    StationId station;
    LocalText stationName;
    bool canComeBack = false;      ///< somebody left it out, and can say otherwise
    std::vector<PersonId> people;  ///< planned, in order of first work
    /// How often it held up the bell in the simulation, 0 to 1.
    double criticality = 0;

    std::vector<ChecklistLine> checklist;
    /// The pieces of hands-on work as planned, for the run-sheet chart.
    struct Work {
        Instant start;
        Instant finish;
        std::vector<PersonId> people;
        plan::HandsOn::Act act = plan::HandsOn::Act::Work;
        friend bool operator==(const Work&, const Work&) = default;
    };
    std::vector<Work> work;
    friend bool operator==(const TaskCard&, const TaskCard&) = default;
};

struct PersonCard {
    PersonId id;
    std::string name;
    /// What this person does, or should be doing, now; and what comes after.
    std::optional<TaskId> now;
    std::optional<TaskId> next;
    std::optional<Instant> nextAt;
    bool isHere = true;  ///< false: has gone, and does nothing more
    friend bool operator==(const PersonCard&, const PersonCard&) = default;
};

/// The last touch that still stands, as long as it can be taken back.
struct UndoOffer {
    enum class What : std::uint8_t {
        Start,
        Finish,
        Skip,
        LeaveOut,  ///< a dish, whole; `task` is one of its tasks
        Crew,      ///< who is there
        Tick,
        Turn,
        Reading,
        ServeTime,
        Acknowledge,
        Undo,
        Lay,        ///< what was measured when a batch was laid
        FireTest,   ///< a hand test or a grate thermometer
        PieceRead,  ///< a probe; `number` is the piece
        Judge,      ///< done or not yet; `number` is the piece
        Pull,       ///< `number` is the piece, or how many when there are several
        Move,       ///< the same
        Coal,
        Record,  ///< an entry of the food-safety record
        Figure,  ///< an own value, or the app's own again
        Guests,
        LineOrder,
        Packed,  ///< counted into the van, or home
        Placed,  ///< on the line
        Passed,  ///< the counter; `number` is how many are through
        LastGuest,
        PanLevel,  ///< `number` is the percentage left
        NextPan,   ///< `number` is the pan
        Interrupted,
        Lesson,
        Plan,  ///< a new plan for the rest of the day
    };
    What what = What::Start;
    std::optional<TaskId> task;
    std::optional<std::int32_t> number;  ///< turn, or checklist line from 1
    Instant until;
    friend bool operator==(const UndoOffer&, const UndoOffer&) = default;
};

/// A chance that something is not as the crew thinks; shown, never acted on.
struct Notice {
    enum class What : std::uint8_t {
        ClockJumped,   ///< the wall clock was set by `amount`
        ReadOnly,      ///< the journal cannot be written; nothing is lost, nothing is added
        DiskFull,      ///< the last touch could not be saved and was not shown as done
        MaximumLag,    ///< `task` will wait longer than it may
        OtherCrew,     ///< the plan was made for others than are there
        NewerVersion,  ///< the event was made by a newer app and is shown read-only
    };
    What what = What::ClockJumped;
    std::optional<TaskId> task;
    Duration amount{0};
    friend bool operator==(const Notice&, const Notice&) = default;
};

struct Snapshot {
    EventId event;
    LocalText name;
    UtcOffset offset{0};
    Instant now;
    Instant serve;          ///< the bell
    Instant promisedServe;  ///< as first agreed
    Instant arrival;
    std::optional<Instant> ready;   ///< projected: everything that must be out is out
    Duration lateness{0};           ///< ready - serve; negative is spare time
    std::optional<TaskId> weakest;  ///< the unfinished task with the least slack
    /// What holds up the bell, one after the other.
    std::vector<TaskId> criticalChain;
    /// The chance that everything is out by the bell, 0 to 1, and what planning the rest a quarter
    /// of an hour earlier would make it; a simulation at most a minute old.
    std::optional<double> onTime;
    std::optional<double> onTimeQuarterHourEarlier;
    /// On four days of five everything is out by then.
    std::optional<Instant> ready80;
    bool isRehearsal = false;
    int speed = 1;
    bool isReadOnly = false;

    std::vector<StationId> stations;
    std::vector<LocalText> stationNames;
    std::vector<TaskCard> tasks;  ///< by start
    std::vector<PersonCard> people;
    FireCards fire;                   ///< grates, batches, pieces, coals, pans
    FoodCards food;                   ///< pans, checks, clocks, what was asked before the fire
    std::vector<StandCard> line;      ///< vessels in serving order
    ServiceCards service;             ///< guests along the line, pans
    std::vector<live::Timer> timers;  ///< by due instant, acknowledged ones included
    std::optional<UndoOffer> undo;
    std::vector<Notice> notices;
    friend bool operator==(const Snapshot&, const Snapshot&) = default;
};

}  // namespace cinder::app
