#include "grate/layout.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace cinder::grate {

namespace {

/// No crew turns more pieces than this at once; keeps absurd sizes from asking for absurd memory.
constexpr std::int32_t kMostAtOnce = 20000;

bool isReal(const Surface& surface, const Footprint& piece) {
    const Length zero;
    return surface.length > zero && surface.width > zero && surface.gap >= zero && isReal(piece);
}

Length half(Length length) {
    return Length::fromMillimetres(std::ceil(length.millimetres() * 500.0) / 1000.0);
}

/// How many of `size`, `pitch` apart, go into `room`.
std::int32_t howMany(Length room, Length size, Length pitch) {
    if (size > room) return 0;
    const double steps = std::floor((room - size) / pitch);
    return static_cast<std::int32_t>(std::min<double>(steps, kMostAtOnce)) + 1;
}

/// How neighbours lie: pieces of one stack side by side, each the other way round than the one
/// before, and stacks end to end. Told for pieces that lie along the grate, whose stacks run over
/// its width; rows across are the same with the axes changed.
struct Pattern {
    Length pitch;       ///< from piece to piece in a stack
    Length shift;       ///< of every other stack
    bool isTurned;      ///< every other stack begins with a piece the other way round
    Length stackPitch;  ///< from stack to stack
};

/// Piece `k` of stack `stack`, as it would lie along the grate.
Place placeAlong(const Footprint& piece, const Pattern& pattern, std::int32_t stack,
                 std::int32_t k) {
    const bool isOdd = stack % 2 == 1;
    const bool isTapered = piece.width != piece.narrowWidth && piece.shape != Shape::Round &&
                           piece.shape != Shape::Skewer;
    Place place;
    place.x = pattern.stackPitch * stack;
    place.y = pattern.pitch * k + (isOdd ? pattern.shift : Length{});
    place.isReversed = isTapered && (k + (isOdd && pattern.isTurned ? 1 : 0)) % 2 == 1;
    return place;
}

Length pitchOf(const Footprint& piece, Length gap) {
    Pattern pattern{};
    const auto apart = [&](std::int32_t k) {
        return pushClear(piece, placeAlong(piece, pattern, 0, 0), placeAlong(piece, pattern, 0, k),
                         Axis::Y, gap);
    };
    return std::max(apart(1), half(apart(2)));
}

/// The least distance of stacks so that no piece of one comes near one of the next two.
Length stackPitchOf(const Footprint& piece, Pattern pattern, Length gap) {
    constexpr std::int32_t kNear = 4;
    Length pitch;
    pattern.stackPitch = Length{};
    for (const std::int32_t stack : {1, 2}) {
        for (std::int32_t mine = kNear; mine < kNear + 2; ++mine) {
            for (std::int32_t theirs = 0; theirs <= 2 * kNear; ++theirs) {
                const Length push =
                    pushClear(piece, placeAlong(piece, pattern, 0, mine),
                              placeAlong(piece, pattern, stack, theirs), Axis::X, gap);
                pitch = std::max(pitch, stack == 1 ? push : half(push));
            }
        }
    }
    return pitch;
}

std::vector<Pattern> patternsOf(const Footprint& piece, Length gap) {
    const Length pitch = pitchOf(piece, gap);
    std::vector<Pattern> patterns{{pitch, Length{}, false, piece.length + gap}};
    // Straight ends gain nothing from lying askew.
    if (piece.shape != Shape::Round && piece.shape != Shape::Teardrop) return patterns;
    for (const auto& [shift, isTurned] :
         {std::pair{Length{}, true}, {half(pitch), false}, {half(pitch), true}}) {
        Pattern pattern{pitch, shift, isTurned, {}};
        pattern.stackPitch = stackPitchOf(piece, pattern, gap);
        patterns.push_back(pattern);
    }
    return patterns;
}

/// Rows of one pattern, along or across the grate.
class Block {
  public:
    Block(const Surface& surface, const Footprint& piece, const Pattern& pattern, bool isAcross)
        : piece_(&piece), pattern_(pattern), isAcross_(isAcross) {
        if (isAcross) {
            even_ = howMany(surface.width, piece.length, pattern.stackPitch);
            odd_ = even_;
        } else {
            even_ = howMany(surface.width, piece.width, pattern.pitch);
            odd_ = surface.width > pattern.shift
                       ? howMany(surface.width - pattern.shift, piece.width, pattern.pitch)
                       : 0;
        }
    }

    [[nodiscard]] bool holdsAny() const { return even_ > 0; }
    [[nodiscard]] std::int64_t held(std::int32_t rows) const {
        return std::int64_t{(rows + 1) / 2} * even_ + std::int64_t{rows / 2} * odd_;
    }
    [[nodiscard]] Length length(std::int32_t rows) const {
        if (rows == 0) return {};
        if (!isAcross_) return piece_->length + pattern_.stackPitch * (rows - 1);
        return piece_->width + pattern_.pitch * (rows - 1) +
               (even_ > 1 ? pattern_.shift : Length{});
    }
    /// The least rows that hold `count`; `holdsAny` must be true.
    [[nodiscard]] std::int32_t rowsFor(std::int64_t count) const {
        if (count <= 0) return 0;
        const std::int64_t pairs = (count - 1) / (even_ + odd_);
        const std::int64_t left = count - pairs * (even_ + odd_);
        return static_cast<std::int32_t>(2 * pairs + (left > even_ ? 2 : 1));
    }
    /// The most rows in `room`.
    [[nodiscard]] std::int32_t rowsIn(Length room) const {
        if (!holdsAny() || length(1) > room) return 0;
        return howMany(room, length(1), isAcross_ ? pattern_.pitch : pattern_.stackPitch);
    }

    void fill(Length begin, std::int32_t rows, std::size_t count,
              std::vector<Place>& places) const {
        for (std::int32_t row = 0; row < rows; ++row) {
            const std::int32_t inRow = row % 2 == 0 ? even_ : odd_;
            for (std::int32_t i = 0; i < inRow && places.size() < count; ++i) {
                Place place = isAcross_ ? placeAlong(*piece_, pattern_, i, row)
                                        : placeAlong(*piece_, pattern_, row, i);
                if (isAcross_) std::swap(place.x, place.y);
                place.isAcross = isAcross_;
                place.x += begin;
                places.push_back(place);
            }
        }
    }

  private:
    const Footprint* piece_;
    Pattern pattern_;
    bool isAcross_;
    std::int32_t even_ = 0;  ///< pieces in the first row and every second one after it
    std::int32_t odd_ = 0;
};

struct Blocks {
    std::vector<Block> along;
    std::vector<Block> across;
};

Blocks blocksOf(const Surface& surface, const Footprint& piece) {
    Blocks blocks;
    for (const Pattern& pattern : patternsOf(piece, surface.gap)) {
        blocks.along.emplace_back(surface, piece, pattern, false);
        blocks.across.emplace_back(surface, piece, pattern, true);
    }
    return blocks;
}

/// Rows along, then rows across.
struct Mix {
    const Block* along = nullptr;
    const Block* across = nullptr;
    std::int32_t alongRows = 0;
    std::int32_t acrossRows = 0;
    Length usedLength;
};

/// Every mix in which the rows along leave no more than needed to the rows across. `see` is given
/// the blocks and the rows along.
template <class See>
void eachMix(const Surface& surface, const Blocks& blocks, std::int64_t count, See&& see) {
    for (const Block& along : blocks.along) {
        const std::int32_t most =
            along.holdsAny() ? std::min(along.rowsIn(surface.length), along.rowsFor(count)) : 0;
        for (const Block& across : blocks.across)
            for (std::int32_t rows = 0; rows <= most; ++rows)
                see(along, across, rows);
    }
}

Length acrossBegin(const Surface& surface, const Block& along, std::int32_t alongRows) {
    return alongRows == 0 ? Length{} : along.length(alongRows) + surface.gap;
}

/// The mix that holds `count` on the least length; the first one found on a tie.
std::optional<Mix> chooseMix(const Surface& surface, const Blocks& blocks, std::int32_t count) {
    std::optional<Mix> best;
    eachMix(surface, blocks, count,
            [&](const Block& along, const Block& across, std::int32_t rows) {
                const std::int64_t left = count - along.held(rows);
                if (left > 0 && !across.holdsAny()) return;
                const std::int32_t behind = left > 0 ? across.rowsFor(left) : 0;
                const Length used = behind == 0
                                        ? along.length(rows)
                                        : acrossBegin(surface, along, rows) + across.length(behind);
                if (used <= surface.length && (!best || used < best->usedLength))
                    best = Mix{&along, &across, rows, behind, used};
            });
    return best;
}

}  // namespace

std::optional<Layout> lay(const Surface& surface, const Footprint& piece, std::int32_t count) {
    if (count < 1 || count > kMostAtOnce || !isReal(surface, piece)) return std::nullopt;
    const Blocks blocks = blocksOf(surface, piece);
    const auto mix = chooseMix(surface, blocks, count);
    if (!mix) return std::nullopt;

    Layout layout;
    layout.usedLength = mix->usedLength;
    const auto all = static_cast<std::size_t>(count);
    const std::int64_t alongHeld = mix->along->held(mix->alongRows);
    mix->along->fill({}, mix->alongRows, std::min<std::size_t>(all, alongHeld), layout.places);
    mix->across->fill(acrossBegin(surface, *mix->along, mix->alongRows), mix->acrossRows, all,
                      layout.places);
    return layout;
}

std::int32_t mostPieces(const Surface& surface, const Footprint& piece) {
    if (!isReal(surface, piece)) return 0;
    const Blocks blocks = blocksOf(surface, piece);
    std::int64_t most = 0;
    eachMix(surface, blocks, kMostAtOnce,
            [&](const Block& along, const Block& across, std::int32_t rows) {
                const Length left = surface.length - acrossBegin(surface, along, rows);
                most = std::max(most, along.held(rows) + across.held(across.rowsIn(left)));
            });
    return static_cast<std::int32_t>(std::min<std::int64_t>(most, kMostAtOnce));
}

std::int32_t areaBound(const Surface& surface, const Footprint& piece) {
    if (!isReal(surface, piece)) return 0;
    // Steiner's formula for a convex outline grown by r: area + perimeter·r + pi·r².
    const double r = surface.gap.millimetres() / 2.0;
    const auto grown = [r](double area, double perimeter) {
        return area + perimeter * r + std::numbers::pi * r * r;
    };
    const double length = surface.length.millimetres();
    const double width = surface.width.millimetres();
    const Polygon outline = outlineAt(piece, {});
    const double room = grown(length * width, 2.0 * (length + width));
    const double each = grown(areaSquareMillimetres(outline), perimeterMillimetres(outline));
    return static_cast<std::int32_t>(std::min<double>(std::floor(room / each), kMostAtOnce));
}

std::vector<Batch> makeBatches(std::span<const Surface> surfaces, const Footprint& piece,
                               std::int32_t count, std::optional<std::int32_t> most) {
    std::vector<std::int32_t> room;
    std::int32_t roomOfAll = 0;
    for (const auto& surface : surfaces) {
        room.push_back(std::min(mostPieces(surface, piece), most.value_or(kMostAtOnce)));
        roomOfAll = std::max(roomOfAll, room.back());
    }
    if (roomOfAll < 1 || count < 1) return {};

    std::vector<Batch> batches;
    std::int64_t places = 0;
    for (std::size_t i = 0; places < count; i = (i + 1) % surfaces.size()) {
        if (room[i] < 1) continue;
        batches.push_back({i, 0, {}});
        places += room[i];
    }
    // Equally full: each batch takes its part of what is left, so the rounding evens out.
    std::int32_t left = count;
    for (auto& batch : batches) {
        const std::int64_t mine = room[batch.surface];
        batch.pieces = static_cast<std::int32_t>((left * mine + places - 1) / places);
        left -= batch.pieces;
        places -= mine;
        const auto layout = lay(surfaces[batch.surface], piece, batch.pieces);
        batch.usedLength = layout ? layout->usedLength : surfaces[batch.surface].length;
    }
    std::erase_if(batches, [](const Batch& batch) { return batch.pieces == 0; });
    return batches;
}

}  // namespace cinder::grate
