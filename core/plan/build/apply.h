#pragma once

/// Takes one of the planner's suggestions into the event, so that a person can accept it by a
/// touch and the changed event is planned, judged and journalled like any other.

#include "base/result.h"
#include "event/event.h"
#include "event/fault.h"
#include "plan/explain.h"

namespace cinder::plan {

/// The event with `remedy` in it; `problem` is what `build(event)` made of it, to which the
/// remedy's indices refer. Steps that waited for work that is gone wait for it no longer. One
/// person more is named "+1" until somebody gives a name; cold work done ahead stands in the dish's
/// list of work before leaving. Fails with the faults of the changed event (the only dish left out,
/// a crew beyond its limit, an arrival too early), naming the field.
[[nodiscard]] Result<event::Event, event::Faults> applied(const event::Event& event,
                                                          const Problem& problem,
                                                          const Remedy& remedy);

}  // namespace cinder::plan
