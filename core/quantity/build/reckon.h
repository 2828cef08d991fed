#pragma once

/// The one door: an event in, everything it comes to out.

#include <map>
#include <optional>

#include "quantity/reckoning.h"

namespace cinder::quantity {

/// What a plan knows and the event does not say.
struct FromPlan {
    /// When the crew has to be there; used when the event names no arrival.
    std::optional<Instant> arrival;
    /// From the first piece laid to the last one pulled, on each grate that is used.
    std::map<ResourceId, Duration> cooking;
};

/// Never throws; some hundred microseconds to a few milliseconds, growing with the menu, not with
/// the guests. With no guests at all there is nothing but the fault.
[[nodiscard]] Reckoning reckon(const event::Event& event, const FromPlan& plan = {});

}  // namespace cinder::quantity
