#include <catch2/catch.hpp>

#include "kitchen_log.h"

using namespace samples;

// Worked timelines of FDA Food Code 2022, 3-501.14 (cooling) and 3-501.19 (time as a public health
// control); the sections' figures, on clocks of our own.

TEST_CASE("time control of hot food: from 135 degF at 11:00 to the bin at 15:00") {
    Log log;
    log.leave(0min, TimeRule::Hot, inFahrenheit(135));

    REQUIRE(log.at(1min).time);
    CHECK(log.at(1min).time->discardAt == kEleven + 4h);
    CHECK(log.at(4h - 1ms).mayServe);
    CHECK_FALSE(log.at(4h).mayServe);
    CHECK(isLostBy(log.at(4h), Lost::Why::TimeOver));
    CHECK(log.at(4h).lost->at == kEleven + 4h);
    CHECK(log.at(2h).leftover == Leftover::Discard);
}

TEST_CASE("time control cannot be started again, nor left by a hot reading") {
    Log log;
    log.leave(0min, TimeRule::Hot, inCelsius(60));
    log.leave(3h, TimeRule::Hot, inCelsius(70));
    log.measure(3h + 30min, Purpose::Reheat, inCelsius(80));
    log.cool(3h + 40min);

    CHECK(log.at(3h + 59min).time->discardAt == kEleven + 4h);
    CHECK(log.at(3h + 59min).control == Control::Time);
    CHECK(log.at(3h + 59min).leftover == Leftover::Discard);
    CHECK_FALSE(log.at(4h).mayServe);
}

TEST_CASE("of two devices that both start the clock the earlier counts, whichever is heard first") {
    Log log;
    log.leave(20min, TimeRule::Cold, inCelsius(5));
    log.leave(0min, TimeRule::Cold, inCelsius(5));

    CHECK(log.at(30min).time->started == kEleven);
    CHECK(log.at(30min).time->discardAt == kEleven + 4h);
}

TEST_CASE("six hours are for cold food only, measured, and never above 70 degF") {
    Log log;
    log.leave(0min, TimeRule::ColdLong, inFahrenheit(41));
    for (const auto hour : {1h, 2h, 3h, 4h, 5h})
        log.measure(hour, Purpose::HoldCold, inFahrenheit(60));
    CHECK(log.at(6h - 1ms).mayServe);
    CHECK_FALSE(log.at(6h).mayServe);

    SECTION("at 70 degF it may stay, above it may not") {
        log.measure(330min, Purpose::HoldCold, inFahrenheit(70));
        CHECK(log.at(331min).mayServe);
        log.measure(335min, Purpose::HoldCold, inFahrenheit(70.1));
        CHECK(isLostBy(log.at(336min), Lost::Why::TooWarm));
    }
    SECTION("nobody watched it") {
        Log unwatched;
        unwatched.leave(0min, TimeRule::ColdLong, inFahrenheit(41));
        CHECK(isLostBy(unwatched.at(3h), Lost::Why::Gap));
    }
}

TEST_CASE("the clock may only be started from a temperature that was in control") {
    const auto [rule, good, bad] = GENERATE(table<TimeRule, Reading, Reading>({
        {TimeRule::Hot, inFahrenheit(135), inFahrenheit(134.9)},
        {TimeRule::Hot, inCelsius(57), inCelsius(56.9)},
        {TimeRule::Cold, inFahrenheit(41), inFahrenheit(41.1)},
        {TimeRule::Cold, inCelsius(5), inCelsius(5.1)},
        {TimeRule::Fresh, inFahrenheit(70), inFahrenheit(70.1)},
        {TimeRule::Fresh, inCelsius(21), inCelsius(21.1)},
        {TimeRule::ColdLong, inFahrenheit(41), inFahrenheit(41.1)},
        {TimeRule::ColdLong, inCelsius(5), inCelsius(5.1)},
    }));
    Log in;
    in.leave(0min, rule, good);
    CHECK(in.at(1min).mayServe);

    Log out;
    out.leave(0min, rule, bad);
    CHECK_FALSE(out.at(1min).mayServe);
    REQUIRE(out.at(1min).open.size() == 1);
    CHECK(out.at(1min).open[0].allowed == std::vector{Action::Discard});
}

// FDA Food Code 2022, 3-501.19(B)(2): cut produce and sealed packs newly opened, 70 degF or below
// at the start and not above it within the four hours.
TEST_CASE("fresh food has four hours, and is lost as soon as it is above 70 degF") {
    Log log;
    log.leave(0min, TimeRule::Fresh, inFahrenheit(68));
    CHECK(log.at(4h - 1ms).mayServe);
    CHECK_FALSE(log.at(4h).mayServe);

    log.measure(1h, Purpose::HoldCold, inFahrenheit(70));
    CHECK(log.at(61min).mayServe);
    log.measure(2h, Purpose::HoldCold, inFahrenheit(70.1));
    CHECK(isLostBy(log.at(2h), Lost::Why::TooWarm));
    CHECK_FALSE(log.at(2h).mayServe);
}

TEST_CASE("started again, fresh food that has got too warm is lost like any other") {
    Log log;
    log.leave(0min, TimeRule::Fresh, inFahrenheit(68));
    log.leave(1h, TimeRule::Fresh, inFahrenheit(74));
    CHECK(isLostBy(log.at(61min), Lost::Why::TooWarm));
}

TEST_CASE("what was kept cold, and meat, fish or egg, is never taken for fresh") {
    const auto isGoodAt = [](const Reading& start, event::Food food, bool wasCold) {
        Log log;
        log.rule.food = food;
        if (wasCold) log.measure(0min, Purpose::HoldCold, inFahrenheit(40));
        log.leave(30min, TimeRule::Fresh, start);
        const Standing standing = log.at(31min);
        if (!standing.mayServe) {
            REQUIRE(standing.open.size() == 1);
            CHECK(standing.open[0].allowed == std::vector{Action::Discard});
        }
        return standing.mayServe;
    };
    using event::Food;
    for (const Food food :
         {Food::WholeMeat, Food::GroundMeat, Food::Poultry, Food::Fish, Food::Egg})
        for (const bool wasCold : {false, true}) {
            CAPTURE(static_cast<int>(food), wasCold);
            CHECK_FALSE(isGoodAt(inFahrenheit(68), food, wasCold));
            CHECK(isGoodAt(inFahrenheit(41), food, wasCold));
        }
    CHECK_FALSE(isGoodAt(inFahrenheit(68), Food::Plant, true));
    CHECK(isGoodAt(inFahrenheit(41), Food::Plant, true));
    CHECK(isGoodAt(inFahrenheit(68), Food::Plant, false));
}

TEST_CASE("a time control is offered only to food it fits") {
    const auto offered = [](const Standing& standing, event::Food food) {
        std::vector<TimeRule> rules;
        for (const TimeRule rule :
             {TimeRule::Hot, TimeRule::Cold, TimeRule::Fresh, TimeRule::ColdLong})
            if (mayLeaveUnder(rule, standing, food)) rules.push_back(rule);
        return rules;
    };
    using event::Food;
    Log log;
    CHECK(offered(log.at(0min), Food::Plant) == std::vector{TimeRule::Fresh});
    CHECK(offered(log.at(0min), Food::Poultry).empty());
    log.measure(0min, Purpose::HoldCold, inCelsius(4));
    CHECK(offered(log.at(1min), Food::Plant) == std::vector{TimeRule::Cold, TimeRule::ColdLong});
    log.measure(2min, Purpose::HoldCold, inCelsius(9));
    CHECK(offered(log.at(3min), Food::Plant).empty());

    Log hot;
    hot.measure(0min, Purpose::HoldHot, inCelsius(64));
    CHECK(offered(hot.at(1min), Food::Plant) == std::vector{TimeRule::Hot});
    hot.leave(2min, TimeRule::Hot, inCelsius(64));
    CHECK(offered(hot.at(3min), Food::Plant).empty());
}

TEST_CASE("cooling: 135 degF at 11:00, 70 by 13:00, 41 by 17:00") {
    Log log;
    log.measure(0min, Purpose::HoldHot, inFahrenheit(135));
    log.cool(5min);
    CHECK(log.at(6min).cooling->by == kEleven + 2h);
    CHECK(log.at(6min).leftover == Leftover::Cool);

    SECTION("both stages on the last minute") {
        log.measure(2h, Purpose::Cooling, inFahrenheit(70));
        CHECK(log.at(2h).cooling->next == Degree::CoolEnd);
        CHECK(log.at(2h).cooling->by == kEleven + 6h);
        log.measure(6h, Purpose::Cooling, inFahrenheit(41));
        CHECK(log.at(6h).leftover == Leftover::Keep);
        CHECK(log.at(6h).cooling->ended == kEleven + 6h);
    }
    SECTION("quick in the first stage gives the second no less than six hours in all") {
        log.measure(1h, Purpose::Cooling, inFahrenheit(70));
        CHECK(log.at(1h).cooling->by == kEleven + 6h);
    }
    SECTION("half a degree above at two hours") {
        log.measure(2h, Purpose::Cooling, inFahrenheit(70.5));
        CHECK(log.at(2h).leftover == Leftover::Cool);
        CHECK(isLostBy(log.at(2h + 1ms), Lost::Why::CoolingSlow));
    }
    SECTION("a millisecond late at the first stage") {
        log.measure(2h + 1ms, Purpose::Cooling, inFahrenheit(60));
        CHECK(isLostBy(log.at(3h), Lost::Why::CoolingSlow));
        CHECK(log.at(3h).lost->at == kEleven + 2h);
    }
    SECTION("a millisecond late at the second stage") {
        log.measure(2h, Purpose::Cooling, inFahrenheit(60));
        log.measure(6h + 1ms, Purpose::Cooling, inFahrenheit(40));
        CHECK(log.at(6h).leftover == Leftover::Cool);
        CHECK(isLostBy(log.at(7h), Lost::Why::CoolingSlow));
        CHECK(log.at(7h).lost->at == kEleven + 6h);
    }
    SECTION("the second stage missed") {
        log.measure(2h, Purpose::Cooling, inFahrenheit(65));
        log.measure(6h, Purpose::Cooling, inFahrenheit(41.5));
        CHECK(isLostBy(log.at(6h + 1min), Lost::Why::CoolingSlow));
    }
    SECTION("warming up again") {
        log.measure(90min, Purpose::Cooling, inFahrenheit(65));
        log.measure(3h, Purpose::Cooling, inFahrenheit(72));
        CHECK(isLostBy(log.at(3h), Lost::Why::CoolingSlow));
    }
    SECTION("the clock starts at the last reading at or above 135 degF, and only once") {
        log.measure(30min, Purpose::Cooling, inFahrenheit(140));
        CHECK(log.at(31min).cooling->started == kEleven + 30min);
        log.measure(60min, Purpose::Cooling, inFahrenheit(120));
        log.measure(70min, Purpose::Cooling, inFahrenheit(136));
        CHECK(isLostBy(log.at(71min), Lost::Why::CoolingSlow));
    }
    SECTION("begun again it runs on from where it began") {
        log.cool(100min);
        CHECK(log.at(101min).cooling->by == kEleven + 2h);
    }
}

TEST_CASE("a salad made of room-warm things has four hours to 41 degF") {
    Log log;
    log.cool(0min, CoolingRoute::Ambient);
    CHECK(log.at(1min).cooling->by == kEleven + 4h);

    log.measure(4h, Purpose::Cooling, inFahrenheit(41));
    CHECK(log.at(4h).leftover == Leftover::Keep);

    Log slow;
    slow.cool(0min, CoolingRoute::Ambient);
    slow.measure(4h, Purpose::Cooling, inFahrenheit(42));
    CHECK(isLostBy(slow.at(4h + 1ms), Lost::Why::CoolingSlow));
}

TEST_CASE("cooling is not offered once a stricter first stage would be over") {
    Log log;
    log.limits = Limits::with({"Orchard County", {{"coolStart", inCelsius(65)}}}).value();
    log.measure(0min, Purpose::HoldHot, inCelsius(66));
    log.measure(100min, Purpose::HoldHot, inCelsius(60));
    CHECK(log.at(2h).leftover == Leftover::Cool);
    CHECK(log.at(2h + 1ms).leftover == Leftover::Discard);
    CHECK(log.at(2h + 1ms).mayServe);
}

TEST_CASE("food that was never seen hot is not cooled by the record") {
    Log log;
    log.cool(0min);
    CHECK(log.at(1min).leftover == Leftover::Discard);
    log.measure(10min, Purpose::Cooling, inCelsius(40));

    CHECK(log.at(11min).lost);
}
