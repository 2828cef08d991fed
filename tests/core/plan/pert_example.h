#pragma once

#include <array>

#include "orchard.h"
#include "plan/solution.h"

namespace cinder::plan::test {

/// Fourteen activities of building a factory; a week is a minute here. Source: see test_pert.cpp.
struct PertExample {
    PertExample();
    HalfMinutes week = minutes(1);
    Problem problem;
    /// Some order that breaks no link; nothing is shared, so it implies no other order.
    Schedule schedule;
    /// The mean duration of each activity, (low + 4 usual + high) / 6.
    std::vector<Duration> means;
};

}  // namespace cinder::plan::test
