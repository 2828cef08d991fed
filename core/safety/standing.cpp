#include "safety/standing.h"

#include <algorithm>
#include <set>

#include "safety/cooked.h"
#include "safety/walk.h"

namespace cinder::safety {

std::optional<Degree> limitOf(Purpose purpose, event::Food food, bool isRoast) {
    switch (purpose) {
        case Purpose::ArriveCold:
            return Degree::ReceiveCold;
        case Purpose::ArriveHot:
            return Degree::ReceiveHot;
        case Purpose::Cook:
            return cookingMinimum(food);
        case Purpose::Reheat:
            return Degree::Reheat;
        case Purpose::ReheatPacked:
            return Degree::ReheatPacked;
        case Purpose::HoldHot:
            return isRoast ? Degree::HotHoldRoast : Degree::HotHold;
        case Purpose::HoldCold:
            return Degree::ColdHold;
        case Purpose::Cooling:
            return std::nullopt;
    }
    return std::nullopt;
}

Span spanOf(TimeRule rule) {
    return rule == TimeRule::ColdLong ? Span::TimeControlLong : Span::TimeControl;
}

bool hasWarmest(TimeRule rule) {
    return rule == TimeRule::ColdLong || rule == TimeRule::Fresh;
}

bool mayHeatPacked(const Standing& standing, const FoodRule& rule) {
    const bool wasHot = standing.control == Control::Hot || standing.cooling;
    return !rule.isCookedHere && !wasHot &&
           std::all_of(standing.open.begin(), standing.open.end(), [](const OpenReading& open) {
               return open.purpose == Purpose::ReheatPacked;
           });
}

bool mayBeFresh(event::Food food) {
    using event::Food;
    return food == Food::Plant || food == Food::Dairy || food == Food::Grain;
}

bool mayLeaveUnder(TimeRule rule, const Standing& standing, event::Food food) {
    if (standing.lost || !standing.open.empty()) return false;
    switch (standing.control) {
        case Control::None:
            return rule == TimeRule::Fresh && mayBeFresh(food);
        case Control::Hot:
            return rule == TimeRule::Hot;
        case Control::Cold:
            return rule == TimeRule::Cold || rule == TimeRule::ColdLong;
        default:
            return false;
    }
}

Degree startOf(TimeRule rule) {
    switch (rule) {
        case TimeRule::Hot:
            return Degree::TimeStartHot;
        case TimeRule::Fresh:
            return Degree::TimeStartFresh;
        default:
            return Degree::TimeStartCold;
    }
}

bool isWithin(const FoodMeasured& measured, const FoodRule& rule, const Limits& limits,
              bool isRoast) {
    if (measured.purpose == Purpose::Cook)
        return cookedBy(rule.food, limits, measured.reading, measured.held) != Cooked::No;
    const auto degree = limitOf(measured.purpose, rule.food, isRoast);
    return !degree || limits.meets(*degree, measured.reading);
}

Standing standingOf(const Pan& pan, const FoodRule& rule, const Limits& limits,
                    std::span<const Entry> entries, Instant now) {
    const History history = historyOf(pan, entries, now);
    return Walk(rule, limits, history).run(now);
}

std::vector<Pan> pansOf(const DishId& dish, std::span<const Entry> entries) {
    std::set<Pan> pans;
    const auto note = [&](const auto& fact) {
        if constexpr (requires { fact.pan; })
            if (fact.pan.dish == dish && fact.pan.number > 0) pans.insert(fact.pan);
    };
    for (const Entry& entry : entries)
        if (!entry.isTakenBack) std::visit(note, entry.fact);
    if (pans.empty()) return {Pan{dish, 0}};
    return {pans.begin(), pans.end()};
}

}  // namespace cinder::safety
