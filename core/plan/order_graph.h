#pragma once

/// The orders a finished schedule implies: who does what after what, and which task hands its
/// place on the grate to which. Kept while times move, they keep the plan valid.

#include <vector>

#include "base/time.h"
#include "plan/solution.h"

namespace cinder::plan {

/// `after.afterEnd` comes at least `lag` after `before.beforeEnd`.
struct Order {
    TaskIndex before = 0;
    TaskIndex after = 0;
    End beforeEnd = End::Finish;
    End afterEnd = End::Start;
    Duration lag{0};
    friend bool operator==(const Order&, const Order&) = default;
};

// Of tasks that are skipped, where `isSkipped` says so (empty: none), there are no orders: they
// hold nobody and nothing, wherever they lie in the schedule.

/// Each person goes from one stretch of work to the next, with the walk between. Only stretches at
/// either end of a task bind: a touch in the middle of a cook is short, is fitted in by whoever is
/// near, and must not chain two batches to each other.
[[nodiscard]] std::vector<Order> personOrders(const Problem& problem, const Schedule& schedule,
                                              const std::vector<bool>& isSkipped = {});

/// Each unit of a resource passes from a task that has finished to one that starts; who hands to
/// whom is fixed greedily, preferring units that are free anyway, then those free longest.
/// Source: the resource flow of Artigues, Michelon & Reusser, EJOR 149 (2003); from memory.
[[nodiscard]] std::vector<Order> resourceOrders(const Problem& problem, const Schedule& schedule,
                                                const std::vector<bool>& isSkipped = {});

}  // namespace cinder::plan
