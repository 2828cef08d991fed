#include <algorithm>

#include "cook/holding.h"
#include "live/food_day.h"
#include "safety/history.h"

namespace cinder::live {

namespace {

/// The readings of a pan since it last came off the heat, as the record takes them: what was
/// corrected is one reading, the lower of its values, and a thermometer that failed its test speaks
/// for nothing.
std::vector<cook::MeasuredPoint> sinceHeated(const safety::Pan& pan,
                                             const std::vector<safety::Entry>& record,
                                             Instant now) {
    using safety::Purpose;
    std::vector<cook::MeasuredPoint> points;
    for (const safety::Moment& moment : safety::historyOf(pan, record, now).moments) {
        const auto* measured = std::get_if<safety::Measured>(&moment.step);
        if (!measured || !measured->isTrusted) continue;
        const bool isHeated = measured->purpose == Purpose::Cook ||
                              measured->purpose == Purpose::Reheat ||
                              measured->purpose == Purpose::ReheatPacked;
        if (!isHeated && measured->purpose != Purpose::HoldHot &&
            measured->purpose != Purpose::ArriveHot)
            continue;
        const auto lowest =
            std::min_element(measured->values.begin(), measured->values.end(),
                             [](const auto& a, const auto& b) { return a.value < b.value; });
        // Of two at one instant the last counts; what is warmer than before was put over heat
        // again.
        if (!points.empty() && points.back().at == moment.at) points.pop_back();
        const bool isWarmer = !points.empty() && lowest->value > points.back().reading;
        if (isHeated || isWarmer) points.clear();
        points.push_back({moment.at, lowest->value});
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
