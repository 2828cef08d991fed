#include <algorithm>
#include <catch2/catch.hpp>
#include <fstream>
#include <sstream>

#include "event/json.h"
#include "plan/build/apply.h"
#include "plan/build/build.h"

using namespace cinder;
using namespace std::chrono_literals;
using plan::Remedy;

namespace {

/// The harvest lunch, whose crew now says that it can only come 80 minutes before the bell.
event::Event lateCrew() {
    const std::ifstream file(std::string(CINDER_SOURCE) + "/demo-data/orchard-harvest-lunch.json",
                             std::ios::binary);
    std::stringstream text;
    text << file.rdbuf();
    auto event = event::parse(text.str());
    REQUIRE(event.has_value());
    event->site.arrival->at = event->serve.at - 80min;
    return *event;
}

plan::Search quick() {
    plan::Search search;
    search.budget.schedules = 300;
    search.budget.exactNodes = 0;
    return search;
}

plan::Problem problemOf(const event::Event& event) {
    auto problem = plan::build(event);
    REQUIRE(problem.has_value());
    return *problem;
}

event::Event with(const event::Event& event, const Remedy& remedy) {
    const auto changed = plan::applied(event, problemOf(event), remedy);
    REQUIRE(changed.has_value());
    return *changed;
}

}  // namespace

TEST_CASE("every change that is said to be enough keeps the promise once it is taken") {
    const auto event = lateCrew();
    const auto problem = problemOf(event);
    const auto explanation = plan::explain(problem, quick());
    REQUIRE(explanation.has_value());
    REQUIRE(explanation->missing.count() > 0);
    REQUIRE_FALSE(explanation->remedies.empty());
    for (const Remedy& remedy : explanation->remedies) {
        INFO(plan::describe(problem, remedy));
        const auto changed = with(event, remedy);
        if (!remedy.isEnough) continue;
        plan::Search search = quick();
        search.budget.schedules = 3000;
        CHECK(plan::makePlan(problemOf(changed), search).has_value());
    }
}

TEST_CASE("a dish that is left out leaves no step, no wait and no place on the line behind") {
    Remedy remedy;
    remedy.kind = Remedy::Kind::DropDish;
    remedy.dish = DishId("slaw");
    const auto before = lateCrew();
    const auto after = with(before, remedy);
    CHECK(after.menu.size() + 1 == before.menu.size());
    const std::string text = event::write(after);
    CHECK(text.find("slaw/") == std::string::npos);
    CHECK(event::parse(text).has_value());
}

TEST_CASE("cold work done ahead moves from the site to the list before leaving") {
    Remedy remedy;
    remedy.kind = Remedy::Kind::PrepareAhead;
    remedy.dish = DishId("halloumi");
    const auto before = lateCrew();
    const auto after = with(before, remedy);
    const auto find = [&](const event::Event& event) {
        return *std::find_if(event.menu.begin(), event.menu.end(),
                             [&](const event::Dish& dish) { return dish.id == *remedy.dish; });
    };
    const auto isCold = [](const event::Step& step) { return step.kind == event::StepKind::Prep; };
    const event::Dish was = find(before);
    const event::Dish is = find(after);
    const auto moved = std::count_if(was.method.begin(), was.method.end(), isCold);
    REQUIRE(moved > 0);
    CHECK(std::none_of(is.method.begin(), is.method.end(), isCold));
    CHECK(is.ahead.size() == was.ahead.size() + static_cast<std::size_t>(moved));
    CHECK(is.ahead.back().beforeServe >= 80min);
}

TEST_CASE("hands, kit and time are added where the event keeps them") {
    const auto event = lateCrew();
    const auto problem = problemOf(event);
    Remedy remedy;
    remedy.kind = Remedy::Kind::OnePersonMore;
    remedy.skills = {0};
    const auto crewed = with(event, remedy);
    REQUIRE(crewed.crew.size() == event.crew.size() + 1);
    CHECK(crewed.crew.back().skills.front() == problem.skills[0].id);

    remedy = {};
    remedy.kind = Remedy::Kind::MoreOfResource;
    remedy.resource = 0;
    remedy.units = 100;
    REQUIRE(event.kit.grates.front().id == problem.resources[0].id);
    CHECK(with(event, remedy).kit.grates.front().length ==
          event.kit.grates.front().length + Length::fromMillimetres(100));

    remedy = {};
    remedy.kind = Remedy::Kind::EarlierArrival;
    remedy.time = plan::HalfMinutes{20};
    CHECK(with(event, remedy).site.arrival->at == event.site.arrival->at - 10min);
    remedy.kind = Remedy::Kind::LaterServe;
    CHECK(with(event, remedy).serve.at == event.serve.at + 10min);
}

TEST_CASE("a change the event cannot bear is refused by the field it breaks") {
    auto event = lateCrew();
    Remedy remedy;
    remedy.kind = Remedy::Kind::MoreOfResource;
    remedy.resource = 0;
    remedy.units = 2'000'000'000;
    const auto changed = plan::applied(event, problemOf(event), remedy);
    REQUIRE_FALSE(changed.has_value());
    CHECK(changed.error().front().path.find("/kit/grates/0") == 0);
}

TEST_CASE("the bound of a whole day counts people and kit, so that the promise is nearly exact") {
    auto event = lateCrew();
    event.site.arrival.reset();
    const auto plan = plan::makePlan(problemOf(event));
    REQUIRE(plan.has_value());
    CHECK(plan->arrivalBound >= plan->latestArrival);
    CHECK(plan->arrivalBound - plan->latestArrival <= plan::HalfMinutes{10});

    event.site.arrival = ZonedInstant{event.serve.at - 80min, event.serve.offset};
    const auto late = plan::makePlan(problemOf(event));
    REQUIRE_FALSE(late.has_value());
    CHECK(late.error().why == plan::NoPlan::Why::Impossible);
    // A crew that comes at T-80 is too late by what the best arrival lies before that.
    CHECK(late.error().by >= plan::FromBell{-160} - plan->arrivalBound - plan::HalfMinutes{20});
    CHECK(late.error().by <= plan::FromBell{-160} - plan->latestArrival);
}
