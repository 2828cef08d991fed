#include "live/on_grate.h"

#include <algorithm>
#include <numeric>

#include "grate/classes.h"

namespace cinder::live {

namespace {

using event::HandsTended;

std::vector<PieceKind> kindsOf(const event::Pieces& pieces) {
    std::vector<PieceKind> kinds;
    for (const event::ThicknessClass& kind : pieces.thickness)
        kinds.push_back({kind.name, kind.thickness});
    if (kinds.empty()) kinds.push_back({});
    return kinds;
}

/// What the crew calls pieces of this thickness: by rank when there are as many classes as
/// described, else by the nearest one.
LocalText nameFor(std::size_t rank, std::size_t count, Length thickness,
                  std::vector<PieceKind> described) {
    const auto thinner = [](const PieceKind& a, const PieceKind& b) {
        return a.thickness < b.thickness;
    };
    std::stable_sort(described.begin(), described.end(), thinner);
    if (described.size() == count) return described[rank].name;
    const auto away = [&](const PieceKind& kind) {
        return std::abs((kind.thickness - thickness).millimetres());
    };
    return std::min_element(
               described.begin(), described.end(),
               [&](const PieceKind& a, const PieceKind& b) { return away(a) < away(b); })
        ->name;
}

/// Lays the batch anew for the kinds that were measured.
void layMeasured(OnGrate& batch, std::vector<journal::LaidKind> laid, const event::Grate* grate) {
    std::erase_if(
        laid, [](const journal::LaidKind& kind) { return kind.pieces < 1 || kind.thickness < 1; });
    const std::int64_t count = std::accumulate(
        laid.begin(), laid.end(), std::int64_t{0},
        [](std::int64_t sum, const journal::LaidKind& kind) { return sum + kind.pieces; });
    if (laid.empty() || count > 2000 || !grate || batch.pieces.empty()) return;
    std::sort(laid.begin(), laid.end(), [](const journal::LaidKind& a, const journal::LaidKind& b) {
        return a.thickness < b.thickness;
    });
    grate::Surface surface = plan::hotSide(*grate);
    auto layout = grate::lay(surface, batch.footprint, static_cast<std::int32_t>(count));
    for (int longer = 0; !layout && longer < 8; ++longer) {
        surface.length = surface.length * 2;
        layout = grate::lay(surface, batch.footprint, static_cast<std::int32_t>(count));
    }
    if (!layout) return;

    std::vector<PieceKind> kinds;
    std::vector<std::int32_t> dealt;
    std::vector<Length> thickness;
    for (std::size_t rank = 0; rank < laid.size(); ++rank) {
        const Length thick =
            Length::fromMillimetres(static_cast<double>(laid[rank].thickness) / 1e3);
        kinds.push_back({nameFor(rank, laid.size(), thick, batch.kinds), thick});
        thickness.push_back(thick);
        dealt.insert(dealt.end(), static_cast<std::size_t>(laid[rank].pieces),
                     static_cast<std::int32_t>(rank));
    }
    const auto kindAt =
        grate::thickestToTheMiddle(layout->places, batch.footprint, dealt, thickness);
    const std::int32_t first = batch.pieces.front().number;
    batch.pieces.clear();
    for (std::size_t i = 0; i < layout->places.size(); ++i)
        batch.pieces.push_back(
            {first + static_cast<std::int32_t>(i), kindAt[i], layout->places[i]});
    batch.kinds = std::move(kinds);
    batch.usedLength = layout->usedLength;
    batch.isMeasured = true;
}

void addBatches(const event::Event& event, const event::Dish& dish, const event::Step& step,
                std::vector<OnGrate>& found) {
    const std::string name = event::fullName(dish.id, step.id).text();
    std::int32_t number = 0;
    for (plan::GrateBatch& bare : plan::grateBatches(event, dish, step)) {
        OnGrate batch;
        batch.task = TaskId(name + "/" + std::to_string(++number));
        batch.dish = dish.id;
        batch.food = dish.food;
        batch.meat = dish.meat;
        batch.doneness = dish.doneness;
        batch.grate = bare.grate;
        batch.footprint = bare.footprint;
        batch.usedLength = bare.usedLength;
        batch.kinds = kindsOf(*dish.pieces);
        batch.pieces = std::move(bare.pieces);
        batch.pullAt = dish.pullAt;
        if (const auto* tended = std::get_if<HandsTended>(&step.hands)) {
            batch.turnEvery = tended->turnEvery;
            batch.takeOff = tended->takeOff;
        }
        batch.duration = step.duration;
        found.push_back(std::move(batch));
    }
}

}  // namespace

std::vector<OnGrate> onGrates(const event::Event& event) {
    std::vector<OnGrate> found;
    for (const event::Dish& dish : event.menu)
        for (const event::Step& step : dish.method)
            if (!step.onGrates.empty()) addBatches(event, dish, step, found);
    return found;
}

std::vector<OnGrate> onGrates(const Day& day) {
    if (!day.event) return {};
    std::vector<OnGrate> found = onGrates(*day.event);
    for (OnGrate& batch : found) {
        const auto facts = day.batches.find(batch.task);
        if (facts == day.batches.end() || !facts->second.laid) continue;
        layMeasured(batch, facts->second.laid->kinds, plan::findGrate(*day.event, batch.grate));
    }
    return found;
}

std::optional<Instant> lastPull(const OnGrate& batch, const BatchFacts& facts) {
    std::optional<Instant> last;
    for (const plan::GratePiece& piece : batch.pieces) {
        const auto found = facts.pieces.find(piece.number);
        if (found == facts.pieces.end() || !found->second.pulled) return std::nullopt;
        last = std::max(last.value_or(*found->second.pulled), *found->second.pulled);
    }
    return last;
}

}  // namespace cinder::live
