#pragma once

/// What the record page asks of the core: one call for each thing a person writes down. Behind it
/// stands `app::Session`; tests and pictures put a fixed day there.

#include <optional>
#include <string>

#include "app/session.h"

namespace cinder::face {

using Taken = Result<void, app::Refusal>;

class FoodDoor {
  public:
    FoodDoor() = default;
    FoodDoor(const FoodDoor&) = delete;
    FoodDoor& operator=(const FoodDoor&) = delete;
    virtual ~FoodDoor() = default;

    /// `from`: the pan a new one was filled out of.
    [[nodiscard]] virtual Taken measure(const safety::Pan& pan, safety::Purpose purpose,
                                        safety::Reading reading,
                                        const safety::ThermometerId& thermometer,
                                        std::optional<Duration> held,
                                        std::optional<std::int32_t> from) = 0;
    [[nodiscard]] virtual Taken correct(const safety::EntryId& entry, safety::Reading reading,
                                        const std::string& reason) = 0;
    [[nodiscard]] virtual Taken takeAction(const safety::EntryId& entry, safety::Action action) = 0;
    [[nodiscard]] virtual Taken leaveControl(const safety::Pan& pan, safety::TimeRule rule,
                                             safety::Reading reading,
                                             const safety::ThermometerId& thermometer,
                                             std::optional<std::int32_t> from) = 0;
    [[nodiscard]] virtual Taken beginCooling(const safety::Pan& pan) = 0;
    [[nodiscard]] virtual Taken discard(const safety::Pan& pan) = 0;
    [[nodiscard]] virtual Taken keep(const safety::Pan& pan) = 0;
    [[nodiscard]] virtual Taken testThermometer(const safety::ThermometerId& thermometer,
                                                safety::Reading inIceWater) = 0;
    [[nodiscard]] virtual Taken readyBeforeFire(safety::FireItem item) = 0;
    [[nodiscard]] virtual Taken nameLocalRules(const safety::LocalRules& rules) = 0;
    /// In force for the open event, also while it is a draft.
    [[nodiscard]] virtual safety::Limits limits() const = 0;
    [[nodiscard]] virtual Taken sign(const std::string& name) = 0;
    [[nodiscard]] virtual Result<std::optional<journal::BrokenChain>, app::Refusal> verify() = 0;
    /// Passed over, on record.
    [[nodiscard]] virtual Taken skipBeforeFire(safety::FireItem item) = 0;
};

}  // namespace cinder::face
