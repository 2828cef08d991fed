#pragma once

/// Arranges what an event comes to as cards; internal to core/app.

#include <map>
#include <memory>

#include "app/list_cards.h"
#include "live/day.h"
#include "quantity/build/reckon.h"

namespace cinder::app {

/// A reckoning with what went into it.
struct Reckoned {
    event::Event event;
    quantity::FromPlan plan;
    quantity::Reckoning all;
};

/// The event of a day with the bell where it now is. The day must have one.
[[nodiscard]] event::Event eventAsItStands(const live::Day& day);

/// `known` itself when it was made from the same event and plan.
[[nodiscard]] std::shared_ptr<const Reckoned> reckonFor(
    event::Event event, const live::Day& day, const std::shared_ptr<const Reckoned>& known);

using Counted = std::map<std::string, live::PackFacts>;

[[nodiscard]] std::vector<StandCard> standCards(const Reckoned& reckoned, const Counted& counted);
[[nodiscard]] std::shared_ptr<const Lists> makeLists(const Reckoned& reckoned,
                                                     const Counted& counted);

}  // namespace cinder::app
