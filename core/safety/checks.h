#pragma once

/// When food has to be measured: on arrival, when it is cooked, while it is held, before and during
/// service, and at strike. Values made from the plan; a check is done when a reading of every pan
/// of the dish that is still there is on record near its time.

#include <span>
#include <string>
#include <vector>

#include "safety/facts.h"
#include "safety/limits.h"
#include "safety/standing.h"

namespace cinder::safety {

enum class Occasion : std::uint8_t { Arrival, Cooked, Hold, BeforeService, DuringService, Strike };

/// The way of one dish through the day.
struct FoodPlan {
    DishId dish;
    FoodRule rule;
    bool arrivesHot = false;
    bool isServedHot = false;
    Instant arrival;
    /// Fresh produce: nothing to measure before it comes off the heat.
    bool isFresh = false;
    /// When it comes off the heat on the site, cooked or reheated; absent: it does not.
    std::optional<Instant> cooked;
    Instant serve;
    Instant serviceEnd;
    /// A shorter interval than the limit's, when its step asks for one.
    std::optional<Duration> every;
    /// Where it is measured last, for the boards.
    std::optional<StationId> station;
    friend bool operator==(const FoodPlan&, const FoodPlan&) = default;
};

struct PlannedCheck {
    std::string name;  ///< the same on every device: "hold:stew:2"
    DishId dish;
    Occasion occasion = Occasion::Hold;
    Purpose purpose = Purpose::HoldHot;
    Instant due;
    bool isDone = false;
    std::optional<StationId> station;
    /// The pans still to read, the one that can wait the least first. Empty when the check is done,
    /// and when all of the dish is lost or discarded.
    std::vector<Pan> missing;
    friend bool operator==(const PlannedCheck&, const PlannedCheck&) = default;
};

/// A reading up to so long before a check is due answers it. Our choice.
inline constexpr Duration kCheckAhead = std::chrono::minutes{15};

/// By instant. Entries of any dish; those after `now` are not looked at.
///
/// A reading answers for its own pan, one of the whole dish for the pans that have no record of
/// their own yet; neither when its thermometer is not trusted. A correction answers nothing, it
/// stands beside the reading it corrects. What is to be hot is answered by a reading of hot food,
/// and cooking or reheating at any time by one in limit. A pan that cools has calls of its own, and
/// one under time control needs no reading but where it may not get too warm.
[[nodiscard]] std::vector<PlannedCheck> checksOf(const FoodPlan& plan, const Limits& limits,
                                                 std::span<const Entry> entries, Instant now);

}  // namespace cinder::safety
