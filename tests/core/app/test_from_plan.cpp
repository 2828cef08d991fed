#include "app/from_plan.h"
#include "core/quantity/demo.h"
#include "plan/build/build.h"
#include "plan/planner.h"

using namespace cinder;

TEST_CASE("A plan tells quantities when the crew starts and how long each fire cooks") {
    const auto event = test::demo("pruning-day-supper");
    const auto problem = plan::build(event);
    REQUIRE(problem);
    const auto made = plan::makePlan(*problem, {{300, std::nullopt}});
    REQUIRE(made);

    const auto from = app::fromPlan(event, *problem, made->schedule);

    CHECK(from.arrival == event.serve.at + made->latestArrival);
    REQUIRE(from.cooking.size() == 1);
    const auto cooking = from.cooking.begin()->second;
    CHECK(cooking > std::chrono::minutes{15});
    CHECK(cooking < std::chrono::minutes{90});
    CHECK(quantity::reckon(event, from).faults.empty());
}

TEST_CASE("With no plan there is nothing to tell") {
    const auto from = app::fromPlan(test::orchard(), {}, {});
    CHECK_FALSE(from.arrival);
    CHECK(from.cooking.empty());
}
