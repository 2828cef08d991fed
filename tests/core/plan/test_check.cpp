#include <catch2/catch.hpp>

#include "orchard.h"
#include "plan/check.h"

using namespace cinder;
using namespace cinder::plan;
using namespace cinder::plan::test;

namespace {

bool onlyBreaks(const std::vector<Violation>& found, Rule rule) {
    if (found.empty()) return false;
    for (const Violation& violation : found)
        if (violation.rule != rule) return false;
    return true;
}

}  // namespace

TEST_CASE("a schedule that keeps every rule has no violation") {
    CHECK(check(smallLunch(), smallLunchPlan()).empty());
}

TEST_CASE("a schedule with too few tasks, pieces or people is misshapen") {
    Schedule schedule = smallLunchPlan();
    schedule.tasks.pop_back();
    CHECK(onlyBreaks(check(smallLunch(), schedule), Rule::Shape));

    schedule = smallLunchPlan();
    schedule.tasks[1].pieces.pop_back();
    CHECK(onlyBreaks(check(smallLunch(), schedule), Rule::Shape));

    schedule = smallLunchPlan();
    schedule.tasks[0].pieces[0].people = {0, 1};
    CHECK(onlyBreaks(check(smallLunch(), schedule), Rule::Shape));

    schedule = smallLunchPlan();
    schedule.tasks[0].pieces[0].people = {7};
    CHECK(onlyBreaks(check(smallLunch(), schedule), Rule::Shape));
}

TEST_CASE("an interrupted task changes hands only against the rules") {
    Schedule schedule = smallLunchPlan();
    schedule.tasks[4].pieces[1].people = {0};
    const auto found = check(smallLunch(), schedule);
    REQUIRE_FALSE(found.empty());
    CHECK(found.front().rule == Rule::Shape);
    CHECK(found.front().task == 4);
}

TEST_CASE("a task must last as long as it takes") {
    Schedule schedule = smallLunchPlan();
    schedule.tasks[5].finish += minutes(1);
    const auto found = check(smallLunch(), schedule);
    REQUIRE(onlyBreaks(found, Rule::Duration));
    CHECK(found.front().by == 2);
}

TEST_CASE("a touch must come at its moment") {
    Schedule schedule = smallLunchPlan();
    schedule.tasks[1].pieces[2].start += HalfMinutes{1};
    CHECK(onlyBreaks(check(smallLunch(), schedule), Rule::Duration));
}

TEST_CASE("the pieces of an interrupted task add up to it and are not too short") {
    Schedule schedule = smallLunchPlan();
    schedule.tasks[4].pieces[0].length = minutes(7);
    CHECK(onlyBreaks(check(smallLunch(), schedule), Rule::Duration));

    schedule = smallLunchPlan();
    schedule.tasks[4].pieces = {{minutes(-40), minutes(17), {1}}, {minutes(-13), minutes(3), {1}}};
    CHECK(onlyBreaks(check(smallLunch(), schedule), Rule::Duration));
}

TEST_CASE("nothing starts before the crew is there or ends after its latest finish") {
    Problem problem = smallLunch();
    problem.arrival = minutes(-55);
    const auto early = check(problem, smallLunchPlan());
    REQUIRE(onlyBreaks(early, Rule::Window));
    CHECK(early.front().task == 0);
    CHECK(early.front().by == 10);

    problem = smallLunch();
    problem.tasks[3].latestFinish = minutes(-6);
    CHECK(onlyBreaks(check(problem, smallLunchPlan()), Rule::Window));

    problem = smallLunch();
    problem.tasks[4].earliestStart = minutes(-39);
    CHECK(onlyBreaks(check(problem, smallLunchPlan()), Rule::Window));
}

TEST_CASE("a link binds from below and from above") {
    Problem problem = smallLunch();
    problem.links[3].minLag = minutes(6);
    const auto tooSoon = check(problem, smallLunchPlan());
    REQUIRE(onlyBreaks(tooSoon, Rule::Lag));
    CHECK(tooSoon.front().task == 3);
    CHECK(tooSoon.front().other == TaskIndex{5});
    CHECK(tooSoon.front().by == 2);

    problem = smallLunch();
    problem.links[3].maxLag = minutes(4);
    CHECK(onlyBreaks(check(problem, smallLunchPlan()), Rule::Lag));

    problem = smallLunch();
    problem.links.push_back({0, 4, End::Start, End::Start, minutes(20), minutes(20)});
    CHECK(check(problem, smallLunchPlan()).empty());
    problem.links.back().maxLag = minutes(19);
    problem.links.back().minLag = minutes(19);
    CHECK(onlyBreaks(check(problem, smallLunchPlan()), Rule::Lag));
}

TEST_CASE("no more of a resource is used than there is at the time") {
    Problem problem = smallLunch();
    problem.resources[0].capacity = 7;
    const auto found = check(problem, smallLunchPlan());
    REQUIRE(onlyBreaks(found, Rule::Capacity));
    CHECK(found.size() == 1);
    CHECK(found.front().resource == ResourceIndex{0});
    CHECK(found.front().by == 1);

    problem.resources[0].steps = {{minutes(-50), 8}};
    CHECK(check(problem, smallLunchPlan()).empty());
    problem.resources[0].steps = {{minutes(-50), 8}, {minutes(-31), 6}};
    CHECK(onlyBreaks(check(problem, smallLunchPlan()), Rule::Capacity));
    problem.resources[0].steps = {{minutes(-50), 8}, {minutes(-30), 6}};
    CHECK(check(problem, smallLunchPlan()).empty());
}

TEST_CASE("a person needs the skill") {
    Problem problem = smallLunch();
    problem.crew[0].skills = {0};
    const auto found = check(problem, smallLunchPlan());
    REQUIRE(onlyBreaks(found, Rule::Skill));
    CHECK(found.size() == 7);
    CHECK(found.front().person == PersonIndex{0});
}

TEST_CASE("a person is not in two places at once and needs time to walk") {
    Schedule schedule = smallLunchPlan();
    schedule.tasks[4].pieces = {{minutes(-40), minutes(8), {0}}, {minutes(-22), minutes(12), {0}}};
    const auto found = check(smallLunch(), schedule);
    REQUIRE_FALSE(found.empty());
    CHECK(found.front().rule == Rule::DoubleBook);

    Problem problem = smallLunch();
    problem.tasks.push_back(handsOn("clear", minutes(5)));
    schedule = smallLunchPlan();
    schedule.tasks.push_back({minutes(-9), minutes(-4), {{minutes(-9), minutes(5), {1}}}});
    const auto rushed = check(problem, schedule);
    REQUIRE(onlyBreaks(rushed, Rule::Walk));
    CHECK(rushed.front().by == 2);
    schedule.tasks.back() = {minutes(-8), minutes(-3), {{minutes(-8), minutes(5), {1}}}};
    CHECK(check(problem, schedule).empty());
}

TEST_CASE("of a day under way only what is still to come is judged") {
    Schedule schedule = smallLunchPlan();
    schedule.tasks[4].pieces = {{minutes(-40), minutes(8), {0}}, {minutes(-22), minutes(12), {0}}};
    const auto found = check(smallLunch(), schedule);
    REQUIRE_FALSE(found.empty());
    std::vector<bool> isFixed(schedule.tasks.size(), true);
    CHECK(check(smallLunch(), schedule, isFixed).empty());
    CHECK(check(smallLunch(), schedule, {}) == found);
    // One of the two is enough.
    isFixed[static_cast<std::size_t>(found.front().task)] = false;
    CHECK_FALSE(check(smallLunch(), schedule, isFixed).empty());
    isFixed.assign(isFixed.size(), true);
    isFixed[static_cast<std::size_t>(found.front().other.value())] = false;
    CHECK_FALSE(check(smallLunch(), schedule, isFixed).empty());
}

TEST_CASE("a violation is told in one line") {
    Problem problem = smallLunch();
    problem.resources[0].capacity = 7;
    const auto found = check(problem, smallLunchPlan());
    REQUIRE(found.size() == 1);
    CHECK(describe(problem, found.front()) ==
          "there is too little of \"grate\" for \"lamb\" by 1 units, at T-50 min");
}
