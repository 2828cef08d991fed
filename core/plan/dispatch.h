#pragma once

/// What becomes of a plan when durations turn out different: a forward pass that keeps every order
/// the plan decided (who does what after what, which task hands its place on the grate to which)
/// and lets only the times move. The live projection and the risk simulation are both this pass,
/// with different durations.

#include <optional>
#include <span>
#include <vector>

#include "plan/solution.h"

namespace cinder::plan {

/// What is already known of one task; everything unset is still to come. Instants are distances
/// from the bell in milliseconds, because a crew does not live in half-minutes.
struct Actual {
    std::optional<Duration> start;
    std::optional<Duration> finish;
    bool isSkipped = false;
    /// Hands-on segments already done (turns), counted from the first.
    std::int32_t piecesDone = 0;
};

struct Projected {
    Duration start{0};
    Duration finish{0};
    /// How late the start may be without moving the bell or breaking a maximum lag; negative when
    /// it already is too late.
    Duration slack{0};
    bool isCritical = false;
};

/// The orders a schedule implies, made once per plan and reused for every pass.
class Dispatch {
  public:
    Dispatch(const Problem& problem, const Schedule& schedule);

    /// Projects every task from `now`. `durations[i]` overrides task i's usual duration; empty
    /// means all usual. Tasks not started are not projected before `now`, nor before their planned
    /// start when they lean late. Time grows with tasks plus orders: microseconds for a day's plan.
    /// `bell` is where the serve time now lies relative to the planned bell (0 unless moved).
    [[nodiscard]] std::vector<Projected> project(std::span<const Actual> actuals, Duration now,
                                                 Duration bell = Duration{0},
                                                 std::span<const Duration> durations = {}) const;

    /// The latest projected finish among the tasks that must be done by the bell.
    [[nodiscard]] Duration readyAt(std::span<const Projected> projected) const;

  private:
    struct Order {
        TaskIndex before = 0;
        TaskIndex after = 0;
        End beforeEnd = End::Finish;
        End afterEnd = End::Start;
        Duration lag{0};
    };
    const Problem* problem_;
    const Schedule* schedule_;
    std::vector<Order> orders_;
    std::vector<TaskIndex> topological_;
};

}  // namespace cinder::plan
