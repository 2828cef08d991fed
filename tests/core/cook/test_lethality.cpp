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

// Source: USDA FSIS Appendix A (1999), 6.5-log column, FDA Food Code 3-401.11(B): seconds at whole
// degrees Fahrenheit from 130 on.
TEST_CASE("what is reckoned for a roast is the fit of the published table") {
    const std::vector<double> seconds = {6720, 5340, 4260, 3360, 2700, 2160, 1680, 1380, 1080, 900,
                                         720,  540,  480,  360,  300,  240,  169,  134,  107,  85,
                                         67,   54,   43,   34,   27,   22,   17,   14};
    // Least squares of log10 seconds on °F, 28 rows: row F004, z 10.0113 °F.
    double n = 0, x = 0, y = 0, xx = 0, xy = 0;
    for (std::size_t i = 0; i < seconds.size(); ++i) {
        const double f = 130.0 + static_cast<double>(i);
        const double log = std::log10(seconds[i]);
        n += 1, x += f, y += log, xx += f * f, xy += f * log;
    }
    const double z = -(n * xx - x * x) / (n * xy - x * y);
    CHECK(z == Approx(10.0113).margin(0.01));
    CHECK(kSalmonellaInRoasts.tenfold.kelvin() == Approx(z * 5 / 9).margin(0.01));
    // The row of the reference itself: 140 °F is 60 °C.
    CHECK(kSalmonellaInRoasts.reference == Temperature::fromFahrenheit(140));
    CHECK(kRoastNeedAt60 == std::chrono::seconds(std::lround(seconds[10])));
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
    // Source of the minima: FDA Food Code 2022, 3-401.11(A).
    CHECK(safeMinimum(Meat::IntactBeef).temperature == Temperature::fromCelsius(63));
    CHECK(safeMinimum(Meat::GroundMeat).hold == 17s);
    CHECK(safeMinimum(Meat::Poultry).temperature == Temperature::fromCelsius(74));
    CHECK(pullTarget(Meat::IntactBeef, Doneness::MediumRare)->isBelowMinimum());
    for (const Meat meat : {Meat::GroundMeat, Meat::Poultry, Meat::Fish}) {
        for (int d = 0; d <= static_cast<int>(Doneness::WellDone); ++d) {
            const auto target = pullTarget(meat, static_cast<Doneness>(d));
            if (target) CHECK_FALSE(target->isBelowMinimum());
        }
    }
    CHECK_FALSE(pullTarget(Meat::Poultry, Doneness::Rare));
}
