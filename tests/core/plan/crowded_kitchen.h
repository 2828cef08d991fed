#pragma once

/// A plain problem: invented, for tests of the search.

#include "plan/problem.h"

namespace cinder::plan::test {

/// A hundred tasks without hands that share two resources; each waits for up to two earlier ones
/// and a while after them.
Problem crowdedKitchen(std::uint64_t seed);

}  // namespace cinder::plan::test
