#include "cook/coal_bed.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace cinder::cook {

namespace {

constexpr double kHalfLifeMinutes = 60;
constexpr double kSlopeSpread = 0.35;   // of the slope
constexpr double kLevelSpread = 0.35;   // of the logarithm of the first heat, see fire.h
constexpr double kRepeatSpread = 0.15;  // of the logarithm, test to test
/// No bed is believed to last longer without more coal.
constexpr double kLongestHalfLifeMinutes = 240;

double minutesOf(Duration d) {
    return std::chrono::duration<double, std::ratio<60>>(d).count();
}

struct Slope {
    double mean = 0;
    double deviation = 0;
};

/// Slope of the logarithm per minute, with the level unknown: normal equations of two unknowns.
Slope fitSlope(const CoalBed& bed) {
    const double believed = std::numbers::ln2 / kHalfLifeMinutes;
    const double spread = kSlopeSpread * believed;
    double levelWeight = 1.0 / (kLevelSpread * kLevelSpread);
    double slopeWeight = 1.0 / (spread * spread);
    double both = 0, level = 0, slope = slopeWeight * believed;
    std::optional<double> first;
    for (const FireReading& reading : bed.readings) {
        if (reading.at < bed.ready) continue;
        const double at = minutesOf(reading.at - bed.ready);
        const double log = std::log(reading.belief.atHundred.wattsPerSquareMetre);
        // The level is believed to be what the first reading says, brought back to `ready`.
        if (!first) first = log + believed * at;
        const double weight = 1.0 / (kRepeatSpread * kRepeatSpread);
        levelWeight += weight;
        slopeWeight += weight * at * at;
        both -= weight * at;
        level += weight * (log - *first);
        slope -= weight * at * (log - *first);
    }
    const double determinant = levelWeight * slopeWeight - both * both;
    return {(levelWeight * slope - both * level) / determinant,
            std::sqrt(levelWeight / determinant)};
}

}  // namespace

Result<BedOutlook, CookError> bedOutlook(const CoalBed& bed) {
    if (bed.burnIn <= Duration(0)) return fail(CookError{CookError::Kind::NotPositive, "burnIn"});
    const Slope slope = fitSlope(bed);
    const auto weakAt = [&](double perMinute) {
        const double least = std::numbers::ln2 / kLongestHalfLifeMinutes;
        const double minutes = std::numbers::ln2 / std::max(perMinute, least);
        return bed.ready + Duration(std::llround(minutes * 60000.0));
    };
    const double reach = kBandReach * slope.deviation;
    BedOutlook outlook{{weakAt(slope.mean + reach), weakAt(slope.mean), weakAt(slope.mean - reach)},
                       {}};
    outlook.topUpBy = outlook.weak.likely - bed.burnIn;
    return outlook;
}

}  // namespace cinder::cook
