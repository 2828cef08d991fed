#pragma once

#include "food_door.h"

namespace cinder::face {

/// The record of the session behind the face.
class SessionFoodDoor final : public FoodDoor {
  public:
    /// `session` must outlive this.
    explicit SessionFoodDoor(app::Session& session) : session_(session) {}

    [[nodiscard]] Taken measure(const safety::Pan& pan, safety::Purpose purpose,
                                safety::Reading reading, const safety::ThermometerId& thermometer,
                                std::optional<Duration> held,
                                std::optional<std::int32_t> from) override;
    [[nodiscard]] Taken correct(const safety::EntryId& entry, safety::Reading reading,
                                const std::string& reason) override;
    [[nodiscard]] Taken takeAction(const safety::EntryId& entry, safety::Action action) override;
    [[nodiscard]] Taken leaveControl(const safety::Pan& pan, safety::TimeRule rule,
                                     safety::Reading reading,
                                     const safety::ThermometerId& thermometer,
                                     std::optional<std::int32_t> from) override;
    [[nodiscard]] Taken beginCooling(const safety::Pan& pan) override;
    [[nodiscard]] Taken discard(const safety::Pan& pan) override;
    [[nodiscard]] Taken keep(const safety::Pan& pan) override;
    [[nodiscard]] Taken testThermometer(const safety::ThermometerId& thermometer,
                                        safety::Reading inIceWater) override;
    [[nodiscard]] Taken readyBeforeFire(safety::FireItem item) override;
    [[nodiscard]] Taken skipBeforeFire(safety::FireItem item) override;
    [[nodiscard]] Taken nameLocalRules(const safety::LocalRules& rules) override {
        return session_.nameLocalRules(rules);
    }
    [[nodiscard]] safety::Limits limits() const override { return session_.limits(); }
    [[nodiscard]] Taken sign(const std::string& name) override {
        return session_.signRecord(name, {});
    }
    [[nodiscard]] Result<std::optional<journal::BrokenChain>, app::Refusal> verify() override {
        return session_.verify();
    }

  private:
    app::Session& session_;
};

}  // namespace cinder::face
