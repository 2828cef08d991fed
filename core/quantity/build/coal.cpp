#include "quantity/build/coal.h"

#include <algorithm>

#include "cook/coal.h"
#include "cook/fire.h"
#include "event/menu.h"
#include "grate/layout.h"
#include "quantity/trade.h"
#include "quantity/worked.h"

namespace cinder::quantity {

namespace {

double minutes(Duration span) {
    return static_cast<double>(span.count()) / 60000.0;
}

/// Time on each grate of the kit, batch after batch.
std::vector<Duration> busy(const event::Event& event) {
    std::vector<Duration> times(event.kit.grates.size(), Duration{0});
    for (const event::Dish& dish : event.menu) {
        if (!dish.pieces) continue;
        const grate::Footprint piece{dish.pieces->length, dish.pieces->width,
                                     dish.pieces->narrowWidth};
        for (const event::Step& step : dish.method) {
            std::vector<grate::Surface> surfaces;
            std::vector<std::size_t> indices;
            for (const ResourceId& id : step.onGrates) {  // in the order in which they are filled
                const auto& grates = event.kit.grates;
                const auto grate =
                    std::find_if(grates.begin(), grates.end(),
                                 [&](const event::Grate& one) { return one.id == id; });
                if (grate == grates.end()) continue;
                surfaces.push_back({grate->length - grate->coolSide, grate->width, grate->gap});
                indices.push_back(static_cast<std::size_t>(grate - grates.begin()));
            }
            for (const grate::Batch& batch :
                 grate::makeBatches(surfaces, piece, event::pieceCount(*dish.pieces, event.guests),
                                    step.mostPieces))
                times[indices[batch.surface]] += step.duration.high;
        }
    }
    return times;
}

Figure oneGrate(Tally& tally, std::size_t index, Duration cooking, const cook::CoalNeed& need,
                Area bed) {
    const event::Grate& grate = tally.event().kit.grates[index];
    Figure figure;
    figure.key = "coal/" + grate.id.text();
    figure.name = grate.name;
    figure.amount = {static_cast<double>(need.load.grams()), Unit::Grams};
    figure.formula = both("the larger of bed and top-ups, and heat / heating value / share used",
                          "lo mayor de cama y recargas, y calor / poder calorífico / parte usada");
    figure.worked = both("the larger of {2} and {3}", "lo mayor de {2} y {3}");
    figure.source = {Origin::CommonPractice,
                     "EN 1860-2 limits (secondary), bed depth 75 mm and share of heat by practice"};
    const std::string path = "/kit/grates/" + std::to_string(index);
    figure.inputs = {
        Tally::field(both("Area over coals, square centimetres", "Área sobre brasas, cm²"),
                     {static_cast<double>(bed.squareMillimetres()) / 100.0, Unit::Ratio}, path),
        Tally::field(both("Time of cooking", "Tiempo de cocción"),
                     {minutes(cooking), Unit::Minutes}, "/menu"),
        Tally::field(both("Bed and top-ups", "Cama y recargas"),
                     {static_cast<double>(need.byDepth.grams()), Unit::Grams}, path),
        Tally::field(both("By heat, the high end", "Por calor, extremo alto"),
                     {static_cast<double>(need.byHeat.high.grams()), Unit::Grams}, path)};
    for (std::size_t i = 1; i < figure.inputs.size(); ++i)
        figure.inputs[i].source = {Origin::Reckoned, {}};
    return tally.reckoned(std::move(figure));
}

}  // namespace

std::vector<Figure> reckonCharcoal(Tally& tally, const std::map<ResourceId, Duration>& cooking) {
    const auto fire = cook::fireFromHandTest(cook::kWantedHand);
    if (!fire) return {};
    const Figure bag = fact(tally, "trade/charcoal-bag");
    const auto times = busy(tally.event());
    std::vector<Figure> parts;
    double grams = 0;
    for (std::size_t g = 0; g < times.size(); ++g) {
        const event::Grate& grate = tally.event().kit.grates[g];
        const auto planned = cooking.find(grate.id);
        if (times[g] == Duration{0} && planned == cooking.end()) continue;
        const Area bed = Area::ofRectangle(grate.length - grate.coolSide, grate.width);
        cook::FirePlan plan;
        plan.bed = bed;
        plan.cooking = planned == cooking.end() ? times[g] : planned->second;
        plan.fire = *fire;
        const auto need = cook::coalNeed(plan);
        if (!need) {
            tally.blame(event::Fault::What::Contradiction,
                        "/kit/grates/" + std::to_string(g) + "/lengthMm",
                        std::to_string(roundedUp(grate.length.millimetres())), "/guests");
            return {};
        }
        parts.push_back(oneGrate(tally, g, plan.cooking, *need, bed));
        grams += parts.back().amount.value;
    }
    if (parts.empty() || !(bag.amount.value > 0)) return {};
    Figure load;
    load.key = "supply/charcoal";
    load.name = both("Charcoal", "Carbón");
    load.amount = {grams, Unit::Grams};
    load.formula = both("sum over the grates", "suma de las parrillas");
    load.worked = sumOf(parts.size());
    load.inputs = std::move(parts);
    load = tally.reckoned(std::move(load));
    Figure bags;
    bags.key = "supply/charcoal-bags";
    bags.name = both("Bags of charcoal", "Bolsas de carbón");
    bags.amount = {static_cast<double>(roundedUp(load.amount.value / bag.amount.value)),
                   Unit::Bags};
    bags.formula = both("charcoal / bag, rounded up", "carbón / bolsa, hacia arriba");
    bags.worked = both("{0} / {1}, rounded up", "{0} / {1}, hacia arriba");
    bags.inputs = {load, bag};
    bags = tally.reckoned(std::move(bags));
    return {std::move(load), std::move(bags)};
}

}  // namespace cinder::quantity
