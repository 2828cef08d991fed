#include <catch2/catch.hpp>
#include <fstream>
#include <iterator>

#include "small_day.h"

using namespace samples;
using namespace cinder::journal;

TEST_CASE("the first word on a fact stands, the last one on a wish") {
    SmallDay lunch;
    lunch.add(TaskStarted{kCook, fromBell(-50min)});
    lunch.add(TaskStarted{kCook, fromBell(-48min)});
    lunch.add(ServeTimeMoved{fromBell(10min), fromBell(-40min)});
    lunch.add(ServeTimeMoved{fromBell(20min), fromBell(-39min)});

    const auto day = lunch.day();

    CHECK(day.tasks.at(kCook).started == fromBell(-50min));
    CHECK(day.serve == fromBell(20min));
}

TEST_CASE("a fact that was taken back leaves room for the next word on it") {
    SmallDay lunch;
    const auto first = lunch.add(TaskStarted{kCook, fromBell(-50min)});
    lunch.add(Undone{first});
    lunch.add(TaskStarted{kCook, fromBell(-45min)});

    CHECK(lunch.day().tasks.at(kCook).started == fromBell(-45min));
}

TEST_CASE("ticking the first line starts work, ticking the last one finishes it") {
    SmallDay lunch;
    lunch.add(LineTicked{kTables, 1, fromBell(-59min)});
    CHECK(lunch.day().tasks.at(kTables).started == fromBell(-59min));
    CHECK_FALSE(lunch.day().tasks.at(kTables).finished);

    const auto last = lunch.add(LineTicked{kTables, 0, fromBell(-52min)});
    CHECK(lunch.day().tasks.at(kTables).finished == fromBell(-52min));

    lunch.add(Undone{last});
    CHECK_FALSE(lunch.day().tasks.at(kTables).finished);
}

TEST_CASE("a dish is left out with what is named of it, and comes back whole") {
    SmallDay lunch;
    const auto left =
        lunch.add(DishLeftOut{DishId{"lamb"}, {kCook, kTables, TaskId{"soup"}}, fromBell(-55min)});
    auto day = lunch.day();
    REQUIRE(day.leftOut.size() == 1);
    CHECK(day.leftOut.at(DishId{"lamb"}) == std::vector{left});
    CHECK(day.tasks.at(kCook).skipped == fromBell(-55min));
    CHECK(day.tasks.at(kTables).skipped == fromBell(-55min));
    // No longer on the plan.
    CHECK(day.tasks.count(TaskId{"soup"}) == 0);
    CHECK(std::count(day.setAside.begin(), day.setAside.end(), left) == 1);

    // Somebody else had skipped it before: the first word stands.
    lunch.add(TaskSkipped{kCook, fromBell(-50min)});
    CHECK(lunch.day().tasks.at(kCook).skipped == fromBell(-55min));

    // What was begun by then goes on, however late the word of it comes.
    auto begun = lunch;
    begun.operations.insert(begun.operations.begin() + 1, begun.operations.back());
    auto& first = begun.operations[1];
    first.id = {DeviceId{"phone"}, 1};
    first.stamp = {fromBell(-10h), 0};
    first.body = TaskStarted{kTables, fromBell(-56min)};
    CHECK_FALSE(begun.day().tasks.at(kTables).skipped);
    CHECK(begun.day().tasks.at(kCook).skipped);

    lunch.add(Undone{left});
    day = lunch.day();
    CHECK(day.leftOut.empty());
    CHECK(day.tasks.at(kCook).skipped == fromBell(-50min));
    CHECK(day.tasks.count(kTables) == 0);
}

TEST_CASE("what no longer fits the plan, or is not understood, is set aside and kept") {
    SmallDay lunch;
    const auto stranger = lunch.add(TaskStarted{TaskId{"soup"}, fromBell(-50min)});
    const auto tooFar = lunch.add(Turned{kCook, 43, fromBell(-40min)});
    const auto noLine = lunch.add(LineTicked{kTables, 2, fromBell(-40min)});
    const auto unknown = lunch.add(Unknown{"of-a-later-year", "{}"});
    const auto broken = lunch.add(PlanPublished{"{\"version\":1}"});

    const auto day = lunch.day();

    REQUIRE(day.sheet);
    CHECK(day.setAside.size() == 5);
    for (const auto& id : {stranger, tooFar, noLine, unknown, broken})
        CHECK(std::count(day.setAside.begin(), day.setAside.end(), id) == 1);
}

TEST_CASE("a fold that remembers the documents it read comes to the same day at every step") {
    std::ifstream file(CINDER_SOURCE "/demo-data/orchard-harvest-lunch.json");
    const std::string event{std::istreambuf_iterator<char>(file), {}};
    auto sheet = smallSheet();
    sheet.problem.tasks.front().checklist.clear();
    SmallDay lunch;
    lunch.add(EventDescribed{event});
    lunch.add(ServeTimeMoved{fromBell(10min), fromBell(-60min)});
    lunch.add(EventDescribed{"{\"version\":1}"});
    const auto second = lunch.add(PlanPublished{live::writeRunSheet(sheet)});
    lunch.add(PlanPublished{event});
    lunch.add(EventDescribed{event});
    lunch.add(Undone{second});

    live::ReadDocuments documents;
    for (std::size_t known = 0; known <= lunch.operations.size(); ++known) {
        const std::span steps(lunch.operations.data(), known);
        CHECK(live::fold(steps, documents) == live::fold(steps));
    }
    REQUIRE(lunch.day().event);
    CHECK(lunch.day().setAside.size() == 2);
}

TEST_CASE("the last draft that can be read stands until the event is described anew") {
    std::ifstream file(CINDER_SOURCE "/assets/templates/plain-charcoal-buffet.json");
    const std::string blank{std::istreambuf_iterator<char>(file), {}};
    std::string fifty = blank;
    const std::string hundred = "\"adults\": 100";
    fifty.replace(fifty.find(hundred), hundred.size(), "\"adults\": 50");
    std::ifstream whole(CINDER_SOURCE "/demo-data/orchard-harvest-lunch.json");
    const std::string event{std::istreambuf_iterator<char>(whole), {}};

    SmallDay lunch;
    lunch.add(EventDrafted{blank, ""});
    CHECK(lunch.day().draft->guests.adults == 100);
    CHECK_FALSE(lunch.day().event);
    const auto edit = lunch.add(EventDrafted{fifty, "/guests/adults"});
    const auto broken = lunch.add(EventDrafted{"{\"version\":1}", ""});
    CHECK(lunch.day().draft->guests.adults == 50);
    CHECK(lunch.day().setAside == std::vector{broken});
    lunch.add(Undone{broken});
    lunch.add(Undone{edit});
    CHECK(lunch.day().draft->guests.adults == 100);
    lunch.add(EventDescribed{event});
    CHECK_FALSE(lunch.day().draft);
    CHECK(lunch.day().event->menu.size() == 9);
}
