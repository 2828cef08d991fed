/// Who is there in the middle of a day, and who takes over from whoever is not.

#include <catch2/catch.hpp>

#include <algorithm>

#include "live/crew.h"
#include "live/remaining.h"
#include "small_day.h"

using namespace samples;
using namespace cinder::journal;

namespace {

using Member = CrewChanged::Member;

const PersonId kNora{"nora"};
const PersonId kIda{"ida"};
const PersonId kBo{"bo"};
const SkillId kAny{"any"};

CrewChanged said(std::vector<Member> members) {
    return {std::move(members), fromBell(-48min)};
}

Member gone(const PersonId& person, const char* name) {
    return {person, name, {kAny}, false};
}

/// The people of what is still to come of a task, in order.
std::vector<std::vector<plan::PersonIndex>> handsOn(const live::RunSheet& sheet, std::size_t task) {
    std::vector<std::vector<plan::PersonIndex>> people;
    for (const plan::Piece& piece : sheet.schedule.tasks[task].pieces)
        people.push_back(piece.people);
    return people;
}

live::RunSheet sheetAt(const SmallDay& lunch, Instant now) {
    return live::remainingAt(lunch.day(), now).sheet;
}

}  // namespace

TEST_CASE("of everybody in the crew the last word counts") {
    SmallDay lunch;
    const auto came = lunch.add(said({{kBo, "Bo", {kAny}}, gone(kNora, "Nora")}));
    const auto back = lunch.add(said({{kNora, "Nora", {kAny}}}));
    auto crew = lunch.day().crew;
    REQUIRE(crew.size() == 2);
    CHECK(crew[0] == Member{kBo, "Bo", {kAny}});
    CHECK(crew[1] == Member{kNora, "Nora", {kAny}});

    lunch.add(Undone{back});
    CHECK_FALSE(lunch.day().crew[1].isHere);
    lunch.add(Undone{came});
    CHECK(lunch.day().crew.empty());

    const auto nameless = lunch.add(said({{kBo, "", {kAny}}}));
    const auto day = lunch.day();
    CHECK(day.crew.empty());
    CHECK(day.setAside == std::vector{nameless});
}

TEST_CASE("more people than a sheet can hold are set aside") {
    SmallDay lunch;
    std::vector<Member> many;
    for (int i = 0; i < 33; ++i)
        many.push_back({PersonId{std::to_string(i)}, "One of many", {}});
    lunch.add(said(many));
    CHECK(lunch.day().crew.empty());
    many.pop_back();
    lunch.add(said(many));
    CHECK(lunch.day().crew.size() == 32);
}

TEST_CASE("the sheet is for those who are there") {
    SmallDay lunch;
    const auto sheet = smallSheet();
    const Instant now = fromBell(-47min);

    SECTION("as it was while nobody says anything") {
        CHECK(sheetAt(lunch, now) == sheet);
        CHECK_FALSE(live::remainingAt(lunch.day(), now).isForOthers);
    }
    SECTION("who comes stands behind the others, with what the sheet knows of") {
        lunch.add(said({{kBo, "Bo", {SkillId{"juggling"}, kAny}}}));
        const auto then = sheetAt(lunch, now);
        REQUIRE(then.problem.crew.size() == 3);
        CHECK(then.problem.crew[2] == plan::Person{kBo, "Bo", {0}});
        CHECK(then.schedule == sheet.schedule);
        CHECK(live::remainingAt(lunch.day(), now).isForOthers);
    }
    SECTION("who came and went before there was a plan leaves no trace") {
        lunch.add(said({gone(kBo, "Bo")}));
        CHECK(sheetAt(lunch, now) == sheet);
    }
    SECTION("what runs goes to who can and has least to do; what was done stays") {
        lunch.add(TaskStarted{kCook, fromBell(-50min)});
        lunch.add(Turned{kCook, 1, fromBell(-44min)});
        lunch.add(said({gone(kNora, "Nora"), {kBo, "Bo", {kAny}}}));
        // Ida lays the tables, later than planned, while the second turn and the pull are due.
        lunch.add(TaskStarted{kTables, fromBell(-60min)});
        const auto then = sheetAt(lunch, fromBell(-43min));
        CHECK(then.problem.crew[0].skills.empty());
        CHECK(handsOn(then, 1) == std::vector<std::vector<plan::PersonIndex>>{{0}, {0}, {1}, {1}});
        // Nobody has begun to slice: that is for the planner.
        CHECK(handsOn(then, 3) == std::vector<std::vector<plan::PersonIndex>>{{0}});

        auto busy = smallSheet();
        busy.schedule.tasks[0] = planned(busy.problem.tasks[0], -42, 1);
        lunch.add(PlanPublished{live::writeRunSheet(busy)});
        CHECK(handsOn(sheetAt(lunch, fromBell(-43min)), 1) ==
              std::vector<std::vector<plan::PersonIndex>>{{0}, {0}, {2}, {2}});
    }
    SECTION("work in hand goes on with somebody else") {
        lunch.add(TaskStarted{kTables, fromBell(-50min)});
        lunch.add(said({gone(kIda, "Ida")}));
        CHECK(handsOn(sheetAt(lunch, now), 0) == std::vector<std::vector<plan::PersonIndex>>{{0}});
    }
    SECTION("what two would have done one does, and takes twice as long") {
        auto forTwo = sheet;
        for (const std::size_t i : {0U, 3U}) {
            forTwo.problem.tasks[i].hands[0].people = 2;
            forTwo.schedule.tasks[i].pieces[0].people = {0, 1};
        }
        lunch.add(PlanPublished{live::writeRunSheet(forTwo)});
        lunch.add(TaskStarted{kTables, fromBell(-50min)});
        lunch.add(said({gone(kIda, "Ida")}));
        const auto then = sheetAt(lunch, now);
        CHECK(handsOn(then, 3) == std::vector<std::vector<plan::PersonIndex>>{{0}});
        CHECK(then.problem.tasks[3].hands[0].people == 1);
        CHECK(then.problem.tasks[3].duration.usual == plan::HalfMinutes{40});
        CHECK(then.problem.tasks[3].hands[0].length == plan::HalfMinutes{40});
        CHECK(then.schedule.tasks[3].finish == minutes(5));
        // Who knows how much of it is done.
        CHECK(handsOn(then, 0) == std::vector<std::vector<plan::PersonIndex>>{{0}});
        CHECK(then.problem.tasks[0].duration == sheet.problem.tasks[0].duration);
        CHECK(live::readRunSheet(live::writeRunSheet(then)) == then);
    }
    SECTION("where nobody can, it stays where it was, and that is said") {
        lunch.add(TaskStarted{kCook, fromBell(-50min)});
        lunch.add(said({gone(kNora, "Nora"), {kIda, "Ida", {}}}));
        const auto day = lunch.day();
        const auto s = live::situationAt(day, now, nullptr);
        const auto then = live::sheetOfThoseThere(s);
        CHECK(handsOn(then, 1) == handsOn(sheet, 1));
        CHECK(live::skillsWanting(s, then) == std::vector{kAny});
        CHECK(live::skillsWanting(s, sheet).empty());
    }
}

TEST_CASE("what is over wants nobody") {
    SmallDay lunch;
    for (const TaskId& task : {kTables, kCook, kRest, kSlice})
        lunch.add(TaskSkipped{task, fromBell(-50min)});
    lunch.add(said({gone(kNora, "Nora"), gone(kIda, "Ida")}));
    const auto day = lunch.day();
    const auto s = live::situationAt(day, fromBell(-48min), nullptr);
    CHECK(live::skillsWanting(s, live::sheetOfThoseThere(s)).empty());
}
