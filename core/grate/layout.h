#pragma once

/// Pieces on a real grate.
///
/// A grate is filled from one end in rows that span its width. In a row pieces lie either *along*
/// the grate (their length along its length, side by side over its width) or *across* it (their
/// length over its width, row behind row). Tapered pieces lie head to tail, so that two of them
/// take the width of a wide and a narrow end and not of two wide ones; round pieces lie in the
/// hollows of the row before. Rows along come first, rows across after them; the mix that takes the
/// least length is used.
///
/// Because a batch takes whole rows, what it occupies is a length of grate, and two batches share
/// a grate when their lengths fit together.

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "grate/outline.h"

namespace cinder::grate {

/// The part of a grate that is over coals. Rows are laid along `length`.
struct Surface {
    Length length;
    Length width;
    Length gap;  ///< least distance between two pieces
    friend bool operator==(const Surface&, const Surface&) = default;
};

struct Layout {
    std::vector<Place> places;
    Length usedLength;
    friend bool operator==(const Layout&, const Layout&) = default;
};

/// Lays `count` pieces on the least length; nothing when they do not all fit, or when a size is
/// not positive. Pieces keep the gap from each other, none is needed at the edge.
[[nodiscard]] std::optional<Layout> lay(const Surface& surface, const Footprint& piece,
                                        std::int32_t count);

/// How many pieces fit at once; 0 when not even one does.
[[nodiscard]] std::int32_t mostPieces(const Surface& surface, const Footprint& piece);

/// No layout whatever holds more: pieces and surface grown by half a gap, area over area. Touching
/// outlines never fill a grate, so this is an upper bound and seldom reached.
[[nodiscard]] std::int32_t areaBound(const Surface& surface, const Footprint& piece);

/// A lot of pieces that lie on a grate together.
struct Batch {
    std::size_t surface = 0;  ///< index of the grate
    std::int32_t pieces = 0;
    Length usedLength;
    friend bool operator==(const Batch&, const Batch&) = default;
};

/// Shares `count` pieces over as few batches as the grates allow, the grates taking turns, batches
/// about equally full; never more than `most` at once. Empty when `count` is not positive or no
/// piece fits on any grate.
[[nodiscard]] std::vector<Batch> makeBatches(std::span<const Surface> surfaces,
                                             const Footprint& piece, std::int32_t count,
                                             std::optional<std::int32_t> most = std::nullopt);

}  // namespace cinder::grate
