#pragma once

#include "event/event.h"

namespace cinder::quantity {

/// The same event with other guests: diets and allergens in proportion, rounded up, never more than
/// there are guests. Everything else, own values of figures too, stays.
[[nodiscard]] event::Event withGuests(const event::Event& event, std::int32_t adults,
                                      std::int32_t children);

}  // namespace cinder::quantity
