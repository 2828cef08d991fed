#pragma once

/// What is cooked ahead: by when, and how it is cooled or held until it rides.

#include <optional>
#include <string_view>
#include <vector>

#include "quantity/departure.h"
#include "quantity/dish_figures.h"

namespace cinder::quantity {

/// A published limit on the sheet: from when food is finished, this hot at most (or at least) after
/// so long. Local codes and the licensed food protection manager decide.
struct KeepingLimit {
    event::Keeping keeping = event::Keeping::Chill;
    Temperature temperature;
    bool isAtMost = true;
    Duration within{0};
    std::string_view source;
};

/// FDA Food Code 2022: cooked food from 135 degF to 70 degF within 2 h and to 41 degF within 6 h in
/// all, 3-501.14(A); food of room-warm things to 41 degF within 4 h, 3-501.14(B); hot holding at
/// 135 degF or above, 3-501.16(A)(1).
[[nodiscard]] const std::vector<KeepingLimit>& keepingLimits();

struct Deadline {
    /// Nothing for a limit that holds all the time.
    std::optional<Instant> by;
    Temperature temperature;
    bool isAtMost = true;
    std::string_view source;
};

struct KitchenTask {
    DishId dish;
    StepId step;
    LocalText dishName;
    LocalText name;
    std::optional<Instant> startBy;
    Instant finishBy;
    event::Keeping then = event::Keeping::Dry;
    /// Of the dish, where it is known.
    std::optional<Figure> weight;
    std::vector<Deadline> deadlines;
};

/// By the time each is finished. Blames what cannot be cold before the van leaves, and what is
/// finished after that.
[[nodiscard]] std::vector<KitchenTask> kitchenList(Tally& tally,
                                                   const std::vector<DishFigures>& dishes,
                                                   const std::optional<Departure>& departure);

}  // namespace cinder::quantity
