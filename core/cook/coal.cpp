#include "cook/coal.h"

#include <algorithm>
#include <cmath>

namespace cinder::cook {

namespace {

constexpr double kHeatLow = 29e6, kHeatHigh = 33e6;       // J/kg
constexpr double kBulkLow = 180, kBulkHigh = 220;         // kg/m³
constexpr double kShareLow = 0.15, kShareHigh = 0.35;     // of the heat, through the grate
constexpr double kSpentShare = 0.5;                       // of the bed when more is due
constexpr Duration kBedLasts = std::chrono::minutes(60);  // until then, after burn-in

}  // namespace

const std::vector<CoalFact>& coalFacts() {
    static const std::vector<CoalFact> facts = {
        {"gross heating value of charcoal", kHeatLow / 1e6, kHeatHigh / 1e6, "MJ/kg",
         FactKind::Published,
         "overview of charcoal properties giving EN 1860-2 limits (secondary)"},
        {"bulk density of lump charcoal, poured", kBulkLow, kBulkHigh, "kg/m3", FactKind::Published,
         "overview of charcoal properties giving EN 1860-2 limits (secondary)"},
        {"moisture of barbecue charcoal, at most", 0, 8, "%", FactKind::Published, "EN 1860-2"},
        {"burn-in before cooking", 30, 30, "min", FactKind::CommonPractice, "no source"},
        {"bag of lump charcoal", 40, 40, "lb", FactKind::CommonPractice, "no source"},
        {"bed depth for direct heat", 50, 100, "mm", FactKind::CommonPractice, "no source"},
        {"a bed is due for more after", 60, 60, "min", FactKind::CommonPractice, "no source"},
        {"share of the bed spent by then", 50, 50, "%", FactKind::FromMemory, "no source"},
        {"share of the heat that passes the grate", 100 * kShareLow, 100 * kShareHigh, "%",
         FactKind::FromMemory, "no source"},
    };
    return facts;
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
    const double bed = area * plan.depth.metres() * 0.5 * (kBulkLow + kBulkHigh);
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
