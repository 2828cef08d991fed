#include "cook/last_seen.h"

#include <algorithm>
#include <cmath>

namespace cinder::cook {

LastSeen lastSeen(const PieceOnGrate& piece, const PieceReadings& readings) {
    LastSeen seen;
    const double middle = 0.5 * piece.thickness.metres();
    for (const ProbeReading& probe : readings.probes)
        if (std::abs(probe.depth.metres() - middle) <= kTipMetres) seen.probe = probe;
    if (readings.judgements.empty()) return seen;
    const Judgement& judged = readings.judgements.back();
    const bool isAnswered = !readings.probes.empty() && readings.probes.back().at >= judged.at;
    if (judged.verdict == Judgement::Verdict::NotYet && !isAnswered) seen.notYet = judged.at;
    return seen;
}

Standing runToLastSeen(const PieceModel& model, const LastSeen& seen, GrillRun& run) {
    const double target = model.batch().pullAt.celsius();
    Standing standing;
    if (seen.probe) {
        run.advanceTo(model.sinceLaid(seen.probe->at));
        const ExpectedReading expected = expectProbe(model, run, seen.probe->depth);
        const double read = seen.probe->reading.celsius();
        const double coldest = run.slab().coldestCelsius();
        const double readVariance = kThermometerKelvin * kThermometerKelvin + expected.variance;
        const double share =
            kDriftKelvin * kDriftKelvin / (kDriftKelvin * kDriftKelvin + readVariance);
        // A high reading may be a tip that missed; nothing in the piece is warmer than a low one.
        standing = {std::max(share * (expected.celsius - read), coldest - read),
                    share * readVariance};
        // The tip reads more than the coldest place does: at the target is due all the same.
        if (read >= target) standing.above = std::min(standing.above, coldest - target);
    }
    if (seen.notYet) {
        run.advanceTo(model.sinceLaid(*seen.notYet));
        standing.above =
            std::max(standing.above, run.slab().coldestCelsius() + kNotYetKelvin - target);
    }
    return standing;
}

AtPull runToPull(const PieceModel& model, const LastSeen& seen, const Pair& hidden,
                 Duration latest) {
    AtPull at{model.lay(hidden), {}, false};
    if (seen.any()) at.standing = runToLastSeen(model, seen, at.run);
    const Temperature aim = model.batch().pullAt + TemperatureDelta::fromKelvin(at.standing.above);
    // It was there before it was seen: when, is told from the beginning.
    if (seen.any() && at.run.slab().coldest() >= aim) at.run = model.lay(hidden);
    at.isReached = at.run.advanceUntil(aim, latest);
    return at;
}

}  // namespace cinder::cook
