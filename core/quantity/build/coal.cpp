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

/// Time on one grate of the kit, batch after batch, and the steps it is made of.
struct Busy {
    Duration time{0};
    std::vector<Figure> steps;

    void add(const event::Dish& dish, const std::string& path, Duration batch) {
        time += batch;
        if (steps.empty() || steps.back().source.text != path)
            steps.push_back(Tally::field(dish.name, {0, Unit::Minutes}, path));
        steps.back().amount.value += minutes(batch);
    }
};

std::vector<Busy> busy(const event::Event& event) {
    std::vector<Busy> grates(event.kit.grates.size());
    for (std::size_t d = 0; d < event.menu.size(); ++d) {
        const event::Dish& dish = event.menu[d];
        if (!dish.pieces) continue;
        const grate::Footprint piece{dish.pieces->length, dish.pieces->width,
                                     dish.pieces->narrowWidth};
        for (std::size_t s = 0; s < dish.method.size(); ++s) {
            const event::Step& step = dish.method[s];
            const std::string path =
                "/menu/" + std::to_string(d) + "/method/" + std::to_string(s) + "/minutes/high";
            std::vector<grate::Surface> surfaces;
            std::vector<std::size_t> indices;
            for (const ResourceId& id : step.onGrates) {  // in the order in which they are filled
                const auto& kit = event.kit.grates;
                const auto grate = std::find_if(kit.begin(), kit.end(),
                                                [&](const auto& one) { return one.id == id; });
                if (grate == kit.end()) continue;
                surfaces.push_back({grate->length - grate->coolSide, grate->width, grate->gap});
                indices.push_back(static_cast<std::size_t>(grate - kit.begin()));
            }
            for (const grate::Batch& batch :
                 grate::makeBatches(surfaces, piece, event::pieceCount(*dish.pieces, event.guests),
                                    step.mostPieces))
                grates[indices[batch.surface]].add(dish, path, step.duration.high);
        }
    }
    return grates;
}

/// `steps` is empty where the time is the plan's.
Figure cookingTime(Duration cooking, std::vector<Figure> steps) {
    Figure figure;
    figure.name = both("Time of cooking", "Tiempo de cocción");
    figure.amount = {minutes(cooking), Unit::Minutes};
    if (steps.empty()) {
        figure.source = {Origin::Reckoned, "the plan"};
        return figure;
    }
    figure.formula = both("batch after batch, at worst", "tanda tras tanda, en el peor caso");
    figure.worked = sumOf(steps.size());
    figure.inputs = std::move(steps);
    return figure;
}

/// Kilograms that follow from what stands beside them and from a practice.
Figure coalBy(LocalText name, Mass mass, const char* practice) {
    Figure figure;
    figure.name = std::move(name);
    figure.amount = {static_cast<double>(mass.grams()), Unit::Grams};
    figure.source = {Origin::CommonPractice, practice};
    return figure;
}

Figure oneGrate(Tally& tally, std::size_t index, Figure cooking, const cook::CoalNeed& need,
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
        std::move(cooking),
        coalBy(both("Bed and top-ups", "Cama y recargas"), need.byDepth, "bed depth 75 mm"),
        coalBy(both("By heat, the high end", "Por calor, extremo alto"), need.byHeat.high,
               "EN 1860-2 limits (secondary), share of heat by practice")};
    return tally.reckoned(std::move(figure));
}

}  // namespace

std::vector<Figure> reckonCharcoal(Tally& tally, const std::map<ResourceId, Duration>& cooking) {
    const auto fire = cook::fireFromHandTest(cook::kWantedHand);
    if (!fire) return {};
    const Figure bag = fact(tally, "trade/charcoal-bag");
    auto grates = busy(tally.event());
    std::vector<Figure> parts;
    double grams = 0;
    for (std::size_t g = 0; g < grates.size(); ++g) {
        const event::Grate& grate = tally.event().kit.grates[g];
        const auto planned = cooking.find(grate.id);
        const bool isPlanned = planned != cooking.end();
        if (grates[g].time == Duration{0} && !isPlanned) continue;
        const Area bed = Area::ofRectangle(grate.length - grate.coolSide, grate.width);
        cook::FirePlan plan;
        plan.bed = bed;
        plan.cooking = isPlanned ? planned->second : grates[g].time;
        plan.fire = *fire;
        const auto need = cook::coalNeed(plan);
        if (!need) {
            tally.blame(event::Fault::What::Contradiction,
                        "/kit/grates/" + std::to_string(g) + "/lengthMm",
                        std::to_string(roundedUp(grate.length.millimetres())), "/guests");
            return {};
        }
        auto steps = isPlanned ? std::vector<Figure>{} : std::move(grates[g].steps);
        parts.push_back(
            oneGrate(tally, g, cookingTime(plan.cooking, std::move(steps)), *need, bed));
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
