#pragma once

/// The temporal network: the least time from one node to another, over all chains of links.
/// A node is the start of a member or, for an interruptible one, its finish as well.
/// Source: M. Bartusch, R. H. Möhring, F. J. Radermacher, "Scheduling project networks with
/// resource constraints and time windows", Annals of OR 16 (1988); from memory.

#include <optional>

#include "plan/search/project.h"

namespace cinder::plan::search {

constexpr Slot kUnrelated = -kNoSlot;

class Distances {
  public:
    /// Nothing when the links contradict each other (a cycle of positive length).
    [[nodiscard]] static std::optional<Distances> of(const Project& project);

    [[nodiscard]] Slot between(std::int32_t a, std::int32_t b) const { return d_[a * nodes_ + b]; }
    [[nodiscard]] const Slot* from(std::int32_t a) const { return d_.from(a * nodes_); }
    [[nodiscard]] std::int32_t nodes() const { return nodes_; }
    /// The node of a member's finish; for a member of fixed length the node of its start.
    [[nodiscard]] std::int32_t finishNode(Member j) const { return finishNode_[j]; }
    /// Must `a` be placed before `b`, by its distance?
    [[nodiscard]] bool precedes(Member a, Member b) const {
        const Slot there = between(a, b);
        return there > 0 || (there == 0 && between(b, a) < 0);
    }

  private:
    std::int32_t nodes_ = 0;
    Row<std::int32_t> finishNode_;
    Row<Slot> d_;
};

}  // namespace cinder::plan::search
