#include "learn/appetites.h"

namespace cinder::learn {

std::optional<Appetite> appetiteOf(const DishId& dish, const service::PanPlan& plan,
                                   const live::ServiceDay& day, std::int32_t guests) {
    const auto seen = day.pans.find(dish);
    if (!day.last || seen == day.pans.end() || guests <= 0 || plan.perGuest <= 0)
        return std::nullopt;
    const live::PanDay& pans = seen->second;
    const std::int32_t last = pans.set.empty() ? 1 : pans.set.rbegin()->first;
    const auto levels = pans.levels.find(last);
    if (levels == pans.levels.end() || levels->second.empty()) return std::nullopt;
    const double left = levels->second.rbegin()->second / 100.0;
    Appetite appetite{dish, plan.perGuest, 0, last, left <= 0 && last >= plan.pans};
    appetite.taken = (last - left) * plan.portionsPerPan / guests;
    return appetite;
}

}  // namespace cinder::learn
