#pragma once

/// A day that stands still: an orchard lunch with something in every state, and a door that shows
/// it and writes down what was touched.

#include <string>
#include <vector>

#include "door.h"
#include "fixed_food.h"
#include "fixed_lists.h"

namespace cinder::face::fixed {

/// 11:42 of a day whose bell is 13:00. `isRinging` lets the turn that is due call.
[[nodiscard]] app::Snapshot orchardLunch(bool isRinging = false);
/// The same while its fire is still to be lit, and asked about.
[[nodiscard]] app::Snapshot beforeTheFire();

/// demo-data/orchard-harvest-lunch.json with a piece wider than it is long and a yield missing;
/// nothing when the file is not there.
[[nodiscard]] std::optional<event::Event> orchardDraft();
/// The grate of that lunch: lamb legs in three thicknesses, one due, one on the cool side, one
/// pulled.
[[nodiscard]] app::FireCards orchardFire(Instant now);

/// Writes down what was touched at the fire.
class FixedFire final : public FireDoor {
  public:
    explicit FixedFire(std::vector<std::string>& touches) : touches_(touches) {}
    [[nodiscard]] Taken layPieces(const TaskId& t, Temperature) override { return note("lay", t); }
    [[nodiscard]] Taken testByHand(const ResourceId& g, Duration) override {
        return note("hand", g);
    }
    [[nodiscard]] Taken readGrate(const ResourceId& g, Temperature) override {
        return note("grate", g);
    }
    [[nodiscard]] Taken addCoal(const ResourceId& g, Mass) override { return note("coal", g); }
    [[nodiscard]] Taken readPiece(const TaskId& t, std::int32_t, Temperature) override {
        return note("probe", t);
    }
    [[nodiscard]] Taken judgePiece(const TaskId& t, std::int32_t, bool) override {
        return note("judge", t);
    }
    [[nodiscard]] Taken pullPieces(const TaskId& t, const std::vector<std::int32_t>&,
                                   std::int32_t) override {
        return note("pull", t);
    }
    [[nodiscard]] Taken movePieces(const TaskId& t, const std::vector<std::int32_t>&,
                                   bool) override {
        return note("move", t);
    }

  private:
    template <class Id>
    Taken note(const char* what, const Id& id) {
        touches_.push_back(std::string(what) + " " + id.text());
        return {};
    }
    std::vector<std::string>& touches_;
};

class FixedDoor final : public Door {
  public:
    explicit FixedDoor(app::Snapshot shown) : day(std::move(shown)), written(orchardDraft()) {
        day.line = lists_.lists()->line;
    }

    [[nodiscard]] Result<std::vector<app::EventEntry>, app::Refusal> events() const override {
        std::vector<app::EventEntry> all{{day.event, day.name, day.serve, day.offset, false}};
        all.insert(all.end(), others.begin(), others.end());
        return all;
    }
    [[nodiscard]] std::optional<event::Event> described() const override { return written; }
    [[nodiscard]] std::vector<app::CrewMember> crew() const override;
    [[nodiscard]] Taken open(const EventId&) override {
        isOpen = true;
        return {};
    }
    [[nodiscard]] std::optional<app::Refusal> whyReadOnly() const override { return readOnly; }
    [[nodiscard]] BackedUp backUp(const std::filesystem::path&) override {
        touches.emplace_back("back up");
        return backedUp;
    }
    [[nodiscard]] Result<app::Restored, app::Refusal> restore(
        const std::filesystem::path&) override {
        touches.emplace_back("restore");
        return restored;
    }
    [[nodiscard]] Result<EventId, app::Refusal> newDraft(const app::NewEvent&) override {
        return day.event;
    }
    [[nodiscard]] Result<std::string, app::Refusal> documentOf(const EventId&) const override {
        return std::string();
    }
    [[nodiscard]] std::optional<event::Event> draft() const override { return written; }
    [[nodiscard]] std::optional<app::Refusal> objectionToEdit() const override { return objection; }
    [[nodiscard]] Taken edit(const app::Edit& edit, const std::string& field) override;
    [[nodiscard]] bool canUndoEdit() const override { return true; }
    [[nodiscard]] Taken undoEdit() override { return note("undo edit"); }
    [[nodiscard]] Instant deviceTime() override { return day.now; }
    [[nodiscard]] Asked askToImport(const std::string&) const override { return app::Planning{}; }
    [[nodiscard]] Asked askToRedescribe(const std::string&) const override {
        return app::Planning{};
    }
    [[nodiscard]] Asked askToPlanDraft() const override { return app::Planning{}; }
    [[nodiscard]] Asked askToReplan() const override { return app::Planning{}; }
    [[nodiscard]] Asked askToLeaveOut(const DishId&) const override { return app::Planning{}; }
    [[nodiscard]] Asked askToBringBack(const TaskId&) const override { return app::Planning{}; }
    [[nodiscard]] Asked askToChangeCrew(const std::vector<app::CrewMember>&) const override {
        return app::Planning{};
    }
    [[nodiscard]] Taken publish(const app::Planning&, const app::Found&) override {
        isOpen = true;
        return note("plan");
    }
    [[nodiscard]] Result<EventId, app::Refusal> rehearse(int, Duration) override {
        return day.event;
    }
    [[nodiscard]] Taken setRehearsalSpeed(int speed) override {
        day.speed = speed;
        return {};
    }
    [[nodiscard]] Taken start(const TaskId& t) override { return note("start " + t.text()); }
    [[nodiscard]] Taken finish(const TaskId& t) override { return note("finish " + t.text()); }
    [[nodiscard]] Taken skip(const TaskId& t) override { return note("skip " + t.text()); }
    [[nodiscard]] Taken tick(const TaskId& t, std::int32_t line) override;
    [[nodiscard]] Taken turn(const TaskId& t) override { return note("turn " + t.text()); }
    [[nodiscard]] Taken moveServe(Instant serve) override {
        day.serve = serve;
        return note("serve");
    }
    [[nodiscard]] Taken acknowledge(const std::string& a) override { return note("heard " + a); }
    [[nodiscard]] Taken countGuests(std::int32_t guests) override {
        return note("guests " + std::to_string(guests));
    }
    [[nodiscard]] Taken lastGuest() override { return note("last guest"); }
    [[nodiscard]] Taken tapPan(const DishId& dish, std::int32_t percent) override {
        return note("pan " + dish.text() + " " + std::to_string(percent));
    }
    [[nodiscard]] Taken setNextPan(const DishId& dish) override {
        return note("next pan " + dish.text());
    }
    [[nodiscard]] Result<app::Debrief, app::Refusal> debrief() override;
    [[nodiscard]] Result<std::vector<learn::MethodHistory>, app::Refusal> methods() const override;
    [[nodiscard]] Taken markInterrupted(const TaskId& t, bool isInterrupted) override {
        return note((isInterrupted ? "interrupted " : "counts ") + t.text());
    }
    [[nodiscard]] Taken answerLesson(const std::string& figure, bool isAccepted) override {
        return note((isAccepted ? "accept " : "ignore ") + figure);
    }
    [[nodiscard]] Taken undo() override { return note("undo"); }
    [[nodiscard]] Taken followClock() override { return note("clock"); }
    [[nodiscard]] FoodDoor& food() override { return record; }
    [[nodiscard]] ListsDoor& lists() override { return lists_; }
    [[nodiscard]] FireDoor& fire() override { return fire_; }
    void setPerson(std::optional<PersonId> p) override {
        touches.push_back("person " + (p ? p->text() : std::string()));
    }
    [[nodiscard]] std::shared_ptr<const app::Snapshot> look() override {
        return isOpen ? std::make_shared<const app::Snapshot>(day) : nullptr;
    }

    app::Snapshot day;
    /// The orchard lunch in the editor, with a few things that are not right.
    std::optional<event::Event> written;
    std::optional<app::Refusal> objection;  ///< to any edit
    bool isOpen = true;
    std::vector<app::EventEntry> others;  ///< beside this one
    std::optional<app::Refusal> readOnly;
    BackedUp backedUp = std::optional<journal::BrokenChain>();
    Result<app::Restored, app::Refusal> restored = app::Restored{2, 514, {}, {}};
    std::vector<std::string> touches;
    FixedFood record{touches};

  private:
    FixedFire fire_{touches};
    Taken note(std::string touch) {
        touches.push_back(std::move(touch));
        return {};
    }
    FixedLists lists_;
};

}  // namespace cinder::face::fixed
