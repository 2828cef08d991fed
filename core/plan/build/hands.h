#pragma once

#include <vector>

#include "event/step.h"
#include "plan/problem.h"

namespace cinder::plan {

/// The stretches of a step of usual duration `usual` that hold people. A turn so close before the
/// take-off that it would only burn fingers (less than half an interval) is left out.
[[nodiscard]] std::vector<HandsOn> handsOn(const event::Hands& hands, HalfMinutes usual,
                                           SkillIndex skill);

}  // namespace cinder::plan
