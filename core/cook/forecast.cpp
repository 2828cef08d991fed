#include "cook/forecast.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "base/rng.h"

namespace cinder::cook {

using namespace std::chrono_literals;

namespace {

constexpr Duration kLongestCook = 4h;
constexpr Duration kLongestRest = 75min;
/// What the model cannot follow (wind, drying, the fire between two looks), as a share of the time
/// from the last reading to the pull. Chosen on simulated cooks of a richer model, see bench_cook.
constexpr double kModelShare = 0.03;
/// The same where the forecast runs on from a reading: nothing of the fire after it is averaged
/// out.
constexpr double kSeenShare = 0.10;
/// The least published rise of oven roasts, 3 °C (three cookery sources; weak).
constexpr TemperatureDelta kLeastRise = TemperatureDelta::fromKelvin(3);
constexpr int kDraws = 200;

double secondsOf(Duration d) {
    return std::chrono::duration<double>(d).count();
}
Duration fromSeconds(double s) {
    return Duration(static_cast<Duration::rep>(s * 1000.0));
}

/// Standard normal pairs. Source: G. E. P. Box, M. E. Muller, Ann. Math. Stat. 29 (1958).
Pair normalPair(Rng& rng) {
    const double radius = std::sqrt(-2.0 * std::log(1.0 - rng.unit()));
    const double angle = 2.0 * std::numbers::pi * rng.unit();
    return {radius * std::cos(angle), radius * std::sin(angle)};
}

/// The 10th, 50th and 90th percentile.
template <class T, class Make>
Band<T> percentiles(std::vector<double>& draws, Make make) {
    std::sort(draws.begin(), draws.end());
    const auto n = draws.size();
    return {make(draws[n / 10]), make(draws[n / 2]), make(draws[n - 1 - n / 10])};
}

}  // namespace

/// How long one piece takes from laying to pull, with what moves it.
struct FittedBatch::Timing {
    std::optional<AtPull> atPull;    ///< nothing: not reached, or already off the grate
    double log = 0;                  ///< of the likely seconds
    Pair gradient;                   ///< of `log`, by the hidden numbers
    double shorter = 0, longer = 0;  ///< standard deviations of the log to either side
    double own = 0;                  ///< part of them that is the model's and the thermometer's
    double soonest = 0;              ///< seconds; what was last seen says that it is not before
    double dueBy = secondsOf(kLongestCook);  ///< likely, by what was last seen

    [[nodiscard]] double seconds(double deviation) const {
        return std::max(soonest, std::min(std::exp(log + deviation), secondsOf(kLongestCook)));
    }
};

/// Of the likely time: what the model cannot follow from the last reading on, and what the last
/// reading is out by, as the time the piece takes to climb as much.
double FittedBatch::ownDeviation(std::size_t i, const AtPull& likely) const {
    const double took = std::max(1.0, secondsOf(likely.run.elapsed()));
    const Duration known =
        readings_[i].empty() ? Duration(0) : models_[i].sinceLaid(readings_[i].last());
    const double left = std::max(0.0, secondsOf(likely.run.elapsed() - known));
    double seen = 0;
    if (likely.standing.variance > 0) {
        GrillRun on = likely.run;
        const Temperature aim =
            batch_->pullAt + TemperatureDelta::fromKelvin(likely.standing.above + 1);
        if (on.advanceUntil(aim, kLongestCook))
            seen = std::sqrt(likely.standing.variance) *
                   secondsOf(on.elapsed() - likely.run.elapsed());
    }
    const double share = likely.standing.variance > 0 ? kSeenShare : kModelShare;
    return std::hypot(share * left, seen) / took;
}

FittedBatch::Timing FittedBatch::timing(std::size_t i) const {
    const PieceModel& model = models_[i];
    const PieceFit& fit = fit_.pieces[i];
    const LastSeen seen = seenOf(model);
    const auto logTime = [&](const Pair& hidden) {
        // A fire too weak counts as the longest cook: the band then ends there.
        const AtPull at = runToPull(model, seen, hidden, kLongestCook);
        return std::log(std::max(1.0, secondsOf(at.isReached ? at.run.elapsed() : kLongestCook)));
    };

    Timing timed;
    AtPull likely = runToPull(model, seen, fit.mode, kLongestCook);
    if (!likely.isReached) return timed;
    timed.log = std::log(std::max(1.0, secondsOf(likely.run.elapsed())));
    if (seen.any())
        (seen.isAtTarget(batch_->pullAt) ? timed.dueBy : timed.soonest) =
            secondsOf(model.sinceLaid(seen.at()));
    const Matrix2 root = lowerRoot(fit.whole);
    Pair change;  // along the columns of the root
    double shorter = 0, longer = 0;
    int column = 0;
    for (const Pair& side : {Pair{root.a, root.c}, Pair{0, root.d}}) {
        const double up = logTime(fit.mode + side) - timed.log;
        const double down = logTime(fit.mode - side) - timed.log;
        (column++ == 0 ? change.flux : change.thick) = 0.5 * (up - down);
        const auto [less, more] = std::minmax({up, down});
        shorter += less * less;
        longer += more * more;
    }
    timed.gradient.thick = root.d > 0 ? change.thick / root.d : 0.0;
    timed.gradient.flux = (change.flux - root.c * timed.gradient.thick) / root.a;
    timed.own = ownDeviation(i, likely);
    timed.shorter = std::sqrt(shorter + timed.own * timed.own);
    timed.longer = std::sqrt(longer + timed.own * timed.own);
    timed.atPull = std::move(likely);
    return timed;
}

std::optional<CarryOver> FittedBatch::carryOver(std::size_t i, const AtPull& at) const {
    const GrillRun& run = at.run;
    const auto lower = TemperatureDelta::fromKelvin(-at.standing.above);
    const RestPlace& rest = batch_->rest;
    Slab likely = run.slab();
    Slab snug = likely;
    const Temperature core = likely.middle();
    const Instant pulled = models_[i].piece().laid + run.elapsed();

    const RestPeak early = restPiece(likely, rest.handling, rest.handlingFor);
    const RestPeak late = restPiece(likely, rest.box, kLongestRest);
    Side warm = rest.box;
    warm.film = {3};
    warm.surroundings = std::max(rest.box.surroundings, Temperature::fromCelsius(60));
    const RestPeak best = restPiece(snug, warm, kLongestRest);

    CarryOver over;
    const bool peaksEarly = early.middle > late.middle;
    over.peak.likely = peaksEarly ? early.middle : late.middle;
    over.peakAt = pulled + (peaksEarly ? early.afterPull : rest.handlingFor + late.afterPull);
    over.peak.low = std::min(over.peak.likely, core + kLeastRise);
    over.peak.high = std::max(over.peak.likely, best.middle);
    over.peak = {over.peak.low + lower, over.peak.likely + lower, over.peak.high + lower};
    over.limit = run.slab().mean() + lower;
    return over;
}

PieceForecast FittedBatch::forecastPiece(std::size_t i, Timing& timed) const {
    const PieceOnGrate& piece = models_[i].piece();
    PieceForecast made;
    made.number = piece.number;
    if (piece.pulled) {
        AtPull at{models_[i].lay(fit_.pieces[i].mode), {}, true};
        // Pulled, whatever a touch said before.
        const LastSeen seen{seenOf(models_[i]).probe, {}};
        if (seen.any()) at.standing = runToLastSeen(models_[i], seen, at.run);
        at.run.advanceTo(*piece.pulled - piece.laid);
        made.carryOver = carryOver(i, at);
        return made;
    }
    timed = timing(i);
    if (!timed.atPull) return made;
    const auto at = [&](double deviation) {
        return piece.laid + fromSeconds(timed.seconds(deviation));
    };
    made.pull =
        Band<Instant>{at(-kBandReach * timed.shorter), at(0), at(kBandReach * timed.longer)};
    // Two runs are out by seconds: a solver must not call a piece not due that reads the target.
    made.pull->likely = std::min(made.pull->likely, piece.laid + fromSeconds(timed.dueBy));
    made.pull->low = std::min(made.pull->low, made.pull->likely);
    made.carryOver = carryOver(i, *timed.atPull);
    return made;
}

/// Whether two pieces have the same forecast: neither was read, and they were laid alike.
bool FittedBatch::sameCase(std::size_t i, std::size_t j) const {
    const PieceOnGrate& a = models_[i].piece();
    const PieceOnGrate& b = models_[j].piece();
    return readings_[i].empty() && readings_[j].empty() && a.thickness == b.thickness &&
           a.thicknessSpread == b.thicknessSpread && a.width == b.width && a.length == b.length &&
           a.start == b.start && a.laid == b.laid && a.turns == b.turns && a.cool == b.cool &&
           a.pulled == b.pulled;
}

std::optional<BatchSpread> FittedBatch::spreadOf(const std::vector<Timing>& timings) const {
    // Pieces share their fire and their meat, so the batch is drawn as one: the shared part first,
    // then what is each piece's own. The seed is fixed: the same batch gives the same band.
    std::vector<double> first, last, between;
    Rng rng(20, 1);
    const Matrix2 sharedRoot = lowerRoot(fit_.spread);
    std::vector<Matrix2> ownRoot;
    for (const PieceFit& piece : fit_.pieces)
        ownRoot.push_back(lowerRoot(piece.own));
    for (int draw = 0; draw < kDraws; ++draw) {
        const Pair shared = sharedRoot * normalPair(rng);
        double earliest = 1e300, latest = -1e300;
        for (std::size_t i = 0; i < timings.size(); ++i) {
            if (!timings[i].atPull) continue;
            const Pair moved = fit_.pieces[i].follow * shared + ownRoot[i] * normalPair(rng);
            const double deviation =
                dot(timings[i].gradient, moved) + timings[i].own * normalPair(rng).flux;
            const double at = secondsOf(models_[i].piece().laid.time_since_epoch()) +
                              timings[i].seconds(deviation);
            earliest = std::min(earliest, at);
            latest = std::max(latest, at);
        }
        if (latest < earliest) return std::nullopt;
        first.push_back(earliest);
        last.push_back(latest);
        between.push_back(latest - earliest);
    }
    const auto instant = [](double s) { return Instant(fromSeconds(s)); };
    return BatchSpread{percentiles<Instant>(first, instant), percentiles<Instant>(last, instant),
                       percentiles<Duration>(between, fromSeconds)};
}

BatchForecast FittedBatch::forecast() const {
    BatchForecast made;
    std::vector<Timing> timings(models_.size());
    for (std::size_t i = 0; i < models_.size(); ++i) {
        std::size_t like = 0;
        while (like < i && !sameCase(like, i))
            ++like;
        if (like < i) {
            timings[i] = timings[like];
            made.pieces.push_back(made.pieces[like]);
            made.pieces.back().number = models_[i].piece().number;
        } else {
            made.pieces.push_back(forecastPiece(i, timings[i]));
        }
    }
    made.spread = spreadOf(timings);
    const double reach = kBandReach * std::sqrt(fit_.spread.a);
    made.fireFactor = {std::exp(fit_.mode.flux - reach), std::exp(fit_.mode.flux),
                       std::exp(fit_.mode.flux + reach)};
    return made;
}

}  // namespace cinder::cook
