#pragma once

/// What becomes of a plan when durations turn out different: a forward pass that keeps every order
/// the plan decided (who does what after what, which task hands its place on the grate to which)
/// and lets only the times move. The live projection and the risk simulation are both this pass,
/// with different durations.

#include <optional>
#include <span>
#include <vector>

#include "plan/bell_side.h"
#include "plan/order_graph.h"
#include "plan/solution.h"

namespace cinder::plan {

/// What is already known of one task; everything unset is still to come. Instants are distances
/// from the planned bell in milliseconds, because a crew does not live in half-minutes.
struct Actual {
    std::optional<Duration> start;
    std::optional<Duration> finish;
    bool isSkipped = false;
    /// Hands-on segments already done (turns), counted from the first.
    std::int32_t piecesDone = 0;
    friend bool operator==(const Actual&, const Actual&) = default;
};

struct Projected {
    Duration start{0};
    Duration finish{0};
    /// How late the start (of a running task: the finish) may be without moving the bell or
    /// breaking a maximum lag; negative when it already is too late. 0 for done and skipped tasks.
    Duration slack{0};
    /// Has the smallest slack of all that is still to be done by the bell.
    bool isCritical = false;
    bool isSkipped = false;  ///< its times say only what it hands on
};

/// Which tasks these skip.
[[nodiscard]] std::vector<bool> skippedIn(std::span<const Actual> actuals);

/// The orders a schedule implies, made once per plan and reused for every pass.
class Dispatch {
  public:
    /// Both must outlive this object. `schedule` must have passed `check`, but for tasks that
    /// `isSkipped` names (empty: none), for a plan that was made without them may run across them,
    /// and but for maximum lags: one that the plan exceeds is taken to be as long as planned.
    Dispatch(const Problem& problem, const Schedule& schedule,
             const std::vector<bool>& isSkipped = {});

    /// Projects every task from `now`. `durations[i]` overrides task i's usual duration; empty
    /// means all usual. Tasks not started are not projected before `now`, nor before their planned
    /// start when they lean late. A running task finishes no earlier than `now` plus the touches
    /// it still needs. A skipped task takes no time and hands everything on. An interrupted task
    /// keeps the length of its planned interruptions. Time grows with tasks plus orders:
    /// microseconds for a day's plan. `bell` is where the serve time now lies relative to the
    /// planned bell (0 unless moved); planned starts and windows move with it.
    [[nodiscard]] std::vector<Projected> project(std::span<const Actual> actuals, Duration now,
                                                 Duration bell = Duration{0},
                                                 std::span<const Duration> durations = {}) const;

    /// The latest projected finish among the tasks that must be done by the bell and are not
    /// skipped; with none, long ago.
    [[nodiscard]] Duration readyAt(std::span<const Projected> projected) const;

    /// The critical chain of what is still to be done: from the task that ends last by the bell
    /// back over whatever holds it up, as long as that is critical too; in order of time. A delay
    /// of any link is a delay of the bell, less the slack that all of them share. Empty when
    /// nothing is left to do by the bell.
    [[nodiscard]] std::vector<TaskIndex> criticalChain(std::span<const Projected> projected) const;

  private:
    friend class Pass;  ///< one projection
    void orderTasks();

    const Problem* problem_;
    const Schedule* schedule_;
    /// Push later; sorted so that one sweep suffices for almost every set of durations.
    std::vector<Order> orders_;
    /// Maximum lags: `after.afterEnd` comes at most `lag` after `before.beforeEnd`.
    std::vector<Order> holds_;
    /// The planned length of each task beyond its duration: its interruptions.
    std::vector<Duration> pauses_;
    std::vector<BellSide> sides_;
};

}  // namespace cinder::plan
