#pragma once

/// From the day to what the boards show. Applies no rule: it only arranges.

#include "app/snapshot.h"
#include "live/outlook.h"

namespace cinder::app {

/// Everything of the snapshot that follows from the day; the session adds what it alone knows
/// (undo, notices about the device, read-only). `day.sheet` must be there.
[[nodiscard]] Snapshot makeSnapshot(const live::Day& day, const live::Outlook& outlook,
                                    Instant now);

/// Adds the chance of being on time, which is reckoned less often than the rest.
void addChance(const live::Day& day, const live::Chance& chance, Snapshot& snapshot);

}  // namespace cinder::app
