#pragma once

/// The one door to the core: open the store, apply what a person did, look at the day. View models
/// and the command line go through here and nowhere else. Single-threaded; long searches are
/// handed out as values to run elsewhere (`planningProblem`, `publishPlan`).

#include <filesystem>
#include <memory>
#include <span>
#include <string>
#include <vector>

#include "app/snapshot.h"
#include "base/clock.h"
#include "base/result.h"
#include "event/event.h"
#include "journal/operation.h"
#include "journal/store.h"
#include "live/day.h"

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
    std::string detail;  ///< for the log and the command line
};

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

    /// Who holds the device; goes into every operation from here on.
    void setPerson(std::optional<PersonId> person);

    /// The day at this instant. Cheap when nothing was applied and no second has passed.
    [[nodiscard]] std::shared_ptr<const Snapshot> look();

  private:
    struct State;
    std::unique_ptr<State> state_;
};

}  // namespace cinder::app
