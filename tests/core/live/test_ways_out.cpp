#include "live/ways_out.h"

#include <catch2/catch.hpp>

#include <sstream>

#include "small_day.h"

using namespace samples;
using live::WayOut;
using Kind = WayOut::Kind;

namespace {

plan::Task work(const char* id, int length, plan::SkillIndex skill, const char* dish) {
    plan::Task task = samples::task(id, plan::TaskKind::Prep, length);
    task.hands.push_back({minutes(0), minutes(length), skill, 1, plan::HandsOn::Act::Work});
    if (*dish != '\0') task.dish = DishId{dish};
    return task;
}

/// Nora alone makes soup (20 min, a cook's work), salad (15) and lays the tables (10), one after
/// the other up to the bell; it is `offset` from the bell, and nothing is begun.
live::Remaining morning(Duration offset) {
    live::Remaining remaining;
    live::RunSheet& sheet = remaining.sheet;
    sheet.bell = kBell;
    plan::Problem& problem = sheet.problem;
    problem.stations = {{StationId{"site"}, LocalText{std::string("Site")}}};
    problem.walk = {{plan::HalfMinutes{0}}};
    problem.skills = {{SkillId{"any"}, LocalText{std::string("Any")}},
                      {SkillId{"cook"}, LocalText{std::string("Cook")}}};
    problem.crew = {{PersonId{"nora"}, "Nora", {0, 1}}};
    problem.tasks = {work("soup", 20, 1, "soup"), work("salad", 15, 0, "salad"),
                     work("tables", 10, 0, "")};
    int start = -45;
    for (const plan::Task& task : problem.tasks) {
        sheet.schedule.tasks.push_back(planned(task, start, 0));
        start += task.duration.usual.count() / 2;
    }
    remaining.actuals.resize(problem.tasks.size());
    remaining.now = fromBell(offset);
    remaining.serve = kBell;
    return remaining;
}

std::string said(const std::vector<WayOut>& ways) {
    std::ostringstream text;
    for (const WayOut& way : ways) {
        if (way.kind == Kind::PlanAgain) text << "again";
        if (way.kind == Kind::OnePersonMore) {
            text << "one more for";
            for (const plan::SkillIndex skill : way.skills)
                text << ' ' << skill;
        }
        if (way.kind == Kind::DropDish) text << "without " << way.dish->text();
        text << ", " << way.late / 1min << " late; ";
    }
    return text.str();
}

}  // namespace

TEST_CASE("ways out of a late day are what the work of each comes to") {
    // 45 minutes of work: with 25 left it is 20 late. Two people need 25 (20 | 15 + 10), without
    // soup 25 are left, without salad 30.
    CHECK(said(waysOut(morning(-25min))) ==
          "one more for 0, 0 late; without soup, 0 late; without salad, 5 late; ");
    // With 18 left the longer half of the work is still seven minutes too long.
    CHECK(said(waysOut(morning(-18min))) ==
          "one more for 0, 7 late; without soup, 7 late; without salad, 12 late; ");
    // Everybody goes on as planned when there is time enough.
    CHECK(waysOut(morning(-45min)).empty());
}

TEST_CASE("a lost half-minute is not worth a way out") {
    CHECK(said(waysOut(morning(-44min - 30s))) ==
          "one more for 0, 0 late; without soup, 0 late; without salad, 0 late; ");
}

TEST_CASE("planning again is a way out where the order costs time") {
    // Soup must stand for ten minutes before the bell: last in the order it is the late one.
    live::Remaining remaining = morning(-45min);
    plan::Task stand = task("soup/stand", plan::TaskKind::Rest, 10);
    stand.dish = DishId{"soup"};
    plan::Problem& problem = remaining.sheet.problem;
    problem.tasks.push_back(stand);
    problem.links.push_back({0, 3, plan::End::Finish, plan::End::Start, minutes(0), {}});
    auto& planned = remaining.sheet.schedule.tasks;
    const auto put = [&](std::size_t i, int start) {
        planned[i] = samples::planned(problem.tasks[i], start, 0);
    };
    planned.resize(4);
    put(1, -45);
    put(2, -30);
    put(0, -20);
    put(3, 0);
    remaining.actuals.resize(4);

    const auto ways = waysOut(remaining);

    REQUIRE_FALSE(ways.empty());
    CHECK(ways.front() == WayOut{Kind::PlanAgain, {}, {}, 0min});
    // Nothing wins more than that.
    CHECK(ways.size() == 1);
}

TEST_CASE("a dish that is being made, or is made, is no way out") {
    live::Remaining remaining = morning(-25min);
    remaining.actuals[0].start = Duration{-28min};
    CHECK(said(waysOut(remaining)).find("without soup") == std::string::npos);
    CHECK(said(waysOut(remaining)).find("without salad") != std::string::npos);

    remaining = morning(-18min);
    remaining.actuals[0] = {Duration{-38min}, Duration{-18min}, false, 0};
    CHECK(said(waysOut(remaining)).find("without soup") == std::string::npos);
    remaining.actuals[1].isSkipped = true;
    CHECK(waysOut(remaining).empty());
}

TEST_CASE("a search that is asked to end says nothing more") {
    std::atomic<bool> stop{true};
    plan::Search search;
    search.stop = &stop;
    CHECK(waysOut(morning(-25min), search).empty());
}
