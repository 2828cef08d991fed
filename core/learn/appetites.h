#pragma once

/// What the guests took of a dish against what was planned for them, out of the pans of one day.

#include <optional>

#include "base/id.h"
#include "base/local_text.h"
#include "learn/shrinkage.h"
#include "live/service_day.h"
#include "service/pan_level.h"

namespace cinder::learn {

/// About the logarithm of taken over planned. What guests take may be from the plan as far in the
/// mean as the forecast of the pans believes; a single event, judged by eye, lies within a fifth of
/// its mean. Common practice - no source.
inline constexpr Prior kAppetitePrior{0, service::kTakeDoubt, 0.2};

struct Appetite {
    DishId dish;
    /// Portions a guest, planned and taken: seconds included on both sides, or, when nobody looked
    /// after the last guest, on neither.
    double planned = 0;
    double taken = 0;
    std::int32_t pansUsed = 0;  ///< begun
    /// The last pan was scraped out: they would have taken more.
    bool isAtLeast = false;
    /// How many of a hundred guests were planned to take it.
    std::int32_t takePercent = 100;
    /// By which it is known from event to event.
    LocalText name = {};
    /// How many of a hundred took it, by that. Free of how many children there were.
    [[nodiscard]] double percentTaken() const { return takePercent * taken / planned; }
    friend bool operator==(const Appetite&, const Appetite&) = default;
};

/// A look into the last pan before so many of the guests were through tells too little. Our choice.
inline constexpr double kLeastThrough = 0.5;

/// Nothing before the last guest has passed, when nobody looked into the last pan on the line late
/// enough, or when nothing was planned.
[[nodiscard]] std::optional<Appetite> appetiteOf(const DishId& dish, const service::PanPlan& plan,
                                                 const live::ServiceDay& day, std::int32_t guests);

}  // namespace cinder::learn
