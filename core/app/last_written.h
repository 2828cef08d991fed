#pragma once

/// What the journal of an event knows of the time: internal to core/app.

#include <vector>

#include "journal/operation.h"

namespace cinder::app {

/// The last moment by which something is known to have been written; `operations` in the order of
/// the fold. What came before a person set the clock right says nothing of it. After that, stamps
/// stand still until the time has caught up with them (journal/hybrid_clock.h), but what is said in
/// them goes on.
[[nodiscard]] Instant lastWritten(const std::vector<journal::Operation>& operations);

}  // namespace cinder::app
