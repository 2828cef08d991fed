#pragma once

/// Can this crew with this kit keep what the client was promised, and if not, what would? And how
/// long will the guests stand in line? Values only, so that the seconds of searching can be spent
/// on another thread.

#include <string>

#include "app/service_plan.h"
#include "app/session.h"
#include "plan/explain.h"

namespace cinder::app {

struct Promise {
    event::Event event;
    plan::Problem problem;  ///< what the remedies' indices refer to
    plan::Explanation explanation;
    ServicePlan line;
    service::Flow byTable;  ///< the guests called table by table instead of all at once
    /// What would shorten the line, the change that saves most first; nothing that saves nothing.
    std::vector<service::Gain> shorter;
};

/// Plans `event` as described, and each change that could help. Fails with BadEvent or NoPlan.
[[nodiscard]] Result<Promise, Refusal> reckonPromise(const event::Event& event,
                                                     const plan::Search& search = {});

/// The document of the event with the `number`-th remedy in it, ready for Session::redescribe.
/// Fails with BadEvent and the faults of the changed event.
[[nodiscard]] Result<std::string, Refusal> accepted(const Promise& promise, std::size_t number);

}  // namespace cinder::app
