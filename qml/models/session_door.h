#pragma once

/// The session as a door.

#include "door.h"
#include "session_fire_door.h"
#include "session_food_door.h"

namespace cinder::face {

class SessionDoor final : public Door {
  public:
    explicit SessionDoor(app::Session& session)
        : session_(session), food_(session), lists_(session), fire_(session) {}

    [[nodiscard]] Result<std::vector<app::EventEntry>, app::Refusal> events() const override;
    [[nodiscard]] std::optional<event::Event> described() const override;
    [[nodiscard]] std::vector<app::CrewMember> crew() const override { return session_.crew(); }
    [[nodiscard]] Taken open(const EventId& event) override;
    [[nodiscard]] std::optional<app::Refusal> whyReadOnly() const override;
    [[nodiscard]] BackedUp backUp(const std::filesystem::path& file) override;
    [[nodiscard]] Result<app::Restored, app::Refusal> restore(
        const std::filesystem::path& file) override;
    [[nodiscard]] Result<EventId, app::Refusal> newDraft(const app::NewEvent& wanted) override;
    [[nodiscard]] Result<std::string, app::Refusal> documentOf(const EventId& e) const override;
    [[nodiscard]] std::optional<event::Event> draft() const override;
    [[nodiscard]] std::optional<app::Refusal> objectionToEdit() const override {
        return session_.objectionToEdit();
    }
    [[nodiscard]] Taken edit(const app::Edit& edit, const std::string& field) override;
    [[nodiscard]] bool canUndoEdit() const override;
    [[nodiscard]] Taken undoEdit() override;
    [[nodiscard]] Instant deviceTime() override;
    [[nodiscard]] Asked askToImport(const std::string& document) const override;
    [[nodiscard]] Asked askToRedescribe(const std::string& document) const override;
    [[nodiscard]] Asked askToPlanDraft() const override;
    [[nodiscard]] Asked askToReplan() const override;
    [[nodiscard]] Asked askToLeaveOut(const DishId& dish) const override;
    [[nodiscard]] Asked askToBringBack(const TaskId& task) const override;
    [[nodiscard]] Asked askToChangeCrew(
        const std::vector<app::CrewMember>& members) const override {
        return session_.askToChangeCrew(members);
    }
    [[nodiscard]] Taken publish(const app::Planning& planning, const app::Found& found) override;
    [[nodiscard]] Result<EventId, app::Refusal> rehearse(int speed, Duration lead) override;
    [[nodiscard]] Taken setRehearsalSpeed(int speed) override;
    [[nodiscard]] Taken start(const TaskId& task) override;
    [[nodiscard]] Taken finish(const TaskId& task) override;
    [[nodiscard]] Taken skip(const TaskId& task) override;
    [[nodiscard]] Taken tick(const TaskId& task, std::int32_t line) override;
    [[nodiscard]] Taken turn(const TaskId& task) override;
    [[nodiscard]] Taken moveServe(Instant serve) override;
    [[nodiscard]] Taken acknowledge(const std::string& alarm) override;
    [[nodiscard]] Taken countGuests(std::int32_t guests) override;
    [[nodiscard]] Taken lastGuest() override;
    [[nodiscard]] Taken tapPan(const DishId& dish, std::int32_t percent) override;
    [[nodiscard]] Taken setNextPan(const DishId& dish) override;
    [[nodiscard]] Result<app::Debrief, app::Refusal> debrief() override;
    [[nodiscard]] Result<std::vector<learn::MethodHistory>, app::Refusal> methods() const override {
        return session_.methods();
    }
    [[nodiscard]] Taken markInterrupted(const TaskId& task, bool isInterrupted) override;
    [[nodiscard]] Taken answerLesson(const std::string& figure, bool isAccepted) override;
    [[nodiscard]] Taken undo() override;
    [[nodiscard]] Taken followClock() override;
    [[nodiscard]] FoodDoor& food() override { return food_; }
    [[nodiscard]] ListsDoor& lists() override { return lists_; }
    [[nodiscard]] FireDoor& fire() override { return fire_; }
    void setPerson(std::optional<PersonId> person) override;
    [[nodiscard]] std::shared_ptr<const app::Snapshot> look() override;

  private:
    app::Session& session_;
    SessionFoodDoor food_;
    SessionListsDoor lists_;
    SessionFireDoor fire_;
};

}  // namespace cinder::face
