#pragma once

/// An event as one JSON document (RFC 8259, UTF-8; times by RFC 3339; errors located by RFC 6901).
/// The shape is in assets/schema/event.schema.json.

#include <cstddef>
#include <string>
#include <string_view>

#include "base/result.h"
#include "event/event.h"
#include "event/fault.h"

namespace cinder::event {

/// A crew's whole day is some tens of kilobytes; anything near this is a mistake or an attack.
inline constexpr std::size_t kMostBytes = 4U << 20U;
inline constexpr std::size_t kDeepest = 32;

/// Reads and checks a document. On failure every fault that could be found is reported, not only
/// the first. Never throws; time and memory grow with the size of the document.
[[nodiscard]] Result<Event, Faults> parse(std::string_view document);

/// The document of an event, indented for people, members in a fixed order and unknown ones last.
/// `parse(write(e))` is `e` for every event without faults.
[[nodiscard]] std::string write(const Event& event);

/// The rules that hold between fields: references, unique ids, possible times, enough hands.
/// Paths are those of the written document. Empty when all is well.
[[nodiscard]] Faults findFaults(const Event& event);

}  // namespace cinder::event
