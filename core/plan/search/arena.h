#pragma once

/// Where a search takes place: the same members compiled in both directions of time.

#include <optional>

#include "plan/search/distances.h"
#include "plan/search/generation.h"
#include "plan/search/project.h"

namespace cinder::plan::search {

struct Arena {
    Project backward;
    Project forward;
    /// Only where there are maximum lags.
    std::optional<Distances> backwardDistances;
    std::optional<Distances> forwardDistances;

    [[nodiscard]] const Project& project(Direction d) const {
        return d == Direction::Backward ? backward : forward;
    }
    [[nodiscard]] const Distances* distances(Direction d) const {
        const auto& found = d == Direction::Backward ? backwardDistances : forwardDistances;
        return found ? &*found : nullptr;
    }
};

/// Nothing when the links contradict each other.
[[nodiscard]] std::optional<Arena> makeArena(const Problem& problem, const Division& division);

/// A cost to compare drafts by, least first: missed windows, then length, then staleness, then
/// hand-overs between people.
[[nodiscard]] std::int64_t costOf(const Problem& problem, const Project& project,
                                  const Draft& draft, Slot floor);

/// The length in such a cost, or `kNoSlot` where a window is missed.
[[nodiscard]] Slot lengthOf(std::int64_t cost);

/// A forward draft read backward and slid so that it ends at the bell, where `isSlidable` permits.
void mirror(const Project& forward, const Draft& draft, Draft& backward);

/// The draft in real time; tasks that are not members are taken from `fixed`.
[[nodiscard]] Schedule toSchedule(const Problem& problem, const Project& project,
                                  const Draft& draft, const Schedule& fixed);

}  // namespace cinder::plan::search
