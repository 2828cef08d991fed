#include <catch2/catch.hpp>

#include "orchard.h"
#include "plan/explain.h"

using namespace cinder;
using namespace cinder::plan;
using namespace cinder::plan::test;

namespace {

const Remedy* find(const Explanation& explanation, Remedy::Kind kind) {
    for (const Remedy& remedy : explanation.remedies)
        if (remedy.kind == kind) return &remedy;
    return nullptr;
}

}  // namespace

TEST_CASE("a promise that is missed is explained by changes that would keep it") {
    Problem problem = emptyKitchen(1);
    problem.resources.push_back({ResourceId("grate"), LocalText("Grate"), 10, {}});
    problem.tasks = {handsOn("chop", minutes(20)), handsOn("dress", minutes(10)),
                     standing("roast", minutes(15))};
    problem.tasks[0].dish = DishId("slaw");
    problem.tasks[0].kind = TaskKind::Prep;
    problem.tasks[1].dish = DishId("slaw");
    problem.tasks[2].dish = DishId("lamb");
    problem.arrival = minutes(-22);
    const auto explanation = explain(problem);
    REQUIRE(explanation.has_value());
    CHECK(explanation->missing == minutes(8));
    const Remedy* earlier = find(*explanation, Remedy::Kind::EarlierArrival);
    REQUIRE(earlier != nullptr);
    CHECK(earlier->time == minutes(8));
    CHECK(describe(problem, *earlier) == "come 8 min earlier");
    const Remedy* person = find(*explanation, Remedy::Kind::OnePersonMore);
    REQUIRE(person != nullptr);
    CHECK(person->isEnough);
    CHECK(person->gain == minutes(10));
    const Remedy* ahead = find(*explanation, Remedy::Kind::PrepareAhead);
    REQUIRE(ahead != nullptr);
    CHECK(ahead->gain == minutes(15));
    CHECK(ahead->isEnough);
    const Remedy* drop = find(*explanation, Remedy::Kind::DropDish);
    REQUIRE(drop != nullptr);
    CHECK(drop->dish == DishId("slaw"));
    CHECK(find(*explanation, Remedy::Kind::MoreOfResource) == nullptr);
}

TEST_CASE("a crew is asked to come, and a client to wait, by whole minutes") {
    Problem problem = emptyKitchen(1);
    problem.tasks = {handsOn("chop", minutes(20) + HalfMinutes{1})};
    problem.arrival = minutes(-12);
    const auto explanation = explain(problem);
    REQUIRE(explanation.has_value());
    CHECK(explanation->missing == minutes(8) + HalfMinutes{1});
    for (const auto kind : {Remedy::Kind::EarlierArrival, Remedy::Kind::LaterServe}) {
        const Remedy* time = find(*explanation, kind);
        REQUIRE(time != nullptr);
        CHECK(time->time == minutes(9));
        CHECK(time->gain == minutes(9));
    }
}

TEST_CASE("more grate is asked for by the least that is enough") {
    Problem problem = emptyKitchen(0);
    problem.resources.push_back({ResourceId("grate"), LocalText("Grate"), 10, {}});
    problem.tasks = {standing("a", minutes(10)), standing("b", minutes(10))};
    problem.tasks[0].uses = {{0, 6}};
    problem.tasks[1].uses = {{0, 7}};
    problem.arrival = minutes(-12);
    const auto explanation = explain(problem);
    REQUIRE(explanation.has_value());
    const Remedy* more = find(*explanation, Remedy::Kind::MoreOfResource);
    REQUIRE(more != nullptr);
    CHECK(more->isEnough);
    CHECK(more->units == 3);
}

TEST_CASE("a promise that is kept names its weakest link and every slack") {
    Problem problem = smallLunch();
    problem.arrival = minutes(-65);
    problem.tasks[1].duration.high = minutes(35);
    const auto explanation = explain(problem);
    REQUIRE(explanation.has_value());
    CHECK(explanation->missing == minutes(-10));
    CHECK(explanation->remedies.empty());
    CHECK(explanation->weakest == TaskIndex{1});
    REQUIRE(explanation->slack.size() == problem.tasks.size());
    CHECK(explanation->slack[0] == Duration{minutes(10)});
}
