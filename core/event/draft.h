#pragma once

/// An event that is still being written. It has the shape of an event, so that it can be stored and
/// read again after every touch, but its rules may be broken and its menu empty; `faultsOf` says
/// what is still in the way of a plan.

#include <string>
#include <string_view>

#include "base/result.h"
#include "event/event.h"
#include "event/fault.h"

namespace cinder::event {

/// Reads a draft. Fails only for what an event could never hold: a number outside its limits, a
/// word nobody knows, no crew at all. Never throws.
[[nodiscard]] Result<Event, Faults> parseDraft(std::string_view document);

/// The document of a draft, in as few bytes as it takes: one is kept for every touch.
[[nodiscard]] std::string writeDraft(const Event& draft);

/// Everything that `parse` would say of the written draft; empty when it is a whole event.
[[nodiscard]] Faults faultsOf(const Event& draft);

/// `past` as the draft of another day: with its own id, at another serve time. An agreed arrival
/// moves along. Figures that somebody overrode belonged to that day and are left behind.
[[nodiscard]] Event renewed(const Event& past, const EventId& id, ZonedInstant serve);

}  // namespace cinder::event
