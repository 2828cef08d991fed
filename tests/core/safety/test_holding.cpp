#include <catch2/catch.hpp>

#include "kitchen_log.h"

using namespace samples;

TEST_CASE("food of which nothing is on record is never offered to keep") {
    const Log log;

    const Standing standing = log.at(0min);

    CHECK(standing.leftover == Leftover::Discard);
    CHECK_FALSE(standing.mayServe);
    CHECK_FALSE(standing.lost);
}

TEST_CASE("hot food measured often enough is served and, left over, cooled") {
    Log log;
    log.measure(0min, Purpose::HoldHot, inCelsius(64));
    log.measure(120min, Purpose::HoldHot, inCelsius(57));

    const Standing standing = log.at(240min);

    CHECK(standing.control == Control::Hot);
    CHECK(standing.mayServe);
    CHECK(standing.leftover == Leftover::Cool);
    CHECK(standing.measureBy == kEleven + 240min);
}

TEST_CASE("a hole in the record means discard, whatever is measured afterwards") {
    Log log;
    log.measure(0min, Purpose::HoldCold, inCelsius(4));
    const auto later = GENERATE(120min + 1ms, 150min, 400min);
    log.measure(later, Purpose::HoldCold, inCelsius(2));

    const Standing standing = log.at(later + 1min);

    CHECK(isLostBy(standing, Lost::Why::Gap));
    CHECK(standing.lost->at == kEleven + 120min);
    CHECK(standing.leftover == Leftover::Discard);
    CHECK_FALSE(standing.mayServe);
}

TEST_CASE("the record must begin soon after the food comes under the crew's care") {
    Log log;
    log.rule.since = kEleven;
    log.measure(121min, Purpose::HoldCold, inCelsius(3));

    CHECK(isLostBy(log.at(122min), Lost::Why::Gap));
    CHECK_FALSE(log.at(119min).lost);
}

TEST_CASE("a reading out of limit is closed by an allowed action and a reading that shows it") {
    Log log;
    log.measure(0min, Purpose::HoldHot, inCelsius(63));
    const EntryId bad = log.measure(60min, Purpose::HoldHot, inCelsius(52));

    SECTION("neither is on record") {
        const Standing standing = log.at(61min);
        REQUIRE(standing.open.size() == 1);
        CHECK(standing.open[0].allowed == std::vector{Action::Reheat, Action::Discard});
        CHECK(standing.withoutAction == std::vector{bad});
        CHECK(standing.leftover == Leftover::Discard);
        CHECK_FALSE(standing.mayServe);
    }
    SECTION("an action alone does not make it safe") {
        log.act(61min, bad, Action::Reheat);
        const Standing standing = log.at(70min);
        CHECK(standing.withoutAction.empty());
        CHECK(standing.open.size() == 1);
        CHECK_FALSE(standing.mayServe);
    }
    SECTION("a good reading alone does not close it") {
        log.measure(80min, Purpose::Reheat, inCelsius(76));
        CHECK(log.at(81min).withoutAction == std::vector{bad});
        CHECK_FALSE(log.at(81min).mayServe);
    }
    SECTION("an action the standard does not allow closes nothing") {
        log.act(61min, bad, Action::Chill);
        log.measure(80min, Purpose::Reheat, inCelsius(76));
        CHECK(log.at(81min).withoutAction == std::vector{bad});
    }
    SECTION("reheated to the minimum within two hours") {
        log.act(61min, bad, Action::Reheat);
        log.measure(180min, Purpose::Reheat, inCelsius(74));
        CHECK(log.at(181min).open.empty());
        CHECK(log.at(181min).mayServe);
    }
    SECTION("reheated too late") {
        log.act(61min, bad, Action::Reheat);
        log.measure(180min + 1ms, Purpose::Reheat, inCelsius(80));
        CHECK(isLostBy(log.at(181min), Lost::Why::OutOfControl));
    }
    SECTION("warmed to the holding limit only") {
        log.act(61min, bad, Action::Reheat);
        log.measure(80min, Purpose::HoldHot, inCelsius(60));
        CHECK_FALSE(log.at(81min).mayServe);
    }
    // FDA Food Code 2022, 3-403.11(A): 74 degC in all parts, whatever it was called.
    SECTION("reheated, and called held hot at the keypad") {
        log.act(61min, bad, Action::Reheat);
        log.measure(80min, Purpose::HoldHot, inCelsius(73.9));
        CHECK_FALSE(log.at(81min).mayServe);
        log.measure(90min, Purpose::HoldHot, inCelsius(74));
        CHECK(log.at(91min).open.empty());
        CHECK(log.at(91min).mayServe);
        log.measure(170min, Purpose::HoldHot, inCelsius(60));
        CHECK(log.at(200min).mayServe);
    }
    // 3-403.11(C) is for the first heating of a sealed pack, and this is none.
    SECTION("warmed to the limit of a sealed pack only") {
        log.act(61min, bad, Action::Reheat);
        log.measure(80min, Purpose::ReheatPacked, inCelsius(60));
        const auto open = log.at(81min).open;
        REQUIRE(open.size() == 2);
        CHECK(open[1].purpose == Purpose::Reheat);
        log.act(82min, open[1].entry, Action::Reheat);
        log.measure(90min, Purpose::ReheatPacked, inCelsius(74));
        CHECK(log.at(91min).mayServe);
    }
    SECTION("discarded") {
        log.act(61min, bad, Action::Discard);
        CHECK(log.at(62min).control == Control::Discarded);
        CHECK(log.at(62min).withoutAction.empty());
    }
}

TEST_CASE("found out of limit with nothing good before it, food can only be discarded") {
    Log log;
    log.measure(0min, Purpose::HoldHot, inCelsius(50));

    REQUIRE(log.at(1min).open.size() == 1);
    CHECK(log.at(1min).open[0].allowed == std::vector{Action::Discard});
}

TEST_CASE("raw food is not served before a thermometer shows that it is cooked") {
    Log log;
    log.rule = {event::Food::Poultry, true, {}};
    log.measure(0min, Purpose::ArriveCold, inCelsius(3));
    CHECK_FALSE(log.at(1min).mayServe);

    SECTION("a holding reading does not cook it") {
        log.measure(60min, Purpose::HoldHot, inCelsius(65));
        const Standing standing = log.at(61min);
        REQUIRE(standing.open.size() == 1);
        CHECK(standing.open[0].allowed == std::vector{Action::CookOn, Action::Discard});
        CHECK_FALSE(standing.mayServe);
    }
    SECTION("the minimum of its kind does") {
        log.measure(60min, Purpose::Cook, inFahrenheit(165));
        CHECK(log.at(61min).mayServe);
        CHECK(log.at(61min).isCooked);
    }
    SECTION("too long raw is too long") {
        log.measure(240min + 1ms, Purpose::Cook, inFahrenheit(180));
        CHECK(isLostBy(log.at(241min), Lost::Why::Gap));
    }
}

TEST_CASE("a roast cooked by the chart may be held at its own lower limit, nothing else may") {
    Log log;
    log.rule = {event::Food::WholeMeat, true, {}};
    log.measure(0min, Purpose::Cook, inFahrenheit(140), 12min);
    log.measure(30min, Purpose::HoldHot, inFahrenheit(130));

    CHECK(log.at(31min).isRoast);
    CHECK(log.at(31min).mayServe);

    // 3-501.14(A): what is lawfully held may be cooled from there.
    SECTION("held there for hours it may still be cooled, from its last reading on") {
        log.measure(130min, Purpose::HoldHot, inFahrenheit(130));
        log.measure(240min, Purpose::HoldHot, inFahrenheit(130));
        CHECK(log.at(241min).leftover == Leftover::Cool);
        log.cool(241min);
        CHECK(log.at(242min).cooling->by == kEleven + 360min);
        log.measure(360min, Purpose::Cooling, inFahrenheit(70));
        CHECK(log.at(361min).leftover == Leftover::Cool);
    }
    SECTION("below it, it is out of limit") {
        log.measure(40min, Purpose::HoldHot, inFahrenheit(129.9));
        CHECK_FALSE(log.at(41min).mayServe);
    }
}

TEST_CASE("cold food that is warmed has to reach the reheating temperature") {
    Log log;
    log.measure(0min, Purpose::ArriveCold, inCelsius(4));
    log.measure(60min, Purpose::HoldHot, inCelsius(70));
    CHECK_FALSE(log.at(61min).mayServe);

    Log well;
    well.measure(0min, Purpose::ArriveCold, inCelsius(4));
    well.measure(60min, Purpose::Cook, inCelsius(74));
    CHECK(well.at(61min).mayServe);
}

TEST_CASE("hot food that turns up cold without a cooling record is lost") {
    Log log;
    log.measure(0min, Purpose::HoldHot, inCelsius(64));
    log.measure(60min, Purpose::HoldCold, inCelsius(4));

    CHECK(isLostBy(log.at(61min), Lost::Why::CoolingUnrecorded));
}

// FDA Food Code 2022, 3-501.16(A): 57 degC or above, or 5 degC or below.
TEST_CASE("a reading called cooling of food that does not cool is held against its holding") {
    const auto [purpose, first, bad, good] = GENERATE(table<Purpose, double, double, double>(
        {{Purpose::HoldHot, 64, 40, 57}, {Purpose::HoldCold, 4, 20, 5}}));
    Log log;
    log.measure(0min, purpose, inCelsius(first));
    log.measure(60min, Purpose::Cooling, inCelsius(good));
    CHECK(log.at(61min).mayServe);
    CHECK(log.at(61min).lastMeasured == kEleven + 60min);

    log.measure(70min, Purpose::Cooling, inCelsius(bad));
    const Standing standing = log.at(71min);
    CHECK_FALSE(standing.mayServe);
    REQUIRE(standing.open.size() == 1);
    CHECK(standing.open[0].purpose == purpose);
    CHECK(standing.lastMeasured == kEleven + 70min);
}

TEST_CASE("what is said to cool with nothing on record was hot, or is discarded") {
    const auto degrees = GENERATE(3.0, 40.0);
    Log log;
    log.measure(0min, Purpose::Cooling, inCelsius(degrees));
    CHECK_FALSE(log.at(1min).mayServe);
    REQUIRE(log.at(1min).open.size() == 1);
    CHECK(log.at(1min).open[0].allowed == std::vector{Action::Discard});

    Log hot;
    hot.measure(0min, Purpose::Cooling, inCelsius(64));
    CHECK(hot.at(1min).control == Control::Hot);
}

TEST_CASE("a correction is kept beside the old value and cannot make food better") {
    Log log;
    log.measure(0min, Purpose::HoldHot, inCelsius(64));
    const EntryId first = log.measure(60min, Purpose::HoldHot, inCelsius(52));
    FoodMeasured again{kPan,  Purpose::HoldHot, inCelsius(62),  kProbe, {},
                       first, "mistyped",       kEleven + 65min};
    log.add(again);
    CHECK_FALSE(log.at(66min).mayServe);
    CHECK(log.at(66min).withoutAction == std::vector{first});

    Log worse;
    const EntryId good = worse.measure(0min, Purpose::HoldHot, inCelsius(64));
    again.corrects = good;
    again.reading = inCelsius(46);
    worse.add(again);
    CHECK_FALSE(worse.at(66min).mayServe);
    CHECK(worse.entries.size() == 2);
}

TEST_CASE("an entry taken back as a slip is kept and does not count") {
    Log log;
    log.measure(0min, Purpose::HoldHot, inCelsius(64));
    log.measure(60min, Purpose::HoldHot, inCelsius(6.2));
    log.entries.back().isTakenBack = true;
    log.measure(61min, Purpose::HoldHot, inCelsius(62));

    CHECK(log.at(62min).mayServe);
}

TEST_CASE("a thermometer that fails its ice point speaks for nothing since its last good test") {
    Log log;
    log.measure(0min, Purpose::HoldHot, inCelsius(64));
    log.measure(100min, Purpose::HoldHot, inCelsius(63));
    log.add(ThermometerTested{kProbe, inCelsius(0.9), kEleven - 10min});
    CHECK(log.at(130min).mayServe);

    log.add(ThermometerTested{kProbe, inCelsius(1.1), kEleven + 125min});
    CHECK_FALSE(log.at(130min).mayServe);
    CHECK(log.at(130min).leftover == Leftover::Discard);
}

TEST_CASE("what is said of the whole dish speaks for a pan until the pan has its own record") {
    Log log;
    const Pan whole{kPan.dish, 0};
    log.add(FoodMeasured{whole, Purpose::HoldHot, inCelsius(64), kProbe, {}, {}, {}, kEleven});
    CHECK(log.at(60min).mayServe);

    log.measure(60min, Purpose::HoldHot, inCelsius(62));
    log.add(
        FoodMeasured{whole, Purpose::HoldHot, inCelsius(64), kProbe, {}, {}, {}, kEleven + 170min});
    CHECK(isLostBy(log.at(200min), Lost::Why::Gap));

    log.add(PanDiscarded{whole, kEleven + 201min});
    CHECK(log.at(202min).control == Control::Discarded);
    CHECK(pansOf(kPan.dish, log.entries) == std::vector{kPan});
}
