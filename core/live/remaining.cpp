#include "live/remaining.h"

#include <algorithm>

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
        if (actual.finish) return;
        if (task.shortestPiece) {
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

Result<plan::Replanned, plan::NoPlan> planFor(const Remaining& remaining, Duration late,
                                              const plan::Search& search) {
    const Duration serve = remaining.serve + late - remaining.sheet.bell;
    return plan::replan(
        remaining.sheet.problem, remaining.sheet.schedule,
        {remaining.actuals, remaining.now - remaining.sheet.bell, serve, remaining.durations},
        search);
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
    return {s.sheet, actualsOf(s), durationsOf(s), now, s.serve};
}

Result<SoonestRest, plan::NoPlan> soonestRest(const Remaining& remaining,
                                              const plan::Search& search) {
    auto promised = planFor(remaining, minutes{0}, search);
    if (promised) return SoonestRest{minutes{0}, *std::move(promised)};
    minutes low{0};  // none is found for this, one is for `high`
    minutes high = std::chrono::ceil<minutes>(projectedDelay(remaining));
    if (high <= low) return fail(std::move(promised.error()));
    auto soonest = planFor(remaining, high, search);
    if (!soonest) return fail(std::move(promised.error()));
    while (high - low > minutes{1}) {
        const minutes middle = low + (high - low) / 2;
        auto found = planFor(remaining, middle, search);
        (found ? high : low) = middle;
        if (found) soonest = std::move(found);
    }
    return SoonestRest{high, *std::move(soonest)};
}

Result<RunSheet, plan::NoPlan> planRest(const Remaining& remaining, const plan::Search& search) {
    const auto join = [&](Duration late, const plan::Replanned& found) {
        return Joining(remaining, remaining.serve + late).run(found.plan.schedule);
    };
    auto soonest = soonestRest(remaining, search);
    if (soonest) return join(soonest->late, soonest->replanned);
    // The best plan for the first minute that can be met is still the plan to follow; the lateness
    // stays on the screen.
    const Duration projected = std::max(projectedDelay(remaining), Duration{0});
    for (const int more : {1, 2, 4, 7, 12, 20, 30, 45, 60, 90, 120, 180}) {
        const Duration late = projected + minutes{more};
        if (late < soonest.error().by) continue;
        if (const auto found = planFor(remaining, late, search)) return join(late, *found);
    }
    return fail(std::move(soonest.error()));
}

}  // namespace cinder::live
