#pragma once

/// Bounds of whole numbers that are raised for reasons, and lessons from contradictions: the heart
/// of the exact arm.
///
/// Every number x has two sides, x itself and -x, and all that is ever known is that a side is at
/// least some value. What follows from what is kept; when a number is left with no value, the
/// reasons are followed back to the one bound of the last decision from which everything else
/// followed, and the lesson ("not all of these at once") is kept and obeyed from then on. Sources:
/// A. Schutt, T. Feydy, P. J. Stuckey, M. G. Wallace, "Explaining the cumulative propagator",
/// Constraints 16 (2011) for learning in this problem; J. P. Marques-Silva, K. A. Sakallah, IEEE
/// Trans. Computers 48 (1999) for the first unique implication point; from memory.

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "plan/search/project.h"

namespace cinder::plan::search {

/// The side of number x that grows with x is 2x, the other one 2x + 1.
using Side = std::int32_t;

/// The value of `side` is at least `value`.
struct Bound {
    Side side = 0;
    Slot value = 0;
    friend bool operator==(const Bound&, const Bound&) = default;
};

[[nodiscard]] constexpr Bound opposite(Bound bound) {
    return {bound.side ^ 1, 1 - bound.value};
}

class BoundsStore {
  public:
    /// Returns the side that grows with the new number.
    Side add(Slot low, Slot high);
    /// From now on `to` is at least `from` plus `lag`; both directions of the two numbers.
    void addDifference(Side from, Side to, Slot lag);

    [[nodiscard]] Slot least(Side side) const { return least_[index(side)]; }
    [[nodiscard]] Slot most(Side side) const { return -least_[index(side ^ 1)]; }
    [[nodiscard]] bool isFixed(Side side) const { return least(side) == most(side); }
    [[nodiscard]] bool isTrue(Bound bound) const { return least(bound.side) >= bound.value; }
    [[nodiscard]] bool isFalse(Bound bound) const { return most(bound.side) < bound.value; }

    /// Collects one reason of the next `raise`; it must be true.
    void because(Bound bound) { reasons_.push_back(bound); }
    /// Raises a bound for the reasons collected since the last one. False on a contradiction.
    bool raise(Bound bound);
    /// The collected reasons contradict each other. Always false.
    bool contradict();

    /// Takes a decision on top of everything that is known.
    void decide(Bound bound);
    /// Takes back all decisions. When lessons have become many, the older half of them go, short
    /// ones excepted; how many are many grows with every time, so that a proof comes to its end.
    void restart();
    [[nodiscard]] std::int32_t depth() const {
        return static_cast<std::int32_t>(levelBegins_.size());
    }

    /// Follows differences and lessons as far as they go. False on a contradiction. Numbers whose
    /// bounds have moved are added to `moved`, once for each move.
    bool propagate(std::vector<Side>& moved);
    /// After a contradiction: keeps the lesson, goes back as far as it leads and obeys it. False
    /// when the contradiction depends on no decision.
    bool learn();

    /// The hottest bound, neither true nor false, of the newest lesson none of whose bounds is
    /// true; nothing when there is none among the last thousand. Source of asking the newest: E.
    /// Goldberg, Y. Novikov, "BerkMin: A Fast and Robust SAT-Solver", DATE (2002); from memory.
    [[nodiscard]] std::optional<Bound> mostWanted() const;

    /// How often a number had a part in recent contradictions.
    [[nodiscard]] double heat(Side side) const { return heat_[index(side >> 1)]; }

  private:
    struct Entry {
        Side side = 0;
        Slot value = 0;
        Slot before = 0;
        std::int32_t previous = -1;  ///< the last entry of the same side
        std::int32_t level = 0;
        std::int32_t reasonsBegin = 0;
        std::int32_t reasonsEnd = 0;
    };
    struct Edge {
        Side to = 0;
        Slot lag = 0;
    };
    /// A lesson to look at when the side reaches `threshold`: one of its bounds is then false.
    struct Watch {
        std::int32_t lesson = 0;
        Slot threshold = 0;
        Bound other;  ///< of the lesson; while it is true there is nothing to look at
    };

    static std::size_t index(std::int32_t i) { return static_cast<std::size_t>(i); }
    void backTo(std::int32_t level);
    bool obey(Side side);
    bool obeyOne(const Range& lesson);
    void need(Bound bound);
    void warm(Side side);
    bool isImplied(std::int32_t entry) const;
    std::int32_t collectLesson(std::int32_t last);
    void keepLesson();
    void watch(std::int32_t lesson);
    void forget();

    std::vector<Slot> least_;
    std::vector<std::int32_t> lastEntry_;
    std::vector<std::vector<Edge>> edges_;
    std::vector<std::vector<Watch>> watches_;
    std::vector<Entry> trail_;
    std::size_t followed_ = 0;
    std::vector<std::int32_t> levelBegins_;
    std::vector<Bound> reasons_;
    std::size_t reasonsKept_ = 0;
    std::vector<Bound> contradiction_;

    std::vector<Range> lessons_;
    std::vector<Bound> lessonBounds_;
    std::size_t mostLessons_ = 500;

    // While learning.
    std::vector<std::int32_t> neededEntry_;
    std::vector<Slot> neededValue_;
    std::vector<Side> touched_;
    std::int32_t openAtLevel_ = 0;
    std::int32_t levelBegin_ = 0;
    std::vector<Bound> lesson_;

    std::vector<double> heat_;
    double warmth_ = 1.0;
};

}  // namespace cinder::plan::search
