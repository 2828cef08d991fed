#pragma once

#include "event/event.h"
#include "plan/problem.h"
#include "plan/solution.h"
#include "quantity/build/reckon.h"

namespace cinder::app {

/// What quantities take from a plan: when the crew starts, and from the first piece laid to the
/// last one pulled on each grate of the event's kit.
[[nodiscard]] quantity::FromPlan fromPlan(const event::Event& event, const plan::Problem& problem,
                                          const plan::Schedule& schedule);

}  // namespace cinder::app
