#include <algorithm>
#include <catch2/catch.hpp>
#include <fstream>
#include <sstream>

#include "event/json.h"
#include "event/words.h"
#include "plan/build/build.h"
#include "plan/build/grate_batches.h"
#include "plan/fault.h"

using namespace cinder;
using plan::End;
using plan::FromBell;
using plan::HalfMinutes;
using plan::HandsOn;

namespace {

event::Event load(const std::string& path) {
    const std::ifstream file(std::string(CINDER_SOURCE) + "/" + path, std::ios::binary);
    std::stringstream text;
    text << file.rdbuf();
    auto event = event::parse(text.str());
    INFO(path);
    REQUIRE(event.has_value());
    return *event;
}

event::Event everyMember() {
    return load("tests/fuzz/corpus/event/good/every-member.json");
}

plan::Problem problemOf(const event::Event& event) {
    auto problem = plan::build(event);
    REQUIRE(problem.has_value());
    return *problem;
}

plan::TaskIndex indexOf(const plan::Problem& problem, const std::string& id) {
    const auto found = std::find_if(problem.tasks.begin(), problem.tasks.end(),
                                    [&](const plan::Task& task) { return task.id.text() == id; });
    INFO(id);
    REQUIRE(found != problem.tasks.end());
    return static_cast<plan::TaskIndex>(found - problem.tasks.begin());
}

const plan::Task& taskOf(const plan::Problem& problem, const std::string& id) {
    return problem.tasks[static_cast<std::size_t>(indexOf(problem, id))];
}

bool isLinked(const plan::Problem& problem, const std::string& from, const std::string& to) {
    const auto a = indexOf(problem, from);
    const auto b = indexOf(problem, to);
    return std::any_of(problem.links.begin(), problem.links.end(),
                       [&](const plan::Link& link) { return link.from == a && link.to == b; });
}

}  // namespace

TEST_CASE("Steps become tasks with stable ids, batches numbered from one") {
    const auto problem = problemOf(everyMember());
    std::vector<std::string> ids;
    for (const auto& task : problem.tasks)
        ids.push_back(task.id.text());
    CHECK(ids == std::vector<std::string>{"meat/cook/1", "meat/cook/2", "meat/rest/1",
                                          "meat/rest/2", "meat/slice", "beans/heat", "trout/heat",
                                          "light"});
    CHECK(taskOf(problem, "meat/cook/2").batch == 2);
    CHECK_FALSE(taskOf(problem, "meat/slice").batch);
    CHECK(taskOf(problem, "meat/cook/1").dish == DishId("meat"));
    CHECK_FALSE(taskOf(problem, "light").dish);
    CHECK(problemOf(everyMember()) == problem);
}

TEST_CASE("A batch waits for its own batch, a step for all waits for every batch") {
    const auto problem = problemOf(everyMember());
    CHECK(isLinked(problem, "meat/cook/1", "meat/rest/1"));
    CHECK(isLinked(problem, "meat/cook/2", "meat/rest/2"));
    CHECK_FALSE(isLinked(problem, "meat/cook/1", "meat/rest/2"));
    CHECK(isLinked(problem, "meat/rest/1", "meat/slice"));
    CHECK(isLinked(problem, "meat/rest/2", "meat/slice"));
    CHECK(isLinked(problem, "light", "meat/cook/2"));
}

TEST_CASE("Put-on, turns and take-off hold the cook and leave him free between") {
    const auto problem = problemOf(everyMember());
    // 25 minutes, turned every 5: the last turn would come 3.5 minutes before take-off begins at
    // 23.5, which is more than half an interval, so it stays.
    const std::vector<HandsOn> expected{
        {HalfMinutes{0}, HalfMinutes{4}, 0, 2, HandsOn::Act::PutOn},
        {HalfMinutes{10}, HalfMinutes{2}, 0, 2, HandsOn::Act::Turn},
        {HalfMinutes{20}, HalfMinutes{2}, 0, 2, HandsOn::Act::Turn},
        {HalfMinutes{30}, HalfMinutes{2}, 0, 2, HandsOn::Act::Turn},
        {HalfMinutes{40}, HalfMinutes{2}, 0, 2, HandsOn::Act::Turn},
        {HalfMinutes{47}, HalfMinutes{3}, 0, 2, HandsOn::Act::TakeOff}};
    CHECK(taskOf(problem, "meat/cook/1").hands == expected);
    CHECK(taskOf(problem, "meat/rest/1").hands.empty());
    CHECK(taskOf(problem, "beans/heat").hands ==
          std::vector<HandsOn>{{HalfMinutes{0}, HalfMinutes{4}, 0, 2, HandsOn::Act::Work}});
}

TEST_CASE("A turn just before the take-off is left out") {
    auto event = everyMember();
    event.menu[0].method[0].duration.usual = std::chrono::minutes{23};
    const auto problem = problemOf(event);
    const auto& hands = taskOf(problem, "meat/cook/1").hands;
    REQUIRE(hands.size() == 5);  // the turn at 20 would be 1.5 minutes before 21.5
    CHECK(hands[3].offset == HalfMinutes{30});
}

TEST_CASE("Times are rounded to the safe side") {
    auto event = everyMember();
    auto& slice = event.menu[0].method[2];
    slice.duration.usual = Duration{5 * 60000 + 1};
    slice.after[0].minLag = Duration{1};
    slice.after[0].maxLag = Duration{30 * 60000 - 1};
    const auto problem = problemOf(event);
    CHECK(taskOf(problem, "meat/slice").duration.usual == HalfMinutes{11});
    const auto to = indexOf(problem, "meat/slice");
    const auto link = std::find_if(problem.links.begin(), problem.links.end(),
                                   [&](const plan::Link& l) { return l.to == to; });
    REQUIRE(link != problem.links.end());
    CHECK(link->minLag == HalfMinutes{1});
    CHECK(link->maxLag == HalfMinutes{59});
}

TEST_CASE("Windows hang on the bell or on the arrival") {
    const auto problem = problemOf(everyMember());
    // Arrival 10:00 for 12:00:00.5: two hours and half a second before, rounded up.
    CHECK(problem.arrival == FromBell{-240});
    CHECK(taskOf(problem, "light").earliestStart == FromBell{-230});
    CHECK(taskOf(problem, "light").latestFinish == FromBell{-120});
    CHECK(taskOf(problem, "meat/slice").latestFinish == FromBell{0});
}

TEST_CASE("Serving and striking come after the bell, everything else before it") {
    for (const auto* file :
         {"demo-data/orchard-harvest-lunch.json", "demo-data/pruning-day-supper.json",
          "demo-data/last-apple-feast.json"}) {
        const auto problem = problemOf(load(file));
        for (const auto& task : problem.tasks) {
            INFO(file << " " << task.id.text());
            const bool isAfter = task.earliestStart && task.earliestStart->count() >= 0;
            const bool isBefore = task.latestFinish && task.latestFinish->count() <= 0;
            CHECK(isAfter != isBefore);
            const bool isAfterKind =
                task.kind == plan::TaskKind::Serve || task.kind == plan::TaskKind::Strike;
            if (isAfterKind) CHECK(isAfter);
        }
    }
}

TEST_CASE("Batches take their real length of the grate and never more than there is") {
    const auto problem = problemOf(load("demo-data/orchard-harvest-lunch.json"));
    const auto& cook = taskOf(problem, "lamb/cook/1");
    REQUIRE(cook.uses.size() == 1);
    const auto& grate = problem.resources[static_cast<std::size_t>(cook.uses[0].resource)];
    CHECK(grate.id == ResourceId("grate"));
    // 1830 long, 300 of it cool, one gap of 20 for the last batch.
    CHECK(grate.capacity == 1550);
    // 8 legs in 4 rows of 2: 4 x 320 and 3 gaps, and one gap to the neighbour.
    CHECK(cook.uses[0].units == 4 * 320 + 3 * 20 + 20);
}

TEST_CASE("A batch that just fills its grate is not too big for being rounded up") {
    auto event = load("demo-data/orchard-harvest-lunch.json");
    event::Grate& grate = event.kit.grates.front();
    grate.coolSide = Length{};
    grate.gap = Length::fromMillimetres(12.7);
    const auto lamb = std::find_if(event.menu.begin(), event.menu.end(),
                                   [](const auto& dish) { return dish.id == DishId("lamb"); });
    lamb->pieces->length = Length::fromMillimetres(279.4);
    const auto step = std::find_if(lamb->method.begin(), lamb->method.end(),
                                   [](const auto& one) { return !one.onGrates.empty(); });
    grate.length = plan::grateBatches(event, *lamb, *step).front().usedLength;
    const auto problem = problemOf(event);
    const auto& cook = taskOf(problem, "lamb/cook/1");
    const auto capacity = problem.resources[std::size_t(cook.uses[0].resource)].capacity;
    REQUIRE((grate.length + grate.gap).millimetres() > capacity);  // rounded down
    CHECK(cook.uses[0].units == capacity);
    CHECK_FALSE(plan::findFault(problem));
}

TEST_CASE("A dish that would need more batches than a day has is refused") {
    auto event = everyMember();
    event.menu[0].pieces->total = 400;  // three at once
    const auto problem = plan::build(event);
    REQUIRE_FALSE(problem.has_value());
    CHECK(problem.error().front().path == "/menu/0/pieces");
}

TEST_CASE("An event with faults is not built") {
    auto event = everyMember();
    event.crew.clear();
    const auto problem = plan::build(event);
    REQUIRE_FALSE(problem.has_value());
    CHECK(problem.error().front().path == "/crew");
}

TEST_CASE("Walking takes the same time both ways") {
    const auto problem = problemOf(everyMember());
    CHECK(problem.walk == std::vector<std::vector<HalfMinutes>>{{HalfMinutes{0}, HalfMinutes{1}},
                                                                {HalfMinutes{1}, HalfMinutes{0}}});
}

TEST_CASE("Every kind of step is the task kind of the same name") {
    using event::StepKind;
    using plan::TaskKind;
    const std::vector<std::pair<StepKind, TaskKind>> pairs{
        {StepKind::SetUp, TaskKind::SetUp},   {StepKind::Fire, TaskKind::Fire},
        {StepKind::Prep, TaskKind::Prep},     {StepKind::Cook, TaskKind::Cook},
        {StepKind::Rest, TaskKind::Rest},     {StepKind::Slice, TaskKind::Slice},
        {StepKind::Finish, TaskKind::Finish}, {StepKind::Warm, TaskKind::Warm},
        {StepKind::Hold, TaskKind::Hold},     {StepKind::Load, TaskKind::Load},
        {StepKind::Serve, TaskKind::Serve},   {StepKind::Strike, TaskKind::Strike},
        {StepKind::Check, TaskKind::Check}};
    CHECK(pairs.size() == event::wordsOf(StepKind{}).size());
    for (const auto& [step, task] : pairs) {
        auto event = everyMember();
        event.menu[0].method[1].kind = step;
        CHECK(taskOf(problemOf(event), "meat/rest/1").kind == task);
    }
}
