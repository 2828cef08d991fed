#include "plan/fault.h"

#include <algorithm>
#include <string>

namespace cinder::plan {

namespace {

constexpr std::size_t kMostPeople = 32;
constexpr std::int32_t kLongest = 2880 * 2;  // two days of half-minutes

template <class T>
bool isIn(std::int32_t index, const std::vector<T>& list) {
    return index >= 0 && index < static_cast<std::int32_t>(list.size());
}

NoPlan malformed(std::vector<TaskIndex> tasks) {
    return {NoPlan::Why::Malformed, std::move(tasks), HalfMinutes{0}};
}

bool isSpan(HalfMinutes span) {
    return span.count() >= 0 && span.count() <= kLongest;
}

bool isReadable(const Problem& problem, const Task& task) {
    if (!isIn(task.station, problem.stations) || !isSpan(task.duration.usual)) return false;
    HalfMinutes cursor{0};
    for (const HandsOn& hands : task.hands) {
        if (!isIn(hands.skill, problem.skills) || !isSpan(hands.length) || hands.offset < cursor ||
            hands.offset + hands.length > task.duration.usual || hands.people < 0)
            return false;
        cursor = hands.offset + hands.length;
    }
    for (const ResourceUse& use : task.uses)
        if (!isIn(use.resource, problem.resources) || use.units < 0) return false;
    if (!task.shortestPiece) return true;
    return task.shortestPiece->count() > 0 && task.hands.size() == 1 && task.hands[0].people == 1 &&
           task.hands[0].offset.count() == 0 && task.hands[0].length == task.duration.usual;
}

bool isReadable(const Problem& problem) {
    if (problem.crew.size() > kMostPeople || problem.walk.size() != problem.stations.size())
        return false;
    for (const auto& row : problem.walk)
        if (row.size() != problem.stations.size() ||
            std::any_of(row.begin(), row.end(), [](HalfMinutes way) { return !isSpan(way); }))
            return false;
    for (const Person& person : problem.crew)
        for (const SkillIndex skill : person.skills)
            if (!isIn(skill, problem.skills)) return false;
    for (const Resource& resource : problem.resources) {
        if (resource.capacity < 0) return false;
        for (const CapacityStep& step : resource.steps)
            if (step.units < 0) return false;
    }
    return true;
}

/// Longest chains of links; a task that can still be made later after as many rounds as there are
/// tasks lies on a cycle that asks for more time than it allows.
std::vector<TaskIndex> contradictions(const Problem& problem) {
    std::vector<std::int64_t> start(problem.tasks.size(), 0);
    std::vector<std::int64_t> finish;
    for (const Task& task : problem.tasks)
        finish.push_back(task.duration.usual.count());
    std::vector<TaskIndex> moved;
    const auto raise = [&](TaskIndex i, End end, std::int64_t at) {
        const auto k = static_cast<std::size_t>(i);
        const bool isSplit = problem.tasks[k].shortestPiece.has_value();
        const std::int64_t length = problem.tasks[k].duration.usual.count();
        if (at <= (end == End::Start ? start[k] : finish[k])) return;
        if (end == End::Start) {
            start[k] = at;
            finish[k] = std::max(finish[k], at + length);
        } else {
            finish[k] = at;
            if (!isSplit) start[k] = at - length;
        }
        moved.push_back(i);
    };
    const auto moment = [&](TaskIndex i, End end) {
        const auto k = static_cast<std::size_t>(i);
        return end == End::Start ? start[k] : finish[k];
    };
    for (std::size_t round = 0; round <= 2 * problem.tasks.size() + 1; ++round) {
        moved.clear();
        for (const Link& link : problem.links) {
            raise(link.to, link.toEnd, moment(link.from, link.fromEnd) + link.minLag.count());
            if (link.maxLag)
                raise(link.from, link.fromEnd, moment(link.to, link.toEnd) - link.maxLag->count());
        }
        if (moved.empty()) return {};
    }
    std::sort(moved.begin(), moved.end());
    moved.erase(std::unique(moved.begin(), moved.end()), moved.end());
    return moved;
}

std::int32_t mostUnits(const Resource& resource) {
    std::int32_t units = resource.capacity;
    for (const CapacityStep& step : resource.steps)
        units = std::max(units, step.units);
    return units;
}

}  // namespace

std::optional<NoPlan> findFault(const Problem& problem) {
    if (!isReadable(problem)) return malformed({});
    std::vector<TaskIndex> unreadable;
    std::vector<TaskIndex> noCrew;
    std::vector<TaskIndex> tooBig;
    for (std::size_t i = 0; i < problem.tasks.size(); ++i) {
        const Task& task = problem.tasks[i];
        if (!isReadable(problem, task)) {
            unreadable.push_back(static_cast<TaskIndex>(i));
            continue;
        }
        for (const HandsOn& hands : task.hands) {
            const auto able =
                std::count_if(problem.crew.begin(), problem.crew.end(), [&](const Person& person) {
                    return std::find(person.skills.begin(), person.skills.end(), hands.skill) !=
                           person.skills.end();
                });
            if (able < hands.people) noCrew.push_back(static_cast<TaskIndex>(i));
        }
        for (const ResourceUse& use : task.uses)
            if (use.units > mostUnits(problem.resources[static_cast<std::size_t>(use.resource)]))
                tooBig.push_back(static_cast<TaskIndex>(i));
    }
    if (!unreadable.empty()) return malformed(std::move(unreadable));
    for (const Link& link : problem.links)
        if (!isIn(link.from, problem.tasks) || !isIn(link.to, problem.tasks)) return malformed({});
    const auto distinct = [](std::vector<TaskIndex> tasks) {
        tasks.erase(std::unique(tasks.begin(), tasks.end()), tasks.end());
        return tasks;
    };
    if (!noCrew.empty()) return NoPlan{NoPlan::Why::NoCrew, distinct(noCrew), HalfMinutes{0}};
    if (!tooBig.empty()) return NoPlan{NoPlan::Why::TooBig, distinct(tooBig), HalfMinutes{0}};
    if (auto cycle = contradictions(problem); !cycle.empty()) return malformed(std::move(cycle));
    return std::nullopt;
}

}  // namespace cinder::plan
