#include "grate/layout.h"

#include <algorithm>
#include <cmath>

namespace cinder::grate {

namespace {

/// No crew turns more pieces than this at once; keeps absurd sizes from asking for absurd memory.
constexpr std::int32_t kMostAtOnce = 20000;

bool isReal(const Surface& surface, const Footprint& piece) {
    const Length zero;
    return surface.length > zero && surface.width > zero && surface.gap >= zero &&
           piece.length > zero && piece.width > zero && piece.narrowWidth >= zero &&
           piece.narrowWidth <= piece.width;
}

/// Distance between the centre lines of neighbours that lie head to tail. Their facing edges are
/// parallel and lean by half the taper, so the gap, which is square to the edges, takes a little
/// more than itself along the row.
Length headToTail(const Footprint& piece, Length gap) {
    const double taper = (piece.width - piece.narrowWidth).millimetres() / 2.0;
    const double lean = std::hypot(taper, piece.length.millimetres()) / piece.length.millimetres();
    const double pitch =
        (piece.width + piece.narrowWidth).millimetres() / 2.0 + gap.millimetres() * lean;
    // Up to the next micrometre: rounding must never eat into the gap.
    return Length::fromMillimetres(std::ceil(pitch * 1000.0) / 1000.0);
}

/// How many of `size`, `pitch` apart, go into `room`.
std::int32_t howMany(Length room, Length size, Length pitch) {
    if (size > room) return 0;
    const double steps = std::floor((room - size) / pitch);
    return static_cast<std::int32_t>(std::min<double>(steps, kMostAtOnce)) + 1;
}

/// The measures of both kinds of row on one surface.
struct Rows {
    Length pitch;                // head to tail
    std::int32_t alongEach = 0;  // pieces in one row along
    std::int32_t acrossEach = 0;
};

Rows measure(const Surface& surface, const Footprint& piece) {
    Rows rows;
    rows.pitch = headToTail(piece, surface.gap);
    rows.alongEach = howMany(surface.width, piece.width, rows.pitch);
    rows.acrossEach = howMany(surface.width, piece.length, piece.length + surface.gap);
    return rows;
}

Length alongLength(const Surface& surface, const Footprint& piece, std::int32_t count) {
    return piece.length * count + surface.gap * std::max(count - 1, 0);
}

Length acrossLength(const Footprint& piece, const Rows& rows, std::int32_t count) {
    return count == 0 ? Length{} : piece.width + rows.pitch * (count - 1);
}

struct Mix {
    std::int32_t along = 0;   // rows
    std::int32_t across = 0;  // rows
    Length usedLength;
};

Length mixLength(const Surface& surface, const Footprint& piece, const Rows& rows,
                 std::int32_t along, std::int32_t across) {
    const Length between = along > 0 && across > 0 ? surface.gap : Length{};
    return alongLength(surface, piece, along) + between + acrossLength(piece, rows, across);
}

/// The mix of rows that holds `count` on the least length; fewest kinds of row on a tie.
std::optional<Mix> chooseMix(const Surface& surface, const Footprint& piece, const Rows& rows,
                             std::int32_t count) {
    std::optional<Mix> best;
    const std::int32_t mostAlong =
        rows.alongEach == 0 ? 0 : (count + rows.alongEach - 1) / rows.alongEach;
    for (std::int32_t along = 0; along <= mostAlong; ++along) {
        const std::int32_t left = std::max(count - along * rows.alongEach, 0);
        if (left > 0 && rows.acrossEach == 0) continue;
        const std::int32_t across = left == 0 ? 0 : (left + rows.acrossEach - 1) / rows.acrossEach;
        const Length used = mixLength(surface, piece, rows, along, across);
        if (used <= surface.length && (!best || used < best->usedLength))
            best = Mix{along, across, used};
    }
    return best;
}

}  // namespace

std::optional<Layout> lay(const Surface& surface, const Footprint& piece, std::int32_t count) {
    if (count < 1 || count > kMostAtOnce || !isReal(surface, piece)) return std::nullopt;
    const Rows rows = measure(surface, piece);
    const auto mix = chooseMix(surface, piece, rows, count);
    if (!mix) return std::nullopt;

    Layout layout;
    layout.usedLength = mix->usedLength;
    const auto isFull = [&] { return static_cast<std::int32_t>(layout.places.size()) == count; };
    for (std::int32_t row = 0; row < mix->along; ++row)
        for (std::int32_t i = 0; i < rows.alongEach && !isFull(); ++i)
            layout.places.push_back(
                {(piece.length + surface.gap) * row, rows.pitch * i, false, i % 2 == 1});
    const Length begin =
        mix->along == 0 ? Length{} : alongLength(surface, piece, mix->along) + surface.gap;
    for (std::int32_t row = 0; row < mix->across; ++row)
        for (std::int32_t i = 0; i < rows.acrossEach && !isFull(); ++i)
            layout.places.push_back(
                {begin + rows.pitch * row, (piece.length + surface.gap) * i, true, row % 2 == 1});
    return layout;
}

std::int32_t mostPieces(const Surface& surface, const Footprint& piece) {
    if (!isReal(surface, piece)) return 0;
    const Rows rows = measure(surface, piece);
    std::int32_t most = 0;
    const std::int32_t mostAlong =
        rows.alongEach == 0 ? 0 : howMany(surface.length, piece.length, piece.length + surface.gap);
    for (std::int32_t along = 0; along <= mostAlong; ++along) {
        const Length left = surface.length - alongLength(surface, piece, along) -
                            (along > 0 ? surface.gap : Length{});
        const std::int32_t across =
            rows.acrossEach == 0 ? 0 : howMany(left, piece.width, rows.pitch);
        const std::int64_t all =
            std::int64_t{along} * rows.alongEach + std::int64_t{across} * rows.acrossEach;
        most = std::max(most, static_cast<std::int32_t>(std::min<std::int64_t>(all, kMostAtOnce)));
    }
    return most;
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
