#pragma once

/// The line before the event: what the event and its quantities say of guests and pans, and what
/// the model makes of it. Values only; may be reckoned on another thread.

#include "event/event.h"
#include "service/buffet.h"
#include "service/pan_level.h"
#include "service/what_helps.h"

namespace cinder::app {

/// From "start the next pan" until it stands on the line: out of the hot box, lid and water seen
/// to; a bowl or basket is quicker. Common practice - no source.
inline constexpr Duration kChaferLead = std::chrono::minutes{5};
inline constexpr Duration kBowlLead = std::chrono::minutes{2};

/// Services played for the boards, and for the page that has time. Our choice.
inline constexpr std::int32_t kFewServices = 40;

struct ServicePlan {
    struct Pan {
        DishId dish;
        LocalText name;
        service::PanPlan plan;
        friend bool operator==(const Pan&, const Pan&) = default;
    };
    std::int32_t guests = 0;
    service::Staffing staffing;
    service::Buffet buffet;
    service::Flow flow;
    /// From guest to guest, and until the first is through.
    Duration each{0};
    Duration through{0};
    /// In the order of the line; dishes whose portions or vessels are not known are left out, and
    /// so are those on a board.
    std::vector<Pan> pans;
    friend bool operator==(const ServicePlan&, const ServicePlan&) = default;
};

/// Servers are the most people that one of the event's serving steps asks for, or one.
[[nodiscard]] ServicePlan planService(const event::Event& event,
                                      std::int32_t services = kFewServices);

/// What would help, each change played out; some tenths of a second.
[[nodiscard]] std::vector<service::Gain> serviceGains(const ServicePlan& plan,
                                                      std::int32_t services = kFewServices);

/// Tables of eight, the next one sent when four still stand in line, half a minute's walk away.
/// Common practice - no source.
inline constexpr service::Release kTableByTable{service::Release::How::WhenShort, 8, Duration{0}, 4,
                                                std::chrono::seconds{30}};

/// The same guests, called to the line table by table.
[[nodiscard]] service::Flow flowByTable(const ServicePlan& plan,
                                        std::int32_t services = kFewServices);

/// The dishes at a stop, for its name; none for plates and cutlery.
[[nodiscard]] std::vector<LocalText> dishesAt(const ServicePlan& plan, const event::Event& event,
                                              std::size_t stop);

}  // namespace cinder::app
