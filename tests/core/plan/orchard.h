#pragma once

/// Small problems to plan in tests, put together from a few words each.

#include <string>

#include "plan/problem.h"
#include "plan/solution.h"

namespace cinder::plan::test {

constexpr HalfMinutes minutes(int n) {
    return HalfMinutes{n * 2};
}

/// A task that takes `length` and no hands.
Task standing(const std::string& id, HalfMinutes length);
/// A task that keeps one person with `skill` busy from start to finish.
Task handsOn(const std::string& id, HalfMinutes length, SkillIndex skill = 0);
/// Handled for a minute at its start, every `interval`, and at its end.
Task tended(const std::string& id, HalfMinutes length, HalfMinutes interval, SkillIndex skill = 0);

Link after(TaskIndex from, TaskIndex to, HalfMinutes minLag = HalfMinutes{0});

/// One station, one skill everybody has, `people` people, no resources.
Problem emptyKitchen(int people);

/// A lamb leg on a grate of 10 units, its rest, its slicing, and the table to lay meanwhile; two
/// people, two stations two minutes apart. Tasks: 0 fire, 1 lamb, 2 rest, 3 slice, 4 lay, 5 serve.
Problem smallLunch();
/// A schedule of `smallLunch` made by hand that breaks no rule.
Schedule smallLunchPlan();

}  // namespace cinder::plan::test
