#include "plan/rest_of_day.h"

#include <algorithm>

#include "plan/bell_side.h"

namespace cinder::plan {

namespace {

class Remainder {
  public:
    Remainder(const Problem& problem, const Schedule& schedule, const Standing& standing)
        : before_(problem), schedule_(schedule), standing_(standing), sides_(bellSides(problem)) {}

    RestOfDay run() {
        rest_.problem = before_;
        rest_.given.schedule = schedule_;
        rest_.given.isFixed.assign(before_.tasks.size(), false);
        rest_.wished = schedule_;
        held_.assign(before_.resources.size(), 0);
        // What runs does not wait for hands that something not yet begun was to have before it: the
        // order of those is what is planned anew.
        std::vector<bool> isToCome(before_.tasks.size(), false);
        for (std::size_t i = 0; i < before_.tasks.size(); ++i)
            isToCome[i] = !actual(i).start && !actual(i).finish;
        const Dispatch dispatch(before_, schedule_, isToCome);
        projected_ =
            dispatch.project(standing_.actuals, standing_.now, standing_.bell, standing_.durations);
        rest_.problem.arrival = arrival();
        for (std::size_t i = 0; i < before_.tasks.size(); ++i)
            place(i);
        for (std::size_t i = 0; i < before_.tasks.size(); ++i)
            if (actual(i).isSkipped) handOn(static_cast<TaskIndex>(i));
        std::erase_if(rest_.problem.links,
                      [this](const Link& link) { return isMet(link) || isNowAWindow(link); });
        for (Link& link : rest_.problem.links)
            loosen(link);
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

    /// Whoever is not there yet still comes as agreed; once somebody has begun, they are there.
    FromBell arrival() const {
        const FromBell now = late(standing_.now);
        const bool hasBegun =
            std::any_of(standing_.actuals.begin(), standing_.actuals.end(),
                        [](const Actual& known) { return known.start || known.finish; });
        if (hasBegun || !before_.arrival) return now;
        return std::max(now, late(*before_.arrival));
    }

    bool isBegun(TaskIndex task) const {
        const Actual known = actual(static_cast<std::size_t>(task));
        return known.start || known.finish;
    }

    /// What follows a skipped task still follows what that one followed: nobody serves before the
    /// roast is done because it is not sliced. How long it may wait is not asked any more.
    void handOn(TaskIndex skipped) {
        auto& links = rest_.problem.links;
        std::vector<Link> in;
        std::vector<Link> out;
        std::erase_if(links, [&](const Link& link) {
            if (link.to == skipped) in.push_back(link);
            if (link.from == skipped) out.push_back(link);
            return link.to == skipped || link.from == skipped;
        });
        for (const Link& before : in)
            for (const Link& after : out) {
                Link handed = after;
                handed.from = before.from;
                handed.fromEnd = before.fromEnd;
                handed.minLag += before.minLag;
                handed.maxLag.reset();
                if (handed.from != handed.to) links.push_back(handed);
            }
    }

    /// Nothing is asked any more of what lies fixed. Crews begin things out of order; what has
    /// begun cannot wait for what it should have waited for.
    bool isMet(const Link& link) const {
        if (rest_.given.isFixed[static_cast<std::size_t>(link.to)]) return true;
        return link.toEnd == End::Start && isBegun(link.to);
    }

    /// What goes on has begun: whatever waits for its start waits for a moment of the clock.
    bool isNowAWindow(const Link& link) {
        const auto from = static_cast<std::size_t>(link.from);
        if (link.fromEnd != End::Start || !isBegun(link.from) || rest_.given.isFixed[from])
            return false;
        const Actual known = actual(from);
        FromBell least = early(known.start.value_or(*known.finish)) + link.minLag;
        Task& task = rest_.problem.tasks[static_cast<std::size_t>(link.to)];
        if (link.toEnd == End::Finish) least -= task.duration.usual;
        task.earliestStart = std::max(task.earliestStart.value_or(least), least);
        return true;
    }

    /// What waits too long already can only be asked not to wait on account of this plan: the limit
    /// is broken, and said to be.
    void loosen(Link& link) const {
        const auto from = static_cast<std::size_t>(link.from);
        if (!isBegun(link.from)) return;
        if (!rest_.given.isFixed[from]) return;  // it goes on: only its end is still to come
        const PlannedTask& fixed = rest_.given.schedule.tasks[from];
        const FromBell since = link.fromEnd == End::Start ? fixed.start : fixed.finish;
        HalfMinutes least = late(standing_.now) - since;
        if (link.toEnd == End::Finish)
            least += rest_.problem.tasks[static_cast<std::size_t>(link.to)].duration.usual;
        if (link.maxLag && *link.maxLag < std::max(least, link.minLag)) link.maxLag.reset();
    }

    void place(std::size_t i) {
        const Actual known = actual(i);
        if (known.isSkipped)
            fix(i, early(standing_.now), early(standing_.now), {});
        else if (known.finish)
            fix(i, early(known.start.value_or(*known.finish)), early(*known.finish), {});
        else if (known.start && before_.tasks[i].shortestPiece)
            goOn(i, early(*known.start));
        else if (known.start)
            fixRunning(i, early(*known.start));
        else if (before_.tasks[i].lean == Lean::Early && sides_[i] == BellSide::By)
            slide(rest_.wished.tasks[i], -std::chrono::round<HalfMinutes>(standing_.bell));
    }

    static void slide(PlannedTask& planned, HalfMinutes by) {
        planned.start += by;
        planned.finish += by;
        for (Piece& piece : planned.pieces)
            piece.start += by;
    }

    /// Work that may be split is planned again as far as it is still to be done: whoever lays the
    /// tables leaves them for the next turn as before.
    void goOn(std::size_t i, FromBell start) {
        Task& task = rest_.problem.tasks[i];
        PlannedTask& wished = rest_.wished.tasks[i];
        slide(wished, start - wished.start);
        const FromBell now = late(standing_.now);
        HalfMinutes done{0};
        std::vector<Piece> ahead;
        for (Piece piece : wished.pieces) {
            const HalfMinutes behind =
                std::clamp(now - piece.start, HalfMinutes{0}, HalfMinutes{piece.length});
            done += behind;
            piece.start += behind;
            piece.length -= behind;
            if (piece.length > HalfMinutes{0}) ahead.push_back(std::move(piece));
        }
        // It takes longer than it should: in a half-minute we will see.
        const HalfMinutes left = std::max(task.duration.usual - done, HalfMinutes{1});
        if (ahead.empty() && !wished.pieces.empty())
            ahead.push_back({now, left, wished.pieces.front().people});
        task.duration = {left, left, left};
        task.hands.front().length = left;
        task.shortestPiece = std::min(*task.shortestPiece, left);
        wished.start = ahead.empty() ? now : ahead.front().start;
        wished.finish = std::max(wished.finish, wished.start + left);
        wished.pieces = std::move(ahead);
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
            const HandsOn& only = task.hands.front();
            FromBell at = std::max(cursor, start + only.offset);
            HalfMinutes length = start + only.offset + only.length - at;
            if (only.length == task.duration.usual) {
                length = finish - at;
            } else if (only.act == HandsOn::Act::TakeOff) {  // whenever it is ready
                at = std::max(cursor, finish - only.length);
                length = only.length;
            }
            add(at, length, only, planned.front().people);
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
    std::vector<BellSide> sides_;
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
