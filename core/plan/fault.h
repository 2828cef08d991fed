#pragma once

#include <optional>

#include "plan/planner.h"

namespace cinder::plan {

/// What is wrong with a problem before any search, naming the tasks to blame: indices out of range,
/// negative lengths, segments outside their task or overlapping, links that contradict each other,
/// more people or units asked for than exist. Nothing when it can be searched.
[[nodiscard]] std::optional<NoPlan> findFault(const Problem& problem);

}  // namespace cinder::plan
