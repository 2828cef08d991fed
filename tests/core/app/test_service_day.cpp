#include <algorithm>
#include <catch2/catch.hpp>

#include "demo_day.h"
#include "event/json.h"
#include "quantity/build/reckon.h"

using namespace cinder;
using namespace std::chrono_literals;
using app::Refusal;
using samples::Device;

namespace {

constexpr Instant kMorning{1'821'000'000'000ms};
const DishId kSlaw{"slaw"};

/// The orchard at the bell.
struct LineDay : Device {
    LineDay() : Device(kMorning) {
        REQUIRE(session->importEvent(samples::orchard()));
        clock.advance(session->look()->serve - clock.wall());
    }
    [[nodiscard]] app::ServiceCards line() { return session->look()->service; }
    [[nodiscard]] app::LinePanCard pan(const DishId& dish) {
        for (const auto& card : line().pans)
            if (card.dish == dish) return card;
        FAIL("no pan of " << dish.text());
        return {};
    }
};

}  // namespace

TEST_CASE("before anybody counts the model tells the end and every dish has its pan") {
    LineDay day;
    const auto line = day.line();
    CHECK_FALSE(line.isOpen);
    CHECK(line.guests == 96);
    CHECK(line.counted == 0);
    // Common practice - no source: about a quarter of an hour for 100 guests with one server.
    CHECK(line.planned > 12min);
    CHECK(line.planned < 18min);
    CHECK(line.end.usual > day.session->look()->serve + 12min);
    CHECK(line.waiting > 80);
    CHECK_FALSE(line.bottleneck.empty());
    CHECK(line.pans.size() >= 6);
    for (const auto& card : line.pans) {
        CAPTURE(card.dish.text());
        CHECK(card.outlook.pan == 1);
        CHECK(card.outlook.left == 1);
        CHECK(card.outlook.perGuest > 0);
        // What was reckoned is enough for the guests who were reckoned with.
        CHECK(card.outlook.portionPercent == 100);
    }
}

TEST_CASE("all the pans of a dish together hold its portions, at every demo event") {
    for (const char* name :
         {"orchard-harvest-lunch.json", "last-apple-feast.json", "pruning-day-supper.json"}) {
        const auto event = event::parse(samples::demo(name));
        REQUIRE(event);
        const auto plan = app::planService(*event, 1);
        const auto reckoning = quantity::reckon(*event);
        CHECK(plan.pans.size() >= 5);
        const service::Pace pace({plan.guests, event->serve.at, plan.each, plan.through}, {});
        for (const auto& pan : plan.pans)
            for (const auto& figures : reckoning.dishes) {
                if (figures.dish != pan.dish) continue;
                CAPTURE(name, pan.dish.text());
                const auto seen = service::lookAtPan(pan.plan, {}, pace, event->serve.at);
                CHECK(seen.portionsLeft == Approx(figures.portions->amount.value));
                CHECK(pan.plan.portionsIn(pan.plan.pans) > 0);
                CHECK(pan.plan.portionsIn(pan.plan.pans) <= pan.plan.portionsPerPan * 1.0001);
            }
    }
}

TEST_CASE("three pans on two places go out as two and one") {
    const auto event = event::parse(samples::demo("last-apple-feast.json"));
    REQUIRE(event);
    const auto plan = app::planService(*event, 1);
    const auto chicken = std::find_if(plan.pans.begin(), plan.pans.end(), [](const auto& pan) {
        return pan.dish == DishId{"chicken"};
    });
    REQUIRE(chicken != plan.pans.end());
    REQUIRE(chicken->plan.pans == 2);
    CHECK(chicken->plan.portionsIn(2) == Approx(chicken->plan.portionsPerPan / 2));
}

TEST_CASE("a board is filled again and again, and promises no level") {
    const auto described = event::parse(samples::orchard());
    REQUIRE(described);
    const auto before = app::planService(*described, 1);
    event::Event event = *described;
    for (event::Dish& dish : event.menu)
        if (dish.id == kSlaw) dish.serving->vessel = event::Vessel::Board;
    const auto plan = app::planService(event, 1);
    CHECK(plan.pans.size() + 1 == before.pans.size());
    CHECK(std::none_of(plan.pans.begin(), plan.pans.end(),
                       [](const auto& pan) { return pan.dish == kSlaw; }));
    CHECK(plan.buffet == before.buffet);

    // Filled and tapped full after the last guest it would read as if nobody had eaten.
    Device day(kMorning);
    REQUIRE(day.session->importEvent(event::write(event)));
    day.clock.advance(day.session->look()->serve - day.clock.wall());
    REQUIRE(day.session->countGuests(90));
    CHECK(day.session->tapPan(kSlaw, 100).error().why == Refusal::Why::UnknownTask);
    REQUIRE(day.session->lastGuest());
    const auto debrief = day.session->debrief();
    REQUIRE(debrief);
    CHECK(debrief->lessons.empty());
}

TEST_CASE("a slow count moves the end, and survives the battery") {
    LineDay day;
    const EventId event = day.session->look()->event;
    const Instant promised = day.line().end.usual;
    REQUIRE(day.session->countGuests(0));
    for (int ten = 1; ten <= 3; ++ten) {
        day.clock.advance(150s);
        REQUIRE(day.session->countGuests(10 * ten));
    }
    CHECK(day.line().end.usual > promised + 3min);
    CHECK(day.line().counted == 30);
    const auto before = day.line();
    day.restart();
    REQUIRE(day.session->open(event));
    CHECK(day.line() == before);
    REQUIRE(day.session->undo());
    CHECK(day.line().counted == 20);
}

TEST_CASE("the counter says which, so that two taps of the same ten are one") {
    LineDay day;
    REQUIRE(day.session->countGuests(10));
    const auto twice = day.session->countGuests(10);
    REQUIRE_FALSE(twice);
    CHECK(twice.error().why == Refusal::Why::NotNow);
    CHECK_FALSE(day.session->countGuests(-1));
    CHECK(day.line().counted == 10);
    CHECK(day.session->look()->undo->what == app::UndoOffer::What::Passed);
}

TEST_CASE("the last guest ends the line, and nobody is counted after") {
    LineDay day;
    CHECK_FALSE(day.session->lastGuest());
    REQUIRE(day.session->countGuests(90));
    day.clock.advance(10min);
    REQUIRE(day.session->lastGuest());
    CHECK(day.line().isOver);
    CHECK(day.line().waiting == 0);
    CHECK_FALSE(day.session->lastGuest());
    CHECK_FALSE(day.session->countGuests(100));
    REQUIRE(day.session->undo());
    CHECK(day.session->countGuests(100));
}

TEST_CASE("a tap on the level brings the empty pan nearer, a new pan begins full") {
    LineDay day;
    REQUIRE(day.session->countGuests(0));
    day.clock.advance(4min);
    REQUIRE(day.session->countGuests(20));
    const auto before = day.pan(kSlaw);
    REQUIRE(day.session->tapPan(kSlaw, 25));
    const auto after = day.pan(kSlaw);
    CHECK(after.outlook.left == Approx(0.25));
    CHECK(after.outlook.isTapped);
    CHECK(after.outlook.perGuest > before.outlook.perGuest);
    REQUIRE(before.outlook.empty);
    REQUIRE(after.outlook.empty);
    CHECK(*after.outlook.empty < *before.outlook.empty);
    REQUIRE(day.session->setNextPan(kSlaw));
    CHECK(day.pan(kSlaw).outlook.pan == 2);
    CHECK(day.pan(kSlaw).outlook.left == 1);
    REQUIRE(day.session->tapPan(kSlaw, 75));
    CHECK(day.pan(kSlaw).outlook.left == Approx(0.75));

    CHECK_FALSE(day.session->tapPan(kSlaw, 101));
    const auto unknown = day.session->tapPan(DishId{"nobody"}, 50);
    REQUIRE_FALSE(unknown);
    CHECK(unknown.error().why == Refusal::Why::UnknownTask);
    CHECK_FALSE(day.session->setNextPan(DishId{"nobody"}));
}

TEST_CASE("what would help the line is played out for the event") {
    LineDay day;
    const auto event = event::parse(samples::orchard());
    REQUIRE(event);
    const auto plan = app::planService(*event);
    const auto gains = app::serviceGains(plan);
    REQUIRE_FALSE(gains.empty());
    CHECK(gains.front().saved > 2min);
    CHECK(app::dishesAt(plan, *event, 0).empty());
    CHECK(plan.staffing.servers == 1);
    CHECK(app::planService(*event) == plan);
}

TEST_CASE("called table by table nobody stands long, and the line takes no less time") {
    LineDay day;
    const auto event = event::parse(samples::orchard());
    REQUIRE(event);
    const auto plan = app::planService(*event);
    const auto byTable = app::flowByTable(plan);
    CHECK(byTable.longestWait < plan.flow.longestWait / 2);
    CHECK(byTable.usual > plan.flow.usual * 95 / 100);
}

namespace {

const live::Timer* panCall(const app::Snapshot& day, const DishId& dish) {
    for (const auto& timer : day.timers)
        if (timer.dish == dish && timer.occasion == live::TimerOccasion::NextPan) return &timer;
    return nullptr;
}

}  // namespace

TEST_CASE("the next pan calls when it must be started, once, and is silent after the last guest") {
    LineDay day;
    CHECK(panCall(*day.session->look(), kSlaw) == nullptr);
    REQUIRE(day.session->countGuests(0));
    DishId dish;
    for (const auto& card : day.line().pans)
        if (card.outlook.startNextBy) dish = card.dish;
    REQUIRE_FALSE(dish.text().empty());
    const auto seen = day.session->look();
    const auto* call = panCall(*seen, dish);
    REQUIRE(call);
    CHECK(call->due == *day.pan(dish).outlook.startNextBy);
    CHECK(call->pan == 2);
    CHECK(call->kind == live::TimerKind::StartNow);

    // Nearly empty: it calls at once, until somebody hears it, whatever is tapped after.
    REQUIRE(day.session->tapPan(dish, 5));
    const auto late = day.session->look();
    REQUIRE(panCall(*late, dish));
    CHECK(panCall(*late, dish)->isRinging(late->now));
    REQUIRE(day.session->acknowledge(panCall(*late, dish)->name));
    REQUIRE(day.session->tapPan(dish, 10));
    const auto heard = day.session->look();
    REQUIRE(panCall(*heard, dish));
    CHECK_FALSE(panCall(*heard, dish)->isRinging(heard->now));

    REQUIRE(day.session->lastGuest());
    CHECK(panCall(*day.session->look(), dish) == nullptr);
}
