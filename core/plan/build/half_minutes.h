#pragma once

/// Planning units from real ones, rounded to the safe side.

#include "base/time.h"
#include "plan/problem.h"

namespace cinder::plan {

[[nodiscard]] inline HalfMinutes roundedUp(Duration duration) {
    return std::chrono::ceil<HalfMinutes>(duration);
}
[[nodiscard]] inline HalfMinutes roundedDown(Duration duration) {
    return std::chrono::floor<HalfMinutes>(duration);
}

}  // namespace cinder::plan
