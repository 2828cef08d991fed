#include <catch2/catch.hpp>

#include "../live/small_day.h"
#include "learn/actuals.h"
#include "learn/suggestions.h"

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
    // The only batch is numbered, too, and so is found in the event and on other days.
    plan::Task only = task("lamb/cook/1", plan::TaskKind::Cook, 20);
    only.dish = DishId{"lamb"};
    CHECK(learn::stepOf(only) == "lamb/cook");
    plan::Task slice = task("lamb/slice", plan::TaskKind::Slice, 10);
    slice.dish = DishId{"lamb"};
    CHECK(learn::stepOf(slice) == "lamb/slice");
}

namespace {

/// The tables of ten minutes, planned with a pause of fifteen in them, and done in `took`.
learn::Actual split(Duration took) {
    SmallDay small;
    small.add(journal::TaskStarted{kTables, fromBell(-60min)});
    small.add(journal::TaskFinished{kTables, fromBell(-60min) + took});
    live::Day day = small.day();
    day.sheet->problem.tasks[0].shortestPiece = minutes(2);
    day.sheet->schedule.tasks[0].finish = minutes(-35);
    const auto actuals = actualsOf(day);
    REQUIRE(actuals.size() == 1);
    return actuals.front();
}

}  // namespace

TEST_CASE("Work that was split as planned took as long as planned, its pauses left out") {
    CHECK(learn::logRatio(split(25min)) == 0);
    // Fewer pauses than planned, and no quicker.
    CHECK(learn::logRatio(split(12min)) == 0);
    CHECK(split(40min).actualLength == 25min);
    CHECK(split(6min).actualLength == 6min);
}

TEST_CASE("A step of a dish carries the names of both") {
    SmallDay small;
    small.add(journal::TaskStarted{kCook, fromBell(-48min)});
    small.add(journal::TaskFinished{kCook, fromBell(-28min)});
    live::Day day = small.day();
    day.sheet->problem.tasks[1].dish = DishId{"lamb"};
    CHECK(actualsOf(day).front().dish.empty());
    day.event.emplace();
    day.event->menu.emplace_back();
    day.event->menu.front().id = DishId{"lamb"};
    day.event->menu.front().name = LocalText{std::string("Leg of lamb")};
    CHECK(actualsOf(day).front().dish == day.event->menu.front().name);
    CHECK(actualsOf(day).front().name == LocalText{std::string("lamb/cook")});
}
