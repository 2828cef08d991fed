#include "plan/search/bounds.h"

#include <algorithm>
#include <bit>
#include <set>

namespace cinder::plan::search {

namespace {

/// Earliest starts by links alone. What may be interrupted can begin any time before it ends, so
/// nothing follows for its start from when it may end.
Row<Slot> headsOf(const Project& project) {
    Row<Slot> heads = project.earliest;
    bool hasChanged = true;
    for (std::int32_t round = 0; hasChanged && round <= project.size(); ++round) {
        hasChanged = false;
        for (const Arc& arc : project.arcs) {
            if (arc.toFinish) continue;
            const Slot head =
                heads[arc.from] + arc.lag + (arc.fromFinish ? project.duration[arc.from] : 0);
            if (head <= heads[arc.to]) continue;
            heads[arc.to] = head;
            hasChanged = true;
        }
    }
    return heads;
}

struct HeadsAndTails {
    Row<Slot> head;
    Tails tail;
};

/// Work of one kind: how much of it each member brings, and how much fits in a slot.
struct Burden {
    Row<std::int64_t> work;
    std::int64_t capacity = 0;
};

/// The bound from all members whose head and tail are at least so long, for every such pair.
Slot bestInterval(const Project& project, const HeadsAndTails& times, const Burden& burden) {
    Slot best = 0;
    std::set<Slot> heads;
    for (Member j = 0; j < project.size(); ++j)
        if (burden.work[j] > 0) heads.insert(times.head[j]);
    Row<Member> byTail;
    for (Member j = 0; j < project.size(); ++j)
        if (burden.work[j] > 0) byTail.add(j);
    const auto after = [&](Member j) { return times.tail.ofFinish[j]; };
    std::sort(byTail.begin(), byTail.end(),
              [&](Member a, Member b) { return after(a) > after(b); });
    for (const Slot head : heads) {
        std::int64_t work = 0;
        for (const Member j : byTail) {
            if (times.head[j] < head) continue;
            work += burden.work[j];
            const std::int64_t length = (work + burden.capacity - 1) / burden.capacity;
            best = std::max(best, head + static_cast<Slot>(length) + after(j));
        }
    }
    return best;
}

}  // namespace

Slot criticalPath(const Project& project) {
    const Row<Slot> head = headsOf(project);
    const Row<Slot> tail = tailsOf(project).ofStart;
    Slot longest = 0;
    for (Member j = 0; j < project.size(); ++j)
        longest = std::max(longest, head[j] + tail[j]);
    return longest;
}

Slot energyBound(const Project& project) {
    const HeadsAndTails times{headsOf(project), tailsOf(project)};
    Slot best = 0;
    const Lanes& lanes = project.base.lanes();
    const std::int32_t perWord = 64 / lanes.bits;
    for (std::int32_t lane = 0; lane < lanes.words * perWord; ++lane) {
        Burden burden{{}, project.base.mostFree(lane)};
        const std::int32_t shift = (lane % perWord) * lanes.bits;
        const std::uint64_t mask = (std::uint64_t{1} << (lanes.bits - 1)) - 1;
        for (Member j = 0; j < project.size(); ++j)
            burden.work.add(project.duration[j] *
                            static_cast<std::int64_t>(
                                project.demand[j * lanes.words + lane / perWord] >> shift & mask));
        if (burden.capacity > 0) best = std::max(best, bestInterval(project, times, burden));
    }
    std::set<People> teams;
    for (const Segment& segment : project.segments)
        teams.insert(segment.skilled);
    for (const People team : std::set<People>(teams))
        for (const People other : std::set<People>(teams))
            teams.insert(team | other);
    for (const People team : teams) {
        Burden burden{Row<std::int64_t>(project.size(), 0), std::popcount(team)};
        for (Member j = 0; j < project.size(); ++j)
            for (std::int32_t s = project.segmentsOf[j].begin; s < project.segmentsOf[j].end; ++s) {
                const Segment& segment = project.segments[s];
                if ((segment.skilled & ~team) == 0)
                    burden.work[j] += std::int64_t{segment.length} * segment.people;
            }
        if (burden.capacity > 0) best = std::max(best, bestInterval(project, times, burden));
    }
    return best;
}

}  // namespace cinder::plan::search
