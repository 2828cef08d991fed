#include <catch2/catch.hpp>

#include "kitchen_log.h"
#include "safety/checks.h"

using namespace samples;

namespace {

/// A stew that comes hot at eleven and is served at one o'clock, in up to two pans.
struct Lunch {
    Lunch() {
        plan.dish = kPan.dish;
        plan.rule.since = kEleven;
        plan.arrivesHot = true;
        plan.isServedHot = true;
        plan.arrival = kEleven;
        plan.serve = kEleven + 2h;
        plan.serviceEnd = kEleven + 4h;
    }
    void read(int pan, Duration at, Purpose purpose, Reading reading) {
        log.add(FoodMeasured{{kPan.dish, pan}, purpose, reading, kProbe, {}, {}, {}, kEleven + at});
    }
    [[nodiscard]] PlannedCheck check(const std::string& name, Duration at) const {
        for (const auto& one : checksOf(plan, log.limits, log.entries, kEleven + at))
            if (one.name == name) return one;
        FAIL("no check " << name);
        return {};
    }

    FoodPlan plan;
    Log log;
};

const Pan kWhole{kPan.dish, 0};
const Pan kSecond{kPan.dish, 2};

}  // namespace

TEST_CASE("a check is done when every pan of the dish has been read") {
    Lunch day;
    day.read(1, 0min, Purpose::ArriveHot, inCelsius(70));
    day.read(2, 1min, Purpose::ArriveHot, inCelsius(70));
    CHECK(day.check("arrival:stew:1", 2min).isDone);
    day.read(1, 60min, Purpose::HoldHot, inCelsius(64));

    const PlannedCheck open = day.check("hold:stew:1", 61min);
    CHECK_FALSE(open.isDone);
    CHECK(open.missing == std::vector{kSecond});

    day.read(2, 62min, Purpose::HoldHot, inCelsius(64));
    CHECK(day.check("hold:stew:1", 63min).isDone);
    CHECK(day.check("hold:stew:1", 63min).missing.empty());
}

TEST_CASE("of several pans to read the one that is lost first comes first") {
    Lunch day;
    day.read(1, 10min, Purpose::ArriveHot, inCelsius(70));
    day.read(2, 2min, Purpose::ArriveHot, inCelsius(70));

    CHECK(day.check("hold:stew:1", 60min).missing == std::vector{kSecond, kPan});
}

TEST_CASE("a dish that is not in pans yet is read as a whole, and its pans are from then on") {
    Lunch day;
    CHECK(day.check("arrival:stew:1", 0min).missing == std::vector{kWhole});
    day.read(0, 0min, Purpose::ArriveHot, inCelsius(70));
    CHECK(day.check("arrival:stew:1", 1min).isDone);
    day.read(1, 30min, Purpose::HoldHot, inCelsius(66));
    day.read(2, 31min, Purpose::HoldHot, inCelsius(66));
    CHECK(day.check("arrival:stew:1", 32min).isDone);

    day.read(0, 60min, Purpose::HoldHot, inCelsius(64));
    CHECK(day.check("hold:stew:1", 61min).missing == std::vector{kPan, kSecond});
}

TEST_CASE(
    "what is lost or discarded is not waited for, and what is fresh only from its beginning") {
    Lunch day;
    day.read(1, 0min, Purpose::ArriveHot, inCelsius(70));
    day.read(2, 1min, Purpose::ArriveHot, inCelsius(70));
    day.log.add(PanDiscarded{kSecond, kEleven + 30min});
    day.read(1, 60min, Purpose::HoldHot, inCelsius(64));
    CHECK(day.check("hold:stew:1", 61min).isDone);

    day.read(3, 110min, Purpose::HoldHot, inCelsius(68));
    CHECK(day.check("hold:stew:1", 111min).isDone);
    CHECK(day.check("before-service:stew:1", 111min).missing == std::vector{kPan});

    SECTION("nothing is left to read of a dish that is gone, and that is not done either") {
        day.log.add(PanDiscarded{kWhole, kEleven + 112min});
        CHECK(day.check("during-service:stew:1", 3h).missing.empty());
        CHECK_FALSE(day.check("during-service:stew:1", 3h).isDone);
    }
}

TEST_CASE("neither a correction nor a thermometer that fails its test answers a check") {
    Lunch day;
    day.log.entries.clear();
    const EntryId first = day.log.measure(0min, Purpose::ArriveHot, inCelsius(70));
    day.log.add(FoodMeasured{
        kPan, Purpose::ArriveHot, inCelsius(71), kProbe, {}, first, "mistyped", kEleven + 60min});
    CHECK(day.check("hold:stew:1", 61min).missing == std::vector{kPan});

    day.log.measure(62min, Purpose::HoldHot, inCelsius(64));
    CHECK(day.check("hold:stew:1", 63min).isDone);
    // The ice point, 0 degC, read two degrees off: common practice - no source.
    day.log.add(ThermometerTested{kProbe, inCelsius(2), kEleven + 64min});
    CHECK_FALSE(day.check("hold:stew:1", 65min).isDone);
}

TEST_CASE("raw food held cold does not show that it is cooked or hot") {
    Lunch day;
    day.plan.rule = {event::Food::Poultry, true, kEleven};
    day.plan.arrivesHot = false;
    day.plan.cooked = kEleven + 90min;
    day.read(0, 0min, Purpose::ArriveCold, inCelsius(3));
    day.read(0, 80min, Purpose::HoldCold, inCelsius(4));
    CHECK_FALSE(day.check("cooked:stew:1", 81min).isDone);
    day.read(0, 108min, Purpose::HoldCold, inCelsius(4));
    CHECK_FALSE(day.check("before-service:stew:1", 109min).isDone);

    // FDA Food Code 2022, 3-401.11(A)(3): poultry, 165 degF.
    SECTION("cooked late it is cooked, whatever the plan said") {
        day.read(0, 115min, Purpose::Cook, inFahrenheit(165));
        CHECK(day.check("cooked:stew:1", 116min).isDone);
        CHECK(day.check("before-service:stew:1", 116min).isDone);
    }
    SECTION("not cooked enough, it is read late and asked for again") {
        day.read(0, 115min, Purpose::Cook, inFahrenheit(150));
        CHECK_FALSE(day.check("cooked:stew:1", 116min).isDone);
    }
}

TEST_CASE(
    "pieces off the heat one by one: a full pan is done, the dish is not by its first piece") {
    Lunch day;
    day.plan.rule = {event::Food::Poultry, true, kEleven};
    day.plan.arrivesHot = false;
    day.plan.cooked = kEleven + 90min;
    day.read(0, 0min, Purpose::ArriveCold, inCelsius(3));

    SECTION("read as a whole") {
        day.read(0, 50min, Purpose::Cook, inFahrenheit(170));
        CHECK_FALSE(day.check("cooked:stew:1", 51min).isDone);
        day.read(0, 90min, Purpose::Cook, inFahrenheit(170));
        CHECK(day.check("cooked:stew:1", 91min).isDone);
    }
    SECTION("read pan by pan") {
        day.read(1, 50min, Purpose::Cook, inFahrenheit(170));
        day.read(2, 80min, Purpose::Cook, inFahrenheit(170));
        CHECK(day.check("cooked:stew:1", 81min).isDone);
    }
}

TEST_CASE("what cools or stands under time control is not asked for in between") {
    Lunch day;
    day.read(1, 0min, Purpose::ArriveHot, inCelsius(70));
    day.read(2, 1min, Purpose::ArriveHot, inCelsius(70));

    SECTION("time alone") {
        day.log.leave(30min, TimeRule::Hot, inCelsius(64));
        CHECK(day.check("hold:stew:1", 60min).missing == std::vector{kSecond});
        CHECK(day.check("before-service:stew:1", 110min).missing == std::vector{kSecond});
        day.read(2, 61min, Purpose::HoldHot, inCelsius(64));
        CHECK(day.check("hold:stew:1", 62min).isDone);
        CHECK_FALSE(day.check("before-service:stew:1", 62min).isDone);
    }
    SECTION("cooling, until it is cold") {
        day.log.cool(30min);
        day.log.measure(50min, Purpose::Cooling, inCelsius(20));
        CHECK(day.check("hold:stew:1", 60min).missing == std::vector{kSecond});
        day.log.measure(70min, Purpose::Cooling, inCelsius(5));
        CHECK(day.check("before-service:stew:1", 110min).missing == std::vector{kSecond, kPan});
    }
}

TEST_CASE("food that must not get too warm under its time control is still read") {
    Lunch day;
    day.plan.arrivesHot = false;
    day.plan.isServedHot = false;
    day.log.leave(0min, TimeRule::ColdLong, inCelsius(4));

    CHECK(day.check("arrival:stew:1", 1min).isDone);
    CHECK(day.check("hold:stew:1", 60min).missing == std::vector{kPan});
}
