#include <catch2/catch.hpp>
#include <cmath>

#include "../live/small_day.h"
#include "learn/suggestions.h"

using namespace samples;
using learn::Actual;
using learn::PastDay;
using learn::suggestionsFor;

namespace {

Actual took(const char* id, Duration planned, Duration actual) {
    Actual one;
    one.task = TaskId{id};
    one.step = id;
    one.name = LocalText{std::string(id)};
    one.plannedLength = planned;
    one.actualLength = actual;
    return one;
}

LocalText text(const char* words) {
    return LocalText{std::string(words)};
}

/// An event for so many guests with one dish on its menu.
event::Event eventOf(std::int32_t guests, const char* dish = "lamb", const char* name = "Lamb") {
    event::Event event;
    event.guests.adults = guests;
    event.menu.emplace_back();
    event.menu.front().id = DishId{dish};
    event.menu.front().name = text(name);
    return event;
}

/// A step of a dish, and what it took on another day.
plan::Task ofDish(const char* id, const char* step, const char* dish, int length) {
    plan::Task one = task(id, plan::TaskKind::Slice, length);
    one.name = text(step);
    one.dish = DishId{dish};
    return one;
}
Actual tookOf(const char* id, const char* step, const char* dish, Duration actual) {
    Actual one = took(id, actual, actual);
    one.name = text(step);
    one.dish = text(dish);
    return one;
}

std::vector<plan::Task> tables() {
    return {task("tables", plan::TaskKind::SetUp, 20)};
}

}  // namespace

// By hand: prior 0 +- 0.25, one event of spread 0.3 at ln 2: weight (1/0.09) / (1/0.0625 + 1/0.09)
// = 0.40984, mean 0.28408, e to it 1.3285; 20 min become 26.57, to the half-minute 26.5.
TEST_CASE("One event moves a length by its weight and is told as one") {
    const std::vector<PastDay> past{{{took("tables", 10min, 40min)}, {}}};
    const auto suggestions = suggestionsFor(tables(), past);
    REQUIRE(suggestions.size() == 1);
    CHECK(suggestions[0].planned == 20min);
    CHECK(suggestions[0].learned == 26min + 30s);
    CHECK(suggestions[0].events == 1);
    CHECK(suggestions[0].low < suggestions[0].learned);
    CHECK(suggestions[0].high > suggestions[0].learned);
}

TEST_CASE("More events of the same kind are believed more, and surer") {
    std::vector<PastDay> past;
    Duration before = 20min;
    Duration width = 1h;
    for (int events = 1; events <= 6; ++events) {
        past.push_back({{took("tables", 10min, 40min)}, {}});
        const auto one = suggestionsFor(tables(), past).front();
        CHECK(one.events == events);
        CHECK(one.learned > before);
        CHECK(one.learned < 40min);
        CHECK(one.high - one.low < width);
        before = one.learned;
        width = one.high - one.low;
    }
}

// Always 45 min, first planned as 30, and everything accepted. Were each day held against its own
// plan, the plan would go 35.5, 43, 50, 55.5, 59 min and on.
TEST_CASE("Accepting every suggestion brings the plan to what is seen, and not past it") {
    for (const Duration first : {30min, 60min}) {
        auto plan = std::chrono::duration_cast<plan::HalfMinutes>(first);
        std::vector<PastDay> past;
        for (int events = 1; events <= 12; ++events) {
            past.push_back({{took("tables", plan, 45min)}, {}});
            auto now = tables();
            now.front().duration = {plan, plan, plan};
            const auto suggestions = suggestionsFor(now, past);
            const Duration before = plan;
            if (!suggestions.empty())
                plan = std::chrono::duration_cast<plan::HalfMinutes>(suggestions.front().learned);
            CAPTURE(events, plan.count());
            CHECK((Duration{plan} < 45min) <= (first < 45min));
            CHECK((Duration{plan} > 45min) <= (first > 45min));
            CHECK(std::chrono::abs(plan - 45min) <= std::chrono::abs(before - 45min));
        }
        CHECK(std::abs(std::log(double(Duration{plan}.count()) / double(Duration{45min}.count()))) <
              0.06);
    }
}

TEST_CASE("An interrupted task is left out, and said so when others remain") {
    const std::vector<PastDay> past{
        {{took("tables", 10min, 90min)}, {TaskId{"tables"}}},
        {{took("tables", 10min, 40min)}, {}},
    };
    const auto suggestions = suggestionsFor(tables(), past);
    REQUIRE(suggestions.size() == 1);
    CHECK(suggestions[0].learned == 26min + 30s);
    CHECK(suggestions[0].interrupted == 1);
    CHECK(suggestionsFor(tables(), {past[0]}).empty());
}

TEST_CASE("Small differences and steps nobody has done before are no news") {
    CHECK(suggestionsFor(tables(), {{{took("tables", 10min, 20min + 20s)}, {}}}).empty());
    CHECK(suggestionsFor(tables(), {{{took("grill", 10min, 30min)}, {}}}).empty());
    CHECK(suggestionsFor(tables(), {}).empty());
}

TEST_CASE("The batches of one day are one event, twice as long weighs like half as long") {
    Actual quick = took("cook", 20min, 10min);
    Actual slow = took("cook", 20min, 40min);
    CHECK(learn::logRatio(quick) == Approx(-learn::logRatio(slow)));
    CHECK(learn::logRatio(took("cook", 0min, 5min)) == 0);
    const std::vector<PastDay> past{{{slow, slow}, {}}};
    const std::vector<plan::Task> tasks{task("cook", plan::TaskKind::Cook, 20)};
    const auto suggestions = suggestionsFor(tasks, past);
    REQUIRE(suggestions.size() == 1);
    CHECK(suggestions[0].events == 1);
    // 10 and 40 min are 20 in the mean of their logarithms, as planned; 20 and 80 are 40.
    CHECK(suggestionsFor(tasks, {{{quick, slow}, {}}}).empty());
    const Actual slowest = took("cook", 20min, 80min);
    const auto unequal = suggestionsFor(tasks, {{{took("cook", 20min, 20min), slowest}, {}}});
    REQUIRE(unequal.size() == 1);
    CHECK(unequal[0].learned == suggestions[0].learned);
    CHECK(unequal[0].events == 1);
}

TEST_CASE("Steps of the same id in unlike dishes have nothing to teach each other") {
    const std::vector<plan::Task> now{ofDish("own/prepare", "Prepare", "own", 20)};
    const auto today = eventOf(80, "own", "Corn pudding");
    const auto took40 = [](const char* id, const char* step, const char* dish) {
        return std::vector<PastDay>{{{tookOf(id, step, dish, 40min)}, {}, 80}};
    };
    CHECK(suggestionsFor(now, took40("own/prepare", "Prepare", "Ceviche"), today).empty());
    CHECK(suggestionsFor(now, took40("own/prepare", "Peel", "Corn pudding"), today).empty());
    CHECK(suggestionsFor(now, took40("own/step-2", "Prepare", "Corn pudding"), today).empty());
    // Copied into another event the dish is numbered anew and is the same.
    const auto learnt =
        suggestionsFor(now, took40("own-2/prepare", "Prepare", "Corn pudding"), today);
    REQUIRE(learnt.size() == 1);
    CHECK(learnt[0].step == "own/prepare");
    CHECK(learnt[0].learned == 26min + 30s);
}

TEST_CASE("What took long for many guests says nothing of few") {
    const std::vector<plan::Task> now{ofDish("lamb/slice", "Slice", "lamb", 30)};
    const auto day = [](int guests, Duration length) {
        return PastDay{{tookOf("lamb/slice", "Slice", "Lamb", length)}, {}, guests};
    };
    const auto today = eventOf(160);
    CHECK(suggestionsFor(now, {day(40, 8min), day(160, 32min)}, today).empty());
    CHECK(suggestionsFor(now, {day(40, 8min)}, today).empty());
    CHECK(suggestionsFor(now, {day(210, 60min)}, today).empty());
    const auto learnt = suggestionsFor(
        now, {day(40, 8min), day(122, 8min), day(124, 60min), day(200, 60min)}, today);
    REQUIRE(learnt.size() == 1);
    CHECK(learnt[0].events == 2);
    // A batch on the grate is as large as the grate, for few and for many.
    plan::Task cook = ofDish("lamb/cook/1", "Cook", "lamb", 20);
    cook.kind = plan::TaskKind::Cook;
    const PastDay few{{tookOf("lamb/cook", "Cook", "Lamb", 40min)}, {}, 40};
    const auto batch = suggestionsFor({cook}, {few}, today);
    REQUIRE(batch.size() == 1);
    CHECK(batch[0].step == "lamb/cook");
}
