#pragma once

/// The lists of the orchard lunch as the demo event describes it, with a van half loaded; what is
/// touched is let go.

#include "lists_door.h"

namespace cinder::face::fixed {

class FixedLists final : public ListsDoor {
  public:
    [[nodiscard]] Listed lists() override;
    [[nodiscard]] Result<Listed, app::Refusal> listsFor(std::int32_t adults,
                                                        std::int32_t children) override;
    [[nodiscard]] Result<void, app::Refusal> setFigure(const std::string&, double) override {
        return {};
    }
    [[nodiscard]] Result<void, app::Refusal> clearFigure(const std::string&) override { return {}; }
    [[nodiscard]] Result<app::Planning, app::Refusal> askToSetGuests(std::int32_t,
                                                                     std::int32_t) const override {
        return app::Planning{};
    }
    [[nodiscard]] Result<void, app::Refusal> orderLine(const std::vector<DishId>&) override {
        return {};
    }
    [[nodiscard]] Result<void, app::Refusal> pack(const std::string&, journal::Packed::Where,
                                                  std::int32_t) override {
        return {};
    }
    [[nodiscard]] Result<app::Paper, app::Refusal> paper(app::Sheet,
                                                         const report::Style&) override {
        return app::Paper{};
    }
};

}  // namespace cinder::face::fixed
