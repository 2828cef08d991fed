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

/// Planned and taken portions a guest where all were planned to take it.
learn::Appetite took(const char* id, double planned, double taken, bool isAtLeast = false) {
    learn::Appetite one{DishId{id}, planned, taken, 1, isAtLeast};
    one.name = dish(orchard(), id).name;
    return one;
}

std::int32_t takeOf(const event::Event& event, const char* id) {
    return dish(event, id).serving->takePercent.value();
}

/// The same where the orchard's take was planned.
learn::Appetite tookOfPlan(const char* id, double taken, bool isAtLeast = false) {
    auto one = took(id, 1, taken, isAtLeast);
    one.takePercent = takeOf(orchard(), id);
    return one;
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
    const auto planned = takeOf(event, "slaw");
    const auto once = learn::takesFor(event, {{tookOfPlan("slaw", 0.7)}});
    REQUIRE(once.size() == 1);
    CHECK(once.front().planned == planned);
    CHECK(once.front().learned == std::lround(planned * std::exp(std::log(0.7) * 25 / 41)));
    CHECK(once.front().events == 1);
    CHECK(once.front().low < once.front().learned);
    CHECK(once.front().high > once.front().learned);
    const auto often = learn::takesFor(
        event, {{tookOfPlan("slaw", 0.7)}, {tookOfPlan("slaw", 0.7)}, {tookOfPlan("slaw", 0.7)}});
    CHECK(often.front().learned < once.front().learned);
    CHECK(often.front().events == 3);
}

TEST_CASE("a dish that was scraped out never lowers its take") {
    const auto event = orchard();
    CHECK(learn::takesFor(event, {{tookOfPlan("slaw", 0.6, true)}}).empty());
    const auto more = learn::takesFor(event, {{tookOfPlan("slaw", 1.1, true)}});
    REQUIRE(more.size() == 1);
    CHECK(more.front().dish == DishId{"slaw"});
    CHECK(more.front().learned > more.front().planned);
}

TEST_CASE("a dish is known by its name, whatever its id") {
    const auto event = orchard();
    auto other = tookOfPlan("slaw", 0.5);
    other.name = LocalText(std::string("Corn pudding"));
    CHECK(learn::takesFor(event, {{other}}).empty());
    auto copied = tookOfPlan("slaw", 0.5);
    copied.dish = DishId{"slaw-2"};
    const auto learnt = learn::takesFor(event, {{copied}});
    REQUIRE(learnt.size() == 1);
    CHECK(learnt.front().dish == DishId{"slaw"});
    CHECK(learnt.front().learned < learnt.front().planned);
}

TEST_CASE("small differences are no news") {
    CHECK(learn::takesFor(orchard(), {{tookOfPlan("slaw", 1.02)}}).empty());
    CHECK(learn::takesFor(orchard(), {}).empty());
}

TEST_CASE("accepting every take brings it to what is taken, and not past it") {
    auto event = orchard();
    const double truth = 0.6 * takeOf(event, "slaw");
    std::vector<std::vector<learn::Appetite>> past;
    for (int events = 1; events <= 12; ++events) {
        const auto before = takeOf(event, "slaw");
        auto one = took("slaw", before / 100.0, truth / 100);
        one.takePercent = before;
        past.push_back({one});
        for (const auto& take : learn::takesFor(event, past))
            event = learn::applied(event, {{learn::takeFigure(take.dish), {true, take.learned}}});
        CAPTURE(events, before, truth);
        CHECK(takeOf(event, "slaw") >= std::lround(truth));
        CHECK(takeOf(event, "slaw") <= before);
    }
    CHECK(takeOf(event, "slaw") < truth * 1.06);
}
