/// Does the planner, given an event written for the purpose, come to what crews do? Every fact
/// here is common practice - no source; where the table of such facts is at hand, the numbers are
/// compared with it, too.

#include <algorithm>
#include <catch2/catch.hpp>
#include <fstream>
#include <map>
#include <sstream>

#include "check_table.h"
#include "event/json.h"
#include "plan/build/build.h"
#include "plan/check.h"
#include "plan/planner.h"

using namespace cinder;
using plan::FromBell;
using plan::HalfMinutes;

namespace {

double minutes(HalfMinutes span) {
    return span.count() / 2.0;
}

struct Span {
    double low = 0;
    double high = 0;
};

// common practice - no source, every line; ids are those of the table.
const std::map<std::string, Span> kPractice{
    {"T01", {120, 120}},  // arrival before the serve time
    {"T02", {2, 2}},      // crew
    {"T03", {30, 30}},    // burn-in
    {"T05", {20, 30}},    // tapered roast on the grate
    {"T06", {5, 5}},      // turning interval
    {"T08", {15, 15}},    // rest, or more
    {"T10", {30, 30}},    // start of slicing before the serve time
    {"T11", {8, 10}},     // slicing all roasts
    {"T14", {5, 5}},      // start of loading before the serve time
    {"T17", {15, 15}},    // all guests along the line
};

/// The planned day with ways to ask about it.
struct Day {
    event::Event event;
    plan::Problem problem;
    plan::Plan plan;

    [[nodiscard]] std::size_t index(const std::string& id) const {
        const auto found =
            std::find_if(problem.tasks.begin(), problem.tasks.end(),
                         [&](const plan::Task& task) { return task.id.text() == id; });
        INFO(id);
        REQUIRE(found != problem.tasks.end());
        return static_cast<std::size_t>(found - problem.tasks.begin());
    }
    [[nodiscard]] const plan::Task& task(const std::string& id) const {
        return problem.tasks[index(id)];
    }
    [[nodiscard]] double start(const std::string& id) const {
        return minutes(plan.schedule.tasks[index(id)].start);
    }
    [[nodiscard]] double finish(const std::string& id) const {
        return minutes(plan.schedule.tasks[index(id)].finish);
    }
};

event::Event practiceEvent() {
    const std::ifstream file(std::string(CINDER_SOURCE) + "/tests/reference/practice_event.json");
    std::stringstream text;
    text << file.rdbuf();
    auto event = event::parse(text.str());
    REQUIRE(event.has_value());
    return *event;
}

plan::Search search() {
    return {{500, std::nullopt}};
}

Day planned(event::Event event) {
    auto problem = plan::build(event);
    REQUIRE(problem.has_value());
    auto made = plan::makePlan(*problem, search());
    REQUIRE(made.has_value());
    for (const auto& violation : plan::check(*problem, made->schedule))
        FAIL_CHECK(plan::describe(*problem, violation));
    return {std::move(event), std::move(*problem), std::move(*made)};
}

}  // namespace

TEST_CASE("Practice: two people who arrive two hours ahead serve a hundred guests") {
    const auto day = planned(practiceEvent());
    CHECK(event::headCount(day.event.guests) == 100);
    CHECK(day.event.crew.size() == 2);
    REQUIRE(day.problem.arrival);
    CHECK(minutes(*day.problem.arrival) == -120);
    for (const auto& task : day.plan.schedule.tasks)
        CHECK(minutes(task.start) >= -120);
}

TEST_CASE("Practice: two hours are what it takes, with little to spare") {
    auto event = practiceEvent();
    event.site.arrival.reset();
    const auto day = planned(event);
    CHECK(minutes(day.plan.latestArrival) >= -120);
    CHECK(minutes(day.plan.arrivalBound) <= -105);
}

TEST_CASE("Practice: nobody serves the same hundred in an hour and a half") {
    auto event = practiceEvent();
    event.site.arrival->at = event.serve.at - std::chrono::minutes{90};
    const auto problem = plan::build(event);
    REQUIRE(problem.has_value());
    CHECK_FALSE(plan::makePlan(*problem, search()).has_value());
}

TEST_CASE("Practice: the coals burn in for half an hour before the roasts go on") {
    const auto day = planned(practiceEvent());
    CHECK(day.finish("burn-in") - day.start("burn-in") == 30);
    CHECK(day.start("roast/cook/1") >= day.finish("burn-in"));
}

TEST_CASE("Practice: roasts are turned every five minutes and rest a quarter of an hour or more") {
    const auto day = planned(practiceEvent());
    const auto& pieces = day.plan.schedule.tasks[day.index("roast/cook/1")].pieces;
    const auto& hands = day.task("roast/cook/1").hands;
    int turns = 0;
    for (std::size_t i = 0; i < hands.size(); ++i) {
        if (hands[i].act != plan::HandsOn::Act::Turn) continue;
        ++turns;
        CHECK(minutes(pieces[i].start) - day.start("roast/cook/1") == 5.0 * turns);
    }
    CHECK(turns == 4);
    const double onTheGrate = day.finish("roast/cook/1") - day.start("roast/cook/1");
    CHECK(onTheGrate >= 20);
    CHECK(onTheGrate <= 30);
    CHECK(day.start("roast/slice/1") - day.finish("roast/cook/1") >= 15);
}

TEST_CASE("Practice: one person slices about half an hour before the bell, in under ten minutes") {
    const auto day = planned(practiceEvent());
    const double length = day.finish("roast/slice/1") - day.start("roast/slice/1");
    CHECK(length >= 8);
    CHECK(length <= 10);
    CHECK(day.task("roast/slice/1").hands[0].people == 1);
    CHECK(day.start("roast/slice/1") == Approx(-30).margin(8));
}

TEST_CASE("Practice: the line is loaded in the last five minutes, cold dishes first, roast last") {
    const auto day = planned(practiceEvent());
    double first = 0;
    for (const auto& task : day.problem.tasks)
        if (task.kind == plan::TaskKind::Load) first = std::min(first, day.start(task.id.text()));
    CHECK(first == Approx(-5).margin(1));
    for (const auto& task : day.problem.tasks) {
        if (task.kind != plan::TaskKind::Load || task.id.text() == "roast/load") continue;
        const bool isSauceOrBread =
            task.dish == DishId("herb-sauce") || task.dish == DishId("flatbread");
        INFO(task.id.text());
        if (!isSauceOrBread) CHECK(day.finish(task.id.text()) <= day.start("roast/load"));
    }
    CHECK(day.finish("roast/load") <= 0);
    CHECK(day.start("serve-mains") == 0);
    CHECK(day.finish("serve-mains") == 15);
}

TEST_CASE("Practice: the numbers used here are those of the table") {
    const auto table = reference::sharedTable("trade_facts.csv", reference::Without::Nothing);
    if (!table) return;
    std::size_t compared = 0;
    for (const reference::Row& row : *table) {
        const auto fact = kPractice.find(row.at("id"));
        if (fact == kPractice.end()) continue;
        INFO(fact->first);
        ++compared;
        const std::string& value = row.at("value");
        const auto dash = value.find('-');
        CHECK(std::stod(value) == fact->second.low);
        CHECK(std::stod(dash == std::string::npos ? value : value.substr(dash + 1)) ==
              fact->second.high);
    }
    CHECK(compared == kPractice.size());
}
