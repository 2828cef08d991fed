#include "plan/rest_of_day.h"

#include <algorithm>

namespace cinder::plan {

namespace {

class Remainder {
  public:
    Remainder(const Problem& problem, const Schedule& schedule, const Standing& standing)
        : before_(problem), schedule_(schedule), standing_(standing) {}

    RestOfDay run() {
        rest_.problem = before_;
        rest_.given.schedule = schedule_;
        rest_.given.isFixed.assign(before_.tasks.size(), false);
        rest_.wished = schedule_;
        held_.assign(before_.resources.size(), 0);
        const Dispatch dispatch(before_, schedule_);
        projected_ = dispatch.project(standing_.actuals, standing_.now, standing_.bell);
        rest_.problem.arrival = late(standing_.now);
        for (std::size_t i = 0; i < before_.tasks.size(); ++i)
            place(i);
        std::erase_if(rest_.problem.links, [this](const Link& link) {
            const auto from = static_cast<std::size_t>(link.from);
            const auto to = static_cast<std::size_t>(link.to);
            const bool isPast = rest_.given.isFixed[from] && rest_.given.isFixed[to];
            return isPast || actual(from).isSkipped || actual(to).isSkipped;
        });
        return std::move(rest_);
    }

  private:
    Actual actual(std::size_t i) const {
        return i < standing_.actuals.size() ? standing_.actuals[i] : Actual{};
    }
    /// The moment as a distance from the bell as it now stands, in whole half-minutes: the one
    /// before, or the one after.
    FromBell early(Duration at) const {
        return std::chrono::floor<HalfMinutes>(at - standing_.bell);
    }
    FromBell late(Duration at) const { return std::chrono::ceil<HalfMinutes>(at - standing_.bell); }

    void place(std::size_t i) {
        const Actual known = actual(i);
        if (known.isSkipped)
            fix(i, early(standing_.now), early(standing_.now), {});
        else if (known.finish)
            fix(i, early(known.start.value_or(*known.finish)), early(*known.finish), {});
        else if (known.start)
            fixRunning(i, early(*known.start));
        else if (before_.tasks[i].lean == Lean::Early)
            slide(rest_.wished.tasks[i], -std::chrono::round<HalfMinutes>(standing_.bell));
    }

    static void slide(PlannedTask& planned, HalfMinutes by) {
        planned.start += by;
        planned.finish += by;
        for (Piece& piece : planned.pieces)
            piece.start += by;
    }

    /// Hands that are still needed, one after another from now on, by those who were to lend them.
    void fixRunning(std::size_t i, FromBell start) {
        const Task& task = before_.tasks[i];
        const auto& planned = schedule_.tasks[i].pieces;
        FromBell finish = std::max(late(projected_[i].finish), start);
        FromBell cursor = late(standing_.now);
        std::vector<Piece> pieces;
        std::vector<HandsOn> hands;
        const auto add = [&](FromBell at, HalfMinutes length, const HandsOn& like,
                             const std::vector<PersonIndex>& people) {
            if (length.count() <= 0 || !isFree(people, at, at + length, task.station)) return;
            pieces.push_back({at, length, people});
            hands.push_back(like);
            hands.back().offset = at - start;
            hands.back().length = length;
            for (const PersonIndex p : people)
                busy_.push_back({at, at + length, p, task.station});
            cursor = at + length;
        };
        if (task.hands.size() == 1 && !planned.empty()) {
            if (task.hands[0].length == task.duration.usual)
                add(cursor, finish - cursor, task.hands[0], planned.front().people);
        } else {
            for (auto k = static_cast<std::size_t>(std::max(0, actual(i).piecesDone));
                 k < task.hands.size() && k < planned.size(); ++k)
                add(std::max(cursor, start + task.hands[k].offset), task.hands[k].length,
                    task.hands[k], planned[k].people);
        }
        fix(i, start, std::max(finish, cursor), std::move(pieces));
        rest_.problem.tasks[i].hands = std::move(hands);
        for (const ResourceUse& use : task.uses)
            if (fits(use, start, std::max(finish, cursor)))
                rest_.problem.tasks[i].uses.push_back(use);
    }

    struct Stay {
        FromBell from;
        FromBell until;
        PersonIndex person;
        StationIndex station;
    };

    /// Two running tasks that ask for one person at once sort that out among people, not here.
    bool isFree(const std::vector<PersonIndex>& people, FromBell from, FromBell until,
                StationIndex station) const {
        return std::none_of(busy_.begin(), busy_.end(), [&](const Stay& stay) {
            const auto a = static_cast<std::size_t>(stay.station);
            const auto b = static_cast<std::size_t>(station);
            return std::find(people.begin(), people.end(), stay.person) != people.end() &&
                   from < stay.until + before_.walk[a][b] && stay.from < until + before_.walk[b][a];
        });
    }

    /// A grate that people have overfilled is full, no more: what does not fit is not counted.
    bool fits(const ResourceUse& use, FromBell from, FromBell until) {
        const Resource& resource = before_.resources[static_cast<std::size_t>(use.resource)];
        std::int32_t least = resource.capacity;
        for (const CapacityStep& step : resource.steps) {
            if (step.from <= from) least = step.units;
            if (step.from > from && step.from < until) least = std::min(least, step.units);
        }
        std::int32_t& held = held_[static_cast<std::size_t>(use.resource)];
        if (held + use.units > least) return false;
        held += use.units;
        return true;
    }

    void fix(std::size_t i, FromBell start, FromBell finish, std::vector<Piece> pieces) {
        Task& task = rest_.problem.tasks[i];
        const HalfMinutes length = finish - start;
        task.duration = {length, length, length};
        task.hands.clear();
        task.uses.clear();
        task.shortestPiece.reset();
        task.latestFinish.reset();
        if (task.earliestStart) task.earliestStart = std::min(*task.earliestStart, start);
        rest_.given.isFixed[i] = true;
        rest_.given.schedule.tasks[i] = {start, finish, std::move(pieces)};
        rest_.wished.tasks[i] = rest_.given.schedule.tasks[i];
    }

    const Problem& before_;
    const Schedule& schedule_;
    const Standing& standing_;
    std::vector<Projected> projected_;
    std::vector<Stay> busy_;
    std::vector<std::int32_t> held_;  ///< units in the hands of running tasks
    RestOfDay rest_;
};

}  // namespace

RestOfDay restOfDay(const Problem& problem, const Schedule& schedule, const Standing& standing) {
    return Remainder(problem, schedule, standing).run();
}

}  // namespace cinder::plan
