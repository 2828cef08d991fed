#include "plan/search/arena.h"

#include <algorithm>
#include <bit>

namespace cinder::plan::search {

std::optional<Arena> makeArena(const Problem& problem, const Division& division) {
    Arena arena{compile(problem, division, Direction::Backward),
                compile(problem, division, Direction::Forward),
                {},
                {}};
    if (arena.backward.hasMaxLags || arena.forward.hasMaxLags) {
        arena.backwardDistances = Distances::of(arena.backward);
        arena.forwardDistances = Distances::of(arena.forward);
        if (!arena.backwardDistances || !arena.forwardDistances) return std::nullopt;
        // Both directions place with windows, even when only one of them reads a lag as a maximum.
        arena.backward.hasMaxLags = arena.forward.hasMaxLags = true;
        arena.backward.isPlain = arena.forward.isPlain = false;
    }
    return arena;
}

namespace {

constexpr std::int64_t kLength = 1 << 20;
constexpr std::int64_t kLateness = kLength << 18;

}  // namespace

Slot lengthOf(std::int64_t cost) {
    return cost >= kLateness ? kNoSlot : static_cast<Slot>(cost / kLength);
}

std::int64_t costOf(const Problem& problem, const Project& project, const Draft& draft,
                    Slot floor) {
    std::int64_t cost = draft.lateness * kLateness + (draft.makespan - floor) * kLength;
    if (project.isPlain) return cost;
    std::int64_t stale = 0;
    std::int64_t handOvers = 0;
    const std::int32_t bell = project.slot(0);
    for (Member j = 0; j < project.size(); ++j) {
        const Slot realFinish =
            project.direction == Direction::Backward ? draft.start[j] : draft.finish[j];
        stale += std::int64_t{problem.tasks[static_cast<std::size_t>(project.task[j])].staleness} *
                 std::abs(realFinish - bell);
        const Range range = project.piecesOf[j];
        People everyone = 0;
        std::int32_t most = 0;
        for (std::int32_t k = 0; k < draft.pieceCount[j]; ++k) {
            const People team = draft.pieces[range.begin + k].people;
            everyone |= team;
            most = std::max(most, std::popcount(team));
        }
        handOvers += std::popcount(everyone) - most;
        if (project.isSplit(j)) handOvers += draft.pieceCount[j] - 1;
    }
    return cost + std::min<std::int64_t>(kLength - 1, stale * 8 + handOvers);
}

void mirror(const Project& forward, const Draft& draft, Draft& backward) {
    Slot first = kNoSlot;
    for (const Slot start : draft.start)
        first = std::min(first, start);
    backward.makespan = draft.makespan - first;
    backward.lateness = draft.lateness;
    for (Member j = 0; j < forward.size(); ++j) {
        backward.start[j] = draft.makespan - draft.finish[j];
        backward.finish[j] = draft.makespan - draft.start[j];
        const std::int32_t count = backward.pieceCount[j] = draft.pieceCount[j];
        const std::int32_t begin = forward.piecesOf[j].begin;
        for (std::int32_t k = 0; k < count; ++k) {
            PlacedPiece piece = draft.pieces[begin + count - 1 - k];
            piece.start = draft.makespan - piece.start - piece.length;
            backward.pieces[begin + k] = piece;
        }
    }
}

Schedule toSchedule(const Problem& problem, const Project& project, const Draft& draft,
                    const Schedule& fixed) {
    Schedule schedule = fixed;
    schedule.tasks.resize(problem.tasks.size());
    const bool isBackward = project.direction == Direction::Backward;
    const auto place = [&](Slot start, Slot finish) {
        return FromBell{project.real(isBackward ? finish : start)};
    };
    for (Member j = 0; j < project.size(); ++j) {
        PlannedTask& planned = schedule.tasks[static_cast<std::size_t>(project.task[j])];
        planned.start = place(draft.start[j], draft.finish[j]);
        planned.finish = FromBell{project.real(isBackward ? draft.start[j] : draft.finish[j])};
        planned.pieces.clear();
        for (std::int32_t k = 0; k < draft.pieceCount[j]; ++k) {
            const PlacedPiece& placed = draft.pieces[project.piecesOf[j].begin + k];
            Piece piece{
                place(placed.start, placed.start + placed.length), HalfMinutes{placed.length}, {}};
            for (People rest = placed.people; rest != 0; rest &= rest - 1)
                piece.people.push_back(std::countr_zero(rest));
            planned.pieces.push_back(std::move(piece));
        }
        if (isBackward) std::reverse(planned.pieces.begin(), planned.pieces.end());
    }
    return schedule;
}

}  // namespace cinder::plan::search
