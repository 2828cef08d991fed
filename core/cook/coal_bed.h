#pragma once

/// How long a bed of coals lasts, from when it was ready and from what hands over it told since.
///
/// The heat of a bed dies away exponentially: log flux falls on a straight line. Before any reading
/// the slope is believed from practice (a bed is due for more about an hour after it was ready);
/// each hand test or grate thermometer moves it. A bed counts as weak when it gives half of what it
/// gave when it was ready: a fire of 3 s has then become one of about 8 s.

#include <vector>

#include "cook/band.h"
#include "cook/batch.h"

namespace cinder::cook {

struct CoalBed {
    /// The coals were burnt in, or fresh coal was last added and had burnt in.
    Instant ready;
    /// Ascending; those before `ready` are left out.
    std::vector<FireReading> readings{};
    Duration burnIn = std::chrono::minutes(30);
};

struct BedOutlook {
    Band<Instant> weak;  ///< half of the heat is left
    /// Add coal by then, so that it has burnt in when the bed is weak: one burn-in before the
    /// likely instant.
    Instant topUpBy;
};

/// Half-life before readings: 60 min (common practice - no source) within a factor of about 1.4;
/// one hand differs from itself by 15 % from test to test (both from memory). Errors: `NotPositive`
/// "burnIn".
[[nodiscard]] Result<BedOutlook, CookError> bedOutlook(const CoalBed& bed);

}  // namespace cinder::cook
