#include "plan/build/grate_batches.h"

#include <algorithm>

#include "grate/classes.h"

namespace cinder::plan {

namespace {

grate::Footprint footprintOf(const event::Pieces& pieces) {
    return {pieces.length, pieces.width, pieces.narrowWidth};
}

std::vector<grate::Surface> surfacesOf(const event::Event& event, const event::Step& step) {
    std::vector<grate::Surface> surfaces;
    for (const auto& id : step.onGrates)
        surfaces.push_back(hotSide(*findGrate(event, id)));
    return surfaces;
}

std::vector<grate::Batch> bareBatches(const event::Event& event, const event::Dish& dish,
                                      const event::Step& step) {
    if (!dish.pieces) return {};
    return grate::makeBatches(surfacesOf(event, step), footprintOf(*dish.pieces),
                              event::pieceCount(*dish.pieces, event.guests), step.mostPieces);
}

/// The classes of `count` pieces from `first` on, as they lie on the grate.
std::vector<std::int32_t> kindsAtPlaces(const event::Pieces& pieces,
                                        const grate::Footprint& footprint,
                                        const grate::Layout& layout, std::int32_t first) {
    const auto count = static_cast<std::int32_t>(layout.places.size());
    if (pieces.thickness.empty())
        return std::vector<std::int32_t>(static_cast<std::size_t>(count), 0);
    std::vector<std::int32_t> percents;
    std::vector<Length> thickness;
    for (const auto& kind : pieces.thickness) {
        percents.push_back(kind.percent);
        thickness.push_back(kind.thickness);
    }
    return grate::thickestToTheMiddle(layout.places, footprint,
                                      grate::dealClasses(percents, first, count), thickness);
}

}  // namespace

grate::Surface hotSide(const event::Grate& grate) {
    return {grate.length - grate.coolSide, grate.width, grate.gap};
}

const event::Grate* findGrate(const event::Event& event, const ResourceId& id) {
    const auto found = std::find_if(event.kit.grates.begin(), event.kit.grates.end(),
                                    [&](const event::Grate& grate) { return grate.id == id; });
    return found == event.kit.grates.end() ? nullptr : &*found;
}

std::size_t grateBatchCount(const event::Event& event, const event::Dish& dish,
                            const event::Step& step) {
    return bareBatches(event, dish, step).size();
}

std::vector<GrateBatch> grateBatches(const event::Event& event, const event::Dish& dish,
                                     const event::Step& step) {
    std::vector<GrateBatch> batches;
    const auto surfaces = surfacesOf(event, step);
    std::int32_t first = 0;
    for (const grate::Batch& bare : bareBatches(event, dish, step)) {
        GrateBatch batch;
        batch.grate = step.onGrates[bare.surface];
        batch.footprint = footprintOf(*dish.pieces);
        batch.usedLength = bare.usedLength;
        if (const auto layout = grate::lay(surfaces[bare.surface], batch.footprint, bare.pieces)) {
            const auto kinds = kindsAtPlaces(*dish.pieces, batch.footprint, *layout, first);
            for (std::size_t i = 0; i < layout->places.size(); ++i)
                batch.pieces.push_back({++first, kinds[i], layout->places[i]});
        }
        batches.push_back(std::move(batch));
    }
    return batches;
}

}  // namespace cinder::plan
