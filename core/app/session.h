#pragma once

/// The one door to the core: open the store, apply what a person did, look at the day. View models
/// and the command line go through here and nowhere else. Single-threaded; long searches are
/// handed out as values to run elsewhere (`planningProblem`, `publishPlan`).

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "app/snapshot.h"
#include "base/clock.h"
#include "base/result.h"
#include "event/event.h"
#include "event/fault.h"
#include "journal/operation.h"
#include "journal/store.h"
#include "live/day.h"
#include "live/remaining.h"
#include "plan/planner.h"

namespace cinder::app {

/// What the person sees when a touch could not be taken.
struct Refusal {
    enum class Why {
        NoEvent,      ///< no event is open
        UnknownTask,  ///< the plan has no such task
        NotNow,       ///< already done, already undone, not running
        ReadOnly,     ///< the store, or the event, cannot be written
        NotSaved,     ///< the disk is full or failed; nothing was shown as done
        BadEvent,     ///< the document did not validate
        NoPlan,       ///< the planner found none
    };
    Why why = Why::NotNow;
    std::string detail;                               ///< for the log and the command line
    event::Faults faults;                             ///< for BadEvent: every fault, field by field
    std::optional<plan::NoPlan> noPlan;               ///< for NoPlan, when a search was made
    std::optional<journal::StoreError::Why> storage;  ///< for NotSaved and ReadOnly, when known
};

/// One plain English sentence for logs and the command line.
[[nodiscard]] std::string describe(const Refusal& refusal);

/// One line of the list of events.
struct EventEntry {
    EventId id;
    LocalText name;
    Instant serve;
    UtcOffset offset{0};
    bool isRehearsal = false;
    friend bool operator==(const EventEntry&, const EventEntry&) = default;
};

class Session {
  public:
    /// `store` and `clock` must outlive the session.
    Session(journal::Store& store, const Clock& clock);
    ~Session();

    // --- events ---
    [[nodiscard]] Result<std::vector<EventEntry>, Refusal> events() const;
    /// Takes an event document into the store, plans it and opens it.
    [[nodiscard]] Result<EventId, Refusal> importEvent(const std::string& document);
    [[nodiscard]] Result<void, Refusal> open(const EventId& event);
    /// A copy of the open event on a simulated clock that starts `lead` before its first task.
    [[nodiscard]] Result<EventId, Refusal> rehearse(int speed, Duration lead);
    [[nodiscard]] Result<void, Refusal> setRehearsalSpeed(int speed);
    /// The open event as described; null while none is open.
    [[nodiscard]] const event::Event* described() const;
    /// The run sheet everybody follows; null while there is none.
    [[nodiscard]] const live::RunSheet* sheet() const;

    // --- the day; each is durable when it returns a value ---
    [[nodiscard]] Result<void, Refusal> start(const TaskId& task);
    [[nodiscard]] Result<void, Refusal> finish(const TaskId& task);
    [[nodiscard]] Result<void, Refusal> skip(const TaskId& task);
    [[nodiscard]] Result<void, Refusal> tick(const TaskId& task, std::int32_t line);
    /// Records the next turn of a batch, whichever number it is.
    [[nodiscard]] Result<void, Refusal> turn(const TaskId& task);
    [[nodiscard]] Result<void, Refusal> read(const TaskId& task, Temperature temperature);
    [[nodiscard]] Result<void, Refusal> moveServe(Instant serve);
    [[nodiscard]] Result<void, Refusal> acknowledge(const std::string& alarm);
    [[nodiscard]] Result<void, Refusal> undo();
    /// Searches for a new plan from now on, done and running tasks fixed, and publishes it.
    [[nodiscard]] Result<void, Refusal> replan();
    /// The two halves of `replan`, for a search on another thread: what is still to be planned, as
    /// a value; and the plan that was found for it. Publishing fails with NotNow when something
    /// was done in between that the plan does not know of.
    [[nodiscard]] Result<live::Remaining, Refusal> planningProblem() const;
    [[nodiscard]] Result<void, Refusal> publishPlan(const live::Remaining& remaining,
                                                    const plan::Schedule& schedule);

    /// Who holds the device; goes into every operation from here on.
    void setPerson(std::optional<PersonId> person);

    /// The day at this instant; null while no event is open. Cheap when nothing was applied, no
    /// second has passed and no alarm fell due.
    [[nodiscard]] std::shared_ptr<const Snapshot> look();
    /// The event's time now: the device's, or the rehearsal's. Not moved by setting the wall clock.
    [[nodiscard]] Instant now();
    /// A person says that the wall clock, which jumped, is now right: from here on it is followed.
    void followWallClock();

  private:
    struct State;
    std::unique_ptr<State> state_;
};

}  // namespace cinder::app
