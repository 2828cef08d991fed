#pragma once

/// What follows from capacities: stretches that surely lie at a moment leave the others no room
/// there. Each conclusion names the moment and those who fill it. Source: the time-table rule with
/// pointwise explanations of A. Schutt, T. Feydy, P. J. Stuckey, M. G. Wallace, Constraints 16
/// (2011); from memory. Here up to a word of capacities, lane by lane, is followed at once.

#include <vector>

#include "plan/search/bounds_store.h"

namespace cinder::plan::search {

/// A stretch of `length` slots that begins `offset` after the number behind `start` and takes
/// `demand` of the capacities.
struct Use {
    Side start = 0;
    Slot offset = 0;
    Slot length = 0;
    std::uint64_t demand = 0;
};

class Cumulative {
  public:
    /// `free`: per slot, what the uses may take together. They must not reach beyond it.
    Cumulative(const Lanes& lanes, Row<std::uint64_t> free, std::vector<Use> uses);

    /// Raises what must be raised, once around. False on a contradiction.
    bool propagate(BoundsStore& store);

  private:
    /// A use at the last look: from when it surely lies until when (before that: nowhere), what is
    /// booked of it, and whether its bounds have moved since they were last followed.
    struct Part {
        Slot from = 0;
        Slot until = 0;
        Slot bookedFrom = 0;
        Slot bookedUntil = 0;
        bool hasMoved = true;
    };
    [[nodiscard]] static Slot surelyFrom(const BoundsStore& store, const Use& use) {
        return store.most(use.start) + use.offset;
    }
    [[nodiscard]] static Slot surelyUntil(const BoundsStore& store, const Use& use) {
        return store.least(use.start) + use.offset + use.length;
    }
    [[nodiscard]] std::int64_t unitsOf(std::uint64_t word, std::int32_t lane) const;
    [[nodiscard]] bool fits(std::uint64_t demand, Slot at) const {
        return lanes_.suffices(free_[at], demand);
    }
    void look(const BoundsStore& store);
    bool book(BoundsStore& store);
    bool book(BoundsStore& store, const Use& use, Slot from, Slot until);
    [[nodiscard]] Slot firstFull(std::uint64_t demand, Slot from, Slot until) const;
    void blame(BoundsStore& store, Slot moment, const Use& use);
    bool pushLater(BoundsStore& store, const Use& use);
    bool pushEarlier(BoundsStore& store, const Use& use);

    Lanes lanes_;
    std::vector<Use> uses_;
    /// Per lane, those who take of it, the largest first.
    std::vector<std::vector<std::size_t>> byUnits_;
    Row<std::uint64_t> most_;  ///< per slot, free without uses
    Row<std::uint64_t> free_;  ///< per slot, with what is booked
    std::vector<Part> seen_;   ///< per use, at the last look
    std::vector<std::size_t> grown_;
    Slot fullerFrom_ = 0;  ///< where less is free than when everything was last followed
    Slot fullerUntil_ = 0;
    std::vector<std::size_t> chosen_;
    std::vector<std::size_t> fewest_;
};

}  // namespace cinder::plan::search
