#include <catch2/catch.hpp>

#include <cmath>
#include <vector>

#include "cook/doneness.h"
#include "cook/lethality.h"
#include "measured.h"

using namespace cinder;
using namespace cinder::cook;
using namespace std::chrono_literals;
using samples::minutes;
using samples::point;

TEST_CASE("a hold and a ramp count as their closed forms") {
    // Rows F001 and F002 of the heat checks, computed from F = ∫ 10^((T - 60) / z) dt, z = 10 °F.
    const ThermalDeath tenFahrenheit{Temperature::fromCelsius(60),
                                     TemperatureDelta::fromKelvin(50.0 / 9)};
    const std::vector<MeasuredPoint> hold = {point(0min, 54.444), point(112min, 54.444)};
    CHECK(minutes(lethalityOf(hold, tenFahrenheit, 3h)->equivalent) == Approx(11.2).epsilon(1e-3));
    const std::vector<MeasuredPoint> ramp = {point(0min, 50), point(12min, 62)};
    CHECK(minutes(lethalityOf(ramp, tenFahrenheit)->equivalent) == Approx(5.48904).epsilon(1e-4));
    // Row F003: the trapezoid on the same ramp overstates.
    double trapezoid = 0;
    for (int i = 0; i < 12; ++i) {
        trapezoid += 0.5 * (lethalRate(tenFahrenheit, Temperature::fromCelsius(50 + i)) +
                            lethalRate(tenFahrenheit, Temperature::fromCelsius(51 + i)));
    }
    CHECK(trapezoid == Approx(5.56740).epsilon(1e-4));
}

TEST_CASE("the published roast table is one tenfold every ten Fahrenheit") {
    // Source: USDA FSIS Appendix A (1999), FDA Food Code 3-401.11(B).
    const auto hold = [](double f) {
        return publishedRoastHold(Temperature::fromFahrenheit(f), Reduction::SixAndAHalf);
    };
    CHECK(hold(130) == 112min);
    CHECK(hold(140) == 12min);
    CHECK(hold(145) == 4min);
    CHECK(hold(149) == 85s);
    CHECK(hold(158) == 0s);
    CHECK_FALSE(hold(129.9));
    CHECK(hold(140.9) == 12min);
    CHECK(publishedRoastHold(Temperature::fromFahrenheit(131), Reduction::Seven) == 97min);
    // Least squares of log10 seconds on °F, 28 rows: row F004, z 10.0113 °F.
    double n = 0, x = 0, y = 0, xx = 0, xy = 0;
    for (int f = 130; f <= 157; ++f) {
        const double log = std::log10(std::chrono::duration<double>(*hold(f)).count());
        n += 1, x += f, y += log, xx += f * f, xy += f * log;
    }
    CHECK(-(n * xx - x * x) / (n * xy - x * y) == Approx(10.0113).margin(0.01));
}

TEST_CASE("a gap in the record counts for nothing and is told") {
    const std::vector<MeasuredPoint> history = {point(0min, 60), point(5min, 60), point(65min, 60),
                                                point(70min, 60)};
    const auto found = lethalityOf(history, kSalmonellaInRoasts);
    REQUIRE(found);
    CHECK(minutes(found->equivalent) == Approx(10));
    CHECK(found->gaps == 1);
    CHECK_FALSE(lethalityOf({}, kSalmonellaInRoasts));
}

TEST_CASE("pull targets stand beside the published minimum and never replace it") {
    // Source of the minima: FDA Food Code 2022, 3-401.11(A); USDA FSIS chart.
    CHECK(safeMinimum(Meat::IntactBeef).temperature == Temperature::fromCelsius(63));
    CHECK(safeMinimum(Meat::GroundMeat).hold == 17s);
    CHECK(safeMinimum(Meat::Poultry).temperature == Temperature::fromCelsius(74));
    CHECK(consumerMinimum(Meat::IntactPork).hold == 3min);
    CHECK(pullTarget(Meat::IntactBeef, Doneness::MediumRare)->isBelowMinimum());
    for (const Meat meat : {Meat::GroundMeat, Meat::Poultry, Meat::Fish}) {
        for (int d = 0; d <= static_cast<int>(Doneness::WellDone); ++d) {
            const auto target = pullTarget(meat, static_cast<Doneness>(d));
            if (target) CHECK_FALSE(target->isBelowMinimum());
        }
    }
    CHECK_FALSE(pullTarget(Meat::Poultry, Doneness::Rare));
}
