#pragma once

/// On which side of the bell each task lies; decided once by windows and links, never by a search.

#include <cstdint>
#include <vector>

#include "plan/problem.h"

namespace cinder::plan {

enum class BellSide : std::uint8_t {
    By,      ///< must be finished by its latest finish, the bell when it names none
    Across,  ///< may lie across the bell: its latest finish is after it
    After,   ///< starts at the bell or later, or follows a task that does
};

/// One side per task. A task is After when its earliest start is at the bell or later, or when it
/// has no latest finish by the bell and a link puts it behind the finish of a task that is After.
[[nodiscard]] std::vector<BellSide> bellSides(const Problem& problem);

}  // namespace cinder::plan
