// Fitting the readings of a batch (forecast.h).

#include <algorithm>
#include <cmath>

#include "cook/forecast.h"

namespace cinder::cook {

namespace {

// Standard deviations of logarithms; see heat reference notes on what varies and how much.
/// Diffusivity of the meat of one batch: measured values of beef scatter by 8 %.
constexpr double kMeatShared = 0.08;
/// And from piece to piece; from memory.
constexpr double kMeatOwn = 0.03;
/// Flux from place to place on one grate; from memory (a published film varied along one joint
/// enough to move heating times by 43 %: Burfoot & James 1988).
constexpr double kPlaceOnGrate = 0.15;
/// No step of the fit moves a logarithm by more.
constexpr double kLongestStep = 0.5;
constexpr int kMostSteps = 5;
constexpr double kSettled = 0.01;
/// Nor is a step taken for less: minus log likelihoods this close are the same belief (one standard
/// deviation is 0.5).
constexpr double kWorthwhile = 0.1;

double square(double x) {
    return x * x;
}

Matrix2 sharedPrior(const Batch& batch) {
    double spread = batch.fire.front().belief.spread;
    for (const FireReading& reading : batch.fire)
        spread = std::min(spread, reading.belief.spread);
    return {square(spread), 0, 0, square(kMeatShared)};
}

/// Time goes with the square of the thickness, so its logarithm varies twice as much.
Matrix2 ownPrior(const PieceOnGrate& piece) {
    return {square(kPlaceOnGrate), 0, 0, square(2 * piece.thicknessSpread) + square(kMeatOwn)};
}

Pair shortened(const Pair& step) {
    const double longest = std::max(std::abs(step.flux), std::abs(step.thick));
    const double share = longest > kLongestStep ? kLongestStep / longest : 1.0;
    return {share * step.flux, share * step.thick};
}

}  // namespace

void FittedBatch::fitReadings() {
    const std::size_t n = models_.size();
    const Matrix2 shared = sharedPrior(*batch_);
    std::vector<Matrix2> own;
    for (const PieceModel& model : models_)
        own.push_back(ownPrior(model.piece()));
    std::vector<Evidence> evidence(n);
    std::vector<Pair> at(n);
    Pair fire;
    double costBefore = 0;

    // Gauss-Newton over all readings at once, each step halved until it lowers the cost.
    const auto look = [&]() {
        double cost = 0.5 * dot(fire, inverse(shared) * fire);
        for (std::size_t i = 0; i < n; ++i) {
            evidence[i] = Evidence{};
            if (readings_[i].empty()) continue;
            double own1 = 0;
            evidence[i] = evidenceNear(models_[i], readings_[i], at[i], own1);
            const Pair apart = at[i] - fire;
            cost += own1 + 0.5 * dot(apart, inverse(own[i]) * apart);
        }
        return cost;
    };
    costBefore = look();
    for (int step = 0; step < kMostSteps; ++step) {
        fit_ = fitShared(shared, own, evidence);
        const std::vector<Pair> from = at;
        const Pair fireFrom = fire;
        double moved = 0;
        double gained = 0;
        for (double share = 1.0; share > 0.2; share *= 0.5) {
            const auto along = [share](const Pair& a, const Pair& b) {
                const Pair d = shortened(b - a);
                return a + Pair{share * d.flux, share * d.thick};
            };
            fire = along(fireFrom, fit_.mode);
            moved = 0;
            for (std::size_t i = 0; i < n; ++i) {
                if (readings_[i].empty()) continue;
                at[i] = along(from[i], fit_.pieces[i].mode);
                moved = std::max({moved, std::abs(at[i].flux - from[i].flux),
                                  std::abs(at[i].thick - from[i].thick)});
            }
            if (moved < kSettled) break;
            const double cost = look();
            gained = costBefore - cost;
            if (gained < 0) continue;
            costBefore = cost;
            break;
        }
        if (moved < kSettled || gained < kWorthwhile) break;
    }
    fit_ = fitShared(shared, own, evidence);
}

Result<FittedBatch, CookError> FittedBatch::fit(Batch batch) {
    if (batch.turnEvery < std::chrono::seconds(10)) {
        return fail(CookError{CookError::Kind::OutOfRange, "turnEvery"});
    }
    FittedBatch fitted;
    fitted.batch_ = std::make_unique<const Batch>(std::move(batch));
    for (const PieceOnGrate& piece : fitted.batch_->pieces) {
        auto model = PieceModel::make(*fitted.batch_, piece, Resolution::quick());
        if (!model) return fail(model.error());
        auto readings = readingsOf(*fitted.batch_, piece);
        if (!readings) return fail(readings.error());
        fitted.models_.push_back(std::move(*model));
        fitted.readings_.push_back(std::move(*readings));
    }
    fitted.fitReadings();
    return fitted;
}

}  // namespace cinder::cook
