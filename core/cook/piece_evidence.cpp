#include "cook/piece_evidence.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace cinder::cook {

namespace {

/// Difference of the hidden numbers for derivatives.
constexpr double kNudge = 0.05;

/// Probes first, then judgements, in the order of `readings`.
std::vector<ExpectedReading> expect(const PieceModel& model, const PieceReadings& readings,
                                    const Pair& hidden) {
    GrillRun run = model.lay(hidden);
    std::vector<ExpectedReading> expected;
    std::vector<ExpectedReading> judged;
    auto judgement = readings.judgements.begin();
    const auto judgeUntil = [&](Instant until) {
        for (; judgement != readings.judgements.end() && judgement->at <= until; ++judgement) {
            run.advanceTo(model.sinceLaid(judgement->at));
            judged.push_back({run.slab().coldestCelsius(), 0});
        }
    };
    for (const ProbeReading& probe : readings.probes) {
        judgeUntil(probe.at);
        run.advanceTo(model.sinceLaid(probe.at));
        expected.push_back(expectProbe(model, run, probe.depth));
    }
    judgeUntil(Instant::max());
    expected.insert(expected.end(), judged.begin(), judged.end());
    return expected;
}

struct Pull {
    double cost, slope, bend;  ///< of minus log likelihood, by the expected temperature
};

/// What the model gets wrong in one reading of a piece it gets wrong in the next one as well, and
/// so does a thermometer that reads high: that part does not average out over `readings`.
Pull gaussian(double read, const ExpectedReading& expected, double readings) {
    const double variance = kThermometerKelvin * kThermometerKelvin +
                            readings * kModelKelvin * kModelKelvin + expected.variance;
    const double off = expected.celsius - read;
    return {0.5 * off * off / variance, off / variance, 1.0 / variance};
}

/// A cook says done with a chance that grows with the core over the target: a probit.
Pull probit(Judgement::Verdict verdict, double target, const ExpectedReading& expected) {
    const double sign = verdict == Judgement::Verdict::Done ? 1.0 : -1.0;
    const double z = std::clamp(sign * (expected.celsius - target) / kTouchKelvin, -6.0, 6.0);
    const double chance = 0.5 * std::erfc(-z / std::numbers::sqrt2);
    const double ratio = std::exp(-0.5 * z * z) / std::sqrt(2.0 * std::numbers::pi) / chance;
    return {-std::log(chance), -sign * ratio / kTouchKelvin,
            ratio * (ratio + z) / (kTouchKelvin * kTouchKelvin)};
}

}  // namespace

ExpectedReading expectProbe(const PieceModel& model, const GrillRun& run, Length depth) {
    const Slab& slab = run.slab();
    const double below = model.scaledDepth(depth, slab);
    const double place = run.firstFaceDown() ? slab.nodesMetres().back() - below : below;
    const double one = slab.celsiusAt(place - kTipMetres);
    const double other = slab.celsiusAt(place + kTipMetres);
    const double curved = 0.5 * (one + other) - slab.celsiusAt(place);
    return {0.5 * (one + other), 0.25 * (one - other) * (one - other) + 2.0 * curved * curved};
}

Instant PieceReadings::last() const {
    Instant latest = Instant::min();
    if (!probes.empty()) latest = probes.back().at;
    if (!judgements.empty()) latest = std::max(latest, judgements.back().at);
    return latest;
}

Result<PieceReadings, CookError> readingsOf(const Batch& batch, const PieceOnGrate& piece) {
    const auto afterPull = [&](Instant at) { return piece.pulled && at > *piece.pulled; };
    PieceReadings readings;
    for (const ProbeReading& probe : batch.probes) {
        if (!(probe.piece == piece.number) || afterPull(probe.at)) continue;
        if (probe.at < piece.laid) return fail(CookError{CookError::Kind::OutOfOrder, "probe"});
        if (probe.depth < Length{} || probe.depth > piece.thickness) {
            return fail(CookError{CookError::Kind::OutOfRange, "depth"});
        }
        if (!possibleReadings(piece.start, batch.boiling).holds(probe.reading)) {
            return fail(CookError{CookError::Kind::OutOfRange, "reading"});
        }
        readings.probes.push_back(probe);
    }
    for (const Judgement& judgement : batch.judgements) {
        if (!(judgement.piece == piece.number) || afterPull(judgement.at)) continue;
        if (judgement.at < piece.laid) {
            return fail(CookError{CookError::Kind::OutOfOrder, "judgement"});
        }
        readings.judgements.push_back(judgement);
    }
    const auto earlier = [](const auto& a, const auto& b) { return a.at < b.at; };
    std::stable_sort(readings.probes.begin(), readings.probes.end(), earlier);
    std::stable_sort(readings.judgements.begin(), readings.judgements.end(), earlier);
    return readings;
}

Evidence evidenceNear(const PieceModel& model, const PieceReadings& readings, const Pair& at,
                      double& cost) {
    const auto here = expect(model, readings, at);
    const auto more = expect(model, readings, at + Pair{kNudge, 0});
    const auto thicker = expect(model, readings, at + Pair{0, kNudge});
    Evidence evidence;
    evidence.at = at;
    cost = 0;
    for (std::size_t i = 0; i < here.size(); ++i) {
        const bool isProbe = i < readings.probes.size();
        const Pull pull = isProbe ? gaussian(readings.probes[i].reading.celsius(), here[i],
                                             static_cast<double>(readings.probes.size()))
                                  : probit(readings.judgements[i - readings.probes.size()].verdict,
                                           model.batch().pullAt.celsius(), here[i]);
        const double byFlux = (more[i].celsius - here[i].celsius) / kNudge;
        const double byThick = (thicker[i].celsius - here[i].celsius) / kNudge;
        cost += pull.cost;
        evidence.slope = evidence.slope + Pair{pull.slope * byFlux, pull.slope * byThick};
        evidence.bend =
            evidence.bend + Matrix2{pull.bend * byFlux * byFlux, pull.bend * byFlux * byThick,
                                    pull.bend * byFlux * byThick, pull.bend * byThick * byThick};
    }
    return evidence;
}

}  // namespace cinder::cook
