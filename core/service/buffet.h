#pragma once

/// The stops of an event's buffet: plates, the dishes in the order they stand, cutlery.
///
/// Mains are served, everything else is taken: sides first, served mains at the end (common
/// practice - no source). Served dishes that stand next to each other are one stop, because one
/// pair of hands serves them; where other dishes stand between, the same servers go from stop to
/// stop. Dishes of one choice exclude each other as long as their takes are
/// not more than everybody; when they are, guests take more than one.

#include <span>

#include "event/event.h"
#include "service/guest_line.h"

namespace cinder::service {

/// Seconds a guest stands at a stop. Common practice - no source, and together made so that a
/// hundred guests with one server pass in about a quarter of an hour, which is common practice.
struct Habits {
    Spread plates =
        Spread::between(std::chrono::seconds{2}, std::chrono::seconds{3}, std::chrono::seconds{5});
    Spread dish =
        Spread::between(std::chrono::seconds{3}, std::chrono::seconds{5}, std::chrono::seconds{10});
    Spread small = Spread::between(std::chrono::seconds{2}, std::chrono::seconds{4},
                                   std::chrono::seconds{8});  ///< bread and sauces
    Spread served =
        Spread::between(std::chrono::seconds{5}, std::chrono::seconds{8}, std::chrono::seconds{12});
    /// A second main on the same plate.
    Spread further =
        Spread::between(std::chrono::seconds{2}, std::chrono::seconds{3}, std::chrono::seconds{5});
    Spread cutlery =
        Spread::between(std::chrono::seconds{2}, std::chrono::seconds{3}, std::chrono::seconds{5});
    Duration past = std::chrono::seconds{1};
    /// One guest between two dishes, two before a server: as long as the vessels stand.
    std::int32_t room = 1;
    std::int32_t roomBeforeServer = 2;
    friend bool operator==(const Habits&, const Habits&) = default;
};

struct Staffing {
    std::int32_t servers = 1;  ///< of all served stops together
    std::int32_t sides = 1;
    friend bool operator==(const Staffing&, const Staffing&) = default;
};

/// `order` names dishes of the event's menu as they stand on the line; unknown names are left out.
/// A dish that does not say how many take it counts as taken by everybody, or, in a choice, as
/// taken by an equal part of what the others leave: the line is then rather too slow than too
/// quick.
[[nodiscard]] Buffet buffetOf(const event::Event& event, std::span<const DishId> order,
                              const Staffing& staffing = {}, const Habits& habits = {});

}  // namespace cinder::service
