#include <catch2/catch.hpp>

#include "safety/record.h"
#include "small_day.h"

using namespace samples;

namespace {

const safety::Pan kStew{DishId{"stew"}, 1};

safety::Fact hot(double celsius) {
    return safety::FoodMeasured{kStew,
                                safety::Purpose::HoldHot,
                                safety::inCelsius(celsius),
                                safety::ThermometerId{"probe"},
                                {},
                                {},
                                {},
                                fromBell(-2h)};
}

/// As `SmallDay::add`, so long after the entry before it.
journal::OperationId addAfter(SmallDay& day, Duration pause, journal::Body body) {
    const Instant last = day.operations.back().stamp.wall;
    const journal::OperationId id = day.add(std::move(body));
    day.operations.back().stamp.wall = last + pause;
    return id;
}

}  // namespace

TEST_CASE("every entry of the record is kept with who wrote it and when") {
    SmallDay day;
    const auto id = day.add(hot(61));
    day.operations.back().person = PersonId{"nora"};

    const auto record = day.day().record;

    REQUIRE(record.size() == 1);
    CHECK(record[0].id == safety::EntryId{id.device, id.sequence});
    CHECK(record[0].person == PersonId{"nora"});
    CHECK(record[0].written == day.operations.back().stamp.wall);
    CHECK(record[0].fact == hot(61));
}

TEST_CASE("an undo within a minute takes an entry back as a slip; a later one changes nothing") {
    const auto [pause, isTakenBack] =
        GENERATE(table<Duration, bool>({{1s, true}, {60s, true}, {61s, false}, {1h, false}}));
    SmallDay day;
    const auto id = day.add(hot(16));
    const auto undo = addAfter(day, pause, journal::Undone{id});

    REQUIRE(day.day().record.size() == 1);
    CHECK(day.day().record[0].isTakenBack == isTakenBack);

    addAfter(day, 1h, journal::Undone{undo});
    CHECK_FALSE(day.day().record[0].isTakenBack);
}
