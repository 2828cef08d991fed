#pragma once

/// Re-planning in the middle of a day: what is still to be done becomes a problem of its own, in
/// which what was done is a fact and what is running cannot be moved, and the plan found for it is
/// put back beside what has happened.

#include <optional>
#include <vector>

#include "live/outlook.h"
#include "live/run_sheet.h"

namespace cinder::live {

struct Remaining {
    /// Only tasks that are not over, with `now` as arrival; moments are relative to `bell`.
    plan::Problem problem;
    /// tasks[i] of the problem is tasks[original[i]] of the sheet.
    std::vector<plan::TaskIndex> original;
    /// Half-minutes of each task of the problem that lie behind it already.
    std::vector<plan::HalfMinutes> elapsed;
    /// The old plan of the same tasks as far as it goes, to stay close to.
    plan::Schedule incumbent;
    Instant bell;
    Instant now;
    /// The whole sheet with what has happened in the place of what was planned.
    RunSheet sheet;
    friend bool operator==(const Remaining&, const Remaining&) = default;
};

/// `bell` is the serve time to plan for; the day's own, or a later one when that cannot be met.
[[nodiscard]] Remaining remainingAt(const Day& day, const Outlook& outlook, Instant now,
                                    Instant bell);

/// The whole sheet with `schedule`, found for `remaining.problem`, in place.
[[nodiscard]] RunSheet rejoin(const Remaining& remaining, const plan::Schedule& schedule);

}  // namespace cinder::live
