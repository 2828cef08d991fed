#pragma once

/// The beds of coal as the day knows them: when each was ready, what hands told of it, how long it
/// lasts and what it needs.

#include "cook/coal.h"
#include "cook/coal_bed.h"
#include "live/outlook.h"

namespace cinder::live {

struct HandTest {
    Instant at;
    Duration held{0};
    /// What cooks say that count means; nothing for a count no table knows.
    std::optional<cook::HandBand> band;
};

struct CoalOutlook {
    ResourceId grate;
    /// The last fire task before anything lies on this grate is over, actual or projected.
    std::optional<Instant> ready;
    bool isReady = false;
    std::vector<HandTest> handTests;                           ///< ascending
    std::vector<std::pair<Instant, Temperature>> thermometer;  ///< ascending
    std::vector<std::pair<Instant, Mass>> added;               ///< ascending
    /// Once the bed is ready.
    std::optional<cook::BedOutlook> bed;
    /// For all that is planned on this grate; nothing while nothing is.
    std::optional<cook::CoalNeed> need;
};

/// One per grate of the event, in its order. `day.event` and `day.sheet` must be there.
[[nodiscard]] std::vector<CoalOutlook> coalOutlooks(const Day& day, const Outlook& outlook);

}  // namespace cinder::live
