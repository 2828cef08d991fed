#pragma once

/// What follows from a capacity: stretches that surely lie at a moment leave the others no room
/// there. Each conclusion names the moment and those who fill it. Source: the time-table rule with
/// pointwise explanations of A. Schutt, T. Feydy, P. J. Stuckey, M. G. Wallace, Constraints 16
/// (2011); from memory.

#include <vector>

#include "plan/search/bounds_store.h"

namespace cinder::plan::search {

/// A stretch of `length` slots that begins `offset` after the number behind `start` and takes
/// `units` of the capacity.
struct Use {
    Side start = 0;
    Slot offset = 0;
    Slot length = 0;
    std::int64_t units = 0;
};

/// A part of the capacity that is gone whatever happens.
struct FixedLoad {
    Slot begin = 0;
    Slot end = 0;
    std::int64_t units = 0;
};

class Cumulative {
  public:
    Cumulative(std::int64_t capacity, std::vector<Use> uses, std::vector<FixedLoad> loads);

    /// Raises what must be raised, once around. False on a contradiction.
    bool propagate(BoundsStore& store);

    [[nodiscard]] const std::vector<Use>& uses() const { return uses_; }
    [[nodiscard]] std::int64_t capacity() const { return capacity_; }

  private:
    struct Step {
        Slot begin = 0;
        Slot end = 0;
        std::int64_t height = 0;
    };
    /// When a use surely lies, and whether its bounds have moved since they were last followed.
    struct Part {
        Slot from = 0;
        Slot until = 0;
        bool hasMoved = true;
    };
    struct Change {
        Slot at = 0;
        std::int64_t units = 0;
    };
    [[nodiscard]] static Slot surelyFrom(const BoundsStore& store, const Use& use) {
        return store.most(use.start) + use.offset;
    }
    [[nodiscard]] static Slot surelyUntil(const BoundsStore& store, const Use& use) {
        return store.least(use.start) + use.offset + use.length;
    }
    bool look(const BoundsStore& store);
    void makeProfile();
    void blame(BoundsStore& store, Slot moment, std::int64_t excess, const Use* except);
    bool pushLater(BoundsStore& store, const Use& use);
    bool pushEarlier(BoundsStore& store, const Use& use);
    [[nodiscard]] std::int64_t loadAt(Slot moment) const;

    std::int64_t capacity_;
    std::vector<Use> uses_;
    std::vector<FixedLoad> loads_;
    std::int64_t most_ = 0;
    std::vector<Step> profile_;
    std::vector<Change> changes_;
    std::vector<Part> seen_;  ///< per use, at the last look
    bool isKnown_ = false;    ///< the profile is that of `seen_`
    bool isSettled_ = false;  ///< and everything that follows from it has been raised
    std::vector<std::size_t> chosen_;
};

}  // namespace cinder::plan::search
