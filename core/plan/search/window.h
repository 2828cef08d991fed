#pragma once

/// The middle of a schedule, taken out and laid anew.
///
/// Who comes before the window stays; who comes after it is pushed as late as the makespan allows.
/// Between them the window's members are laid in one order after another, each of which differs
/// from the last by one move; who comes by no other room than before keeps its start. An order is
/// judged by its clash: how much of what comes after would overlap it (in units of resources and in
/// slots of links) were all that one slot earlier. An order without clash makes the whole schedule
/// a slot shorter. So the search has a slope to go down where the makespan alone is flat.
///
/// For plain problems. Source of taking schedules apart by windows of time: D. Debels,
/// M. Vanhoucke, "A Decomposition-Based Genetic Algorithm for the Resource-Constrained Project
/// Scheduling Problem", Operations Research 55 (2007); from memory. The clash is our own.

#include "base/rng.h"
#include "plan/search/former_pass.h"
#include "plan/search/generation.h"
#include "plan/search/slot_set.h"

namespace cinder::plan::search {

class Window {
  public:
    /// Both directions of the same members; they must outlive the window.
    Window(const Project& project, const Project& opposite);

    /// Takes out the places `range` of `order`, which sorts `draft` by start, links respected.
    /// False when those outside clash with each other already.
    bool open(const Row<Member>& order, const Draft& draft, Range range);

    /// Makes moves, up to so many placements, keeps each that does not add to the clash, and stops
    /// when there is none, or when `patience` moves in a row have not lessened it.
    void improve(Rng& rng, std::int64_t placements, std::int32_t patience);

    [[nodiscard]] std::int64_t clash() const { return clash_; }
    [[nodiscard]] bool isShorter() const { return clash() == 0; }
    /// Whether what comes after fits where it was pushed to.
    [[nodiscard]] bool isAsLong() const;
    /// The order as laid last, in places `range` of the order given to `open`.
    void readOrder(Row<Member>& order) const;
    /// The starts as laid last, one slot shorter when `isShorter`.
    void readStarts(Row<Slot>& start) const;

    /// All members, links respected.
    [[nodiscard]] const Row<Member>& ranked() const { return ranked_; }
    /// Start times sought so far; a start that is kept counts for nothing.
    [[nodiscard]] std::int64_t placements() const { return placements_ + pushedBefore_.sought(); }

  private:
    static constexpr std::int64_t kWhole = 1000;  ///< the clash of one slot of a whole resource
    static constexpr std::int64_t kUnknown = -1;
    enum class Zone : std::uint8_t { Before, Window, After };
    /// One member taken to another place, and the places in which the order changed by that.
    struct Move {
        Range places;
        bool isLater = false;
    };

    void rankMembers();
    void pushAfter(const Draft& draft);
    void boundMembers(const Draft& draft);
    [[nodiscard]] std::int64_t leastClash(Member j, Slot at) const;
    [[nodiscard]] std::int64_t clashOf(Member j) const;
    bool occupyBefore(const Draft& draft);
    [[nodiscard]] Slot readyAt(Member j) const;
    template <class Measure>
    [[nodiscard]] std::int64_t sumOfLanes(std::int32_t word, Measure measure) const;
    [[nodiscard]] std::int64_t shortage(Slot at, Slot shift) const;
    [[nodiscard]] std::int64_t shortageDueTo(const std::uint64_t* demand, Slot at) const;
    [[nodiscard]] std::int64_t shortageBetween(Slot from, Slot until, Slot shift) const;
    void put(Member j);
    void takeFrom(std::int32_t place);
    [[nodiscard]] bool changesNothing(const Move& move);
    std::int32_t lay(const Move& move);
    void seeMove(const Move& move);
    void seeStart(Member j);
    [[nodiscard]] bool comesNoEarlier(Member j) const;
    [[nodiscard]] bool keepsStart(Member j) const;
    void place(Range range);
    void keep(std::int32_t from);
    void restore(std::int32_t from, std::int32_t laid);
    Move move(Rng& rng);

    const Project& project_;
    const Project& opposite_;
    Row<Member> ranked_;
    Row<std::int32_t> rank_;  ///< place in that
    Row<Range> arcsOutOf_;
    Row<Arc> out_;
    Row<std::int64_t> weight_;  ///< per lane: one slot of one unit

    Slot makespan_ = 0;
    Range range_;
    std::int32_t count_ = 0;
    Row<Zone> zone_;
    Row<Member> after_;  ///< from the latest finish on
    Row<Slot> pushed_;   ///< starts in the opposite direction
    /// Of those after the window: their start. Of the window's: the latest start that the links to
    /// those allow.
    Row<Slot> latest_;
    Row<Slot> due_;           ///< and that the links through others of the window allow
    Row<Slot> head_;          ///< earliest start after those before the window
    Row<std::uint64_t> use_;  ///< of those after the window, slot by slot
    Slot firstUse_ = 0;       ///< the first slot of that
    Slot lastBefore_ = 0;     ///< the last finish before the window
    Timeline timeline_;       ///< with those before the window, and the window as laid
    Timeline pushing_;        ///< of the opposite direction
    FormerPass pushedBefore_;
    Row<Member> order_;
    Row<Slot> ready_;  ///< the earliest start that links allow
    Row<Slot> start_;
    std::int64_t clash_ = 0;
    Row<std::int64_t> clashBefore_;  ///< per place, of those laid before it
    Row<Member> keptOrder_;
    Row<Slot> keptReady_;
    Row<Slot> keptStart_;
    Row<std::int64_t> keptClashBefore_;  ///< or `kUnknown`
    std::int64_t keptClash_ = 0;
    SlotSet freed_;                ///< while laying: where less is laid so far than there was
    Row<std::int32_t> place_;      ///< in the order
    std::int64_t placements_ = 0;  ///< while laying
};

}  // namespace cinder::plan::search
