#include <catch2/catch.hpp>

#include "kitchen_log.h"

using namespace samples;

// FDA Food Code 2022, 3-403.11(C): 57 degC for food of an inspected plant, heated from its pack.
TEST_CASE("a sealed pack is heated to its own limit once, and like all food after that") {
    Log log;
    const auto isServed = [&](Duration at) { return log.at(at).mayServe; };

    SECTION("it came cold") {
        log.measure(0min, Purpose::ArriveCold, inCelsius(4));
        const EntryId bad = log.measure(50min, Purpose::ReheatPacked, inCelsius(56.9));
        CHECK_FALSE(isServed(51min));
        log.act(52min, bad, Action::Reheat);
        log.measure(60min, Purpose::ReheatPacked, inCelsius(57));
        CHECK(isServed(61min));
    }
    SECTION("nothing was on record") {
        log.measure(0min, Purpose::ReheatPacked, inCelsius(57));
        CHECK(isServed(1min));
        CHECK_FALSE(mayHeatPacked(log.at(1min), log.rule));
    }
    SECTION("cooled on the site it is heated like all food") {
        log.measure(0min, Purpose::ReheatPacked, inCelsius(60));
        log.cool(1min);
        log.measure(60min, Purpose::Cooling, inCelsius(5));
        CHECK_FALSE(mayHeatPacked(log.at(61min), log.rule));
        log.measure(90min, Purpose::ReheatPacked, inCelsius(60));
        CHECK_FALSE(isServed(91min));
    }
    SECTION("what is cooked here came in no pack") {
        log.rule = {event::Food::Poultry, true, {}};
        CHECK_FALSE(mayHeatPacked(log.at(0min), log.rule));
        log.measure(0min, Purpose::ReheatPacked, inCelsius(60));
        CHECK_FALSE(isServed(1min));
    }
    SECTION("found too warm it has to be chilled") {
        log.measure(0min, Purpose::ArriveCold, inCelsius(4));
        const EntryId bad = log.measure(60min, Purpose::HoldCold, inCelsius(9));
        log.act(61min, bad, Action::Chill);
        log.measure(70min, Purpose::ReheatPacked, inCelsius(60));
        CHECK_FALSE(isServed(71min));
    }
}

// The table of the record: USDA FSIS, 2-hour rule, total, then discard; the four hours of FDA Food
// Code 2022, 3-501.19(B), as the total.
TEST_CASE("time out of limit is added up and never given back") {
    Log log;
    log.measure(0min, Purpose::HoldCold, inCelsius(4));
    const auto round = [&](int number) {
        const Duration start = number * 70min;
        const EntryId bad = log.measure(start + 60min, Purpose::HoldCold, inCelsius(15));
        log.act(start + 61min, bad, Action::Chill);
        log.measure(start + 70min, Purpose::HoldCold, inCelsius(5));
    };
    // Each at most 70 min, from the last good reading to the next: three are 3.5 h.
    for (int number = 0; number < 3; ++number)
        round(number);
    CHECK(log.at(211min).leftover == Leftover::Keep);
    CHECK_FALSE(log.at(211min).lost);

    SECTION("half an hour is left") {
        const EntryId bad = log.measure(235min, Purpose::HoldCold, inCelsius(15));
        REQUIRE(log.at(236min).open.size() == 1);
        CHECK(log.at(236min).open[0].by == kEleven + 240min);
        log.act(236min, bad, Action::Chill);
        log.measure(240min, Purpose::HoldCold, inCelsius(5));
        CHECK(log.at(241min).leftover == Leftover::Keep);
    }
    SECTION("found out later it can only be discarded") {
        round(3);
        CHECK(log.at(271min).open.at(0).allowed == std::vector{Action::Discard});
        CHECK(isLostBy(log.at(281min), Lost::Why::OutOfControl));
    }
    SECTION("of hot food that was reheated each time as well") {
        Log hot;
        hot.measure(0min, Purpose::HoldHot, inCelsius(64));
        for (const Duration start : {0min, 100min, 200min}) {
            // Called reheated before it is: it was held, and it is out of limit.
            const EntryId bad = hot.measure(start + 80min, Purpose::Reheat, inCelsius(50));
            hot.act(start + 81min, bad, Action::Reheat);
            hot.measure(start + 100min, Purpose::Reheat, inCelsius(75));
        }
        CHECK(hot.at(201min).mayServe);
        CHECK(isLostBy(hot.at(301min), Lost::Why::OutOfControl));
    }
    SECTION("food on its way to the minimum is not out of limit") {
        Log grill;
        grill.rule = {event::Food::Poultry, true, {}};
        grill.measure(0min, Purpose::ArriveCold, inCelsius(4));
        for (const Duration start : {0min, 110min, 220min}) {
            const EntryId bad = grill.measure(start + 100min, Purpose::Cook, inCelsius(70));
            grill.act(start + 101min, bad, Action::CookOn);
            grill.measure(start + 110min, Purpose::Cook, inCelsius(74));
        }
        CHECK(grill.at(331min).mayServe);
    }
}

// Water boils at 100 degC: 105 degC and more is no food, common practice - no source.
TEST_CASE("what is above boiling was read on the other scale and shows nothing") {
    Log log;
    log.rule.food = GENERATE(event::Food::WholeMeat, event::Food::GroundMeat, event::Food::Plant);
    const auto purpose = GENERATE(Purpose::ArriveHot, Purpose::HoldHot, Purpose::Cook,
                                  Purpose::Reheat, Purpose::ReheatPacked);
    log.measure(0min, purpose, inCelsius(125), 60min);
    CHECK_FALSE(log.at(1min).mayServe);
    CHECK_FALSE(isWithin(std::get<FoodMeasured>(log.entries[0].fact), log.rule, log.limits));

    Log boiling;
    boiling.rule.food = log.rule.food;
    boiling.measure(0min, purpose, inCelsius(105));
    CHECK(boiling.at(1min).mayServe);
}

// 4-203.11 and the record's own rule: a thermometer that failed speaks for nothing.
TEST_CASE("a thermometer found wrong later does not bring back food that was lost") {
    Log log;
    log.measure(0min, Purpose::HoldHot, inCelsius(64));
    CHECK(isLostBy(log.at(121min), Lost::Why::Gap));
    log.add(ThermometerTested{kProbe, inCelsius(3), kEleven + 130min});
    log.add(ThermometerTested{kProbe, inCelsius(0), kEleven + 140min});
    log.measure(150min, Purpose::HoldHot, inCelsius(64));
    CHECK(log.at(151min).lost);
    CHECK_FALSE(log.at(151min).mayServe);

    Log cold;
    cold.add(ThermometerTested{kProbe, inCelsius(0), kEleven});
    cold.measure(1min, Purpose::HoldHot, inCelsius(64));
    cold.add(ThermometerTested{kProbe, inCelsius(0), kEleven + 2min});
    cold.measure(30min, Purpose::HoldCold, inCelsius(4));
    cold.add(ThermometerTested{kProbe, inCelsius(3), kEleven + 40min});
    CHECK(isLostBy(cold.at(41min), Lost::Why::CoolingUnrecorded));
}
