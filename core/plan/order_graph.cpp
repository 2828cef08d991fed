#include "plan/order_graph.h"

#include <algorithm>
#include <deque>
#include <optional>

namespace cinder::plan {

namespace {

/// A moment of a schedule written as an end of a task and a distance from it.
struct Anchor {
    End end;
    Duration offset;
};

/// One stretch of a person's day that is tied to an end of its task.
struct Stretch {
    FromBell start;
    TaskIndex task;
    Anchor begins;
    Anchor ends;
};

/// How a piece is tied to its task, or nothing for a touch in the middle.
std::optional<Stretch> stretchOf(TaskIndex task, const PlannedTask& planned, const Piece& piece) {
    const FromBell until = piece.start + piece.length;
    const bool atStart = piece.start == planned.start;
    const bool atFinish = until == planned.finish;
    if (!atStart && !atFinish) return std::nullopt;
    Stretch stretch{piece.start, task, {End::Start, Duration{0}}, {End::Finish, Duration{0}}};
    if (!atFinish) stretch.ends = {End::Start, piece.length};
    if (!atStart) stretch.begins = {End::Finish, -Duration{piece.length}};
    return stretch;
}

bool isOut(const std::vector<bool>& isSkipped, std::size_t task) {
    return !isSkipped.empty() && isSkipped[task];
}

std::vector<std::vector<Stretch>> stretchesByPerson(const Problem& problem,
                                                    const Schedule& schedule,
                                                    const std::vector<bool>& isSkipped) {
    std::vector<std::vector<Stretch>> days(problem.crew.size());
    for (std::size_t i = 0; i < schedule.tasks.size(); ++i) {
        if (isOut(isSkipped, i)) continue;
        for (const Piece& piece : schedule.tasks[i].pieces) {
            if (piece.length.count() == 0) continue;
            const auto stretch = stretchOf(static_cast<TaskIndex>(i), schedule.tasks[i], piece);
            if (!stretch) continue;
            for (const PersonIndex p : piece.people)
                days[static_cast<std::size_t>(p)].push_back(*stretch);
        }
    }
    for (auto& day : days)
        std::stable_sort(day.begin(), day.end(), [](const Stretch& a, const Stretch& b) {
            return a.start != b.start ? a.start < b.start : a.task < b.task;
        });
    return days;
}

/// Units in the hands of a task that has finished with them.
struct Holding {
    TaskIndex task;
    std::int32_t units;
};

void takeFrom(std::deque<Holding>& released, std::int32_t wanted, TaskIndex taker,
              std::vector<Order>& orders) {
    while (wanted > 0 && !released.empty()) {
        Holding& first = released.front();
        const std::int32_t taken = std::min(wanted, first.units);
        orders.push_back({first.task, taker, End::Finish, End::Start, Duration{0}});
        wanted -= taken;
        first.units -= taken;
        if (first.units == 0) released.pop_front();
    }
}

struct Stay {
    TaskIndex task;
    std::int32_t units;
};

std::vector<Stay> staysOn(const Problem& problem, const Schedule& schedule,
                          const std::vector<bool>& isSkipped, ResourceIndex r) {
    std::vector<Stay> stays;
    for (std::size_t i = 0; i < problem.tasks.size(); ++i) {
        if (isOut(isSkipped, i)) continue;
        for (const ResourceUse& use : problem.tasks[i].uses)
            if (use.resource == r && use.units > 0 &&
                schedule.tasks[i].finish > schedule.tasks[i].start)
                stays.push_back({static_cast<TaskIndex>(i), use.units});
    }
    std::stable_sort(stays.begin(), stays.end(), [&](const Stay& a, const Stay& b) {
        return schedule.tasks[static_cast<std::size_t>(a.task)].start <
               schedule.tasks[static_cast<std::size_t>(b.task)].start;
    });
    return stays;
}

}  // namespace

std::vector<Order> personOrders(const Problem& problem, const Schedule& schedule,
                                const std::vector<bool>& isSkipped) {
    std::vector<Order> orders;
    for (const auto& day : stretchesByPerson(problem, schedule, isSkipped)) {
        for (std::size_t k = 1; k < day.size(); ++k) {
            const Stretch& a = day[k - 1];
            const Stretch& b = day[k];
            if (a.task == b.task) continue;
            const auto from = problem.tasks[static_cast<std::size_t>(a.task)].station;
            const auto to = problem.tasks[static_cast<std::size_t>(b.task)].station;
            const Duration way =
                problem.walk[static_cast<std::size_t>(from)][static_cast<std::size_t>(to)];
            orders.push_back(
                {a.task, b.task, a.ends.end, b.begins.end, a.ends.offset + way - b.begins.offset});
        }
    }
    return orders;
}

std::vector<Order> resourceOrders(const Problem& problem, const Schedule& schedule,
                                  const std::vector<bool>& isSkipped) {
    std::vector<Order> orders;
    for (std::size_t r = 0; r < problem.resources.size(); ++r) {
        const Resource& resource = problem.resources[r];
        std::int32_t never = resource.capacity;  // units nobody has used yet
        for (const CapacityStep& step : resource.steps)
            never = std::max(never, step.units);
        std::vector<Stay> running;
        std::deque<Holding> released;
        for (const Stay& stay :
             staysOn(problem, schedule, isSkipped, static_cast<ResourceIndex>(r))) {
            const FromBell now = schedule.tasks[static_cast<std::size_t>(stay.task)].start;
            std::stable_sort(running.begin(), running.end(), [&](const Stay& a, const Stay& b) {
                return schedule.tasks[static_cast<std::size_t>(a.task)].finish <
                       schedule.tasks[static_cast<std::size_t>(b.task)].finish;
            });
            while (!running.empty() &&
                   schedule.tasks[static_cast<std::size_t>(running.front().task)].finish <= now) {
                released.push_back({running.front().task, running.front().units});
                running.erase(running.begin());
            }
            const std::int32_t fresh = std::min(never, stay.units);
            never -= fresh;
            takeFrom(released, stay.units - fresh, stay.task, orders);
            running.push_back(stay);
        }
    }
    return orders;
}

}  // namespace cinder::plan
