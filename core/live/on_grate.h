#pragma once

/// The batches on the grates, as the event describes them and as they were laid.

#include <vector>

#include "live/day.h"
#include "plan/build/grate_batches.h"

namespace cinder::live {

/// A thickness class of a dish.
struct PieceKind {
    LocalText name;  ///< empty when the dish has no classes
    Length thickness;
    friend bool operator==(const PieceKind&, const PieceKind&) = default;
};

struct OnGrate {
    TaskId task;
    DishId dish;
    event::Food food = event::Food::Plant;
    std::optional<event::Meat> meat;
    std::optional<event::Doneness> doneness;
    ResourceId grate;
    grate::Footprint footprint;
    Length usedLength;
    std::vector<PieceKind> kinds;          ///< at least one; thickness 0 when unknown
    std::vector<plan::GratePiece> pieces;  ///< by number; places from the batch's own beginning
    std::optional<Temperature> pullAt;     ///< as the dish wishes
    Duration turnEvery{0};
    Duration takeOff{0};
    event::Estimate duration;  ///< as the event says
    /// The thickness was measured when the batch was laid.
    bool isMeasured = false;
    friend bool operator==(const OnGrate&, const OnGrate&) = default;
};

/// Every batch of the event, in the order of dishes, steps and batches, as described.
[[nodiscard]] std::vector<OnGrate> onGrates(const event::Event& event);

/// The same with what was measured when a batch was laid. More pieces than the grate holds hang
/// over its end; numbers go on from the batch's first.
[[nodiscard]] std::vector<OnGrate> onGrates(const Day& day);

/// When the last piece of the batch was pulled; nothing while one is on the grate.
[[nodiscard]] std::optional<Instant> lastPull(const OnGrate& batch, const BatchFacts& facts);

}  // namespace cinder::live
