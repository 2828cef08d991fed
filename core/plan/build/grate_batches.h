#pragma once

/// The batches of an event on its grates, piece by piece: what the planner counts and what the
/// grate map draws come from here, so they cannot differ.

#include <vector>

#include "event/event.h"
#include "grate/layout.h"

namespace cinder::plan {

/// One piece of a batch. Numbers run through all batches of a dish, from 1.
struct GratePiece {
    std::int32_t number = 0;
    /// Of the dish's thickness classes; 0 when it has none.
    std::int32_t kind = 0;
    grate::Place place;
    friend bool operator==(const GratePiece&, const GratePiece&) = default;
};

struct GrateBatch {
    ResourceId grate;
    grate::Footprint footprint;
    Length usedLength;
    std::vector<GratePiece> pieces;
    friend bool operator==(const GrateBatch&, const GrateBatch&) = default;
};

/// The batches in which the step lays the dish's pieces, in the order in which they go on. Empty
/// when the step lies on no grate or a piece fits on none. `step` must be one of the dish's.
[[nodiscard]] std::vector<GrateBatch> grateBatches(const event::Event& event,
                                                   const event::Dish& dish,
                                                   const event::Step& step);

/// How many batches that is.
[[nodiscard]] std::size_t grateBatchCount(const event::Event& event, const event::Dish& dish,
                                          const event::Step& step);

/// The part of a grate over coals, and the whole of it.
[[nodiscard]] grate::Surface hotSide(const event::Grate& grate);
[[nodiscard]] const event::Grate* findGrate(const event::Event& event, const ResourceId& id);

}  // namespace cinder::plan
