#include "plan/dispatch.h"

#include <algorithm>

namespace cinder::plan {

namespace {

constexpr int kSweepLimit = 8;  // more only happens when durations contradict a maximum lag
constexpr Duration kNever = std::chrono::hours{24 * 365};

FromBell plannedMoment(const Schedule& schedule, TaskIndex task, End end) {
    const PlannedTask& planned = schedule.tasks[static_cast<std::size_t>(task)];
    return end == End::Start ? planned.start : planned.finish;
}

}  // namespace

std::vector<bool> skippedIn(std::span<const Actual> actuals) {
    std::vector<bool> isSkipped;
    for (const Actual& actual : actuals)
        isSkipped.push_back(actual.isSkipped);
    return isSkipped;
}

Dispatch::Dispatch(const Problem& problem, const Schedule& schedule,
                   const std::vector<bool>& isSkipped)
    : problem_(&problem),
      schedule_(&schedule),
      orders_(personOrders(problem, schedule, isSkipped)),
      sides_(bellSides(problem)) {
    const auto places = resourceOrders(problem, schedule, isSkipped);
    orders_.insert(orders_.end(), places.begin(), places.end());
    for (const Link& link : problem.links) {
        orders_.push_back({link.from, link.to, link.fromEnd, link.toEnd, link.minLag});
        if (!link.maxLag) continue;
        // What the plan itself lets wait too long is waited for as long as planned: to begin its
        // forerunner later would push this one too, without end.
        const HalfMinutes planned = plannedMoment(schedule, link.to, link.toEnd) -
                                    plannedMoment(schedule, link.from, link.fromEnd);
        holds_.push_back(
            {link.from, link.to, link.fromEnd, link.toEnd, std::max(*link.maxLag, planned)});
    }
    for (std::size_t i = 0; i < problem.tasks.size(); ++i) {
        const Task& task = problem.tasks[i];
        const PlannedTask& planned = schedule.tasks[i];
        // What is not interrupted may be planned longer than usual where the fire says so: whoever
        // projects says that again.
        pauses_.push_back(task.shortestPiece ? planned.finish - planned.start - task.duration.usual
                                             : HalfMinutes{0});
    }
    orderTasks();
}

/// Orders point forward in planned time; among equal moments they are followed to their end first,
/// so that a chain of zero lengths is swept in one go.
void Dispatch::orderTasks() {
    const auto at = [this](TaskIndex task, End end) {
        return plannedMoment(*schedule_, task, end);
    };
    const auto isEarlier = [&](const Order& a, const Order& b) {
        const auto aKey = std::pair(at(a.after, a.afterEnd), at(a.before, a.beforeEnd));
        const auto bKey = std::pair(at(b.after, b.afterEnd), at(b.before, b.beforeEnd));
        return aKey < bKey;
    };
    std::stable_sort(orders_.begin(), orders_.end(), isEarlier);
    orders_.erase(std::unique(orders_.begin(), orders_.end()), orders_.end());
    std::stable_sort(holds_.begin(), holds_.end(), isEarlier);
}

/// One projection.
class Pass {
  public:
    Pass(const Dispatch& plan, std::span<const Actual> actuals, Duration now, Duration bell,
         std::span<const Duration> durations)
        : plan_(plan), actuals_(actuals), now_(now), bell_(bell), durations_(durations) {}

    std::vector<Projected> run() {
        const std::size_t count = plan_.problem_->tasks.size();
        times_.resize(count);
        for (std::size_t i = 0; i < count; ++i)
            begin(i);
        for (int sweep = 0; sweep < kSweepLimit && sweepForward(); ++sweep) {
        }
        latest_.assign(count, {kNever, kNever});
        for (std::size_t i = 0; i < count; ++i)
            boundLatest(i);
        for (int sweep = 0; sweep < kSweepLimit && sweepBackward(); ++sweep) {
        }
        grade();
        return std::move(times_);
    }

  private:
    struct Latest {
        Duration start;
        Duration finish;
    };

    const Task& task(std::size_t i) const { return plan_.problem_->tasks[i]; }
    bool isSkipped(std::size_t i) const { return i < actuals_.size() && actuals_[i].isSkipped; }
    bool hasStarted(std::size_t i) const {
        return i < actuals_.size() && (actuals_[i].start || actuals_[i].finish);
    }
    bool hasFinished(std::size_t i) const {
        return i < actuals_.size() && actuals_[i].finish.has_value();
    }
    Duration length(std::size_t i) const {
        if (isSkipped(i)) return Duration{0};
        return (durations_.empty() ? Duration{task(i).duration.usual} : durations_[i]) +
               plan_.pauses_[i];
    }

    /// What hands must still do on a running task, counting touches, not the work itself.
    Duration touchesLeft(std::size_t i) const {
        const auto& hands = task(i).hands;
        Duration left{0};
        if (hands.size() < 2) return left;
        for (std::size_t k = static_cast<std::size_t>(std::max(0, actuals_[i].piecesDone));
             k < hands.size(); ++k)
            left += hands[k].length;
        return left;
    }

    void begin(std::size_t i) {
        Projected& time = times_[i];
        if (hasStarted(i)) {
            const Actual& actual = actuals_[i];
            time.start = actual.start ? *actual.start : *actual.finish;
            time.finish = actual.finish ? *actual.finish
                                        : std::max(time.start + length(i), now_ + touchesLeft(i));
            return;
        }
        const PlannedTask& planned = plan_.schedule_->tasks[i];
        time.start = isSkipped(i) ? -kNever : now_;
        const auto notBefore = [&](Duration limit) { time.start = std::max(time.start, limit); };
        if (!isSkipped(i)) {
            if (task(i).lean == Lean::Late) notBefore(planned.start + bell_);
            if (task(i).earliestStart) notBefore(*task(i).earliestStart + bell_);
            if (plan_.problem_->arrival) notBefore(*plan_.problem_->arrival);
        }
        time.finish = time.start + length(i);
    }

    Duration moment(TaskIndex i, End end) const {
        const Projected& time = times_[static_cast<std::size_t>(i)];
        return end == End::Start ? time.start : time.finish;
    }

    /// Only a task that waits for hands or food can grow at its finish; a plain one starts later
    /// instead.
    bool canGrow(std::size_t i) const {
        return hasStarted(i) || task(i).hands.size() > 1 || task(i).shortestPiece;
    }

    /// Moves an end of a task to `limit` if it lies earlier; says whether it moved. What has
    /// happened does not move.
    bool push(TaskIndex task, End end, Duration limit) {
        const auto i = static_cast<std::size_t>(task);
        Projected& time = times_[i];
        if (hasFinished(i) || (end == End::Start && hasStarted(i))) return false;
        if (limit <= (end == End::Start ? time.start : time.finish)) return false;
        if (end == End::Start) {
            time.start = limit;
            time.finish = std::max(time.finish, limit + length(i));
        } else {
            time.finish = limit;
            if (!canGrow(i)) time.start = std::max(time.start, limit - length(i));
        }
        return true;
    }

    /// Nothing waits too long for, or after, a task that is not done at all.
    bool binds(const Order& hold) const {
        return !isSkipped(static_cast<std::size_t>(hold.before)) &&
               !isSkipped(static_cast<std::size_t>(hold.after));
    }

    bool sweepForward() {
        bool hasMoved = false;
        for (const Order& order : plan_.orders_)
            hasMoved |= push(order.after, order.afterEnd,
                             moment(order.before, order.beforeEnd) + order.lag);
        for (auto hold = plan_.holds_.rbegin(); hold != plan_.holds_.rend(); ++hold)
            if (binds(*hold))
                hasMoved |= push(hold->before, hold->beforeEnd,
                                 moment(hold->after, hold->afterEnd) - hold->lag);
        return hasMoved;
    }

    Duration& latest(TaskIndex i, End end) {
        Latest& at = latest_[static_cast<std::size_t>(i)];
        return end == End::Start ? at.start : at.finish;
    }

    bool pull(TaskIndex task, End end, Duration limit) {
        const auto i = static_cast<std::size_t>(task);
        if (limit >= latest(task, end)) return false;
        latest(task, end) = limit;
        Latest& at = latest_[i];
        if (hasStarted(i)) return true;
        if (end == End::Finish)
            at.start = std::min(at.start, at.finish - length(i));
        else if (!canGrow(i))
            at.finish = std::min(at.finish, at.start + length(i));
        return true;
    }

    void boundLatest(std::size_t i) {
        const auto index = static_cast<TaskIndex>(i);
        if (task(i).latestFinish)
            pull(index, End::Finish, *task(i).latestFinish + bell_);
        else if (isDueByBell(i))
            pull(index, End::Finish, bell_);
        else
            pull(index, End::Finish, lastFinish());
    }

    /// After the bell there is no promise: the end of the day is whatever it comes to.
    Duration lastFinish() {
        if (!lastFinish_) {
            lastFinish_ = bell_;
            for (const Projected& time : times_)
                lastFinish_ = std::max(*lastFinish_, time.finish);
        }
        return *lastFinish_;
    }

    bool sweepBackward() {
        bool hasMoved = false;
        for (auto order = plan_.orders_.rbegin(); order != plan_.orders_.rend(); ++order)
            hasMoved |= pull(order->before, order->beforeEnd,
                             latest(order->after, order->afterEnd) - order->lag);
        for (const Order& hold : plan_.holds_) {
            const auto before = static_cast<std::size_t>(hold.before);
            const bool isRunning =
                hold.beforeEnd == End::Start ? hasStarted(before) : hasFinished(before);
            if (isRunning)
                hasMoved |=
                    pull(hold.after, hold.afterEnd, moment(hold.before, hold.beforeEnd) + hold.lag);
        }
        return hasMoved;
    }

    bool isDueByBell(std::size_t i) const { return plan_.sides_[i] == BellSide::By; }
    bool isOpen(std::size_t i) const { return !isSkipped(i) && !hasFinished(i); }

    void grade() {
        Duration smallest = kNever;
        for (std::size_t i = 0; i < times_.size(); ++i) {
            Projected& time = times_[i];
            if (!isOpen(i)) continue;
            time.slack =
                hasStarted(i) ? latest_[i].finish - time.finish : latest_[i].start - time.start;
            if (isDueByBell(i)) smallest = std::min(smallest, time.slack);
        }
        for (std::size_t i = 0; i < times_.size(); ++i) {
            // Nothing came before it: shown where it was planned.
            if (times_[i].start < -kNever / 2)
                times_[i].start = times_[i].finish = plan_.schedule_->tasks[i].start + bell_;
            times_[i].isSkipped = isSkipped(i);
            times_[i].isCritical = isOpen(i) && isDueByBell(i) && times_[i].slack == smallest;
        }
    }

    const Dispatch& plan_;
    std::span<const Actual> actuals_;
    Duration now_;
    Duration bell_;
    std::span<const Duration> durations_;
    std::vector<Projected> times_;
    std::vector<Latest> latest_;
    std::optional<Duration> lastFinish_;
};

std::vector<Projected> Dispatch::project(std::span<const Actual> actuals, Duration now,
                                         Duration bell, std::span<const Duration> durations) const {
    return Pass(*this, actuals, now, bell, durations).run();
}

Duration Dispatch::readyAt(std::span<const Projected> projected) const {
    Duration ready = -kNever;
    for (std::size_t i = 0; i < projected.size(); ++i)
        if (sides_[i] == BellSide::By && !projected[i].isSkipped)
            ready = std::max(ready, projected[i].finish);
    return ready;
}

std::vector<TaskIndex> Dispatch::criticalChain(std::span<const Projected> projected) const {
    const auto at = [&](TaskIndex task) -> const Projected& {
        return projected[static_cast<std::size_t>(task)];
    };
    const auto moment = [&](TaskIndex task, End end) {
        return end == End::Start ? at(task).start : at(task).finish;
    };
    std::optional<TaskIndex> link;
    for (TaskIndex i = 0; i < static_cast<TaskIndex>(projected.size()); ++i)
        if (at(i).isCritical && (!link || at(i).finish > at(*link).finish)) link = i;
    std::vector<TaskIndex> chain;
    while (link) {
        chain.push_back(*link);
        std::optional<TaskIndex> held;
        Duration tightest{0};
        for (const Order& order : orders_) {
            if (order.after != *link || !at(order.before).isCritical ||
                std::find(chain.begin(), chain.end(), order.before) != chain.end())
                continue;
            const Duration gap = moment(order.after, order.afterEnd) -
                                 moment(order.before, order.beforeEnd) - order.lag;
            if (held && gap >= tightest) continue;
            held = order.before;
            tightest = gap;
        }
        link = held;
    }
    std::reverse(chain.begin(), chain.end());
    return chain;
}

}  // namespace cinder::plan
