#include <catch2/catch.hpp>

#include <cmath>

#include "cook/holding.h"
#include "measured.h"

using namespace cinder;
using namespace cinder::cook;
using namespace std::chrono_literals;
using samples::minutes;
using samples::point;

namespace {

Cooling exactCooling(double tauMinutes, int readings, Duration every) {
    Cooling cooling;
    cooling.settling = 0min;
    cooling.surroundingsSpread = TemperatureDelta::fromKelvin(1);
    for (int i = 0; i < readings; ++i) {
        const double t = minutes(every) * i;
        cooling.readings.push_back(point(every * i, 22 + 63 * std::exp(-t / tauMinutes)));
    }
    return cooling;
}

}  // namespace

TEST_CASE("readings take over from what is believed of the vessel") {
    const auto one = forecastHolding(exactCooling(300, 1, 15min)).value();
    const auto many = forecastHolding(exactCooling(300, 9, 15min)).value();
    CHECK(minutes(one.tau.likely) == Approx(480).epsilon(0.001));
    CHECK(minutes(many.tau.likely) == Approx(300).epsilon(0.02));
    CHECK(minutes(many.fallsTo.likely) == Approx(300 * std::log(63.0 / 35.0)).epsilon(0.03));
    CHECK(many.fallsTo.high - many.fallsTo.low < (one.fallsTo.high - one.fallsTo.low) / 3);
    CHECK(many.fallsTo.low < many.fallsTo.likely);
}

TEST_CASE("opening the lid lowers the level and not the time constant") {
    Cooling cooling = exactCooling(300, 10, 15min);
    for (std::size_t i = 5; i < 10; ++i) {
        const double excess = cooling.readings[i].reading.celsius() - 22;
        cooling.readings[i].reading = Temperature::fromCelsius(22 + 0.94 * excess);
    }
    cooling.openings = {Instant{} + 70min};
    CHECK(minutes(forecastHolding(cooling)->tau.likely) == Approx(300).epsilon(0.03));
    cooling.openings.clear();
    CHECK(minutes(forecastHolding(cooling)->tau.likely) < 270);
}

TEST_CASE("a vessel below the limit has fallen already and a hot day never lets it fall") {
    Cooling cooling;
    cooling.readings = {point(0min, 50)};
    const auto fallen = forecastHolding(cooling);
    REQUIRE(fallen);
    CHECK(fallen->fallsTo.likely == Instant{});
    cooling.readings = {point(0min, 70)};
    cooling.surroundings = Temperature::fromCelsius(60);
    CHECK(forecastHolding(cooling).error().kind == CookError::Kind::NeverReached);
    cooling.surroundings = Temperature::fromCelsius(75);
    CHECK(forecastHolding(cooling).error().field == "reading");
    CHECK(forecastHolding({}).error().field == "readings");
}
