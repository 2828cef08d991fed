#include <catch2/catch.hpp>

#include "cook/coal.h"

using namespace cinder;
using namespace cinder::cook;
using namespace std::chrono_literals;

namespace {

FirePlan plan(Duration cooking) {
    return {.bed = Area::fromSquareMillimetres(500'000),
            .cooking = cooking,
            .fire = fireFromHandTest(3s).value()};
}

}  // namespace

TEST_CASE("a palm that bears less time means more heat") {
    // Source: pain times of the Handbook of Chemical Hazard Analysis Procedures (1989): 12, 8 and
    // 4 kW/m² for 4, 7 and 18 s; meat at 100 °C is reckoned to take 1.5 kW/m² less.
    CHECK(fireFromHandTest(4s)->atHundred.wattsPerSquareMetre == Approx(10'500).epsilon(0.05));
    CHECK(fireFromHandTest(7s)->atHundred.wattsPerSquareMetre == Approx(6'500).epsilon(0.05));
    CHECK(fireFromHandTest(2s)->atHundred.wattsPerSquareMetre >
          fireFromHandTest(3s)->atHundred.wattsPerSquareMetre);
    CHECK(fireFromHandTest(20s).error().field == "seconds");
    CHECK(fireFromGrateThermometer(Temperature::fromCelsius(200))->atHundred.wattsPerSquareMetre ==
          Approx(4500));
    CHECK(handBand(3s)->low < handBand(2s)->high);
    CHECK_FALSE(handBand(500ms));
}

TEST_CASE("a longer fire needs more coal and more bags") {
    const CoalNeed hour = coalNeed(plan(1h)).value();
    const CoalNeed three = coalNeed(plan(3h)).value();
    CHECK(hour.topUps.empty());
    CHECK(three.topUps.size() == 2);
    CHECK(three.load > hour.load);
    CHECK(three.bags >= hour.bags);
    CHECK(hour.byHeat.low < hour.byHeat.high);
    // 0.5 m² of bed, 75 mm deep, at the published 180 to 220 kg/m³.
    CHECK(hour.byDepth.kilograms() == Approx(7.5).margin(0.01));
    CHECK(static_cast<double>(hour.bags) * Mass::fromPounds(40).kilograms() >=
          hour.load.kilograms());
}

TEST_CASE("coal is added one burn-in before the bed is due") {
    const CoalNeed need = coalNeed(plan(3h)).value();
    CHECK(need.topUps[0].afterLighting == 60min);
    CHECK(need.lightBefore == 30min);
}

TEST_CASE("a plan without a bed is refused by name") {
    FirePlan none = plan(1h);
    none.bed = {};
    CHECK(coalNeed(none).error() == CookError{CookError::Kind::NotPositive, "bed"});
    CHECK(coalNeed(plan(0h)).error().field == "cooking");
}
