#pragma once

/// Events nobody booked: five hundred of them, the same ones every time.

#include "base/rng.h"
#include "event/event.h"

namespace cinder::test {

/// An event without faults for `seed`: 1 to 900 guests, 1 to 14 dishes with servings of every kind.
[[nodiscard]] event::Event inventedEvent(std::uint64_t seed);

}  // namespace cinder::test
