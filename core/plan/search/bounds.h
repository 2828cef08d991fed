#pragma once

/// What no schedule can beat.

#include "plan/search/arena.h"

namespace cinder::plan::search {

/// The longest chain of links and windows, in slots: a bound on the makespan of `project`.
[[nodiscard]] Slot criticalPath(const Project& project);

/// The most that any one resource, or the people with any one set of skills, have to do, over what
/// they can do, added to the least time that passes before and after such work: for each resource
/// and each pair of heads and tails, members that can neither start earlier nor end later.
/// Source: the energy bound between heads and tails; Brucker et al., EJOR 112 (1999); from memory.
[[nodiscard]] Slot energyBound(const Project& project);

}  // namespace cinder::plan::search
