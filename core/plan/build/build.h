#pragma once

/// From an event as people describe it to a problem the planner can solve.
///
/// A step becomes one task, or one for each batch when its pieces have to take turns on the grate;
/// how many batches there are follows from the sizes of pieces and grate, never from a guess.
/// Times are rounded to half-minutes to the safe side: work and shortest lags up, longest lags and
/// deadlines down.
///
/// Work lies before the bell and must be finished by it, except serving and striking, and except a
/// step whose own window puts it elsewhere.

#include "base/result.h"
#include "event/event.h"
#include "event/fault.h"
#include "plan/problem.h"

namespace cinder::plan {

/// Task ids are "lamb/slice" for a step of a dish, "lamb/cook/1" for its first batch, "tables" for
/// work that belongs to no dish; the same event always gives the same ids in the same order. On
/// a grate one unit of the resource is a millimetre of its length. Fails with the event's faults
/// when it has any (an event that came out of event::parse has none), and when a dish would need
/// more than 60 batches.
[[nodiscard]] Result<Problem, event::Faults> build(const event::Event& event);

}  // namespace cinder::plan
