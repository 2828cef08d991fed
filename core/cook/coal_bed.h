#pragma once

/// How long a bed of coals lasts, from when it was ready and from what hands over it told since.
///
/// The heat of a bed dies away exponentially: log flux falls on a straight line. Before any reading
/// the slope is believed from practice (a bed is due for more about an hour after it was ready) and
/// the heat is that of the fire that is wanted (coal.h); each reading moves them. A hand and a
/// thermometer on the grate do not tell the same flux of one fire, so each has a level of its own;
/// they share the slope. Coal that was added joins when it has burnt in, by what it is of a full
/// bed. A bed counts as weak when it gives half of what it gave when it was ready: a fire of 3 s
/// has then become one of about 7 s. Felt to be weak, it is.

#include <vector>

#include "cook/band.h"
#include "cook/batch.h"

namespace cinder::cook {

struct AddedCoal {
    Instant at;
    double share = 0;  ///< of the coal of a full bed
};

struct CoalBed {
    Instant ready;                    ///< the coals were burnt in
    std::vector<FireReading> hand{};  ///< ascending; those before `ready` are left out
    Duration burnIn = std::chrono::minutes(30);
    std::vector<FireReading> thermometer{};  ///< of the grate, likewise
    std::vector<AddedCoal> added{};          ///< ascending
};

struct BedOutlook {
    /// Half of the heat is left. No later than a reading of less, until coal is added after it.
    Band<Instant> weak;
    /// Add coal by then, so that it has burnt in when the bed is weak: one burn-in before the
    /// likely instant. Coal that is still burning in counts.
    Instant topUpBy;
};

/// Half-life before readings: 60 min (common practice - no source) within a factor of about 1.4;
/// one hand differs from itself by 15 % from test to test (both from memory). Errors: `NotPositive`
/// "burnIn".
[[nodiscard]] Result<BedOutlook, CookError> bedOutlook(const CoalBed& bed);

}  // namespace cinder::cook
