#pragma once

/// What the view models ask of the core. Behind it stands `app::Session`; tests and pictures put a
/// fixed day there instead.

#include <memory>
#include <string>
#include <vector>

#include "app/session.h"
#include "app/snapshot.h"
#include "fire_door.h"
#include "food_door.h"
#include "lists_door.h"

namespace cinder::face {

class Door {
  public:
    Door() = default;
    Door(const Door&) = delete;
    Door& operator=(const Door&) = delete;
    virtual ~Door() = default;

    [[nodiscard]] virtual Result<std::vector<app::EventEntry>, app::Refusal> events() const = 0;
    /// The open event as described; nothing while none is open.
    [[nodiscard]] virtual std::optional<event::Event> described() const = 0;
    /// Who is there (app::Session).
    [[nodiscard]] virtual std::vector<app::CrewMember> crew() const = 0;
    [[nodiscard]] virtual Taken open(const EventId& event) = 0;

    /// Why nothing can be noted on this device, if so.
    [[nodiscard]] virtual std::optional<app::Refusal> whyReadOnly() const { return std::nullopt; }
    /// Where the record is not as it was written, if so; it was copied as it stands.
    using BackedUp = Result<std::optional<journal::BrokenChain>, app::Refusal>;
    [[nodiscard]] virtual BackedUp backUp(const std::filesystem::path& file) = 0;
    [[nodiscard]] virtual Result<app::Restored, app::Refusal> restore(
        const std::filesystem::path& file) = 0;

    // An event being written; see app::Session.
    [[nodiscard]] virtual Result<EventId, app::Refusal> newDraft(const app::NewEvent& wanted) = 0;
    [[nodiscard]] virtual Result<std::string, app::Refusal> documentOf(const EventId& e) const = 0;
    [[nodiscard]] virtual std::optional<event::Event> draft() const = 0;
    [[nodiscard]] virtual std::optional<app::Refusal> objectionToEdit() const = 0;
    [[nodiscard]] virtual Taken edit(const app::Edit& edit, const std::string& field) = 0;
    [[nodiscard]] virtual bool canUndoEdit() const = 0;
    [[nodiscard]] virtual Taken undoEdit() = 0;
    /// The device's time, whatever is rehearsed.
    [[nodiscard]] virtual Instant deviceTime() = 0;

    // What waits for a plan (planned_touch.h); guests are asked for with the lists.
    using Asked = Result<app::Planning, app::Refusal>;
    [[nodiscard]] virtual Asked askToImport(const std::string& document) const = 0;
    [[nodiscard]] virtual Asked askToRedescribe(const std::string& document) const = 0;
    [[nodiscard]] virtual Asked askToPlanDraft() const = 0;
    [[nodiscard]] virtual Asked askToReplan() const = 0;
    [[nodiscard]] virtual Asked askToLeaveOut(const DishId& dish) const = 0;
    [[nodiscard]] virtual Asked askToBringBack(const TaskId& task) const = 0;
    [[nodiscard]] virtual Asked askToChangeCrew(
        const std::vector<app::CrewMember>& members) const = 0;
    [[nodiscard]] virtual Taken publish(const app::Planning& planning, const app::Found& found) = 0;

    [[nodiscard]] virtual Result<EventId, app::Refusal> rehearse(int speed, Duration lead) = 0;
    [[nodiscard]] virtual Taken setRehearsalSpeed(int speed) = 0;

    [[nodiscard]] virtual Taken start(const TaskId& task) = 0;
    [[nodiscard]] virtual Taken finish(const TaskId& task) = 0;
    [[nodiscard]] virtual Taken skip(const TaskId& task) = 0;
    [[nodiscard]] virtual Taken tick(const TaskId& task, std::int32_t line) = 0;
    [[nodiscard]] virtual Taken turn(const TaskId& task) = 0;
    [[nodiscard]] virtual Taken moveServe(Instant serve) = 0;
    [[nodiscard]] virtual Taken acknowledge(const std::string& alarm) = 0;
    /// The line (app::Session).
    [[nodiscard]] virtual Taken countGuests(std::int32_t guests) = 0;
    [[nodiscard]] virtual Taken lastGuest() = 0;
    [[nodiscard]] virtual Taken tapPan(const DishId& dish, std::int32_t percent) = 0;
    [[nodiscard]] virtual Taken setNextPan(const DishId& dish) = 0;
    /// The day looked back upon (app::Session).
    [[nodiscard]] virtual Result<app::Debrief, app::Refusal> debrief() = 0;
    [[nodiscard]] virtual Taken markInterrupted(const TaskId& task, bool isInterrupted) = 0;
    [[nodiscard]] virtual Taken answerLesson(const std::string& figure, bool isAccepted) = 0;
    [[nodiscard]] virtual Result<std::vector<learn::MethodHistory>, app::Refusal> methods()
        const = 0;
    [[nodiscard]] virtual Taken undo() = 0;
    [[nodiscard]] virtual Taken followClock() = 0;
    /// The food-safety record of the open event.
    [[nodiscard]] virtual FoodDoor& food() = 0;
    /// Quantities, line and van.
    [[nodiscard]] virtual ListsDoor& lists() = 0;
    /// The grates, the pieces on them and the coals.
    [[nodiscard]] virtual FireDoor& fire() = 0;
    virtual void setPerson(std::optional<PersonId> person) = 0;

    /// Null while no event is open.
    [[nodiscard]] virtual std::shared_ptr<const app::Snapshot> look() = 0;
};

}  // namespace cinder::face
