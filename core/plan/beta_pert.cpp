#include "plan/beta_pert.h"

#include <algorithm>
#include <cmath>

namespace cinder::plan {

namespace {

/// Standard normal by the polar method.
double drawNormal(Rng& rng) {
    for (;;) {
        const double u = 2.0 * rng.unit() - 1.0;
        const double v = 2.0 * rng.unit() - 1.0;
        const double s = u * u + v * v;
        if (s > 0.0 && s < 1.0) return u * std::sqrt(-2.0 * std::log(s) / s);
    }
}

/// Gamma with `shape` of at least 1 and scale 1.
double drawGamma(Rng& rng, double shape) {
    const double d = shape - 1.0 / 3.0;
    const double c = 1.0 / std::sqrt(9.0 * d);
    for (;;) {
        const double x = drawNormal(rng);
        const double root = 1.0 + c * x;
        if (root <= 0.0) continue;
        const double v = root * root * root;
        const double u = rng.unit();
        if (u > 0.0 && std::log(u) < 0.5 * x * x + d - d * v + d * std::log(v)) return d * v;
    }
}

}  // namespace

Duration drawBetaPert(Rng& rng, const ThreePoint& estimate) {
    const auto low = static_cast<double>(Duration{estimate.low}.count());
    const auto high = static_cast<double>(Duration{estimate.high}.count());
    if (high <= low) return estimate.usual;
    const double usual =
        std::clamp(static_cast<double>(Duration{estimate.usual}.count()), low, high);
    const double a = drawGamma(rng, 1.0 + 4.0 * (usual - low) / (high - low));
    const double b = drawGamma(rng, 1.0 + 4.0 * (high - usual) / (high - low));
    return Duration{static_cast<Duration::rep>(std::lround(low + (high - low) * a / (a + b)))};
}

}  // namespace cinder::plan
