#include "quantity/what_if.h"

#include <algorithm>

#include "event/menu.h"
#include "quantity/figure.h"

namespace cinder::quantity {

event::Event withGuests(const event::Event& event, std::int32_t adults, std::int32_t children) {
    event::Event other = event;
    other.guests.adults = adults;
    other.guests.children = children;
    const std::int64_t before = event::headCount(event.guests);
    const std::int64_t after = event::headCount(other.guests);
    if (before <= 0 || after <= 0) return other;
    const auto scale = [&](std::int32_t& count) {
        count = static_cast<std::int32_t>(std::min(quotientUp(count * after, before), after));
    };
    for (auto& diet : other.guests.diets)
        scale(diet.count);
    for (auto& allergen : other.guests.allergens)
        scale(allergen.count);
    return other;
}

}  // namespace cinder::quantity
