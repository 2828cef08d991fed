#pragma once

#include <cstdint>

#include "plan/problem.h"

namespace cinder::plan::test {

/// A random but feasible-looking day with every feature of the model: skills, touches,
/// interruption, walking, capacity steps, maximum lags and work after the bell. Same seed, same
/// day.
[[nodiscard]] Problem inventDay(std::uint64_t seed, int tasks, int people);

}  // namespace cinder::plan::test
