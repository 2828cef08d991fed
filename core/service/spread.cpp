#include "service/spread.h"

#include <cmath>

namespace cinder::service {

namespace {

double millis(Duration length) {
    return static_cast<double>(length.count());
}

Duration rounded(double ms) {
    return Duration{static_cast<Duration::rep>(std::llround(ms))};
}

}  // namespace

Duration Spread::mean() const {
    if (shape_ != Shape::Triangle) return usual_;
    return rounded((millis(low_) + millis(usual_) + millis(high_)) / 3.0);
}

Duration Spread::draw(Rng& rng) const {
    const double u = rng.unit();
    if (shape_ == Shape::Exact) return usual_;
    if (shape_ == Shape::Exponential) return rounded(-std::log(1.0 - u) * millis(usual_));
    const double whole = millis(high_ - low_);
    if (whole <= 0) return usual_;
    const double rise = millis(usual_ - low_);
    const double fall = millis(high_ - usual_);
    if (u * whole < rise) return low_ + rounded(std::sqrt(u * whole * rise));
    return high_ - rounded(std::sqrt((1.0 - u) * whole * fall));
}

Spread Spread::times(double factor) const {
    const auto scaled = [factor](Duration length) { return rounded(millis(length) * factor); };
    return {shape_, scaled(low_), scaled(usual_), scaled(high_)};
}

}  // namespace cinder::service
