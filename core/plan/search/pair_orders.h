#pragma once

/// Pairs of stretches that can never overlap, because together they take more than there is: one
/// of them comes first, and often it is clear which.

#include <vector>

#include "plan/search/bounds_store.h"

namespace cinder::plan::search {

class PairOrders {
  public:
    /// `b` begins at least `abLag` after `a`, or `a` at least `baLag` after `b`.
    struct Pair {
        Side a = 0;
        Side b = 0;
        Slot abLag = 0;
        Slot baLag = 0;
        friend bool operator==(const Pair&, const Pair&) = default;
    };
    /// Among numbers below `numbers`.
    explicit PairOrders(std::int32_t numbers) : ofNumber_(static_cast<std::size_t>(numbers)) {}
    void add(const Pair& pair);
    /// Forgets those whose order follows from links.
    template <class Predicate>
    void eraseIf(Predicate isSettled) {
        for (auto& mine : ofNumber_)
            std::erase_if(mine, isSettled);
    }

    /// Looks at the pairs of a number, one of whose bounds has moved. False on a contradiction.
    bool propagate(BoundsStore& store, std::int32_t number) const;

    /// The pairs of a number, it itself as `a`.
    [[nodiscard]] const std::vector<Pair>& of(std::int32_t number) const {
        return ofNumber_[static_cast<std::size_t>(number)];
    }

  private:
    /// `second` cannot come first.
    static bool order(BoundsStore& store, Side first, Side second, Slot lag, Slot lagBack);

    std::vector<std::vector<Pair>> ofNumber_;
};

}  // namespace cinder::plan::search
