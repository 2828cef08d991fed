#pragma once

#include "app/fire_cards.h"
#include "live/coal_outlook.h"

namespace cinder::app {

/// Arranges the forecast and the coals of the day for the Fire board. `day.sheet` must be there.
[[nodiscard]] FireCards makeFireCards(const live::Day& day, const live::Outlook& outlook,
                                      const live::FireForecast& fire, Instant now);

}  // namespace cinder::app
