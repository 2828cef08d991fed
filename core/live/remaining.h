#pragma once

/// Re-planning in the middle of a day: the day as it stands becomes a value that can be searched on
/// another thread, and the plan found for it is put beside what has happened.

#include <vector>

#include "live/outlook.h"
#include "live/run_sheet.h"
#include "plan/replan.h"

namespace cinder::live {

/// A day whose rest is to be planned. All moments are distances from the bell of `sheet`.
struct Remaining {
    RunSheet sheet;                     ///< the one in force, for those who are there (live/crew.h)
    std::vector<plan::Actual> actuals;  ///< per task of the sheet
    std::vector<Duration> durations;    ///< what the fire says of each; empty: nothing
    Instant now;
    Instant serve;  ///< as it stands
    /// Others do it than the plan in force was made for: the search is thorough, and where no plan
    /// keeps every limit on how long things may wait, one that goes beyond them is better than
    /// none; what waits too long is said on the boards.
    bool isForOthers = false;

    /// The same plan, the same facts, the same serve time: a plan for the one is a plan for the
    /// other. A forecast that has moved a little since does not count.
    [[nodiscard]] bool tellsTheSameAs(const Remaining& other) const;
};

/// `day.sheet` must be there; without `fire` every task lasts as planned.
[[nodiscard]] Remaining remainingAt(const Day& day, Instant now,
                                    const FireForecast* fire = nullptr);

/// By how much the serve time is missed when everybody goes on as planned; negative: in time by
/// that.
[[nodiscard]] Duration projectedDelay(const Remaining& remaining);

/// A plan for the rest of a day that serves `late` after the serve time.
struct SoonestRest {
    std::chrono::minutes late{0};
    plan::Replanned replanned;
};

/// The plan near to what everybody was told (plan::replan) that serves in time, or else the fewest
/// whole minutes after it, at most what going on as planned comes to; looked for by halving, so
/// there may be a sooner one. The error is that of the serve time itself.
[[nodiscard]] Result<SoonestRest, plan::NoPlan> soonestRest(const Remaining& remaining,
                                                            const plan::Search& search = {});

/// The whole sheet with what has happened in the place of what was planned, and the rest planned
/// again (soonestRest). When there is none, the plan is for the soonest moment after what going on
/// as planned comes to, within hours, that one is found for. For others (`isForOthers`) it is for
/// the soonest moment after the serve time, and when there is none either, the same with twice,
/// four, eight and sixteen times the limits on waiting. The bell of the new sheet is later than
/// `serve` by what it is late. The error is that of the serve time itself.
[[nodiscard]] Result<RunSheet, plan::NoPlan> planRest(const Remaining& remaining,
                                                      const plan::Search& search = {});

}  // namespace cinder::live
