#pragma once

/// What has become of the methods of the dishes from event to event: the history that stands behind
/// the library of methods. Nothing is kept for it; the journal of each event says how a dish was
/// described, and its debrief which figures were learnt from the day.

#include <cstdint>
#include <map>
#include <string>
#include <vector>

#include "event/event.h"
#include "live/debrief_day.h"

namespace cinder::learn {

/// One past event: its dishes as they were described, and what was answered in its debrief.
struct DescribedEvent {
    event::Event event;
    std::map<std::string, live::Lesson> lessons;
};

/// One figure of a method that became another.
struct MethodChange {
    enum class Kind : std::uint8_t {
        Length,  ///< of `step`, the usual, in milliseconds
        Take,    ///< how many of a hundred guests take the dish
        Pull,    ///< the pull target, in thousandths of a degree Celsius
        Steps,   ///< how many steps the method has
    };
    Kind kind = Kind::Length;
    LocalText step;  ///< of a length; else empty
    std::int64_t before = 0;
    std::int64_t after = 0;
    friend bool operator==(const MethodChange&, const MethodChange&) = default;
};

/// A dish as it was cooked on one day, or as the debrief of that day left it.
struct MethodVersion {
    EventId event;
    LocalText eventName;
    ZonedInstant serve;
    event::Dish dish;
    bool isLearnt = false;  ///< out of the debrief; else changed by hand
    /// Against the version before; empty for the first, or where only words changed.
    std::vector<MethodChange> changes;
    friend bool operator==(const MethodVersion&, const MethodVersion&) = default;
};

/// All versions of the dish of one name, the newest first; a day on which nothing changed adds
/// none.
struct MethodHistory {
    LocalText name;
    std::int32_t events = 0;  ///< on how many it was on the menu
    ZonedInstant lastServe;   ///< of the newest of them
    std::vector<MethodVersion> versions;
    friend bool operator==(const MethodHistory&, const MethodHistory&) = default;
};

/// By the newest use first, then by name. `events` in any order; a dish is known by its name in all
/// languages, because ids are numbered anew when a dish is copied. Where it stands on the line, and
/// what it is waiting for, belong to the event and are no change of the method.
[[nodiscard]] std::vector<MethodHistory> methodHistories(std::vector<DescribedEvent> events);

}  // namespace cinder::learn
