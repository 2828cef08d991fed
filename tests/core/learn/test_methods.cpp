#include <algorithm>
#include <catch2/catch.hpp>

#include "learn/lessons.h"
#include "learn/methods.h"
#include "orchard.h"

using namespace cinder;
using namespace std::chrono_literals;
using learn::MethodChange;

namespace {

constexpr std::int64_t ms(std::chrono::minutes length) {
    return Duration{length}.count();
}

/// The orchard lunch, so many weeks after the first one.
learn::DescribedEvent lunch(int week) {
    event::Event event = samples::orchard();
    event.id = EventId("lunch-" + std::to_string(week));
    event.serve.at += week * 7 * 24h;
    return {std::move(event), {}};
}

const learn::MethodHistory& of(const std::vector<learn::MethodHistory>& all, const char* english) {
    const auto found = std::find_if(all.begin(), all.end(), [&](const learn::MethodHistory& one) {
        return one.name.in("en") == english;
    });
    REQUIRE(found != all.end());
    return *found;
}

event::Dish& dish(event::Event& event, const char* id) {
    for (event::Dish& one : event.menu)
        if (one.id.text() == id) return one;
    FAIL("no dish " << id);
    return event.menu.front();
}

event::Step& step(event::Dish& dish, const char* id) {
    for (event::Step& one : dish.method)
        if (one.id.text() == id) return one;
    FAIL("no step " << id);
    return dish.method.front();
}

}  // namespace

TEST_CASE("a dish that never changed has one version, of the first day it was cooked") {
    const auto histories = learn::methodHistories({lunch(2), lunch(0), lunch(1)});
    REQUIRE(histories.size() == samples::orchard().menu.size());
    for (const auto& history : histories) {
        CHECK(history.events == 3);
        REQUIRE(history.versions.size() == 1);
        CHECK(history.versions[0].event == EventId("lunch-0"));
        CHECK(history.versions[0].changes.empty());
        CHECK(history.lastServe.at == lunch(2).event.serve.at);
    }
}

TEST_CASE("what a debrief taught and what a hand changed are versions of their own, newest first") {
    auto first = lunch(0);
    auto& lamb = dish(first.event, "lamb");
    const auto planned = step(lamb, "rest").duration.usual;
    first.lessons = {{"length/lamb/rest", {true, ms(23min)}}, {"length/lamb/slice", {false, 1}}};
    auto second = lunch(1);
    second.event = learn::applied(first.event, first.lessons);
    second.event.id = EventId("lunch-1");
    second.event.serve.at += 7 * 24h;
    dish(second.event, "lamb").pullAt = Temperature::fromCelsius(57);
    const std::int64_t pull = std::llround(lamb.pullAt->celsius() * 1000);
    REQUIRE(pull != 57'000);

    const auto name = std::string(lamb.name.in("en"));
    const auto histories = learn::methodHistories({second, first});
    const auto& history = of(histories, name.c_str());
    REQUIRE(history.versions.size() == 3);
    CHECK(history.events == 2);
    CHECK_FALSE(history.versions[0].isLearnt);
    CHECK(history.versions[0].event == EventId("lunch-1"));
    CHECK(history.versions[0].changes ==
          std::vector<MethodChange>{{MethodChange::Kind::Pull, {}, pull, 57'000}});
    CHECK(history.versions[1].isLearnt);
    CHECK(history.versions[1].event == EventId("lunch-0"));
    REQUIRE(history.versions[1].changes.size() == 1);
    CHECK(history.versions[1].changes[0].kind == MethodChange::Kind::Length);
    CHECK(history.versions[1].changes[0].before == planned.count());
    CHECK(history.versions[1].changes[0].after == ms(23min));
    CHECK(history.versions[2].changes.empty());
}

TEST_CASE("what belongs to an event and not to the method is no change of it") {
    auto second = lunch(1);
    auto& lamb = dish(second.event, "lamb");
    lamb.id = DishId("lamb-2");
    lamb.order = 9;
    for (event::Step& one : lamb.method)
        one.after.clear();
    const auto name = std::string(lamb.name.in("en"));
    const auto histories = learn::methodHistories({lunch(0), second});
    CHECK(of(histories, name.c_str()).versions.size() == 1);
    CHECK(of(histories, name.c_str()).events == 2);
}
