#include "live/remaining.h"

#include <algorithm>

namespace cinder::live {

namespace {

using plan::End;
using plan::FromBell;
using plan::HalfMinutes;

std::size_t at(plan::TaskIndex index) {
    return static_cast<std::size_t>(index);
}

/// Takes a day apart into what was and what will be.
class Division {
  public:
    Division(const Day& day, const Outlook& outlook, Instant now, Instant bell)
        : old_(*day.sheet), outlook_(outlook), progress_(progressAt(day, old_, now)) {
        result_.bell = bell;
        result_.now = now;
        result_.sheet = old_;
        result_.sheet.bell = bell;
    }

    Remaining run() {
        plan::Problem& problem = result_.problem;
        problem = old_.problem;
        problem.tasks.clear();
        problem.links.clear();
        problem.arrival = up(result_.now);
        shiftSheet();
        newIndex_.assign(progress_.size(), -1);
        for (std::size_t i = 0; i < progress_.size(); ++i)
            if (!progress_[i].isOut()) keep(i);
        for (const plan::Link& link : old_.problem.links)
            keepLink(link);
        return std::move(result_);
    }

  private:
    FromBell up(Instant moment) const { return std::chrono::ceil<FromBell>(moment - result_.bell); }
    FromBell down(Instant moment) const {
        return std::chrono::floor<FromBell>(moment - result_.bell);
    }

    /// What has happened takes its place on the sheet; what has not stays where it was from the
    /// bell, to be replaced.
    void shiftSheet() {
        for (std::size_t i = 0; i < progress_.size(); ++i) {
            if (!progress_[i].started) continue;
            plan::PlannedTask& planned = result_.sheet.schedule.tasks[i];
            const FromBell start = down(*progress_[i].started);
            const HalfMinutes by = start - planned.start;
            planned.start = start;
            planned.finish = progress_[i].finished ? std::max(start, up(*progress_[i].finished))
                                                   : planned.finish + by;
            for (plan::Piece& piece : planned.pieces)
                piece.start += by;
        }
        // The arrival was a fact of the first plan; this one begins with what is there.
        if (auto& arrival = result_.sheet.problem.arrival) arrival = down(old_.bell + *arrival);
    }

    void keep(std::size_t i) {
        plan::Task task = old_.problem.tasks[i];
        HalfMinutes elapsed{0};
        plan::PlannedTask hint = old_.schedule.tasks[i];
        if (progress_[i].isRunning()) {
            elapsed = std::max(HalfMinutes{0}, up(result_.now) - down(*progress_[i].started));
            shorten(task, i, elapsed);
            task.earliestStart = up(result_.now);
            task.latestFinish = up(result_.now) + task.duration.usual;
            // It is where it is, and held by whoever holds it, in one go.
            task.shortestPiece.reset();
            hint = {up(result_.now), up(result_.now) + task.duration.usual, {}};
        }
        newIndex_[i] = static_cast<plan::TaskIndex>(result_.problem.tasks.size());
        result_.original.push_back(static_cast<plan::TaskIndex>(i));
        result_.elapsed.push_back(elapsed);
        result_.problem.tasks.push_back(std::move(task));
        result_.incumbent.tasks.push_back(std::move(hint));
    }

    /// Cuts what lies behind off a running task.
    void shorten(plan::Task& task, std::size_t i, HalfMinutes elapsed) const {
        HalfMinutes left = std::chrono::ceil<HalfMinutes>(outlook_.tasks[i].finish - result_.now);
        left = std::max(left, HalfMinutes{1});
        const bool isWhole =
            task.hands.size() == 1 && task.hands.front().length >= task.duration.usual;
        task.duration = {left, left, left};
        std::vector<plan::HandsOn> hands;
        for (plan::HandsOn one : task.hands) {
            if (isWhole) {
                one.length = left;
            } else {
                one.offset -= elapsed;
                if (one.offset < HalfMinutes{0}) continue;
                if (one.offset + one.length > left) continue;
            }
            hands.push_back(one);
        }
        task.hands = std::move(hands);
    }

    void keepLink(const plan::Link& link) {
        const plan::TaskIndex from = newIndex_[at(link.from)];
        const plan::TaskIndex to = newIndex_[at(link.to)];
        if (to < 0) return;  // what it asked for has happened
        const bool isBound = link.toEnd == End::Start && progress_[at(link.to)].started.has_value();
        if (isBound) return;
        const Progress& before = progress_[at(link.from)];
        if (before.isSkipped) return;
        const auto& moment = link.fromEnd == End::Start ? before.started : before.finished;
        if (moment) {
            bindToFact(link, *moment, result_.problem.tasks[at(to)]);
            return;
        }
        plan::Link kept = link;
        kept.from = from;
        kept.to = to;
        // A maximum lag between what is running and its end cannot be kept by planning.
        if (progress_[at(link.to)].started) kept.maxLag.reset();
        result_.problem.links.push_back(kept);
    }

    /// A link from something that has happened is a window.
    void bindToFact(const plan::Link& link, Instant moment, plan::Task& task) const {
        if (progress_[at(link.to)].started) return;
        FromBell earliest = up(moment + link.minLag);
        if (link.toEnd == End::Finish) earliest -= task.duration.usual;
        if (earliest > up(result_.now))
            task.earliestStart = std::max(task.earliestStart.value_or(earliest), earliest);
        if (!link.maxLag || task.shortestPiece) return;
        FromBell latest = down(moment + *link.maxLag);
        if (link.toEnd == End::Start) latest += task.duration.usual;
        // When it already waits too long, as soon as possible is all that can be asked.
        latest = std::max(latest, up(result_.now) + task.duration.usual);
        task.latestFinish = std::min(task.latestFinish.value_or(latest), latest);
    }

    const RunSheet& old_;
    const Outlook& outlook_;
    std::vector<Progress> progress_;
    std::vector<plan::TaskIndex> newIndex_;
    Remaining result_;
};

}  // namespace

Remaining remainingAt(const Day& day, const Outlook& outlook, Instant now, Instant bell) {
    return Division(day, outlook, now, bell).run();
}

RunSheet rejoin(const Remaining& remaining, const plan::Schedule& schedule) {
    RunSheet sheet = remaining.sheet;
    for (std::size_t i = 0; i < remaining.original.size(); ++i) {
        plan::PlannedTask& place = sheet.schedule.tasks[at(remaining.original[i])];
        const plan::PlannedTask& found = schedule.tasks[i];
        if (remaining.elapsed[i] == HalfMinutes{0}) {
            place = found;
            continue;
        }
        // Running: what lies behind stays, what lies ahead is as found.
        place.finish = found.finish;
        const std::size_t ahead = std::min(found.pieces.size(), place.pieces.size());
        const bool isWhole = place.pieces.size() == 1;
        for (std::size_t k = 0; k < ahead && !isWhole; ++k)
            place.pieces[place.pieces.size() - ahead + k] = found.pieces[k];
    }
    return sheet;
}

}  // namespace cinder::live
