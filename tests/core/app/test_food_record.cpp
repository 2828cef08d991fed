#include <catch2/catch.hpp>

#include "food_day.h"

using namespace cinder;
using namespace samples;

// Water boils at 100 degC; FDA Food Code 2022, 3-501.16(A)(1): 57 degC or 135 degF to hold hot.
TEST_CASE("a reading on the wrong scale is refused with the question that mends it") {
    FoodDay day;
    const auto entries = [&] { return day.session->look()->food.entries.size(); };
    const auto before = entries();
    const auto hot =
        day.session->measureFood(kStew, safety::Purpose::ArriveHot, safety::inCelsius(125), kProbe);
    REQUIRE_FALSE(hot);
    CHECK(hot.error().detail.find("temperature:") == 0);
    CHECK(hot.error().detail.find("is that Fahrenheit?") != std::string::npos);
    CHECK_FALSE(
        day.session->leaveControl(kStew, safety::TimeRule::Hot, safety::inCelsius(140), kProbe));
    CHECK(entries() == before);

    // The same digits on their own scale are a reading: out of limit, and asked about.
    REQUIRE(day.session->measureFood(kStew, safety::Purpose::ArriveHot, safety::inFahrenheit(125),
                                     kProbe));
    CHECK(day.session->look()->food.withoutAction == 1);
    CHECK_FALSE(day.session->correctFood(day.session->look()->food.entries.back().id,
                                         safety::inCelsius(125), "typed wrong"));
    CHECK(day.session->measureFood(kSlaw, safety::Purpose::ArriveCold, safety::inCelsius(-18),
                                   kProbe));
    // A thermometer that is far off is put on record as what it is.
    CHECK(day.session->testThermometer(kProbe, safety::inCelsius(120)));
}

TEST_CASE("what is reheated as it was said is in control again, whatever the keypad called it") {
    FoodDay day;
    REQUIRE(
        day.session->measureFood(kStew, safety::Purpose::ArriveHot, safety::inCelsius(64), kProbe));
    day.wait(60min);
    REQUIRE(
        day.session->measureFood(kStew, safety::Purpose::HoldHot, safety::inCelsius(52), kProbe));
    CHECK(day.pan(kStew).nextPurpose == safety::Purpose::HoldHot);
    REQUIRE(
        day.session->takeAction(day.pan(kStew).standing.open.at(0).entry, safety::Action::Reheat));
    // The keypad opens with what will answer for it: FDA Food Code 2022, 3-403.11(A), 74 degC.
    CHECK(day.pan(kStew).nextPurpose == safety::Purpose::Reheat);
    CHECK(day.pan(kStew).nextLimit == safety::Degree::Reheat);
    day.wait(20min);
    REQUIRE(
        day.session->measureFood(kStew, safety::Purpose::HoldHot, safety::inCelsius(80), kProbe));
    CHECK(day.pan(kStew).standing.open.empty());
    CHECK(day.pan(kStew).nextPurpose == safety::Purpose::HoldHot);
    day.wait(110min);
    CHECK_FALSE(day.pan(kStew).standing.lost);
    CHECK(day.pan(kStew).standing.mayServe);
}

TEST_CASE("what is cooked on or chilled is read next for what that has to show") {
    FoodDay day;
    const safety::Pan lamb{DishId{"lamb"}, 1};
    const auto mend = [&](const safety::Pan& pan, safety::Action action) {
        REQUIRE(day.session->takeAction(day.pan(pan).standing.open.at(0).entry, action));
    };
    for (const safety::Pan& pan : {lamb, kSlaw})
        REQUIRE(day.session->measureFood(pan, safety::Purpose::ArriveCold, safety::inCelsius(3),
                                         kProbe));
    CHECK_FALSE(day.pan(lamb).mayHeatPacked);
    CHECK(day.pan(kSlaw).mayHeatPacked);
    day.wait(30min);
    REQUIRE(day.session->measureFood(lamb, safety::Purpose::Cook, safety::inCelsius(40), kProbe));
    mend(lamb, safety::Action::CookOn);
    CHECK(day.pan(lamb).nextPurpose == safety::Purpose::Cook);
    REQUIRE(
        day.session->measureFood(kSlaw, safety::Purpose::HoldCold, safety::inCelsius(9), kProbe));
    mend(kSlaw, safety::Action::Chill);
    CHECK(day.pan(kSlaw).nextPurpose == safety::Purpose::HoldCold);
    CHECK_FALSE(day.pan(kSlaw).mayHeatPacked);
}

TEST_CASE("a new pan is filled out of one that is on record, and takes its clock along") {
    FoodDay day;
    const safety::Pan third{kStew.dish, 3};
    const EventId event = day.session->look()->event;
    const auto tip = [&](std::int32_t from) {
        return day.session->measureFood(third, safety::Purpose::HoldHot, safety::inCelsius(58),
                                        kProbe, {}, from);
    };
    REQUIRE(
        day.session->measureFood(kStew, safety::Purpose::ArriveHot, safety::inCelsius(64), kProbe));
    REQUIRE(day.session->leaveControl(kStew, safety::TimeRule::Hot, safety::inCelsius(64), kProbe));
    const Instant discardAt = day.pan(kStew).standing.time->discardAt;
    day.wait(235min);
    for (const std::int32_t wrong : {0, 2, 3}) {
        const auto refused = tip(wrong);
        REQUIRE_FALSE(refused);
        CHECK(refused.error().detail.find("out of:") == 0);
    }
    REQUIRE(tip(1));
    REQUIRE(day.session->discardFood(kStew));
    CHECK_FALSE(tip(1));
    day.restart();
    REQUIRE(day.session->open(event));
    REQUIRE(day.pan(third).standing.time);
    CHECK(day.pan(third).standing.time->discardAt == discardAt);
    day.wait(5min);
    CHECK_FALSE(day.pan(third).standing.mayServe);
}

TEST_CASE("a reading out of limit that came along with the food is answered from the new pan") {
    FoodDay day;
    const safety::Pan second{kStew.dish, 2};
    REQUIRE(
        day.session->measureFood(kStew, safety::Purpose::ArriveHot, safety::inCelsius(64), kProbe));
    day.wait(30min);
    REQUIRE(
        day.session->measureFood(kStew, safety::Purpose::HoldHot, safety::inCelsius(50), kProbe));
    REQUIRE(day.session->measureFood(second, safety::Purpose::HoldHot, safety::inCelsius(50),
                                     kProbe, {}, 1));
    REQUIRE(day.session->discardFood(kStew));
    const auto open = day.pan(second).standing.open;
    REQUIRE(open.size() == 2);
    for (const auto& reading : open)
        REQUIRE(day.session->takeAction(reading.entry, safety::Action::Reheat));
    REQUIRE(
        day.session->measureFood(second, safety::Purpose::Reheat, safety::inCelsius(75), kProbe));
    CHECK(day.pan(second).standing.mayServe);
}
