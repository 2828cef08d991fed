#pragma once

/// The serial schedule generation scheme: members are placed one by one in the order of a list,
/// each as early as everything placed before it allows.
///
/// Where maximum lags exist, a member that comes too late for one unplaces whoever it is too late
/// for, makes them later by the missing time, and the pass goes on. Sources: R. Kolisch, EJOR 90
/// (1996) for the scheme; B. Franck, K. Neumann, C. Schwindt, OR Spektrum 23 (2001) for
/// unscheduling; both from memory.

#include <optional>

#include "plan/search/distances.h"
#include "plan/search/former_pass.h"
#include "plan/search/project.h"

namespace cinder::plan::search {

/// A stretch of hands-on work as placed; `people` are as many as the segment asks for.
struct PlacedPiece {
    Slot start = 0;
    Slot length = 0;
    People people = 0;
    friend bool operator==(const PlacedPiece&, const PlacedPiece&) = default;
};

/// A schedule in slots. Sized once per project, then overwritten.
struct Draft {
    explicit Draft(const Project& project);
    Draft() = default;

    Row<Slot> start;
    Row<Slot> finish;
    Row<PlacedPiece> pieces;  ///< at `Project::piecesOf`
    Row<std::int32_t> pieceCount;
    Slot makespan = 0;  ///< the latest finish
    Slot lateness = 0;  ///< by how much windows are missed, summed
    friend bool operator==(const Draft&, const Draft&) = default;
};

/// Who would rather do a member's work; no bit set leaves it to the rule. Same size as the list.
struct Sequence {
    Row<Member> order;
    Row<std::uint8_t> taste;  ///< person + 1, or 0
};

class Generator {
  public:
    /// `project` must outlive the generator; `distances` is needed where there are maximum lags.
    Generator(const Project& project, const Distances* distances);

    /// From now on each pass is held against the last whole one. For plain projects, where orders
    /// differ little.
    void rememberPasses() { former_.emplace(project_); }

    /// One pass. Nothing starts before `floor`. False when there is no room in the frame,
    /// unscheduling went round in circles, or the makespan is bound to exceed `longest` (not
    /// foreseen where there are maximum lags); `draft` is then unusable. Does not allocate. Without
    /// maximum lags the order must respect the links.
    bool generate(const Sequence& sequence, Slot floor, Draft& draft, Slot longest = kNoSlot);

    /// Members placed so far, over all passes; a pass that places one again counts it once, one
    /// that is known to start as in the last pass counts for nothing.
    [[nodiscard]] std::int64_t placements() const {
        return placements_ + (former_ ? former_->sought() : 0);
    }

  private:
    bool generateInOrder(const Sequence& sequence, Slot floor, Draft& draft, Slot longest);
    bool generateWithLags(const Sequence& sequence, Slot floor, Draft& draft);
    bool place(Member j, Slot from, std::uint8_t taste, Draft& draft);
    bool placeWhole(Member j, Slot from, std::uint8_t taste, Draft& draft);
    bool placeSplit(Member j, Slot from, std::uint8_t taste, Draft& draft);
    bool layPieces(Member j, Slot from, std::int32_t person, std::int32_t& count, Slot& finish);
    bool chooseCrew(Member j, Slot at, std::uint8_t taste, Draft& draft);
    [[nodiscard]] People pick(People among, std::int32_t wanted, People before,
                              std::uint8_t taste) const;
    void commit(Member j, Draft& draft);
    void withdraw(Member j, Draft& draft);

    [[nodiscard]] Member nextReady(const Sequence& sequence) const;
    void tightenAfter(Member j, const Draft& draft);
    bool unplaceFor(Member j, Slot missing, Slot floor, Draft& draft);
    void refreshWindows(Slot floor, const Draft& draft);

    const Project& project_;
    const Distances* distances_;
    Timeline timeline_;
    std::optional<FormerPass> former_;
    std::int64_t placements_ = 0;
    Row<Slot> tail_;  ///< least time from a member's start to the end of everything
    Row<std::int32_t> skillsOfPerson_;  ///< how many members a person could serve: scarcity

    // While unscheduling.
    Row<std::uint8_t> isPlaced_;
    Row<Slot> early_;  ///< per node
    Row<Slot> late_;   ///< per node, from links only
    Row<Slot> raised_;
    Row<std::int32_t> openBefore_;
    Row<Range> mustFollow_;
    Row<Member> followers_;
    Row<PlacedPiece> trial_;
};

}  // namespace cinder::plan::search
