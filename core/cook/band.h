#pragma once

namespace cinder::cook {

/// An 80 % band: one time in ten the truth is below `low`, one time in ten above `high`. bench_cook
/// counts how often that holds over simulated cooks.
template <class T>
struct Band {
    T low;
    T likely;
    T high;
    friend bool operator==(const Band&, const Band&) = default;
};

/// Standard deviations from the middle to either end of an 80 % band of a normal distribution.
inline constexpr double kBandReach = 1.2815515655;

}  // namespace cinder::cook
