#pragma once

/// The plan everybody follows, and the document in which it travels: problem and schedule
/// together, so that no device has to build or to search and could come to another result.
///
/// The document is one JSON object, version 1:
///
///     version, bell        1, and the serve time it was made for (RFC 3339)
///     arrival              optional, half-minutes from the bell, as are all moments below
///     stations, skills     [{"id", "name"}]
///     walk                 [[half-minutes]], square
///     people               [{"id", "name", "skills": [index]}]
///     resources            [{"id", "name", "capacity", "steps": [[from, units]]}]
///     tasks                [{"id", "name", "kind", "dish", "batch", "station", "duration": [3],
///                            "hands": [{"offset", "length", "skill", "people", "act"}],
///                            "uses": [[resource, units]], "shortestPiece", "earliestStart",
///                            "latestFinish", "lean", "staleness", "endsByItself", "checklist",
///                            "checkEvery", "planned": {"start", "finish",
///                            "pieces": [[start, length, [person]]]}}]
///     links                [{"from", "to", "fromEnd", "toEnd", "minLag", "maxLag"}]
///
/// Names are objects from language tag to text. A member with its default value is left out.

#include <string>
#include <string_view>

#include "base/result.h"
#include "base/time.h"
#include "plan/solution.h"

namespace cinder::live {

/// Problem and schedule with the bell they were made for.
struct RunSheet {
    plan::Problem problem;
    plan::Schedule schedule;
    Instant bell;
    friend bool operator==(const RunSheet&, const RunSheet&) = default;
};

inline constexpr std::int32_t kRunSheetVersion = 1;

/// Why a document is not a run sheet that can be followed.
struct SheetFault {
    enum class What {
        NotJson,     ///< cut short, or something else
        Newer,       ///< written by a newer app
        WrongShape,  ///< a member is missing, of another type or out of its range
    };
    What what = What::WrongShape;
    std::string detail;
};

[[nodiscard]] std::string writeRunSheet(const RunSheet& sheet);

/// Every index in what comes back leads somewhere and the schedule has as many tasks and people as
/// the problem asks for; whether it is a good plan is for plan::check. Never throws.
[[nodiscard]] Result<RunSheet, SheetFault> readRunSheet(std::string_view document);

}  // namespace cinder::live
