#pragma once

/// One schedule walked from window to window, in both directions of time: what a long search of a
/// larger plain problem does after the evolution. A window that cannot shorten the schedule changes
/// it all the same; a longer one is taken up as long as it stays near the best, ever nearer towards
/// the end. Source of the last: G. Dueck, "New Optimization Heuristics: The Great Deluge Algorithm
/// and the Record-to-Record Travel", J. Comput. Phys. 104 (1993); from memory.

#include "plan/search/arena.h"
#include "plan/search/limits.h"
#include "plan/search/window.h"

namespace cinder::plan::search {

class WindowSearch {
  public:
    /// `arena` must be plain, have two members or more, and outlive the search.
    WindowSearch(const Arena& arena, std::uint64_t seed);

    /// Shortens `best`, a backward draft, until a limit is reached. Allocates nothing.
    void run(const Limits& limits, Draft& best);

    [[nodiscard]] std::int64_t passes() const;

  private:
    static constexpr std::size_t kBackward = 0;
    static constexpr std::size_t kForward = 1;

    [[nodiscard]] const Project& project(std::size_t side) const {
        return side == kBackward ? arena_.backward : arena_.forward;
    }
    void sortByStart();
    bool generate(Slot longest = kNoSlot);
    void justify();
    void turn();
    void rework(Slot longest, std::int64_t passes);

    const Arena& arena_;
    Rng rng_;
    std::vector<Generator> makers_;
    std::vector<Window> windows_;
    std::size_t side_ = kBackward;
    Sequence sequence_;
    Draft draft_;  ///< of `side_`; its order is `sequence_`
    Draft kept_;
    Row<std::int32_t> placeOfStart_;  ///< while sorting: the next place of those that start there
};

}  // namespace cinder::plan::search
