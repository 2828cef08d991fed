// The pictures of a forecast: the core over time, and what another turning interval would do.

#include <algorithm>
#include <cmath>

#include "cook/forecast.h"

namespace cinder::cook {

namespace {

/// A run whose core passes through what was last seen: lowered by what it stands above it, little
/// by little from the laying on.
class LoweredRun {
  public:
    LoweredRun(const PieceModel& model, const LastSeen& seen, const Pair& hidden)
        : run_(model.lay(hidden)) {
        if (!seen.any()) return;
        GrillRun before = run_;
        standing_ = runToLastSeen(model, seen, before);
        seenAfter_ = std::max(1.0, Seconds(model.sinceLaid(seen.at())).count());
    }
    [[nodiscard]] double coldestAt(Duration sinceLaid) {
        run_.advanceTo(sinceLaid);
        return run_.slab().coldestCelsius() - shareAt(sinceLaid) * standing_.above;
    }
    [[nodiscard]] double varianceAt(Duration sinceLaid) const {
        return shareAt(sinceLaid) * shareAt(sinceLaid) * standing_.variance;
    }

  private:
    using Seconds = std::chrono::duration<double>;
    [[nodiscard]] double shareAt(Duration sinceLaid) const {
        return std::min(1.0, Seconds(sinceLaid).count() / seenAfter_);
    }

    GrillRun run_;
    Standing standing_;
    double seenAfter_ = 1;
};

}  // namespace

LastSeen FittedBatch::seenOf(const PieceModel& model) const {
    return lastSeen(model.piece(), readings_[static_cast<std::size_t>(&model - models_.data())]);
}

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
    const LastSeen seen = seenOf(*model);
    LoweredRun runs[] = {
        {*model, seen, fit.mode},       {*model, seen, fit.mode + one},
        {*model, seen, fit.mode - one}, {*model, seen, fit.mode + two},
        {*model, seen, fit.mode - two},
    };
    std::vector<CurvePoint> curve;
    for (Duration at(0); model->piece().laid + at <= until; at += every) {
        double core[5];
        for (std::size_t r = 0; r < 5; ++r)
            core[r] = runs[r].coldestAt(at);
        const double read = runs[0].varianceAt(at);
        double below = read, above = read;
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
    const LastSeen seen = seenOf(*model);
    GrillRun asTurned = model->lay(fit.mode);
    const Temperature aim =
        batch_->pullAt + TemperatureDelta::fromKelvin(
                             seen.any() ? runToLastSeen(*model, seen, asTurned).above : 0.0);
    std::vector<TurningEffect> effects;
    for (const Duration interval : intervals) {
        if (interval < std::chrono::seconds(10)) {
            return fail(CookError{CookError::Kind::OutOfRange, "interval"});
        }
        const PieceModel turned = model->turnedEvery(interval);
        GrillRun run = turned.lay(fit.mode);
        TurningEffect effect{interval, std::nullopt};
        if (run.advanceUntil(aim, std::chrono::hours(4))) effect.toPull = run.elapsed();
        effects.push_back(effect);
    }
    return effects;
}

}  // namespace cinder::cook
