#pragma once

/// A record written by hand: one pan, minutes after eleven o'clock.

#include <string>
#include <vector>

#include "safety/record.h"
#include "safety/standing.h"

namespace samples {

using namespace cinder;
using namespace cinder::safety;
using namespace std::chrono_literals;

inline constexpr Instant kEleven{1'821'279'600'000ms};
inline const Pan kPan{DishId{"stew"}, 1};
inline const ThermometerId kProbe{"probe-1"};

class Log {
  public:
    EntryId add(Fact fact, std::string device = "tablet") {
        Entry entry;
        entry.id = {DeviceId{std::move(device)}, entries.size() + 1};
        entry.written = instantOf(fact);
        entry.fact = std::move(fact);
        entries.push_back(entry);
        return entry.id;
    }
    EntryId measure(Duration at, Purpose purpose, Reading reading,
                    std::optional<Duration> held = {}) {
        return add(FoodMeasured{kPan, purpose, reading, kProbe, held, {}, {}, kEleven + at});
    }
    void act(Duration at, const EntryId& entry, Action action) {
        add(ActionTaken{entry, action, kEleven + at});
    }
    void leave(Duration at, TimeRule by, Reading reading) {
        add(ControlLeft{kPan, by, reading, kProbe, kEleven + at});
    }
    void cool(Duration at, CoolingRoute route = CoolingRoute::Cooked) {
        add(CoolingBegun{kPan, route, kEleven + at});
    }
    [[nodiscard]] Standing at(Duration now) const {
        return standingOf(kPan, rule, limits, entries, kEleven + now);
    }

    std::vector<Entry> entries;
    FoodRule rule;
    Limits limits;
};

[[nodiscard]] inline bool isLostBy(const Standing& standing, Lost::Why why) {
    return standing.lost && standing.lost->why == why;
}

}  // namespace samples
