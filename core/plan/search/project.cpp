#include "plan/search/project.h"

#include <algorithm>
#include <numeric>

#include "plan/bell_side.h"

namespace cinder::plan::search {

namespace {

/// A list of the problem at a signed position.
template <class List>
decltype(auto) of(List& list, std::int32_t i) {
    return list[static_cast<std::size_t>(i)];
}

End opposite(End end) {
    return end == End::Start ? End::Finish : End::Start;
}

class Compiler {
  public:
    Compiler(const Problem& problem, const Division& division, Direction direction)
        : problem_(problem), division_(division), memberOf_(problem.tasks.size(), -1) {
        project_.direction = direction;
    }

    Project run() {
        chooseFrame();
        chooseLanes();
        const std::int32_t stations = size(problem_.stations);
        project_.base =
            Timeline(project_.horizon, lanes_, size(problem_.crew), stations, countPieces());
        for (std::int32_t a = 0; a < stations; ++a)
            for (std::int32_t b = 0; b < stations; ++b)
                project_.base.setWalk(isBackward() ? b : a, isBackward() ? a : b,
                                      of(of(problem_.walk, a), b).count());
        openResources();
        for (TaskIndex i = 0; i < size(problem_.tasks); ++i) {
            if (of(division_.isMember, i))
                addMember(i);
            else if (!isAbsent(i))
                bookFixed(i);
        }
        addLinks();
        sortArcs();
        project_.isUneven = hasUnevenResources();
        project_.isSlidable = !isTiedToTheClock();
        project_.isPlain =
            project_.segments.size() == 0 && !project_.hasMaxLags && project_.isSlidable;
        return std::move(project_);
    }

  private:
    template <class T>
    static std::int32_t size(const std::vector<T>& list) {
        return static_cast<std::int32_t>(list.size());
    }
    bool isBackward() const { return project_.direction == Direction::Backward; }
    bool isAbsent(TaskIndex i) const {
        return !division_.isAbsent.empty() && of(division_.isAbsent, i);
    }

    /// Wide enough for all members one after another, with every lag and walk between them, and
    /// for everything that is fixed.
    void chooseFrame() {
        std::int64_t span = 2;
        std::int32_t low = 0;
        std::int32_t high = 0;
        std::int32_t longestWalk = 0;
        for (const auto& row : problem_.walk)
            for (const HalfMinutes way : row)
                longestWalk = std::max(longestWalk, way.count());
        for (TaskIndex i = 0; i < size(problem_.tasks); ++i) {
            const Task& task = of(problem_.tasks, i);
            if (task.latestFinish) {
                low = std::min(low, task.latestFinish->count());
                high = std::max(high, task.latestFinish->count());
            }
            if (of(division_.isMember, i)) {
                span += task.duration.usual.count() + 2 * longestWalk;
                if (task.earliestStart) high = std::max(high, task.earliestStart->count());
            } else if (!isAbsent(i)) {
                low = std::min(low, of(division_.fixed.tasks, i).start.count());
                high = std::max(high, of(division_.fixed.tasks, i).finish.count());
            }
        }
        for (const Link& link : problem_.links)
            span += std::max(0, link.minLag.count()) + std::max(0, -link.minLag.count());
        for (const Resource& resource : problem_.resources)
            for (const CapacityStep& step : resource.steps) {
                low = std::min(low, step.from.count());
                high = std::max(high, step.from.count());
            }
        constexpr std::int64_t kWidest = 20'000;  // a week of half-minutes
        const auto width = static_cast<std::int32_t>(std::min(span, kWidest));
        low_ = low - width;
        high_ = high + (isBackward() ? 0 : width);
        project_.origin = isBackward() ? high_ : low_;
        project_.horizon = high_ - low_;
    }

    /// At most so many stretches of work fall to one person.
    std::int32_t countPieces() const {
        std::int32_t pieces = 1;
        for (TaskIndex i = 0; i < size(problem_.tasks); ++i)
            pieces += mostPieces(of(problem_.tasks, i)) +
                      (of(division_.isMember, i) || isAbsent(i)
                           ? 0
                           : size(of(division_.fixed.tasks, i).pieces));
        return pieces;
    }
    static std::int32_t mostPieces(const Task& task) {
        if (!task.shortestPiece) return size(task.hands);
        return task.duration.usual.count() / std::max(1, task.shortestPiece->count()) + 1;
    }

    void chooseLanes() {
        std::int64_t most = 0;
        for (const Resource& resource : problem_.resources) {
            most = std::max<std::int64_t>(most, resource.capacity);
            for (const CapacityStep& step : resource.steps)
                most = std::max<std::int64_t>(most, step.units);
        }
        if (most >= 0x8000) {
            lanes_.bits = 32;
            lanes_.guard = 0x8000000080000000ULL;
        }
        const std::int32_t perWord = 64 / lanes_.bits;
        lanes_.words = std::max(1, (size(problem_.resources) + perWord - 1) / perWord);
    }

    /// Whether anything but the bell depends on the time of day, so that a schedule cannot be
    /// slid along.
    bool isTiedToTheClock() const {
        return hasUnevenResources() ||
               std::any_of(problem_.tasks.begin(), problem_.tasks.end(), [](const Task& task) {
                   return task.earliestStart ||
                          task.latestFinish.value_or(FromBell{0}).count() != 0;
               });
    }

    bool hasUnevenResources() const {
        const bool hasSteps =
            std::any_of(problem_.resources.begin(), problem_.resources.end(),
                        [](const Resource& resource) { return !resource.steps.empty(); });
        const bool hasFixed = std::any_of(division_.isMember.begin(), division_.isMember.end(),
                                          [](bool isMember) { return !isMember; });
        return hasSteps || hasFixed;
    }

    void openResources() {
        for (ResourceIndex r = 0; r < size(problem_.resources); ++r) {
            const Resource& resource = of(problem_.resources, r);
            auto steps = resource.steps;
            std::stable_sort(steps.begin(), steps.end(),
                             [](const auto& a, const auto& b) { return a.from < b.from; });
            std::int32_t from = low_;
            std::int32_t units = resource.capacity;
            for (const CapacityStep& step : steps) {
                setFree(r, from, step.from.count(), units);
                from = step.from.count();
                units = step.units;
            }
            setFree(r, from, high_, units);
        }
    }

    void setFree(ResourceIndex r, std::int32_t from, std::int32_t until, std::int32_t units) {
        if (until <= from) return;
        if (isBackward())
            project_.base.setFree(r, project_.slot(until), project_.slot(from), units);
        else
            project_.base.setFree(r, project_.slot(from), project_.slot(until), units);
    }

    People skilled(SkillIndex skill) const {
        People people = 0;
        for (PersonIndex p = 0; p < size(problem_.crew); ++p) {
            const auto& skills = of(problem_.crew, p).skills;
            if (std::find(skills.begin(), skills.end(), skill) != skills.end())
                people |= People{1} << p;
        }
        return people;
    }

    void addDemand(const Task& task, Row<std::uint64_t>& words) const {
        std::vector<std::uint64_t> demand(static_cast<std::size_t>(lanes_.words), 0);
        const std::int32_t perWord = 64 / lanes_.bits;
        for (const ResourceUse& use : task.uses)
            of(demand, use.resource / perWord) += static_cast<std::uint64_t>(use.units)
                                                  << ((use.resource % perWord) * lanes_.bits);
        for (const std::uint64_t word : demand)
            words.add(word);
    }

    void addMember(TaskIndex i) {
        const Task& task = of(problem_.tasks, i);
        of(memberOf_, i) = project_.size();
        const Slot duration = task.duration.usual.count();
        project_.task.add(i);
        project_.duration.add(duration);
        project_.station.add(task.station);
        project_.shortestPiece.add(
            task.shortestPiece ? std::clamp(task.shortestPiece->count(), 1, std::max(1, duration))
                               : 0);
        addWindow(i);
        const std::int32_t first = project_.segments.size();
        for (const HandsOn& hands : task.hands)
            project_.segments.add({isBackward()
                                       ? duration - hands.offset.count() - hands.length.count()
                                       : hands.offset.count(),
                                   hands.length.count(), hands.people, skilled(hands.skill)});
        if (isBackward()) std::reverse(project_.segments.begin() + first, project_.segments.end());
        project_.segmentsOf.add({first, project_.segments.size()});
        addDemand(task, project_.demand);
        const std::int32_t room =
            project_.piecesOf.size() == 0 ? 0 : project_.piecesOf[project_.size() - 2].end;
        project_.piecesOf.add({room, room + mostPieces(task)});
    }

    void addWindow(TaskIndex i) {
        const Task& task = of(problem_.tasks, i);
        std::optional<std::int32_t> latest;
        if (task.latestFinish)
            latest = task.latestFinish->count();
        else if (isBackward())
            latest = 0;
        std::optional<std::int32_t> earliest;
        if (task.earliestStart) earliest = task.earliestStart->count();
        const auto& early = isBackward() ? latest : earliest;
        const auto& late = isBackward() ? earliest : latest;
        project_.earliest.add(early ? project_.slot(*early) : 0);
        project_.deadline.add(late ? project_.slot(*late) : kNoSlot);
    }

    void bookFixed(TaskIndex i) {
        const PlannedTask& planned = of(division_.fixed.tasks, i);
        Row<std::uint64_t> demand;
        addDemand(of(problem_.tasks, i), demand);
        const auto [from, until] = span(planned.start, planned.finish - planned.start);
        project_.base.occupy(demand.data(), from, until);
        for (const Piece& piece : planned.pieces) {
            const auto [start, finish] = span(piece.start, piece.length);
            for (const PersonIndex p : piece.people)
                project_.base.book(People{1} << p, {start, finish, of(problem_.tasks, i).station});
        }
    }

    std::pair<Slot, Slot> span(FromBell start, HalfMinutes length) const {
        const Slot a = project_.slot(start.count());
        const Slot b = project_.slot((start + length).count());
        return {std::clamp(std::min(a, b), 0, project_.horizon),
                std::clamp(std::max(a, b), 0, project_.horizon)};
    }

    void addLinks() {
        for (const Link& link : problem_.links) {
            const bool mirrored = isBackward();
            const TaskIndex from = mirrored ? link.to : link.from;
            const TaskIndex to = mirrored ? link.from : link.to;
            const End fromEnd = mirrored ? opposite(link.toEnd) : link.fromEnd;
            const End toEnd = mirrored ? opposite(link.fromEnd) : link.toEnd;
            addArc(from, fromEnd, to, toEnd, link.minLag.count());
            if (!link.maxLag) continue;
            addArc(to, toEnd, from, fromEnd, -link.maxLag->count());
            // Also where the lengths make the lag positive: the two arcs are a circle.
            project_.hasMaxLags = project_.hasMaxLags || areMembers(from, to);
        }
    }

    /// to.toEnd >= from.fromEnd + lag, in slots.
    void addArc(TaskIndex from, End fromEnd, TaskIndex to, End toEnd, Slot lag) {
        if (isAbsent(from) || isAbsent(to)) return;
        const Member a = of(memberOf_, from);
        const Member b = of(memberOf_, to);
        if (a < 0 && b < 0) return;
        if (a < 0) {  // a fixed moment before: a window
            const Slot at = fixedMoment(from, fromEnd) + lag - foldedLength(b, toEnd);
            project_.earliest[b] = std::max(project_.earliest[b], at);
        } else if (b < 0) {
            const Slot at =
                fixedMoment(to, toEnd) - lag + (fromEnd == End::Start ? project_.duration[a] : 0);
            project_.deadline[a] = std::min(project_.deadline[a], at);
        } else if (a != b) {
            Arc arc{a, b, lag, fromEnd == End::Finish && project_.isSplit(a),
                    toEnd == End::Finish && project_.isSplit(b)};
            if (fromEnd == End::Finish && !arc.fromFinish) arc.lag += project_.duration[a];
            if (toEnd == End::Finish && !arc.toFinish) arc.lag -= project_.duration[b];
            project_.arcs.add(arc);
            project_.hasMaxLags = project_.hasMaxLags || arc.lag < 0;
        }
    }

    bool areMembers(TaskIndex a, TaskIndex b) const {
        return a != b && of(memberOf_, a) >= 0 && of(memberOf_, b) >= 0;
    }

    Slot foldedLength(Member j, End end) const {
        return end == End::Finish ? project_.duration[j] : 0;
    }

    /// An end of a fixed task in slots; `end` is in the project's direction.
    Slot fixedMoment(TaskIndex i, End end) const {
        const PlannedTask& planned = of(division_.fixed.tasks, i);
        const Slot start = project_.slot(planned.start.count());
        const Slot finish = project_.slot(planned.finish.count());
        return end == End::Start ? std::min(start, finish) : std::max(start, finish);
    }

    void sortArcs() {
        std::stable_sort(project_.arcs.begin(), project_.arcs.end(),
                         [](const Arc& a, const Arc& b) { return a.to < b.to; });
        project_.arcsInto.assign(project_.size(), {});
        std::int32_t at = 0;
        for (Member j = 0; j < project_.size(); ++j) {
            project_.arcsInto[j].begin = at;
            while (at < project_.arcs.size() && project_.arcs[at].to == j)
                ++at;
            project_.arcsInto[j].end = at;
        }
    }

    const Problem& problem_;
    const Division& division_;
    std::vector<Member> memberOf_;
    Project project_;
    Lanes lanes_;
    std::int32_t low_ = 0;
    std::int32_t high_ = 0;
};

}  // namespace

Project compile(const Problem& problem, const Division& division, Direction direction) {
    return Compiler(problem, division, direction).run();
}

Tails tailsOf(const Project& project) {
    Tails tails{project.duration, Row<Slot>(project.size(), 0)};
    bool hasChanged = true;
    const auto raise = [&](Slot& tail, Slot to) {
        hasChanged = hasChanged || to > tail;
        tail = std::max(tail, to);
    };
    for (Member round = 0; hasChanged && round <= project.size(); ++round) {
        hasChanged = false;
        for (const Arc& arc : project.arcs) {
            const Slot through =
                arc.lag + (arc.toFinish ? tails.ofFinish[arc.to] : tails.ofStart[arc.to]);
            Slot& ofStart = tails.ofStart[arc.from];
            Slot& ofFinish = tails.ofFinish[arc.from];
            const Slot duration = project.duration[arc.from];
            if (arc.fromFinish) {
                raise(ofFinish, through);
                raise(ofStart, duration + ofFinish);
            } else {
                raise(ofStart, through);
                // What may be interrupted can end any time after its start.
                if (!project.isSplit(arc.from)) raise(ofFinish, ofStart - duration);
            }
        }
    }
    return tails;
}

}  // namespace cinder::plan::search
