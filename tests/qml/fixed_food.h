#pragma once

/// The food-safety record of the day that stands still: a pan in every state, a reading out of
/// limit that waits for its action, a forecast, and a door that writes down what was touched.

#include <string>
#include <vector>

#include "app/snapshot.h"
#include "food_door.h"

namespace cinder::face::fixed {

/// `now` is the day's; checks and clocks lie around it.
[[nodiscard]] app::FoodCards orchardFood(Instant now);

class FixedFood final : public FoodDoor {
  public:
    explicit FixedFood(std::vector<std::string>& touches) : touches_(touches) {}

    [[nodiscard]] Taken measure(const safety::Pan& pan, safety::Purpose, safety::Reading,
                                const safety::ThermometerId&, std::optional<Duration>,
                                std::optional<std::int32_t>) override {
        return note("measure " + pan.dish.text());
    }
    [[nodiscard]] Taken correct(const safety::EntryId&, safety::Reading,
                                const std::string&) override {
        return note("correct");
    }
    [[nodiscard]] Taken takeAction(const safety::EntryId&, safety::Action) override {
        return note("action");
    }
    [[nodiscard]] Taken leaveControl(const safety::Pan& pan, safety::TimeRule, safety::Reading,
                                     const safety::ThermometerId&,
                                     std::optional<std::int32_t>) override {
        return note("leave " + pan.dish.text());
    }
    [[nodiscard]] Taken beginCooling(const safety::Pan& pan) override {
        return note("cool " + pan.dish.text());
    }
    [[nodiscard]] Taken discard(const safety::Pan& pan) override {
        return note("discard " + pan.dish.text());
    }
    [[nodiscard]] Taken keep(const safety::Pan& pan) override {
        return note("keep " + pan.dish.text());
    }
    [[nodiscard]] Taken testThermometer(const safety::ThermometerId&, safety::Reading) override {
        return note("ice point");
    }
    [[nodiscard]] Taken readyBeforeFire(safety::FireItem) override { return note("ready"); }
    [[nodiscard]] Taken skipBeforeFire(safety::FireItem) override { return note("skipped"); }
    [[nodiscard]] Taken nameLocalRules(const safety::LocalRules& rules) override {
        return note("rules of " + rules.authority);
    }
    [[nodiscard]] safety::Limits limits() const override { return {}; }
    [[nodiscard]] Taken sign(const std::string& name) override { return note("signed " + name); }
    [[nodiscard]] Result<std::optional<journal::BrokenChain>, app::Refusal> verify() override {
        return std::optional<journal::BrokenChain>();
    }

  private:
    Taken note(std::string touch) {
        touches_.push_back(std::move(touch));
        return {};
    }

    std::vector<std::string>& touches_;
};

}  // namespace cinder::face::fixed
