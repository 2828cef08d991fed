#include "cook/coal.h"

#include <algorithm>
#include <cmath>

namespace cinder::cook {

namespace {

/// J/kg, gross, and kg/m³ of lump charcoal as poured. Source: overview of charcoal properties
/// giving EN 1860-2 limits (secondary).
constexpr double kHeatLow = 29e6, kHeatHigh = 33e6;
constexpr double kBulkLow = 180, kBulkHigh = 220;
/// Of the heat, through the grate. From memory.
constexpr double kShareLow = 0.15, kShareHigh = 0.35;
/// Of the bed, when more is due. From memory.
constexpr double kSpentShare = 0.5;
/// Until more is due, after burn-in. Common practice - no source.
constexpr Duration kBedLasts = std::chrono::minutes(60);

double bedKilograms(Area bed, Length depth) {
    return bed.squareMetres() * depth.metres() * 0.5 * (kBulkLow + kBulkHigh);
}

}  // namespace

Mass coalOfBed(Area bed, Length depth) {
    return Mass::fromKilograms(bedKilograms(bed, depth));
}

Result<CoalNeed, CookError> coalNeed(const FirePlan& plan) {
    if (plan.bed <= Area{}) return fail(CookError{CookError::Kind::NotPositive, "bed"});
    if (plan.depth <= Length{}) return fail(CookError{CookError::Kind::NotPositive, "depth"});
    if (plan.bag <= Mass{}) return fail(CookError{CookError::Kind::NotPositive, "bag"});
    if (plan.cooking <= Duration(0)) {
        return fail(CookError{CookError::Kind::NotPositive, "cooking"});
    }
    if (plan.depth > Length::fromMillimetres(300)) {
        return fail(CookError{CookError::Kind::OutOfRange, "depth"});
    }
    if (plan.cooking > std::chrono::hours(12)) {
        return fail(CookError{CookError::Kind::OutOfRange, "cooking"});
    }
    const double area = plan.bed.squareMetres();
    const double seconds = std::chrono::duration<double>(plan.burnIn + plan.cooking).count();
    const double useful = plan.fire.atHundred.wattsPerSquareMetre * area * seconds;
    const auto mass = [&](double share, double heat) {
        return Mass::fromKilograms(useful / (share * heat));
    };

    CoalNeed need{};
    need.byHeat = {mass(kShareHigh, kHeatHigh),
                   mass(0.5 * (kShareLow + kShareHigh), 0.5 * (kHeatLow + kHeatHigh)),
                   mass(kShareLow, kHeatLow)};
    const double bed = bedKilograms(plan.bed, plan.depth);
    need.byDepth = Mass::fromKilograms(bed);
    // Fresh coal is added one burn-in before the bed is due, and only while there is cooking left.
    for (Duration due = kBedLasts; due < plan.cooking; due += kBedLasts) {
        const Duration at = plan.burnIn + due - std::min(plan.burnIn, kBedLasts);
        need.topUps.push_back({at, Mass::fromKilograms(kSpentShare * bed)});
        need.byDepth += need.topUps.back().mass;
    }
    need.load = std::max(need.byDepth, need.byHeat.high);
    need.bags = static_cast<int>(std::ceil(need.load / plan.bag - 1e-9));
    need.lightBefore = plan.burnIn;
    return need;
}

}  // namespace cinder::cook
