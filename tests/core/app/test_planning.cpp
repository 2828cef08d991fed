#include <catch2/catch.hpp>

#include <atomic>

#include "demo_day.h"
#include "event/json.h"

using namespace cinder;
using namespace std::chrono_literals;
using app::Refusal;
using samples::Device;

namespace {

constexpr Instant kMorning{1'821'000'000'000ms};

/// The orchard, days before it, and a plan that somebody found. Whether it is a good one is not
/// asked when it is published.
struct Office : Device {
    Office() : Device(kMorning) {
        event = session->importEvent(samples::orchard()).value();
        found = *session->sheet();
    }
    [[nodiscard]] std::size_t entries() const { return store->read(event)->size(); }
    /// Published, it is refused for `why`, and nothing is noted.
    void expectRefused(const app::Planning& planning, Refusal::Why why) {
        const auto before = entries();
        const auto taken = session->publish(planning, found);
        REQUIRE_FALSE(taken);
        CHECK(taken.error().why == why);
        CHECK(entries() == before);
    }
    [[nodiscard]] app::Planning redescribing() const {
        auto later = *session->described();
        later.serve.at += 15min;
        return session->askToRedescribe(event::write(later)).value();
    }
    EventId event;
    app::Found found;
    TaskId first{"unload"};
};

/// Everything a person may note that a plan for the whole event does not know of.
void noteSomething(Office& day) {
    SECTION("a task has begun") {
        REQUIRE(day.session->start(day.first));
    }
    SECTION("the bell has moved") {
        REQUIRE(day.session->moveServe(day.session->look()->serve + 10min));
    }
    SECTION("other guests come") {
        REQUIRE(day.session->publish(day.session->askToSetGuests(120, 8).value(), day.found));
    }
    SECTION("a figure is set") {
        REQUIRE(day.session->setFigure("supply/plates", 300));
    }
    SECTION("the event is being written anew") {
        REQUIRE(day.session->edit(
            [](event::Event draft) -> event::Edited {
                draft.serve.at += 30min;
                return draft;
            },
            "/serve"));
    }
}

}  // namespace

TEST_CASE("a plan for the rest of the day is not published over what was done meanwhile") {
    Office day;
    const auto planning = day.session->askToReplan().value();

    SECTION("a task has begun") {
        REQUIRE(day.session->start(day.first));
        day.expectRefused(planning, Refusal::Why::Overtaken);
        REQUIRE(day.session->undo());
        CHECK(day.session->publish(planning, day.found));
    }
    SECTION("a task is skipped") {
        REQUIRE(day.session->skip(day.first));
        day.expectRefused(planning, Refusal::Why::Overtaken);
    }
    SECTION("the bell has moved") {
        REQUIRE(day.session->moveServe(day.session->look()->serve + 10min));
        day.expectRefused(planning, Refusal::Why::Overtaken);
    }
    SECTION("a temperature was read, which no plan asks about") {
        REQUIRE(day.session->testThermometer(safety::ThermometerId{"probe"}, safety::inCelsius(0)));
        CHECK(day.session->publish(planning, day.found));
    }
}

TEST_CASE("guests and their plan are not published over what was said meanwhile") {
    Office day;
    const auto planning = day.session->askToSetGuests(150, 10).value();
    noteSomething(day);
    day.expectRefused(planning, Refusal::Why::Overtaken);
}

TEST_CASE("another description is not published over what was said meanwhile") {
    Office day;
    const auto planning = day.redescribing();
    noteSomething(day);
    day.expectRefused(planning, Refusal::Why::Overtaken);
}

TEST_CASE("what is ticked into the van while a plan is made does not hold the plan up") {
    Office day;
    const auto guests = day.session->askToSetGuests(150, 10).value();
    const auto& row = day.session->lists()->pack.front().key;
    REQUIRE(day.session->pack(row, journal::Packed::Where::Out, 1));
    CHECK(day.session->publish(guests, day.found));
    CHECK(event::headCount(day.session->described()->guests) == 160);
}

TEST_CASE("a plan is published once") {
    Office day;
    const auto replanning = day.session->askToReplan().value();
    auto other = day.found;
    other->value().bell += 1min;
    REQUIRE(day.session->publish(replanning, other));
    day.expectRefused(replanning, Refusal::Why::Overtaken);

    const auto guests = day.session->askToSetGuests(150, 10).value();
    REQUIRE(day.session->publish(guests, day.found));
    day.expectRefused(guests, Refusal::Why::Overtaken);
}

TEST_CASE("a plan is not published into an event that was opened meanwhile") {
    Office day;
    const auto supper = samples::demo("pruning-day-supper.json");
    const auto asked = {day.session->askToReplan().value(), day.redescribing(),
                        day.session->askToSetGuests(150, 10).value(),
                        day.session->askToPlanDraft().value(),
                        day.session->askToImport(supper).value()};
    const auto rehearsal = day.session->rehearse(1, 0min).value();
    const auto before = day.store->read(rehearsal)->size();
    for (const auto& planning : asked)
        day.expectRefused(planning, Refusal::Why::NoEvent);
    CHECK(day.store->read(rehearsal)->size() == before);
    CHECK(day.session->events()->size() == 2);
}

TEST_CASE("an event that came to the device while its plan was made is opened as it is") {
    Office day;
    const auto supper = samples::demo("pruning-day-supper.json");
    const auto planning = day.session->askToImport(supper).value();
    // As if it had been taken back from a copy.
    Device other(kMorning);
    const auto id = other.session->importEvent(supper).value();
    REQUIRE(day.store->append(other.store->read(id).value()));
    const auto entries = day.store->read(id)->size();
    day.expectRefused(planning, Refusal::Why::Overtaken);

    const auto again = day.session->askToImport(supper).value();
    CHECK(std::holds_alternative<std::monostate>(again.wanted));
    REQUIRE(day.session->publish(again, app::searchPlan(again)));
    CHECK(day.session->described()->id == id);
    CHECK(day.store->read(id)->size() == entries);
}

TEST_CASE("once the day has begun other guests want no plan") {
    Office day;
    REQUIRE(day.session->start(day.first));
    const auto guests = day.session->askToSetGuests(150, 10).value();
    CHECK(std::holds_alternative<std::monostate>(guests.wanted));
    const auto none = app::searchPlan(guests);
    REQUIRE(none);
    CHECK_FALSE(*none);
    const auto before = *day.session->sheet();
    REQUIRE(day.session->publish(guests, none));
    CHECK(*day.session->sheet() == before);
    CHECK(event::headCount(day.session->described()->guests) == 160);
}

TEST_CASE("what no plan was found for says so, unless the day is another one by then") {
    Office day;
    const auto planning = day.session->askToReplan().value();
    day.found = fail(Refusal{Refusal::Why::NoPlan, {}, {}, plan::NoPlan{}, {}});
    day.expectRefused(planning, Refusal::Why::NoPlan);
    REQUIRE(day.session->start(day.first));
    day.expectRefused(planning, Refusal::Why::Overtaken);
}

TEST_CASE("a search that is stopped ends with what it has by then") {
    Office day;
    const auto planning =
        day.session->askToRedescribe(event::write(*day.session->described())).value();
    REQUIRE(app::searchPlan(planning).value() == day.found.value());
    const std::atomic<bool> isStopped{true};
    const auto found = app::searchPlan(planning, &isStopped);
    CHECK((!found || *found != *day.found));
}
