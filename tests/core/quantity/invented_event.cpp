#include "invented_event.h"

#include <string>

#include "quantity/yields.h"

namespace cinder::test {

namespace {

class Inventor {
  public:
    explicit Inventor(std::uint64_t seed) : rng_(seed) {}

    event::Event event() {
        event::Event event;
        event.id = EventId("invented");
        event.name = LocalText("Invented");
        event.serve.at = Instant{std::chrono::hours{24 * 20000}};
        event.site.travel = std::chrono::minutes{between(0, 120)};
        event.site.arrival = ZonedInstant{event.serve.at - std::chrono::minutes{between(60, 300)},
                                          event.serve.offset};
        event.site.stations = {{StationId("line"), LocalText("Line"), {}}};
        event.guests.adults = between(1, 700);
        event.guests.children = between(0, 200);
        event.kit.tables = {{ResourceId("table"),
                             LocalText("Table"),
                             between(1, 6),
                             Length::fromMillimetres(between(1200, 2500)),
                             Length::fromMillimetres(762),
                             StationId("line"),
                             {}}};
        event.quantities.emplace();
        event.quantities->service = std::chrono::minutes{between(20, 240)};
        event.quantities->buffer = std::chrono::minutes{between(0, 60)};
        const int dishes = between(1, 14);
        for (int i = 0; i < dishes; ++i)
            event.menu.push_back(dish(i));
        return event;
    }

  private:
    int between(int low, int high) {
        return low + static_cast<int>(rng_.below(static_cast<std::uint32_t>(high - low + 1)));
    }
    bool isOne(int in) { return between(1, in) == 1; }

    event::Dish dish(int index) {
        event::Dish dish;
        dish.id = DishId("dish-" + std::to_string(index));
        dish.name = LocalText("Dish");
        dish.course = static_cast<event::Course>(between(0, 4));
        dish.order = index + 1;
        event::Step load;
        load.id = StepId("load");
        load.kind = event::StepKind::Load;
        load.station = StationId("line");
        dish.method = {load};
        dish.serving.emplace();
        event::Serving& serving = *dish.serving;
        serving.takePercent = between(1, 100);
        if (isOne(2)) serving.childPercent = between(1, 100);
        if (isOne(2)) serving.secondsPercent = between(0, 100);
        serving.gramsPerLitre = between(80, 1500);
        if (isOne(3)) {
            serving.portionPieces = between(1, 4);
        } else {
            serving.portion = Mass::fromGrams(between(5, 400));
        }
        if (serving.portionPieces || isOne(3)) {
            dish.pieces.emplace();
            if (isOne(2))
                dish.pieces->total = between(1, 3000);
            else
                dish.pieces->perHundredGuests = between(1, 500);
            dish.pieces->mass = Mass::fromGrams(between(30, 3000));
        }
        vessel(serving);
        ingredients(serving, dish.pieces.has_value());
        return dish;
    }

    void vessel(event::Serving& serving) {
        serving.vessel = static_cast<event::Vessel>(between(0, 5));
        serving.panSize = static_cast<event::PanSize>(between(0, 5));
        serving.panDepth = static_cast<event::PanDepth>(between(0, 2));
        serving.vesselVolume = Volume::fromMillilitres(between(200, 20000));
        serving.vesselLength = Length::fromMillimetres(between(100, 900));
        serving.vesselWidth = Length::fromMillimetres(between(100, 600));
    }

    void ingredients(event::Serving& serving, bool hasPieces) {
        const int count = between(1, 4);
        int left = 100;
        for (int i = 0; i < count; ++i) {
            event::Ingredient one;
            // Few names, so that dishes share them; a name has the same pack everywhere.
            const int name = i * 10 + between(0, 9);
            one.id = event::IngredientId("ware-" + std::to_string(name));
            one.name = LocalText("Ware");
            one.percent = i + 1 == count ? left : between(1, left - (count - 1 - i));
            left -= one.percent;
            if (isOne(3)) {
                one.yieldPercent = between(10, 400);
            } else {
                const auto all = quantity::yields();
                const int steps = between(1, 2);
                for (int k = 0; k < steps; ++k)
                    one.yields.emplace_back(
                        all[static_cast<std::size_t>(between(0, static_cast<int>(all.size()) - 1))]
                            .key);
            }
            if (name % 3 != 0) {
                one.pack.emplace();
                one.pack->name = LocalText("Pack");
                one.pack->mass = Mass::fromGrams(100 + 700 * name);
            }
            serving.ingredients.push_back(std::move(one));
        }
        // Only what comes as pieces is counted; a ware of its own, so that packs agree.
        if (hasPieces && isOne(4)) {
            serving.ingredients.resize(1);
            serving.ingredients[0].percent = 100;
            serving.ingredients[0].id = event::IngredientId("counted");
            serving.ingredients[0].pack.emplace();
            serving.ingredients[0].pack->pieces = 12;
            serving.ingredients[0].pack->mass.reset();
        }
    }

    Rng rng_;
};

}  // namespace

event::Event inventedEvent(std::uint64_t seed) {
    return Inventor(seed).event();
}

}  // namespace cinder::test
