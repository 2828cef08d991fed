#include "plan/search/generation.h"

#include <algorithm>
#include <bit>

namespace cinder::plan::search {

Draft::Draft(const Project& project)
    : start(project.size(), 0),
      finish(project.size(), 0),
      pieces(project.size() == 0 ? 0 : project.piecesOf[project.size() - 1].end),
      pieceCount(project.size(), 0) {}

Generator::Generator(const Project& project, const Distances* distances)
    : project_(project),
      distances_(distances),
      timeline_(project.base),
      tail_(tailsOf(project).ofStart) {
    const std::int32_t size = project.size();
    skillsOfPerson_.assign(kMostPeople, 0);
    for (const Segment& segment : project.segments)
        for (People rest = segment.skilled; rest != 0; rest &= rest - 1)
            ++skillsOfPerson_[std::countr_zero(rest)];
    std::int32_t mostPieces = 1;
    for (const Range& range : project.piecesOf)
        mostPieces = std::max(mostPieces, range.end - range.begin);
    trial_.assign(mostPieces, {});
    if (!project.hasMaxLags || distances == nullptr) return;
    isPlaced_.assign(size, 0);
    early_.assign(distances->nodes(), 0);
    late_.assign(distances->nodes(), kNoSlot);
    raised_.assign(size, 0);
    openBefore_.assign(size, 0);
    mustFollow_.assign(size, {});
    for (Member a = 0; a < size; ++a) {
        mustFollow_[a].begin = followers_.size();
        for (Member b = 0; b < size; ++b)
            if (a != b && distances->precedes(a, b)) followers_.add(b);
        mustFollow_[a].end = followers_.size();
    }
}

bool Generator::generate(const Sequence& sequence, Slot floor, Draft& draft, Slot longest) {
    timeline_.resetTo(project_.base);
    draft.makespan = 0;
    draft.lateness = 0;
    const bool isWhole = project_.hasMaxLags ? generateWithLags(sequence, floor, draft)
                                             : generateInOrder(sequence, floor, draft, longest);
    if (project_.hasMaxLags) placements_ += project_.size();
    if (!isWhole) return false;
    for (Member j = 0; j < project_.size(); ++j) {
        draft.makespan = std::max(draft.makespan, draft.finish[j]);
        draft.lateness += std::max(0, draft.finish[j] - project_.deadline[j]);
    }
    return true;
}

bool Generator::generateInOrder(const Sequence& sequence, Slot floor, Draft& draft, Slot longest) {
    const Arc* const arcs = project_.arcs.data();
    if (former_) former_->begin();
    for (const Member j : sequence.order) {
        if (!former_) ++placements_;
        Slot from = std::max(project_.earliest[j], floor);
        const Range into = project_.arcsInto[j];
        for (std::int32_t a = into.begin; a < into.end; ++a) {
            const Arc& arc = arcs[a];
            const Slot base = arc.fromFinish ? draft.finish[arc.from] : draft.start[arc.from];
            // A finish that is bounded from below is met by starting late enough for the least
            // length; interruptions only make it later.
            from = std::max(from, base + arc.lag - (arc.toFinish ? project_.duration[j] : 0));
        }
        if (project_.isPlain) {
            const std::uint64_t* const demand = project_.demand.from(j * timeline_.lanes().words);
            const Slot at = former_ ? former_->lay(j, from, timeline_)
                                    : timeline_.earliestFit(demand, from, project_.duration[j]);
            const Slot until = at + project_.duration[j];
            if (until > project_.horizon || at + tail_[j] > longest) return false;
            timeline_.occupy(demand, at, until);
            draft.start[j] = at;
            draft.finish[j] = until;
            continue;
        }
        const std::uint8_t taste = sequence.taste.size() == 0 ? std::uint8_t{0} : sequence.taste[j];
        if (!place(j, from, taste, draft) || draft.start[j] + tail_[j] > longest) return false;
        commit(j, draft);
    }
    if (former_) former_->end();
    return true;
}

bool Generator::place(Member j, Slot from, std::uint8_t taste, Draft& draft) {
    return project_.isSplit(j) ? placeSplit(j, from, taste, draft)
                               : placeWhole(j, from, taste, draft);
}

bool Generator::placeWhole(Member j, Slot from, std::uint8_t taste, Draft& draft) {
    const std::uint64_t* const demand = project_.demand.from(j * timeline_.lanes().words);
    const Slot length = project_.duration[j];
    for (Slot at = from; at + length <= project_.horizon; ++at) {
        at = timeline_.earliestFit(demand, at, length);
        if (at + length > project_.horizon) return false;
        if (!chooseCrew(j, at, taste, draft)) continue;
        draft.start[j] = at;
        draft.finish[j] = at + length;
        return true;
    }
    return false;
}

/// People for every segment of `j` started at `at`; the same for all segments when they can.
bool Generator::chooseCrew(Member j, Slot at, std::uint8_t taste, Draft& draft) {
    const Range range = project_.segmentsOf[j];
    const std::int32_t station = project_.station[j];
    PlacedPiece* const pieces = draft.pieces.from(project_.piecesOf[j].begin);
    People common = ~People{0};
    std::int32_t most = 0;
    for (std::int32_t s = range.begin; s < range.end; ++s) {
        const Segment& segment = project_.segments[s];
        const Slot start = at + segment.offset;
        const People free =
            timeline_.freePeople(segment.skilled, start, start + segment.length, station);
        if (std::popcount(free) < segment.people) return false;
        pieces[s - range.begin] = {start, segment.length, free};
        common &= free;
        most = std::max(most, segment.people);
    }
    const bool canKeep = std::popcount(common) >= most;
    const People team = canKeep && most > 0 ? pick(common, most, 0, taste) : 0;
    People before = 0;
    for (std::int32_t s = range.begin; s < range.end; ++s) {
        PlacedPiece& piece = pieces[s - range.begin];
        const std::int32_t wanted = project_.segments[s].people;
        piece.people = canKeep && wanted == most
                           ? team
                           : pick(canKeep ? team : piece.people, wanted, before, taste);
        before |= piece.people;
    }
    draft.pieceCount[j] = range.end - range.begin;
    return true;
}

/// `wanted` of `among`: the favourite, then those who worked on it before, then those whom the
/// fewest other tasks need, then by position.
People Generator::pick(People among, std::int32_t wanted, People before, std::uint8_t taste) const {
    People team = 0;
    for (std::int32_t k = 0; k < wanted; ++k) {
        std::int32_t best = -1;
        std::int64_t bestCost = 0;
        for (People rest = among & ~team; rest != 0; rest &= rest - 1) {
            const std::int32_t person = std::countr_zero(rest);
            const bool isKnown = (before >> person & 1U) != 0;
            const std::int64_t cost = person + 1 == taste ? -2
                                      : isKnown           ? -1
                                                          : skillsOfPerson_[person];
            if (best >= 0 && cost >= bestCost) continue;
            best = person;
            bestCost = cost;
        }
        team |= People{1} << best;
    }
    return team;
}

/// An interrupted task goes to whoever is through with it first; on a tie to the favourite, then
/// to whoever needs fewer pieces.
bool Generator::placeSplit(Member j, Slot from, std::uint8_t taste, Draft& draft) {
    const Segment& segment = project_.segments[project_.segmentsOf[j].begin];
    PlacedPiece* const pieces = draft.pieces.from(project_.piecesOf[j].begin);
    const std::uint64_t* const demand = project_.demand.from(j * timeline_.lanes().words);
    bool isFound = false;
    for (People rest = segment.skilled; rest != 0; rest &= rest - 1) {
        const std::int32_t person = std::countr_zero(rest);
        Slot at = from;
        std::int32_t count = 0;
        Slot finish = 0;
        while (layPieces(j, at, person, count, finish)) {
            const Slot start = trial_[0].start;
            const Slot fits = timeline_.earliestFit(demand, start, finish - start);
            if (fits == start) break;
            at = fits;
            count = 0;
        }
        if (count == 0) continue;
        const bool isBetter =
            !isFound || finish < draft.finish[j] ||
            (finish == draft.finish[j] && (person + 1 == taste || count < draft.pieceCount[j]));
        if (!isBetter) continue;
        isFound = true;
        draft.start[j] = trial_[0].start;
        draft.finish[j] = finish;
        draft.pieceCount[j] = count;
        std::copy_n(trial_.data(), count, pieces);
    }
    return isFound;
}

/// Fills `trial_` with pieces from `from` on; false when the frame ends first.
bool Generator::layPieces(Member j, Slot from, std::int32_t person, std::int32_t& count,
                          Slot& finish) {
    const Slot shortest = project_.shortestPiece[j];
    Slot left = project_.duration[j];
    Slot at = from;
    count = 0;
    while (left > 0) {
        const Stretch gap = timeline_.freeStretch(person, at, project_.station[j]);
        if (gap.start >= project_.horizon) {
            count = 0;
            return false;
        }
        Slot length = std::min(left, gap.finish - gap.start);
        if (length < left) length = std::min(length, left - shortest);  // leave no crumb
        at = gap.finish;
        if (length < std::min(left, shortest)) continue;
        trial_[count++] = {gap.start, length, People{1} << person};
        left -= length;
        finish = gap.start + length;
        at = finish + 1;
    }
    return true;
}

void Generator::commit(Member j, Draft& draft) {
    timeline_.occupy(project_.demand.from(j * timeline_.lanes().words), draft.start[j],
                     draft.finish[j]);
    const PlacedPiece* const pieces = draft.pieces.from(project_.piecesOf[j].begin);
    for (std::int32_t k = 0; k < draft.pieceCount[j]; ++k)
        timeline_.book(pieces[k].people,
                       {pieces[k].start, pieces[k].start + pieces[k].length, project_.station[j]});
}

void Generator::withdraw(Member j, Draft& draft) {
    timeline_.release(project_.demand.from(j * timeline_.lanes().words), draft.start[j],
                      draft.finish[j]);
    const PlacedPiece* const pieces = draft.pieces.from(project_.piecesOf[j].begin);
    for (std::int32_t k = 0; k < draft.pieceCount[j]; ++k)
        timeline_.unbook(pieces[k].people, {pieces[k].start, pieces[k].start + pieces[k].length,
                                            project_.station[j]});
}

}  // namespace cinder::plan::search
