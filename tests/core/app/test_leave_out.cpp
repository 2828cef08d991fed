/// A dish left out whole on a day that has got late: in one touch with a plan, and back in one.

#include <catch2/catch.hpp>

#include <algorithm>

#include "demo_day.h"
#include "event/json.h"
#include "live/ways_out.h"

using namespace cinder;
using namespace std::chrono_literals;
using app::Refusal;
using app::TaskState;
using live::WayOut;
using samples::Device;

namespace {

struct Late : Device {
    explicit Late(const char* name, Duration by = 40min)
        : Device(event::parse(samples::demo(name)).value().serve.at - 96h) {
        event = session->importEvent(samples::demo(name)).value();
        clock.advance(session->look()->arrival + by - clock.wall());
    }
    [[nodiscard]] std::size_t entries() const { return store->read(event)->size(); }
    [[nodiscard]] live::Remaining rest() const {
        return std::get<live::Remaining>(session->askToReplan().value().wanted);
    }
    [[nodiscard]] std::vector<TaskState> statesOf(const DishId& dish) const {
        std::vector<TaskState> states;
        const auto sheet = *session->sheet();
        for (const auto& card : session->look()->tasks)
            for (const auto& task : sheet.problem.tasks)
                if (task.id == card.id && task.dish == dish) states.push_back(card.state);
        return states;
    }
    [[nodiscard]] TaskId firstOf(const DishId& dish) const {
        const auto tasks = rest().sheet.problem.tasks;
        return std::find_if(tasks.begin(), tasks.end(),
                            [&](const auto& t) { return t.dish == dish; })
            ->id;
    }
    /// The first dish that is said to help when it is left out.
    [[nodiscard]] DishId dishToDrop() const {
        for (const WayOut& way : live::waysOut(rest()))
            if (way.kind == WayOut::Kind::DropDish) return *way.dish;
        FAIL("no dish helps");
        return {};
    }
    EventId event;
};

void expectRefused(const Result<void, Refusal>& taken, Refusal::Why why) {
    REQUIRE_FALSE(taken);
    CHECK(taken.error().why == why);
}

bool isOnLine(const app::Snapshot& day, const DishId& dish) {
    return std::any_of(day.line.begin(), day.line.end(),
                       [&](const auto& stand) { return stand.dish == dish; }) ||
           std::any_of(day.service.pans.begin(), day.service.pans.end(),
                       [&](const auto& pan) { return pan.dish == dish; });
}

}  // namespace

TEST_CASE("a late demo day without a dish is as late as was said, and undone as it was") {
    const char* const name =
        GENERATE("orchard-harvest-lunch.json", "pruning-day-supper.json", "last-apple-feast.json");
    Late day(name);
    const auto ways = live::waysOut(day.rest());
    INFO(name);
    for (const WayOut& way : ways) {
        if (way.kind != WayOut::Kind::DropDish) continue;
        INFO("without " << way.dish->text());
        const auto before = day.session->look();
        const auto sheet = *day.session->sheet();
        const auto entries = day.entries();
        REQUIRE(isOnLine(*before, *way.dish));

        REQUIRE(day.session->leaveOut(*way.dish));

        CHECK(day.entries() == entries + 2);
        const auto after = day.session->look();
        CHECK(after->lateness <= way.late);
        for (const TaskState state : day.statesOf(*way.dish))
            CHECK((state == TaskState::Skipped || state == TaskState::Done));
        CHECK_FALSE(isOnLine(*after, *way.dish));
        REQUIRE(after->undo);
        CHECK(after->undo->what == app::UndoOffer::What::LeaveOut);
        // It survives a dead battery.
        day.restart();
        REQUIRE(day.session->open(day.event));
        CHECK_FALSE(isOnLine(*day.session->look(), *way.dish));

        REQUIRE(day.session->undo());
        CHECK(*day.session->sheet() == sheet);
        CHECK(day.session->look()->lateness == before->lateness);
        CHECK(isOnLine(*day.session->look(), *way.dish));
        for (const TaskState state : day.statesOf(*way.dish))
            CHECK(state != TaskState::Skipped);
    }
    CHECK(std::any_of(ways.begin(), ways.end(),
                      [](const WayOut& way) { return way.kind == WayOut::Kind::DropDish; }));
}

TEST_CASE("a dish is left out whole or not at all") {
    Late day("orchard-harvest-lunch.json");
    const DishId dish = day.dishToDrop();
    const TaskId first = day.firstOf(dish);

    SECTION("a dish that nobody knows") {
        const auto entries = day.entries();
        expectRefused(day.session->leaveOut(DishId{"chowder"}), Refusal::Why::NotNow);
        CHECK(day.entries() == entries);
    }
    SECTION("it is being made") {
        REQUIRE(day.session->start(first));
        const auto entries = day.entries();
        expectRefused(day.session->leaveOut(dish), Refusal::Why::NotNow);
        CHECK(day.entries() == entries);
    }
    SECTION("it is out already") {
        REQUIRE(day.session->leaveOut(dish));
        const auto entries = day.entries();
        expectRefused(day.session->leaveOut(dish), Refusal::Why::NotNow);
        expectRefused(day.session->start(first), Refusal::Why::NotNow);
        CHECK(day.entries() == entries);
    }
    SECTION("somebody begins it while the plan is made") {
        const auto planning = day.session->askToLeaveOut(dish).value();
        const auto found = app::searchPlan(planning);
        REQUIRE(found);
        REQUIRE(day.session->start(first));
        const auto entries = day.entries();
        expectRefused(day.session->publish(planning, found), Refusal::Why::Overtaken);
        CHECK(day.entries() == entries);
    }
    SECTION("somebody skips a step of it while the plan is made") {
        const auto planning = day.session->askToLeaveOut(dish).value();
        REQUIRE(day.session->skip(first));
        // No other plan follows from that.
        REQUIRE(day.session->publish(planning, app::searchPlan(planning)));
        for (const TaskState state : day.statesOf(dish))
            CHECK(state == TaskState::Skipped);
    }
}

TEST_CASE("paper that is printed late in the day knows of a dish that is left out") {
    Late day("orchard-harvest-lunch.json");
    const DishId dish = day.dishToDrop();
    const report::Style style;
    const auto rowsOf = [&](app::Sheet sheet) {
        return day.session->paper(sheet, style).value().tables.at(0).rows;
    };
    const auto cardsOf = [&] {
        return day.session->paper(app::Sheet::Cards, style).value().document.blocks.size();
    };
    const auto tasks = rowsOf(app::Sheet::Run);
    const auto stands = rowsOf(app::Sheet::Buffet);
    const auto cards = cardsOf();

    REQUIRE(day.session->leaveOut(dish));

    const auto after = rowsOf(app::Sheet::Run);
    CHECK(after.size() == tasks.size());
    const auto marked = std::count_if(after.begin(), after.end(), [](const report::Row& row) {
        return row.cells[3].ends_with("left out");
    });
    const auto states = day.statesOf(dish);
    CHECK(marked == std::count(states.begin(), states.end(), TaskState::Skipped));
    CHECK(marked > 0);
    CHECK(rowsOf(app::Sheet::Buffet).size() < stands.size());
    CHECK(cardsOf() == cards - 1);

    REQUIRE(day.session->undo());
    CHECK(rowsOf(app::Sheet::Run) == tasks);
    CHECK(rowsOf(app::Sheet::Buffet) == stands);
    CHECK(cardsOf() == cards);
}

TEST_CASE("what was left out is brought back long after, and planned for") {
    Late day("orchard-harvest-lunch.json");
    const DishId dish = day.dishToDrop();
    const TaskId first = day.firstOf(dish);
    const auto card = [&](const TaskId& id) {
        const auto seen = day.session->look();
        return *std::find_if(seen->tasks.begin(), seen->tasks.end(),
                             [&](const auto& one) { return one.id == id; });
    };
    const Duration late = day.session->look()->lateness;

    SECTION("a dish comes back whole, whichever of its steps is touched") {
        REQUIRE(day.session->leaveOut(dish));
        day.clock.advance(5min);
        REQUIRE_FALSE(day.session->look()->undo);
        CHECK(card(first).canComeBack);
        REQUIRE(day.session->bringBack(first));
        for (const TaskState state : day.statesOf(dish))
            CHECK(state != TaskState::Skipped);
        CHECK(isOnLine(*day.session->look(), dish));
        CHECK_FALSE(card(first).canComeBack);
        // Not as if it had never been planned for: no later than five lost minutes make it.
        CHECK(day.session->look()->lateness <= late + 6min);
    }
    SECTION("a step that was skipped, and then its dish left out") {
        REQUIRE(day.session->skip(first));
        REQUIRE(day.session->leaveOut(dish));
        REQUIRE(day.session->bringBack(first));
        for (const TaskState state : day.statesOf(dish))
            CHECK(state != TaskState::Skipped);
    }
    SECTION("a step alone leaves the dish out of the plan as it was") {
        REQUIRE(day.session->skip(first));
        REQUIRE(day.session->bringBack(first));
        CHECK(card(first).state != TaskState::Skipped);
        // It is taken back like any other touch, and the plan stands.
        REQUIRE(day.session->look()->undo);
        REQUIRE(day.session->undo());
        CHECK(card(first).state == TaskState::Skipped);
        CHECK(day.session->look()->lateness <= late + 1min);
    }
    SECTION("nobody left it out") {
        const auto entries = day.entries();
        CHECK_FALSE(card(first).canComeBack);
        expectRefused(day.session->bringBack(first), Refusal::Why::NotNow);
        expectRefused(day.session->bringBack(TaskId{"chowder/cook"}), Refusal::Why::UnknownTask);
        CHECK(day.entries() == entries);
    }
    SECTION("somebody brings it back while the plan is made") {
        REQUIRE(day.session->skip(first));
        const auto planning = day.session->askToBringBack(first).value();
        const auto found = app::searchPlan(planning);
        REQUIRE(day.session->undo());
        const auto entries = day.entries();
        // The same day by then, and the same plan for it.
        CHECK(day.session->publish(planning, found));
        CHECK(day.entries() == entries + 2);
        CHECK(card(first).state != TaskState::Skipped);
    }
}
