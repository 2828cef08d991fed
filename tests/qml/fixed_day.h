#pragma once

/// A day that stands still: an orchard lunch with something in every state, and a door that shows
/// it and writes down what was touched.

#include <string>
#include <vector>

#include "door.h"
#include "fixed_food.h"

namespace cinder::face::fixed {

/// 11:42 of a day whose bell is 13:00. `isRinging` lets the turn that is due call.
[[nodiscard]] app::Snapshot orchardLunch(bool isRinging = false);

class FixedDoor final : public Door {
  public:
    explicit FixedDoor(app::Snapshot shown) : day(std::move(shown)) {}

    [[nodiscard]] Result<std::vector<app::EventEntry>, app::Refusal> events() const override {
        return std::vector<app::EventEntry>{{day.event, day.name, day.serve, day.offset, false}};
    }
    [[nodiscard]] Result<EventId, app::Refusal> importEvent(const std::string&) override {
        isOpen = true;
        return day.event;
    }
    [[nodiscard]] std::optional<event::Event> described() const override { return {}; }
    [[nodiscard]] Taken redescribe(const std::string&) override { return note("redescribe"); }
    [[nodiscard]] Taken open(const EventId&) override {
        isOpen = true;
        return {};
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
    [[nodiscard]] Taken undo() override { return note("undo"); }
    [[nodiscard]] Taken replan() override { return note("replan"); }
    [[nodiscard]] FoodDoor& food() override { return record; }
    void setPerson(std::optional<PersonId> p) override {
        touches.push_back("person " + (p ? p->text() : std::string()));
    }
    [[nodiscard]] std::shared_ptr<const app::Snapshot> look() override {
        return isOpen ? std::make_shared<const app::Snapshot>(day) : nullptr;
    }

    app::Snapshot day;
    bool isOpen = true;
    std::vector<std::string> touches;
    FixedFood record{touches};

  private:
    Taken note(std::string touch) {
        touches.push_back(std::move(touch));
        return {};
    }
};

}  // namespace cinder::face::fixed
