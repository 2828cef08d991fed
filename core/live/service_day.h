#pragma once

/// What the journal tells of the line.

#include <map>
#include <optional>
#include <vector>

#include "base/id.h"
#include "base/time.h"

namespace cinder::live {

/// One dish on the line.
struct PanDay {
    /// When somebody looked -> percent left, by the number of the pan that was on the line.
    std::map<std::int32_t, std::map<Instant, std::int32_t>> levels;
    /// Pan number, from 2 -> when it came on the line.
    std::map<std::int32_t, Instant> set;
    friend bool operator==(const PanDay&, const PanDay&) = default;
};

struct ServiceDay {
    std::map<std::int32_t, Instant> counts;  ///< guests through -> when
    std::optional<Instant> last;             ///< the last guest
    std::map<DishId, PanDay> pans;
    friend bool operator==(const ServiceDay&, const ServiceDay&) = default;
};

}  // namespace cinder::live
