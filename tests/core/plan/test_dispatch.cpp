#include <catch2/catch.hpp>

#include "orchard.h"
#include "plan/check.h"
#include "plan/dispatch.h"

using namespace cinder;
using namespace cinder::plan;
using namespace cinder::plan::test;

namespace {

constexpr Duration at(int minute) {
    return std::chrono::minutes{minute};
}

}  // namespace

TEST_CASE("with nothing different the projection is the plan, early work moved up") {
    const Problem problem = smallLunch();
    const Schedule schedule = smallLunchPlan();
    const Dispatch dispatch(problem, schedule);
    const auto day = dispatch.project({}, at(-60));
    CHECK(day[0].start == at(-60));
    CHECK(day[1].finish == at(-30));
    CHECK(day[3].finish == at(-5));
    CHECK(day[3].slack == at(5));
    CHECK(day[0].slack == at(5));
    CHECK(day[0].isCritical);
    CHECK_FALSE(day[4].isCritical);
    CHECK(dispatch.readyAt(day) == at(-5));
}

TEST_CASE("what the plan itself lets wait too long is not waited for again") {
    Problem problem = smallLunch();
    const Schedule schedule = smallLunchPlan();
    for (Link& link : problem.links)
        link.maxLag = HalfMinutes{0};
    REQUIRE_FALSE(check(problem, schedule).empty());
    const Dispatch dispatch(problem, schedule);
    const auto day = dispatch.project({}, at(-60));
    CHECK(dispatch.readyAt(day) == at(-5));
    for (std::size_t i = 0; i < day.size(); ++i) {
        INFO(problem.tasks[i].id.text());
        CHECK(day[i].finish <= Duration{schedule.tasks[i].finish});
    }
}

TEST_CASE("a late fire pushes what follows and eats the slack") {
    const Problem problem = smallLunch();
    const Schedule schedule = smallLunchPlan();
    const Dispatch dispatch(problem, schedule);
    std::vector<Actual> actuals(problem.tasks.size());
    actuals[0].start = at(-57);
    const auto day = dispatch.project(actuals, at(-52));
    CHECK(day[0].finish == at(-47));
    CHECK(day[1].start == at(-47));
    CHECK(day[3].finish == at(-2));
    CHECK(day[1].slack == at(2));

    const auto later = dispatch.project(actuals, at(-40));
    CHECK(later[0].finish == at(-40));
    CHECK(later[3].slack == at(-5));
    CHECK(dispatch.readyAt(later) == at(5));
}

TEST_CASE("what has happened is not moved, and a skipped task takes no time") {
    const Problem problem = smallLunch();
    const Schedule schedule = smallLunchPlan();
    const Dispatch dispatch(problem, schedule);
    std::vector<Actual> actuals(problem.tasks.size());
    actuals[0] = {at(-60), at(-48), false, 0};
    actuals[1].start = at(-48);
    actuals[1].piecesDone = 4;
    actuals[2].isSkipped = true;
    const auto day = dispatch.project(actuals, at(-25));
    CHECK(day[0].finish == at(-48));
    CHECK(day[1].start == at(-48));
    CHECK(day[1].finish == at(-24));  // one touch left
    CHECK(day[2].start == at(-24));
    CHECK(day[2].finish == at(-24));
    CHECK(day[3].start == at(-15));  // leans late: not before its planned start
}

TEST_CASE("a moved bell moves what leans late and leaves early work where it is") {
    const Problem problem = smallLunch();
    const Schedule schedule = smallLunchPlan();
    const Dispatch dispatch(problem, schedule);
    const auto day = dispatch.project({}, at(-60), at(10));
    CHECK(day[0].start == at(-60));
    CHECK(day[5].start == at(10));
    CHECK(day[3].start == at(-5));
    // The rest may not wait longer than five minutes for the knife, so it moves along.
    CHECK(day[2].finish == at(-10));
    CHECK(day[1].finish == at(-30));
}

TEST_CASE("one person's order is kept with the walk between") {
    Problem problem = emptyKitchen(1);
    problem.stations.push_back({StationId("van"), LocalText("Van")});
    problem.walk = {{minutes(0), minutes(3)}, {minutes(3), minutes(0)}};
    problem.tasks = {handsOn("a", minutes(10)), handsOn("b", minutes(5))};
    problem.tasks[1].station = 1;
    Schedule schedule;
    schedule.tasks = {{minutes(-30), minutes(-20), {{minutes(-30), minutes(10), {0}}}},
                      {minutes(-10), minutes(-5), {{minutes(-10), minutes(5), {0}}}}};
    REQUIRE(check(problem, schedule).empty());
    const Dispatch dispatch(problem, schedule);
    const std::vector<Duration> slow{at(14), at(5)};
    const auto day = dispatch.project({}, at(-30), Duration{0}, slow);
    CHECK(day[1].start == at(-13));
    CHECK(day[1].slack == at(8));
    CHECK(day[0].slack == at(8));
}

TEST_CASE("a place on the grate passes from batch to batch") {
    Problem problem = emptyKitchen(1);
    problem.resources.push_back({ResourceId("grate"), LocalText("Grate"), 10, {}});
    problem.tasks = {standing("a", minutes(10)), standing("b", minutes(10)),
                     standing("c", minutes(10))};
    problem.tasks[0].uses = {{0, 4}};
    problem.tasks[1].uses = {{0, 6}};
    problem.tasks[2].uses = {{0, 6}};
    Schedule schedule;
    schedule.tasks = {{minutes(-40), minutes(-30), {}},
                      {minutes(-38), minutes(-28), {}},
                      {minutes(-20), minutes(-10), {}}};
    REQUIRE(check(problem, schedule).empty());
    const auto orders = resourceOrders(problem, schedule);
    REQUIRE(orders.size() == 2);
    const Dispatch dispatch(problem, schedule);
    const auto day = dispatch.project({}, at(-40));
    CHECK(day[2].start == at(-30));
}

TEST_CASE("the critical chain leads from the first link to the bell, each held up by the last") {
    const Problem problem = smallLunch();
    const Schedule schedule = smallLunchPlan();
    const Dispatch dispatch(problem, schedule);
    const auto day = dispatch.project({}, Duration{firstStart(schedule)});
    const auto chain = dispatch.criticalChain(day);
    REQUIRE(chain.size() > 1);
    CHECK(day[static_cast<std::size_t>(chain.back())].finish == dispatch.readyAt(day));
    for (std::size_t k = 0; k < chain.size(); ++k) {
        CHECK(day[static_cast<std::size_t>(chain[k])].isCritical);
        if (k > 0)
            CHECK(day[static_cast<std::size_t>(chain[k - 1])].start <=
                  day[static_cast<std::size_t>(chain[k])].start);
    }
}

TEST_CASE("what the fire says of a batch counts once, also in a plan that was made with it") {
    const Problem problem = smallLunch();
    Schedule schedule = smallLunchPlan();
    schedule.tasks[1].finish += minutes(4);  // 24 minutes, as the fire said
    const Dispatch dispatch(problem, schedule);
    std::vector<Actual> actuals(problem.tasks.size());
    actuals[0] = {at(-60), at(-50), false, 0};
    actuals[1] = {at(-50), std::nullopt, false, 1};
    std::vector<Duration> durations;
    for (const Task& task : problem.tasks)
        durations.emplace_back(task.duration.usual);
    durations[1] = at(24);
    CHECK(dispatch.project(actuals, at(-49), at(0), durations)[1].finish == at(-26));
    durations[1] = at(18);
    CHECK(dispatch.project(actuals, at(-49), at(0), durations)[1].finish == at(-32));
}

TEST_CASE("a start that must not be late keeps the finish before it from being late") {
    Problem problem = emptyKitchen(0);
    problem.tasks = {standing("p", HalfMinutes{10}), standing("x", HalfMinutes{10}),
                     standing("y", HalfMinutes{20})};
    for (Task& task : problem.tasks)
        task.latestFinish = FromBell{0};
    problem.links = {{0, 1, End::Finish, End::Finish, HalfMinutes{0}, std::nullopt},
                     {1, 2, End::Start, End::Start, HalfMinutes{20}, std::nullopt}};
    Schedule schedule;
    schedule.tasks = {{FromBell{-60}, FromBell{-50}, {}},
                      {FromBell{-60}, FromBell{-50}, {}},
                      {FromBell{-40}, FromBell{-20}, {}}};
    const auto day = Dispatch(problem, schedule).project({}, FromBell{-60});
    // All three may be twenty half-minutes later and not more.
    for (const Projected& task : day) {
        CHECK(task.slack == HalfMinutes{20});
        CHECK(task.isCritical);
    }
}
