#include "cook/grill_run.h"

#include <algorithm>
#include <cmath>

namespace cinder::cook {

namespace {

Duration fromSeconds(double seconds) {
    return Duration(static_cast<Duration::rep>(std::llround(seconds * 1000.0)));
}

/// Seconds into a step of `whole` seconds at which the coldest place is at `target`, by the secant
/// rule on steps taken anew from the same start; the slab is left there.
double stopAt(Slab& slab, double target, double coldestBefore, double whole) {
    double low = 0, lowValue = coldestBefore;
    double high = whole, highValue = slab.coldestCelsius();
    double size = whole;
    for (int i = 0; i < 6 && std::abs(slab.coldestCelsius() - target) > 1e-6; ++i) {
        size = low + (target - lowValue) / (highValue - lowValue) * (high - low);
        size = std::clamp(size, 1e-6, whole);
        slab.retakeStep(size);
        const double value = slab.coldestCelsius();
        if (value < target) {
            low = size;
            lowValue = value;
        } else {
            high = size;
            highValue = value;
        }
    }
    return size;
}

}  // namespace

std::optional<Duration> Turning::next(Duration after) const {
    const auto turn = std::upper_bound(made.begin(), made.end(), after);
    if (turn != made.end()) return *turn;
    if (!every || *every <= Duration(0)) return std::nullopt;
    const Duration last = made.empty() ? Duration(0) : made.back();
    return last + ((after - last) / *every + 1) * *every;
}

Duration Turning::moveBefore(Duration after, Duration until) const {
    const auto move = std::upper_bound(moves.begin(), moves.end(), after);
    return move == moves.end() ? until : std::min(*move, until);
}

FireOver steadyFire(Side side) {
    return [side](Duration, Duration) { return side; };
}

GrillRun::GrillRun(Slab slab, FireOver fire, Side air, Turning turning)
    : slab_(std::move(slab)),
      fire_(std::move(fire)),
      air_(air),
      turning_(std::move(turning)),
      hottestFace_(std::max(slab_.nodesCelsius().front(), slab_.nodesCelsius().back())) {}

Temperature GrillRun::hottestFace() const {
    return Temperature::fromCelsius(hottestFace_);
}

void GrillRun::advanceTo(Duration until) {
    pass(until, std::nullopt);
}

bool GrillRun::advanceUntil(Temperature target, Duration latest) {
    return slab_.coldest() >= target || pass(latest, target.celsius());
}

bool GrillRun::pass(Duration until, std::optional<double> target) {
    while (elapsed_ < until) {
        const auto turn = turning_.next(elapsed_);
        const Duration end = turning_.moveBefore(elapsed_, turn ? std::min(*turn, until) : until);
        const Side fire = fire_(elapsed_, end);
        const double begun = std::chrono::duration<double>(elapsed_).count();
        double coldest = slab_.coldestCelsius();
        double stopped = -1;
        const auto afterStep = [&](double passed) {
            const double reached = target || watch_ ? slab_.coldestCelsius() : 0.0;
            if (target && reached >= *target) {
                const double whole = slab_.lastStepSeconds();
                stopped = passed - whole + stopAt(slab_, *target, coldest, whole);
            }
            coldest = reached;
            hottestFace_ =
                std::max({hottestFace_, slab_.nodesCelsius().front(), slab_.nodesCelsius().back()});
            if (watch_) watch_(begun + (stopped >= 0 ? stopped : passed), slab_);
            return stopped < 0;
        };
        if (firstFaceDown()) {
            slab_.advance(fire, air_, end - elapsed_, afterStep);
        } else {
            slab_.advance(air_, fire, end - elapsed_, afterStep);
        }
        if (stopped >= 0) {
            elapsed_ += fromSeconds(stopped);
            return true;
        }
        elapsed_ = end;
        if (turn && *turn == end) ++turns_;
    }
    return false;
}

RestPeak restPiece(Slab& slab, const Side& both, Duration lasting,
                   const std::function<void(double, const Slab&)>& watch) {
    // A parabola through the three samples around the highest one: the maximum is flat and the
    // steps are long.
    const double half = 0.5 * slab.nodesMetres().back();
    double t0 = 0, t1 = 0, y0 = slab.celsiusAt(half), y1 = y0;
    double bestAt = 0, best = y0;
    slab.advance(both, both, lasting, [&](double t2) {
        const double y2 = slab.celsiusAt(half);
        if (y2 > best) {
            best = y2;
            bestAt = t2;
        }
        if (t1 > t0 && y1 >= y0 && y1 >= y2 && y1 == best) {
            const double a = (y1 - y0) / (t1 - t0);
            const double b = (y2 - y1) / (t2 - t1);
            const double bend = (b - a) / (t2 - t0);
            if (bend < 0) {
                bestAt = 0.5 * (t0 + t1) - a / (2.0 * bend);
                best = y0 + (bestAt - t0) * (a + bend * (bestAt - t1));
            }
        }
        t0 = t1;
        y0 = y1;
        t1 = t2;
        y1 = y2;
        if (watch) {
            watch(t2, slab);
            return true;
        }
        // Nothing outside is warm enough to turn a falling middle round.
        const bool isPast = t0 > 0 && y1 < y0 && y1 > both.surroundings.celsius();
        return !isPast || both.radiant.wattsPerSquareMetre > 0;
    });
    return {Temperature::fromCelsius(best), fromSeconds(bestAt)};
}

}  // namespace cinder::cook
