#pragma once

/// Pairs of stretches that can never overlap, because together they take more than there is: one
/// of them comes first, and often it is clear which.

#include <vector>

#include "plan/search/cumulative.h"

namespace cinder::plan::search {

class PairOrders {
  public:
    /// `b` begins at least `abLag` after `a`, or `a` at least `baLag` after `b`.
    void add(Side a, Side b, Slot abLag, Slot baLag);

    /// Looks at the pairs of the number behind `moved`. False on a contradiction.
    bool propagate(BoundsStore& store, Side moved) const;

    struct Pair {
        Side a = 0;
        Side b = 0;
        Slot abLag = 0;
        Slot baLag = 0;
    };
    [[nodiscard]] const std::vector<Pair>& pairs() const { return pairs_; }

  private:
    [[nodiscard]] static bool look(BoundsStore& store, const Pair& pair);
    /// `second` cannot come first.
    static bool order(BoundsStore& store, Side first, Side second, Slot lag, Slot lagBack);

    std::vector<Pair> pairs_;
    std::vector<std::vector<std::size_t>> ofNumber_;
};

}  // namespace cinder::plan::search
