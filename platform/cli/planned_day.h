#pragma once

/// An event with the plan that was found for it and what is known about that plan.

#include <vector>

#include "base/clock.h"
#include "cli/failure.h"
#include "event/event.h"
#include "plan/check.h"
#include "plan/dispatch.h"
#include "plan/planner.h"

namespace cinder::cli {

struct PlannedDay {
    event::Event event;
    plan::Problem problem;
    plan::Plan plan;
    /// What the checker found; empty for a plan that can be followed.
    std::vector<plan::Violation> violations;
    /// Slack of each task when everything goes as planned.
    std::vector<plan::Projected> projected;
    Duration searched{0};

    /// The task indices by start, then in the problem's order.
    [[nodiscard]] std::vector<std::size_t> byStart() const;
    [[nodiscard]] Instant at(plan::FromBell fromBell) const { return event.serve.at + fromBell; }
};

/// Builds the problem, searches and checks. `clock` only measures how long the search took.
[[nodiscard]] Outcome<PlannedDay> planDay(event::Event event, const plan::Search& search,
                                          const Clock& clock);

}  // namespace cinder::cli
