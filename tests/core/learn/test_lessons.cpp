#include <catch2/catch.hpp>

#include <cmath>

#include "learn/lessons.h"
#include "orchard.h"

using namespace cinder;
using namespace std::chrono_literals;
using samples::orchard;

namespace {

const event::Dish& dish(const event::Event& event, const char* id) {
    for (const event::Dish& one : event.menu)
        if (one.id.text() == id) return one;
    FAIL("no dish " << id);
    return event.menu.front();
}

event::Step stepOf(const event::Event& event, const char* id) {
    for (const event::Step& step : event.work)
        if (step.id.text() == id) return step;
    FAIL("no step " << id);
    return {};
}

learn::Appetite took(const char* id, double planned, double taken, bool isAtLeast = false) {
    return {DishId{id}, planned, taken, 1, isAtLeast};
}

constexpr std::int64_t ms(std::chrono::minutes length) {
    return Duration{length}.count();
}

}  // namespace

TEST_CASE("an accepted length goes into the event, shortest and longest drawn along") {
    const auto before = stepOf(orchard(), "clear-line").duration;
    REQUIRE(before.usual == 12min);
    const auto after = learn::applied(orchard(), {{"length/clear-line", {true, ms(18min)}}});
    const auto now = stepOf(after, "clear-line").duration;
    CHECK(now.usual == 18min);
    CHECK(now.low == 12min);
    CHECK(now.high == 27min);
    CHECK(event::findFaults(after).empty());
}

TEST_CASE("a length of a dish's step is found by its full name") {
    const auto event = orchard();
    const auto& slaw = dish(event, "slaw");
    REQUIRE_FALSE(slaw.method.empty());
    const auto& step = slaw.method.front();
    const std::string figure = learn::lengthFigure(event::fullName(slaw.id, step.id).text());
    const Duration longer = step.duration.usual + 4min;
    const auto after = learn::applied(event, {{figure, {true, longer.count()}}});
    CHECK(dish(after, "slaw").method.front().duration.usual == longer);
}

TEST_CASE("what was ignored, names nothing, or makes no sense changes nothing") {
    const auto before = orchard();
    for (const std::map<std::string, live::Lesson>& lessons :
         {std::map<std::string, live::Lesson>{{"length/clear-line", {false, ms(18min)}}},
          {{"length/no-such-step", {true, ms(18min)}}},
          {{"length/clear-line", {true, 0}}},
          {{"length/clear-line", {true, ms(60 * 48min)}}},
          {{"take/slaw", {true, 0}}},
          {{"take/slaw", {true, 250}}},
          {{"take/no-such-dish", {true, 50}}},
          {{"colour/slaw", {true, 50}}}})
        CHECK(learn::applied(before, lessons) == before);
}

TEST_CASE("an accepted take goes into the serving") {
    const auto after = learn::applied(orchard(), {{"take/slaw", {true, 62}}});
    CHECK(dish(after, "slaw").serving->takePercent == 62);
}

// Prior N(0, 0.25), an event's spread 0.2: after one event with the ratio r the mean of the
// logarithm is ln r * (1/0.04) / (1/0.04 + 1/0.0625) = ln r * 0.6098. Source: normal mean with
// known variance; e.g. W. M. Bolstad, Introduction to Bayesian Statistics, chapter 11, from memory.
TEST_CASE("what was taken draws the take rate towards it, more with every event") {
    const auto event = orchard();
    const auto planned = dish(event, "slaw").serving->takePercent.value();
    const auto once = learn::takesFor(event, {{took("slaw", 1, 0.7)}});
    REQUIRE(once.size() == 1);
    CHECK(once.front().planned == planned);
    CHECK(once.front().learned == std::lround(planned * std::exp(std::log(0.7) * 25 / 41)));
    CHECK(once.front().events == 1);
    CHECK(once.front().low < once.front().learned);
    CHECK(once.front().high > once.front().learned);
    const auto often = learn::takesFor(
        event, {{took("slaw", 1, 0.7)}, {took("slaw", 1, 0.7)}, {took("slaw", 1, 0.7)}});
    CHECK(often.front().learned < once.front().learned);
    CHECK(often.front().events == 3);
}

TEST_CASE("a dish that was scraped out never lowers its take") {
    const auto event = orchard();
    CHECK(learn::takesFor(event, {{took("slaw", 1, 0.6, true)}}).empty());
    CHECK(learn::takesFor(event, {{took("bread", 0.5, 0.7, true)}}).size() <= 1);
}

TEST_CASE("small differences are no news") {
    CHECK(learn::takesFor(orchard(), {{took("slaw", 1, 1.02)}}).empty());
    CHECK(learn::takesFor(orchard(), {}).empty());
}
