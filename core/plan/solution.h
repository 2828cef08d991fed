#pragma once

/// A plan as plain data, apart from the search that found it.

#include <optional>
#include <vector>

#include "plan/problem.h"

namespace cinder::plan {

/// One unbroken stretch of hands-on work and who does it.
struct Piece {
    FromBell start{0};
    HalfMinutes length{0};
    std::vector<PersonIndex> people;  ///< ascending, as many as the segment asks for
    friend bool operator==(const Piece&, const Piece&) = default;
};

/// Where one task lies. `pieces` answers `Task::hands` one to one, in order; for an interrupted
/// task it has as many entries as there are pieces, whose lengths add up to the duration.
struct PlannedTask {
    FromBell start{0};
    FromBell finish{0};
    std::vector<Piece> pieces;
    friend bool operator==(const PlannedTask&, const PlannedTask&) = default;
};

/// `tasks[i]` answers `Problem::tasks[i]`.
struct Schedule {
    std::vector<PlannedTask> tasks;
    friend bool operator==(const Schedule&, const Schedule&) = default;
};

/// The start of the earliest task: the latest moment the crew may arrive under this plan.
[[nodiscard]] FromBell firstStart(const Schedule& schedule);

}  // namespace cinder::plan
