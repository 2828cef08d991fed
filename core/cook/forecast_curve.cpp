// The pictures of a forecast: the core over time, and what another turning interval would do.

#include <algorithm>
#include <cmath>

#include "cook/forecast.h"

namespace cinder::cook {

const PieceModel* FittedBatch::find(PieceNumber piece) const {
    for (const PieceModel& model : models_) {
        if (model.piece().number == piece) return &model;
    }
    return nullptr;
}

Result<std::vector<CurvePoint>, CookError> FittedBatch::coreCurve(PieceNumber piece, Instant until,
                                                                  Duration every) const {
    const PieceModel* model = find(piece);
    if (model == nullptr) return fail(CookError{CookError::Kind::OutOfRange, "piece"});
    if (every <= Duration(0)) return fail(CookError{CookError::Kind::OutOfRange, "every"});
    const PieceFit& fit = fit_.pieces[static_cast<std::size_t>(model - models_.data())];
    if (model->piece().pulled) until = std::min(until, *model->piece().pulled);

    const Matrix2 root = lowerRoot(fit.whole);
    const Pair one{root.a, root.c};
    const Pair two{0, root.d};
    GrillRun runs[] = {model->lay(fit.mode), model->lay(fit.mode + one), model->lay(fit.mode - one),
                       model->lay(fit.mode + two), model->lay(fit.mode - two)};
    std::vector<CurvePoint> curve;
    for (Duration at(0); model->piece().laid + at <= until; at += every) {
        double core[5];
        for (int r = 0; r < 5; ++r) {
            runs[r].advanceTo(at);
            core[r] = runs[r].slab().coldestCelsius();
        }
        double below = 0, above = 0;
        for (const int r : {1, 3}) {
            const auto [less, more] = std::minmax({core[r] - core[0], core[r + 1] - core[0]});
            below += less * less;
            above += more * more;
        }
        curve.push_back({model->piece().laid + at,
                         {Temperature::fromCelsius(core[0] - kBandReach * std::sqrt(below)),
                          Temperature::fromCelsius(core[0]),
                          Temperature::fromCelsius(core[0] + kBandReach * std::sqrt(above))}});
    }
    return curve;
}

Result<std::vector<TurningEffect>, CookError> FittedBatch::turningEffect(
    PieceNumber piece, std::span<const Duration> intervals) const {
    const PieceModel* model = find(piece);
    if (model == nullptr) return fail(CookError{CookError::Kind::OutOfRange, "piece"});
    const PieceFit& fit = fit_.pieces[static_cast<std::size_t>(model - models_.data())];
    std::vector<TurningEffect> effects;
    for (const Duration interval : intervals) {
        if (interval < std::chrono::seconds(10)) {
            return fail(CookError{CookError::Kind::OutOfRange, "interval"});
        }
        const PieceModel turned = model->turnedEvery(interval);
        GrillRun run = turned.lay(fit.mode);
        TurningEffect effect{interval, std::nullopt};
        if (run.advanceUntil(batch_->pullAt, std::chrono::hours(4))) effect.toPull = run.elapsed();
        effects.push_back(effect);
    }
    return effects;
}

}  // namespace cinder::cook
