#pragma once

/// A dish on its own: a card of the library of methods, to be copied into an event, changed and
/// kept.
///
/// A card is one JSON object in the form a dish has in an event (assets/schema/event.schema.json,
/// $defs/dish). Its steps name stations, skills and kit by the usual ids: stations van, fire, prep,
/// line; skills fire, knife, general; kit grate, burner, hot-box, cold-box, chafer; work hand-wash,
/// prep-table, probes, burn-in, spread, chafer-fire, spoons.

#include <string>
#include <string_view>

#include "base/result.h"
#include "event/event.h"
#include "event/fault.h"

namespace cinder::event {

/// Reads and checks a card as far as a dish can be checked without its event. Never throws.
[[nodiscard]] Result<Dish, Faults> parseDish(std::string_view document);

/// The card of a dish; `parseDish(writeDish(d))` is `d` for every dish without faults.
[[nodiscard]] std::string writeDish(const Dish& dish);

/// The card as a dish of `event`: with an id of its own, last in order, on the event's own grates
/// and equipment of the same kind, after the event's own fires. Links to steps the event does not
/// have, of its work or of its dishes, are left out. Stations, skills and kit that have no
/// counterpart stay as they are, for `findFaults` to name.
[[nodiscard]] Dish copiedInto(const Event& event, const Dish& card);

}  // namespace cinder::event
