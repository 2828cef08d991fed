#include <algorithm>
#include <map>

#include "cook/holding.h"
#include "live/food_day.h"

namespace cinder::live {

namespace {

/// The readings of a pan since it last came off the heat, one for each instant.
std::vector<cook::MeasuredPoint> sinceHeated(const safety::Pan& pan,
                                             const std::vector<safety::Entry>& record,
                                             Instant now) {
    using safety::Purpose;
    std::map<Instant, std::pair<Temperature, bool>> byInstant;  // value, begins anew
    for (const safety::Entry& entry : record) {
        const auto* measured = std::get_if<safety::FoodMeasured>(&entry.fact);
        if (entry.isTakenBack || !measured || measured->at > now) continue;
        if (measured->pan.dish != pan.dish) continue;
        if (measured->pan.number != pan.number && measured->pan.number != 0) continue;
        const bool isHeated = measured->purpose == Purpose::Cook ||
                              measured->purpose == Purpose::Reheat ||
                              measured->purpose == Purpose::ReheatPacked;
        if (isHeated || measured->purpose == Purpose::HoldHot ||
            measured->purpose == Purpose::ArriveHot)
            byInstant[measured->at] = {measured->reading.value, isHeated};
    }
    std::vector<cook::MeasuredPoint> points;
    for (const auto& [at, reading] : byInstant) {
        // What is warmer than before was put over heat again.
        const bool isWarmer = !points.empty() && reading.first > points.back().reading;
        if (reading.second || isWarmer) points.clear();
        points.push_back({at, reading.first});
    }
    return points;
}

}  // namespace

std::vector<HoldingWarning> holdingWarnings(const Day& day,
                                            const std::vector<safety::FoodPlan>& plans,
                                            const safety::Limits& limits, Instant now) {
    std::vector<HoldingWarning> warnings;
    for (const safety::FoodPlan& plan : plans) {
        for (const safety::Pan& pan : safety::pansOf(plan.dish, day.record)) {
            const auto standing = safety::standingOf(pan, plan.rule, limits, day.record, now);
            if (standing.control != safety::Control::Hot || standing.lost) continue;
            cook::Cooling cooling;
            cooling.vessel = cook::Vessel::CoveredPan;
            cooling.readings = sinceHeated(pan, day.record, now);
            const Temperature limit = limits.figure(
                standing.isRoast ? safety::Degree::HotHoldRoast : safety::Degree::HotHold,
                safety::Scale::Celsius);
            const auto forecast = cook::forecastHolding(cooling, limit);
            if (!forecast || forecast->fallsTo.low > now + kWarnAhead) continue;
            warnings.push_back({pan, limit, forecast->fallsTo, cooling.readings.back().at});
        }
    }
    std::sort(
        warnings.begin(), warnings.end(), [](const HoldingWarning& a, const HoldingWarning& b) {
            return a.fallsTo.low != b.fallsTo.low ? a.fallsTo.low < b.fallsTo.low : a.pan < b.pan;
        });
    return warnings;
}

}  // namespace cinder::live
