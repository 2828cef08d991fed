#pragma once

/// What the journal of an event knows of the time: internal to core/app.

#include <vector>

#include "journal/operation.h"

namespace cinder::app {

/// The last moment by which `device` is known to have written something; `operations` in the order
/// of the fold. What came before a person set the clock right says nothing of it, nor does what
/// other devices wrote by their clocks, unless this one has written nothing yet (a copy that was
/// taken back). A stamp that only counts on (journal/hybrid_clock.h) is another's time, or one that
/// the clock has not caught up with; what is said in it goes by the clock all the same.
[[nodiscard]] Instant lastWritten(const std::vector<journal::Operation>& operations,
                                  const DeviceId& device);

}  // namespace cinder::app
