#pragma once

/// A planning problem compiled for the inner loop: plain arrays, one direction of time.
///
/// Time runs in slots (half-minutes) from 0 upwards and every task wants to be early. Backward,
/// slot 0 is the last moment the members may use and time is mirrored: a link from a to b becomes
/// one from b to a with the same lags, a task's hands-on segments are read from its end. "How late
/// may the crew arrive" is then the least makespan. Tasks that are not members are fixed: they are
/// booked beforehand, and their links to members become windows.

#include <cstdint>
#include <limits>
#include <span>

#include "plan/search/row.h"
#include "plan/search/timeline.h"
#include "plan/solution.h"

namespace cinder::plan::search {

using Slot = std::int32_t;
using Member = std::int32_t;  ///< a task's position among the members
constexpr Slot kNoSlot = std::numeric_limits<Slot>::max() / 4;

enum class Direction : std::uint8_t { Forward, Backward };

/// Hands on a task, in the project's direction.
struct Segment {
    Slot offset = 0;
    Slot length = 0;
    std::int32_t people = 1;
    People skilled = 0;
};

/// The start (or finish) of `to` comes at least `lag` after the start (or finish) of `from`; a
/// negative lag is a maximum lag read the other way. Ends of tasks of fixed length are folded into
/// the lag, so that finishes only appear for interruptible tasks.
struct Arc {
    Member from = 0;
    Member to = 0;
    Slot lag = 0;
    bool fromFinish = false;
    bool toFinish = false;
};

struct Range {
    std::int32_t begin = 0;
    std::int32_t end = 0;
};

struct Project {
    Direction direction = Direction::Backward;
    /// The real moment of slot 0.
    std::int32_t origin = 0;
    Slot horizon = 0;

    Row<TaskIndex> task;  ///< member -> task
    Row<Slot> duration;
    Row<Slot> earliest;  ///< window of the start
    Row<Slot> deadline;  ///< of the finish; kNoSlot when there is none
    Row<std::int32_t> station;
    Row<Slot> shortestPiece;  ///< 0: not interruptible
    Row<Range> segmentsOf;
    Row<Segment> segments;
    Row<std::uint64_t> demand;  ///< `lanes.words` words per member
    Row<Range> piecesOf;        ///< room for each member's pieces in a draft

    Row<Arc> arcs;
    Row<Range> arcsInto;  ///< after sorting by `to`
    bool hasMaxLags = false;
    /// A capacity changes during the day, or something lies fixed: a resource is not the same at
    /// all times.
    bool isUneven = false;
    /// Nothing but the bell ties a schedule to the time of day: one of the other direction, slid to
    /// the bell, is a schedule too.
    bool isSlidable = false;
    /// No hands, no interruption, no maximum lags: the classic problem.
    bool isPlain = false;

    Timeline base;  ///< with everything fixed already booked

    [[nodiscard]] Member size() const { return task.size(); }
    [[nodiscard]] bool isSplit(Member j) const { return shortestPiece[j] > 0; }
    /// The real moment of a slot boundary.
    [[nodiscard]] std::int32_t real(Slot slot) const {
        return direction == Direction::Forward ? origin + slot : origin - slot;
    }
    [[nodiscard]] Slot slot(std::int32_t realMoment) const {
        return direction == Direction::Forward ? realMoment - origin : origin - realMoment;
    }
};

/// What is planned already and does not move: `isMember[i]` tasks are to be planned, the others lie
/// as in `fixed`, or are left out altogether when `isAbsent[i]`.
struct Division {
    std::vector<bool> isMember;
    std::vector<bool> isAbsent;
    Schedule fixed;
};

/// `problem` must have passed `findFault`.
[[nodiscard]] Project compile(const Problem& problem, const Division& division,
                              Direction direction);

/// Per member, the least time from its start, and from its finish, to the end of everything, by
/// links alone.
struct Tails {
    Row<Slot> ofStart;
    Row<Slot> ofFinish;
};
[[nodiscard]] Tails tailsOf(const Project& project);

}  // namespace cinder::plan::search
