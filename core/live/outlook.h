#pragma once

/// What follows from the day at one instant: states, projections, timers, who does what now and
/// next. Pure: the same day and the same instant give the same outlook on every device and after
/// every restart.

#include <optional>
#include <vector>

#include "live/day.h"
#include "live/fire_forecast.h"
#include "live/progress.h"
#include "plan/dispatch.h"

namespace cinder::live {

enum class TaskState : std::uint8_t {
    Waiting,  ///< something before it is not done
    Ready,    ///< may begin
    Running,
    Over,  ///< time is up, waiting for a person to say so (coals, a batch to pull)
    Done,
    Skipped,
};

struct TaskOutlook {
    TaskState state = TaskState::Waiting;
    Instant plannedStart;  ///< moved with the bell until it has begun
    Instant plannedFinish;
    Instant start;   ///< actual, or projected
    Instant finish;  ///< actual, or projected
    /// The same, but of what runs over its time: when it should have been, which stands still.
    Instant expectedFinish;
    Instant latestStart;
    Duration slack{0};
    bool isLate = false;  ///< should have begun, or ended, by now
    bool isCritical = false;
    /// Tended work on the grate: how many turns are done, of how many, and when the next is due.
    std::int32_t turnsDone = 0;
    std::int32_t turnCount = 0;
    std::optional<Instant> nextTurn;
    friend bool operator==(const TaskOutlook&, const TaskOutlook&) = default;
};

/// What one person does, or should be doing, and what comes after; indexes into the sheet's tasks.
struct PersonOutlook {
    std::optional<plan::TaskIndex> now;
    std::optional<plan::TaskIndex> next;
    std::optional<Instant> nextAt;
    friend bool operator==(const PersonOutlook&, const PersonOutlook&) = default;
};

/// What a task left behind will wait longer than it may.
struct Overdue {
    plan::TaskIndex task = 0;
    Duration by{0};
    friend bool operator==(const Overdue&, const Overdue&) = default;
};

struct Outlook {
    std::vector<TaskOutlook> tasks;     ///< in the order of the sheet
    std::vector<PersonOutlook> people;  ///< in the order of the sheet
    std::vector<Timer> timers;          ///< by due instant, then name
    std::vector<Overdue> overdue;       ///< by task, the longest for each
    Instant ready;                      ///< everything that must be out is out
    Duration lateness{0};               ///< ready - serve
    /// The unfinished task with the least slack before the bell.
    std::optional<plan::TaskIndex> weakest;
    /// What holds up the bell, one after the other; see plan::Dispatch::criticalChain.
    std::vector<plan::TaskIndex> criticalChain;
    friend bool operator==(const Outlook&, const Outlook&) = default;
};

/// `day.sheet` must be there and `dispatch` made for it. Some tens of microseconds for a day. With
/// `fire`, the forecast of the same day, a batch on the grate lasts as long as the forecast says,
/// and everything after it moves.
[[nodiscard]] Outlook lookAt(const Day& day, const plan::Dispatch& dispatch, Instant now,
                             const FireForecast* fire = nullptr);

/// How sure the bell is, by simulation of what is still to be done.
struct Chance {
    Instant at;         ///< when it was reckoned
    double onTime = 0;  ///< everything is out by the bell, 0 to 1
    Instant ready80;    ///< on four days of five everything is out by then
    /// `onTime` had everything that has not begun been planned a quarter of an hour earlier.
    double onTimeQuarterHourEarlier = 0;
    /// Per task of the sheet: how often it held up the bell, 0 to 1.
    std::vector<double> criticality;
    friend bool operator==(const Chance&, const Chance&) = default;
};

/// As `lookAt`. Some milliseconds: asked for when something was done and once a minute, not at
/// every look.
[[nodiscard]] Chance chanceAt(const Day& day, const plan::Dispatch& dispatch, Instant now,
                              const FireForecast* fire = nullptr);

/// What the parts of the outlook are computed from; internal to core/live.
struct Situation {
    const Day& day;
    const RunSheet& sheet;
    Instant now;
    Instant serve;
    std::vector<Progress> progress;
    /// From now on: nothing that has not begun begins before now.
    std::vector<plan::Projected> projected;
    /// As if everybody began on the first possible moment: does not move as time passes.
    std::vector<plan::Projected> undisturbed;
    std::vector<TaskOutlook> tasks;
    const FireForecast* fire = nullptr;

    /// The forecast of a batch on the grate; null when there is none.
    [[nodiscard]] const BatchForecast* forecastOf(std::size_t task) const;
    /// When a running task asks for hands at its end: the next piece is due by the forecast, or
    /// its usual time is over.
    [[nodiscard]] Instant due(std::size_t task) const;
    /// When its last piece is due.
    [[nodiscard]] Instant over(std::size_t task) const;
    [[nodiscard]] Instant instant(Duration fromPlannedBell) const {
        return sheet.bell + fromPlannedBell;
    }
};

/// Nothing is projected yet. `day` must outlive what comes back.
[[nodiscard]] Situation situationAt(const Day& day, Instant now, const FireForecast* fire);
/// What is known of each task, from the sheet's bell.
[[nodiscard]] std::vector<plan::Actual> actualsOf(const Situation& situation);
/// How long each task lasts: as planned, unless the fire says otherwise. Empty when it says
/// nothing.
[[nodiscard]] std::vector<Duration> durationsOf(const Situation& situation);

/// When the call of that name was silenced; nothing when it is due later than that: what was put
/// off rings again.
[[nodiscard]] std::optional<Instant> heardBy(const Day& day, const std::string& name, Instant due);

/// The timers of all tasks (live/timers.cpp) and what each person does (live/people.cpp).
[[nodiscard]] std::vector<Timer> timersOf(const Situation& situation);
[[nodiscard]] std::vector<PersonOutlook> peopleOf(const Situation& situation);

}  // namespace cinder::live
