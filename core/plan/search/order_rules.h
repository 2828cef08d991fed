#pragma once

/// Orders to place members in: the first ones, and new ones made from old.

#include "base/rng.h"
#include "plan/search/arena.h"

namespace cinder::plan::search {

/// Makes and mixes sequences for one project. Buffers are sized once; nothing allocates later.
class OrderRules {
  public:
    /// `horizon`: the longer of both directions' frames.
    OrderRules(const Project& project, const Distances* distances, Slot horizon);

    /// A random order that leans towards members with a long way to go behind them: each next one
    /// is drawn by its regret against the shortest tail. Source: the regret-based biased random
    /// sampling of Drexl (1991) with the latest-finish rule; from memory.
    void sample(Rng& rng, double eagerness, Sequence& out);

    /// Latest first: the order in which the other direction places what `draft` holds, for a
    /// justification. `draft` belongs to the opposite direction.
    void byFinish(const Draft& draft, Sequence& out);

    /// Keeps the stretch of `father` in which the resources are busiest, and lets `mother` order
    /// what lies before and after it. Both are given as drafts of the opposite direction. Sources:
    /// V. Valls, F. Ballestín, S. Quintanilla, EJOR 185 (2008) for the peaks; D. Debels,
    /// M. Vanhoucke, "A bi-population based genetic algorithm for the RCPSP", LNCS 3483 (2005) for
    /// breeding each direction's schedules from the other's; from memory.
    void crossPeak(Rng& rng, const Draft& father, const Draft& mother, Sequence& out);

    /// Moves a few members to other places that respect the links.
    void mutate(Rng& rng, double chance, Sequence& sequence);

    /// Repairs an order that does not respect the links, keeping it otherwise.
    void makeFeasible(Sequence& sequence);

  private:
    void loadProfile(const Draft& draft);

    const Project& project_;
    Row<Slot> tail_;            ///< least time from a member's start to the end of everything
    Row<std::int64_t> weight_;  ///< resource use per slot, each resource scaled by how scarce it is
    Row<Range> followersOf_;
    Row<Member> followers_;
    Row<std::int32_t> openBefore_;
    Row<Member> ready_;
    Row<Member> before_;
    Row<Member> middle_;
    Row<Member> after_;
    Row<double> odds_;
    Row<std::int64_t> load_;  ///< per slot, then summed up
    Row<std::int32_t> place_;
};

}  // namespace cinder::plan::search
