#include <catch2/catch.hpp>
#include <fstream>
#include <sstream>

#include "event/json.h"
#include "live/fire_forecast.h"

using namespace cinder;
using namespace std::chrono_literals;

namespace {

const Instant kLaid{1'821'280'000'000ms};
const TaskId kLamb{"lamb/cook/1"};

Temperature celsius(double degrees) {
    return Temperature::fromCelsius(degrees);
}

/// The orchard lunch with its lamb laid at `start` over a fire of three seconds.
live::Day lambDay(double start) {
    std::ifstream file(CINDER_SOURCE "/demo-data/orchard-harvest-lunch.json");
    std::ostringstream text;
    text << file.rdbuf();
    live::Day day;
    day.event = event::parse(text.str()).value();
    day.grates[ResourceId{"grate"}].handTests[kLaid] = 3s;
    day.batches[kLamb].laid = live::BatchFacts::Laid{kLaid, celsius(start), {}};
    return day;
}

live::BatchForecast forecastOf(const live::Day& day) {
    const auto forecast = live::forecastFire(day);
    const live::BatchForecast* found = forecast.find(kLamb);
    REQUIRE(found);
    return *found;
}

}  // namespace

TEST_CASE("a reading no piece can have given is set aside and steers nothing") {
    const live::Day clean = lambDay(8);
    const auto believed = forecastOf(clean);
    REQUIRE(believed.isForecast);
    // 125 °F typed as Celsius, a frozen tip, one just beyond boiling; an old journal may hold them.
    for (const double slip : {125.0, -4.0, 103.5, 5.5}) {
        INFO(slip);
        live::Day day = clean;
        day.batches[kLamb].pieces[3].readings[kLaid + 15min] = {celsius(slip), {}};
        const auto made = forecastOf(day);
        CHECK(made.readingsSetAside == 1);
        CHECK(made.fireFactor == believed.fireFactor);
        CHECK(made.lasts == believed.lasts);
        REQUIRE(made.pieces.size() == believed.pieces.size());
        for (std::size_t i = 0; i < made.pieces.size(); ++i)
            CHECK(made.pieces[i].pull == believed.pieces[i].pull);
    }
    live::Day possible = clean;
    possible.batches[kLamb].pieces[3].readings[kLaid + 15min] = {celsius(51.7), {}};  // 125 °F
    const auto made = forecastOf(possible);
    CHECK(made.readingsSetAside == 0);
    CHECK(made.pieces[2].pull != believed.pieces[2].pull);
}

TEST_CASE(
    "a batch the model cannot go by says which field it stumbles over and keeps the estimate") {
    for (const double start : {-3.0, 63.0}) {
        INFO(start);
        const auto made = forecastOf(lambDay(start));
        CHECK_FALSE(made.isForecast);
        REQUIRE(made.missing.refused);
        CHECK(made.missing.refused->field == "start");
        CHECK(made.missing.any());
        // 25 to 35 minutes by the event, less 2.5 to take off.
        REQUIRE(made.pieces[0].pull);
        CHECK(made.pieces[0].pull->low == kLaid + 22min + 30s);
    }
    CHECK_FALSE(forecastOf(lambDay(8)).missing.any());
}

TEST_CASE("a target no piece is brought to keeps the estimate and says so") {
    live::Day day = lambDay(8);
    day.grates[ResourceId{"grate"}].handTests[kLaid] = 10s;  // the weakest fire that has a count
    for (event::Dish& dish : day.event->menu) {
        if (dish.id != DishId{"lamb"}) continue;
        dish.meat = event::Meat::Pork;
        dish.pullAt = celsius(99);
        for (auto& kind : dish.pieces->thickness)
            kind.thickness = Length::fromMillimetres(62);
    }
    const auto made = forecastOf(day);
    CHECK(made.pullAt == celsius(99));
    CHECK_FALSE(made.isForecast);
    CHECK_FALSE(made.missing.refused);
    CHECK(made.missing.isNeverReached);
    CHECK(made.pieces[0].pull->low == kLaid + 22min + 30s);
}
