#include <catch2/catch.hpp>

#include "../live/small_day.h"
#include "learn/actuals.h"

using namespace samples;
using learn::actualsOf;

TEST_CASE(
    "Tasks that were begun and finished stand planned against actual, in order of their start") {
    SmallDay day;
    day.add(journal::TaskStarted{kCook, fromBell(-48min)});
    day.add(journal::TaskStarted{kTables, fromBell(-62min)});
    day.add(journal::TaskFinished{kTables, fromBell(-47min)});
    day.add(journal::TaskFinished{kCook, fromBell(-28min)});
    day.add(journal::TaskStarted{kSlice, fromBell(-12min)});
    const auto actuals = actualsOf(day.day());
    REQUIRE(actuals.size() == 2);
    CHECK(actuals[0].task == kTables);
    CHECK(actuals[0].plannedStart == -60min);
    CHECK(actuals[0].plannedLength == 10min);
    CHECK(actuals[0].actualStart == -62min);
    CHECK(actuals[0].actualLength == 15min);
    CHECK_FALSE(actuals[0].isSuspect);
    CHECK(actuals[1].task == kCook);
    CHECK(actuals[1].actualLength == 20min);
}

TEST_CASE("A rest that ends by itself, a slip and a skipped task tell nothing") {
    SmallDay day;
    day.add(journal::TaskStarted{kRest, fromBell(-30min)});
    day.add(journal::TaskFinished{kRest, fromBell(-14min)});
    day.add(journal::TaskStarted{kTables, fromBell(-40min)});
    day.add(journal::TaskFinished{kTables, fromBell(-50min)});
    day.add(journal::TaskSkipped{kSlice, fromBell(-10min)});
    CHECK(actualsOf(day.day()).empty());
    CHECK(actualsOf({}).empty());
}

TEST_CASE("What took four times as long is pointed out") {
    SmallDay day;
    day.add(journal::TaskStarted{kTables, fromBell(-60min)});
    day.add(journal::TaskFinished{kTables, fromBell(-20min)});
    REQUIRE(actualsOf(day.day()).size() == 1);
    CHECK(actualsOf(day.day()).front().isSuspect);
}

TEST_CASE("A batch is known by its step") {
    plan::Task batch = task("lamb/cook/2", plan::TaskKind::Cook, 20);
    CHECK(learn::stepOf(batch) == "lamb/cook/2");
    batch.batch = 2;
    CHECK(learn::stepOf(batch) == "lamb/cook");
}
