#include "live/remaining.h"

#include <algorithm>

#include "live/crew.h"

namespace cinder::live {

namespace {

using plan::FromBell;
using plan::HalfMinutes;
using std::chrono::minutes;

void slide(plan::PlannedTask& planned, HalfMinutes by) {
    planned.start += by;
    planned.finish += by;
    for (plan::Piece& piece : planned.pieces)
        piece.start += by;
}

/// What has been done of split work, as far as anybody knows: as planned, up to now.
void keepBehind(std::vector<plan::Piece>& pieces, FromBell now) {
    std::erase_if(pieces, [&](const plan::Piece& piece) { return piece.start >= now; });
    for (plan::Piece& piece : pieces)
        piece.length = std::min(piece.length, now - piece.start);
}

/// Whoever was done sooner is free since then.
void endBy(std::vector<plan::Piece>& pieces, FromBell finish) {
    for (plan::Piece& piece : pieces) {
        piece.start = std::min(piece.start, finish);
        piece.length = std::min(piece.length, finish - piece.start);
    }
}

/// Hands that are still to come do so from now on, in their order.
void keepAhead(std::vector<plan::Piece>& pieces, std::int32_t done, FromBell now) {
    FromBell cursor = now;
    for (auto k = static_cast<std::size_t>(std::max(0, done)); k < pieces.size(); ++k) {
        pieces[k].start = std::max(pieces[k].start, cursor);
        cursor = pieces[k].start + pieces[k].length;
    }
}

/// Puts a plan for the rest beside what has happened.
class Joining {
  public:
    Joining(const Remaining& remaining, Instant bell)
        : remaining_(remaining), bell_(bell), sheet_(remaining.sheet) {}

    RunSheet run(const plan::Schedule& found) {
        sheet_.bell = bell_;
        // The arrival is an hour of the clock, not a distance from the bell.
        if (auto& arrival = sheet_.problem.arrival) arrival = down(before() + *arrival);
        for (std::size_t i = 0; i < found.tasks.size(); ++i)
            join(i, found.tasks[i]);
        return std::move(sheet_);
    }

  private:
    Instant before() const { return remaining_.sheet.bell; }
    FromBell down(Instant moment) const { return std::chrono::floor<FromBell>(moment - bell_); }
    FromBell now() const { return std::chrono::ceil<FromBell>(remaining_.now - bell_); }

    void join(std::size_t i, const plan::PlannedTask& found) {
        const plan::Actual& actual = remaining_.actuals[i];
        const plan::Task& task = sheet_.problem.tasks[i];
        plan::PlannedTask& place = sheet_.schedule.tasks[i];
        if (actual.isSkipped) return;
        if (!actual.start && !actual.finish) {
            place = found;
            return;
        }
        const Duration began = actual.start ? *actual.start : *actual.finish;
        slide(place, down(before() + began) - place.start);
        place.finish = std::max(found.finish, place.start);
        if (actual.finish) {
            endBy(place.pieces, place.finish);
        } else if (task.shortestPiece) {
            keepBehind(place.pieces, now());
            place.pieces.insert(place.pieces.end(), found.pieces.begin(), found.pieces.end());
        } else if (task.hands.size() > 1) {
            keepAhead(place.pieces, actual.piecesDone, now());
        }
    }

    const Remaining& remaining_;
    Instant bell_;
    RunSheet sheet_;
};

/// Who has another crew than the plan was made for waits a second or two. Our choice.
constexpr std::int64_t kThoroughSearch = 1000;

/// How many minutes late are tried, one after the other, when nothing says how late a plan must be:
/// in steps that grow, since the answer is halved down to the minute afterwards, as far as a meal
/// can slip on its day. Our choice.
constexpr int kMinutesLate[] = {1, 2, 4, 7, 12, 20, 30, 45, 60, 90, 120, 180, 240};

/// By how much the limits on waiting are stretched, in this order, when none of a changed crew's
/// plans keeps them: as little as possible, and no further than minutes become hours. Our choice.
constexpr int kStretches[] = {1, 2, 4, 8, 16};

/// Looks for plans that serve so many minutes late.
class Lookout {
  public:
    Lookout(const Remaining& remaining, const plan::Search& search, std::int64_t mostSchedules)
        : remaining_(remaining), search_(search), mostSchedules_(mostSchedules) {}

    Result<SoonestRest, plan::NoPlan> at(minutes late) const {
        const Duration serve = remaining_.serve + late - remaining_.sheet.bell;
        auto found = plan::replan(remaining_.sheet.problem, remaining_.sheet.schedule,
                                  {remaining_.actuals, remaining_.now - remaining_.sheet.bell,
                                   serve, remaining_.durations},
                                  search_, mostSchedules_);
        if (!found) return fail(std::move(found.error()));
        return SoonestRest{late, *std::move(found)};
    }

    /// By halving, from one that is found for `soonest.late` where none is for `low`.
    SoonestRest between(minutes low, SoonestRest soonest) const {
        while (soonest.late - low > minutes{1}) {
            const minutes middle = low + (soonest.late - low) / 2;
            if (auto found = at(middle))
                soonest = *std::move(found);
            else
                low = middle;
        }
        return soonest;
    }

    /// The best plan for the first minute that can be met is still the plan to follow; the lateness
    /// stays on the screen.
    std::optional<SoonestRest> after(minutes low, HalfMinutes least) const {
        const minutes from = low;
        for (const int more : kMinutesLate) {
            const minutes late = from + minutes{more};
            if (late < least) continue;
            if (auto found = at(late)) return between(low, *std::move(found));
            low = late;
        }
        return std::nullopt;
    }

  private:
    const Remaining& remaining_;
    const plan::Search& search_;
    std::int64_t mostSchedules_;
};

/// What follows on the instant still does: coals burn from when they are lit.
Remaining waitingLonger(Remaining remaining, int times) {
    for (plan::Link& link : remaining.sheet.problem.links)
        if (link.maxLag) *link.maxLag *= times;
    return remaining;
}

}  // namespace

bool Remaining::tellsTheSameAs(const Remaining& other) const {
    return serve == other.serve && actuals == other.actuals && sheet == other.sheet;
}

Duration projectedDelay(const Remaining& remaining) {
    const RunSheet& sheet = remaining.sheet;
    const plan::Dispatch dispatch(sheet.problem, sheet.schedule,
                                  plan::skippedIn(remaining.actuals));
    const Duration serve = remaining.serve - sheet.bell;
    const auto projected =
        dispatch.project(remaining.actuals, remaining.now - sheet.bell, serve, remaining.durations);
    return std::chrono::ceil<HalfMinutes>(dispatch.readyAt(projected) - serve);
}

Remaining remainingAt(const Day& day, Instant now, const FireForecast* fire) {
    const Situation s = situationAt(day, now, fire);
    RunSheet sheet = sheetOfThoseThere(s);
    const bool isForOthers = sheet.problem.crew != s.sheet.problem.crew;
    return {std::move(sheet), actualsOf(s), durationsOf(s), now, s.serve, isForOthers};
}

Result<SoonestRest, plan::NoPlan> soonestRest(const Remaining& remaining,
                                              const plan::Search& search) {
    const Lookout lookout(remaining, search, plan::kQuickSearch);
    auto promised = lookout.at(minutes{0});
    if (promised) return promised;
    const minutes high = std::chrono::ceil<minutes>(projectedDelay(remaining));
    if (high <= minutes{0}) return promised;
    auto soonest = lookout.at(high);
    if (!soonest) return promised;
    return lookout.between(minutes{0}, *std::move(soonest));
}

Result<RunSheet, plan::NoPlan> planRest(const Remaining& remaining, const plan::Search& search) {
    const auto joined = [&](const SoonestRest& rest) {
        return Joining(remaining, remaining.serve + rest.late).run(rest.replanned.plan.schedule);
    };
    auto soonest = soonestRest(remaining, search);
    if (soonest) return joined(*soonest);
    if (!remaining.isForOthers) {
        const minutes projected =
            std::max(std::chrono::ceil<minutes>(projectedDelay(remaining)), minutes{0});
        const auto later =
            Lookout(remaining, search, plan::kQuickSearch).after(projected, soonest.error().by);
        if (later) return joined(*later);
        return fail(std::move(soonest.error()));
    }
    if (const auto promised = Lookout(remaining, search, kThoroughSearch).at(minutes{0}))
        return joined(*promised);
    for (const std::int64_t schedules : {plan::kQuickSearch, kThoroughSearch})
        for (const int times : kStretches) {
            const Remaining loosened = waitingLonger(remaining, times);
            const Lookout lookout(loosened, search, schedules);
            if (auto promised = lookout.at(minutes{0})) return joined(*promised);
            const Lookout thorough(loosened, search, kThoroughSearch);
            if (auto later = lookout.after(minutes{0}, HalfMinutes{0}))
                return joined(thorough.between(minutes{0}, *std::move(later)));
        }
    return fail(std::move(soonest.error()));
}

}  // namespace cinder::live
