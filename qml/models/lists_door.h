#pragma once

/// What the pages about quantities, line and van ask of the core.

#include <memory>
#include <string>
#include <vector>

#include "app/session.h"

namespace cinder::face {

using Listed = std::shared_ptr<const app::Lists>;

class ListsDoor {
  public:
    ListsDoor() = default;
    ListsDoor(const ListsDoor&) = delete;
    ListsDoor& operator=(const ListsDoor&) = delete;
    virtual ~ListsDoor() = default;

    /// Null while no event is open; the same pointer while nothing was recorded.
    [[nodiscard]] virtual Listed lists() = 0;
    [[nodiscard]] virtual Result<Listed, app::Refusal> listsFor(std::int32_t adults,
                                                                std::int32_t children) = 0;
    [[nodiscard]] virtual Result<void, app::Refusal> setFigure(const std::string& figure,
                                                               double value) = 0;
    [[nodiscard]] virtual Result<void, app::Refusal> clearFigure(const std::string& figure) = 0;
    /// Waits for a plan; published through the Door.
    [[nodiscard]] virtual Result<app::Planning, app::Refusal> askToSetGuests(
        std::int32_t adults, std::int32_t children) const = 0;
    [[nodiscard]] virtual Result<void, app::Refusal> orderLine(
        const std::vector<DishId>& dishes) = 0;
    [[nodiscard]] virtual Result<void, app::Refusal> pack(const std::string& row,
                                                          journal::Packed::Where where,
                                                          std::int32_t count) = 0;
    [[nodiscard]] virtual Result<app::Paper, app::Refusal> paper(app::Sheet sheet,
                                                                 const report::Style& style) = 0;
};

/// On a session.
class SessionListsDoor final : public ListsDoor {
  public:
    explicit SessionListsDoor(app::Session& session) : session_(session) {}

    [[nodiscard]] Listed lists() override { return session_.lists(); }
    [[nodiscard]] Result<Listed, app::Refusal> listsFor(std::int32_t adults,
                                                        std::int32_t children) override {
        return session_.listsFor(adults, children);
    }
    [[nodiscard]] Result<void, app::Refusal> setFigure(const std::string& figure,
                                                       double value) override {
        return session_.setFigure(figure, value);
    }
    [[nodiscard]] Result<void, app::Refusal> clearFigure(const std::string& figure) override {
        return session_.clearFigure(figure);
    }
    [[nodiscard]] Result<app::Planning, app::Refusal> askToSetGuests(
        std::int32_t adults, std::int32_t children) const override {
        return session_.askToSetGuests(adults, children);
    }
    [[nodiscard]] Result<void, app::Refusal> orderLine(const std::vector<DishId>& dishes) override {
        return session_.orderLine(dishes);
    }
    [[nodiscard]] Result<void, app::Refusal> pack(const std::string& row,
                                                  journal::Packed::Where where,
                                                  std::int32_t count) override {
        return session_.pack(row, where, count);
    }
    [[nodiscard]] Result<app::Paper, app::Refusal> paper(app::Sheet sheet,
                                                         const report::Style& style) override {
        return session_.paper(sheet, style);
    }

  private:
    app::Session& session_;
};

}  // namespace cinder::face
