#pragma once

/// The line and its pans as the boards show them at one instant: finished values.

#include <optional>
#include <vector>

#include "app/service_plan.h"
#include "base/local_text.h"
#include "live/day.h"

namespace cinder::app {

/// The counter goes on by this.
inline constexpr std::int32_t kCountBy = 10;

struct LinePanCard {
    DishId dish;
    LocalText name;
    std::int32_t pans = 1;
    service::PanOutlook outlook;
    /// The next pan should be on its way by now.
    bool isDue = false;
    friend bool operator==(const LinePanCard&, const LinePanCard&) = default;
};

struct ServiceCards {
    std::int32_t guests = 0;   ///< expected
    std::int32_t counted = 0;  ///< by the last tap
    std::int32_t passed = 0;   ///< believed now, between taps
    std::int32_t waiting = 0;  ///< in the queue now, by the model at the pace that is seen
    bool isOpen = false;       ///< somebody saw the first guest, or counted
    bool isOver = false;       ///< the last guest has passed
    Instant opened;
    Duration each{0};
    service::Pace::End end;
    /// As planned, for comparison; from the opening.
    Duration planned{0};
    std::vector<LocalText> bottleneck;  ///< dishes at the stop that holds everybody up
    std::vector<LinePanCard> pans;      ///< in the order of the line
    friend bool operator==(const ServiceCards&, const ServiceCards&) = default;
};

struct Snapshot;

/// The calls of the line while guests pass: start the next pan (`snapshot.service` is there). Added
/// to `snapshot.timers`, which stays by due instant.
void addServiceTimers(const live::Day& day, Snapshot& snapshot);

[[nodiscard]] ServiceCards makeServiceCards(const live::Day& day, const ServicePlan& plan,
                                            Instant now);

}  // namespace cinder::app
