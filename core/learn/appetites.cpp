#include "learn/appetites.h"

#include <algorithm>

namespace cinder::learn {

namespace {

/// The guests as they passed. Before the first count they are taken to have come as quickly as
/// after it.
service::Pace paceOf(const live::ServiceDay& day, std::int32_t guests) {
    std::vector<service::Count> counts;
    counts.reserve(day.counts.size());
    for (const auto& [through, at] : day.counts)
        counts.push_back({through, at});
    service::PacePlan plan{guests, *day.last, Duration{0}, Duration{0}};
    if (!counts.empty()) {
        const service::Count& first = counts.front();
        plan.each = (*day.last - first.at) / std::max(1, guests - first.guests);
        plan.opens = first.at - plan.each * first.guests;
    }
    return service::Pace(plan, std::move(counts), day.last);
}

/// Portions left in `pan` when the next one took its place; none when nobody looked into it.
double restOf(std::int32_t pan, const service::PanPlan& plan, const live::PanDay& pans,
              const service::Pace& pace) {
    const auto levels = pans.levels.find(pan);
    const auto replaced = pans.set.find(pan + 1);
    if (levels == pans.levels.end() || levels->second.empty() || replaced == pans.set.end())
        return 0;
    const auto& [at, percent] = *levels->second.rbegin();
    const service::LevelTap look{percent / 100.0, at, pan};
    return plan.portionsIn(pan) *
           service::leftWhenReplaced(plan, pan, look, replaced->second, pace);
}

}  // namespace

std::optional<Appetite> appetiteOf(const DishId& dish, const service::PanPlan& plan,
                                   const live::ServiceDay& day, std::int32_t guests) {
    const auto seen = day.pans.find(dish);
    if (!day.last || seen == day.pans.end() || guests <= 0 || plan.perGuest <= 0)
        return std::nullopt;
    const live::PanDay& pans = seen->second;
    const std::int32_t last = pans.set.empty() ? 1 : pans.set.rbegin()->first;
    const auto levels = pans.levels.find(last);
    if (levels == pans.levels.end() || levels->second.empty()) return std::nullopt;
    const auto& [at, percent] = *levels->second.rbegin();
    const service::Pace pace = paceOf(day, guests);
    const bool isAfterAll = at >= *day.last;
    const double through = isAfterAll ? guests : pace.guestsAt(at);
    if (through < kLeastThrough * guests) return std::nullopt;
    const double left = percent / 100.0;
    double gone = (1 - left) * plan.portionsIn(last);
    for (std::int32_t pan = 1; pan < last; ++pan)
        gone += plan.portionsIn(pan) - service::kTakenAway * restOf(pan, plan, pans, pace);
    Appetite appetite{dish, plan.perGuest, 0, last, left <= 0 && last >= plan.pans};
    // Who comes a second time comes when all have passed.
    if (isAfterAll) appetite.planned *= 1 + plan.seconds;
    appetite.taken = gone / through;
    return appetite;
}

}  // namespace cinder::learn
