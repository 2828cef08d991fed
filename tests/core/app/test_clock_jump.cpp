#include <catch2/catch.hpp>

#include "demo_day.h"
#include "event/json.h"

using namespace cinder;
using namespace std::chrono_literals;
using samples::Device;

namespace {

constexpr Instant kMorning{1'821'000'000'000ms};

/// A device with the orchard open, and a smaller event beside it.
struct Orchard : Device {
    Orchard() : Device(kMorning) {
        other = session->importEvent(samples::demo("pruning-day-supper.json")).value();
        event = session->importEvent(samples::orchard()).value();
        const auto* sheet = session->sheet();
        // Time passed while the app was closed.
        clock.advance(sheet->bell + plan::firstStart(sheet->schedule) - 10min - clock.wall());
        restart();
        REQUIRE(session->open(event));
    }
    /// The event is written to by a device that is a day ahead, whose clock is then set right.
    /// Returns the right time.
    template <class Touch>
    Instant writeAhead(const Touch& touch) {
        const Instant right = clock.wall();
        clock.setWall(right + 24h);
        restart();
        REQUIRE(session->open(event));
        REQUIRE(touch(*session));
        clock.setWall(right);
        restart();
        REQUIRE(session->open(event));
        return right;
    }

    EventId event;
    EventId other;
    TaskId first{"unload"};
};

bool shows(const app::Snapshot& seen, app::Notice::What what) {
    for (const auto& notice : seen.notices)
        if (notice.what == what) return true;
    return false;
}

}  // namespace

TEST_CASE("setting the wall clock moves no timer while the app runs, and is shown") {
    Orchard left;
    Orchard set;
    for (Orchard* device : {&left, &set}) {
        device->clock.advance(10min);
        REQUIRE(device->session->start(device->first));
    }

    set.clock.setWall(set.clock.wall() + 2h);
    left.clock.advance(1s);
    set.clock.advance(1s);
    const auto expected = left.session->look();
    const auto seen = set.session->look();

    CHECK(seen->now == expected->now);
    CHECK(seen->timers == expected->timers);
    REQUIRE(shows(*seen, app::Notice::What::ClockJumped));

    set.session->followWallClock();
    CHECK(set.session->look()->now == expected->now + 2h);
    CHECK_FALSE(shows(*set.session->look(), app::Notice::What::ClockJumped));
}

TEST_CASE("a clock that lost its battery does not turn back what is written, and is shown") {
    Orchard device;
    REQUIRE(device.session->start(device.first));
    const Instant written = device.clock.wall();
    device.clock.advance(10min);
    device.clock.setWall(written - 20min);
    device.restart();
    REQUIRE(device.session->open(device.event));
    CHECK(device.session->now() == written);
    const auto seen = device.session->look();
    REQUIRE(shows(*seen, app::Notice::What::ClockJumped));
    CHECK(seen->notices.front().amount == -20min);

    // It goes on from there, and does not start over when the event is opened again.
    device.clock.advance(3min);
    REQUIRE(device.session->open(device.event));
    CHECK(device.session->now() == written + 3min);
    CHECK(shows(*device.session->look(), app::Notice::What::ClockJumped));

    REQUIRE(device.session->open(device.other));
    REQUIRE(device.session->open(device.event));
    CHECK(device.session->now() == written + 3min);

    // A person's word counts more, also when the event is opened again.
    device.session->followWallClock();
    REQUIRE(device.session->open(device.event));
    CHECK(device.session->now() == written - 17min);
    CHECK_FALSE(shows(*device.session->look(), app::Notice::What::ClockJumped));
}

TEST_CASE("that the clock is right is known after a restart") {
    Orchard device;
    const Instant right =
        device.writeAhead([&](auto& session) { return session.start(device.first); });
    REQUIRE(device.session->now() == right + 24h);
    device.session->followWallClock();
    REQUIRE(device.session->now() == right);

    device.restart();
    REQUIRE(device.session->open(device.event));
    CHECK(device.session->now() == right);
    CHECK_FALSE(shows(*device.session->look(), app::Notice::What::ClockJumped));

    // What is written from here on counts again, though stamps still stand where they were.
    device.clock.advance(40min);
    REQUIRE(device.session->finish(device.first));
    device.clock.setWall(right - 1h);
    device.restart();
    REQUIRE(device.session->open(device.event));
    CHECK(device.session->now() == right + 40min);
    CHECK(shows(*device.session->look(), app::Notice::What::ClockJumped));
}

TEST_CASE("once the time has caught up with what was written ahead, stamps count again") {
    Orchard device;
    const Instant right =
        device.writeAhead([&](auto& session) { return session.start(device.first); });
    device.session->followWallClock();
    device.clock.advance(30h);
    REQUIRE(device.session->setGuests(40, 0));
    device.clock.setWall(right);
    device.restart();
    REQUIRE(device.session->open(device.event));
    CHECK(device.session->now() == right + 30h);
}

TEST_CASE("saying that the clock is right where nobody doubts it writes nothing") {
    Orchard device;
    const auto before = device.store->read(device.event)->size();
    device.session->followWallClock();
    CHECK(device.store->read(device.event)->size() == before);
}

TEST_CASE("a clock that was set right before the app is opened again is followed at once") {
    Orchard device;
    REQUIRE(device.session->start(device.first));
    const Instant later = device.clock.wall() + 2h;
    device.clock.setWall(later);
    device.restart();
    REQUIRE(device.session->open(device.event));

    CHECK(device.session->now() == later);
    CHECK_FALSE(shows(*device.session->look(), app::Notice::What::ClockJumped));
}

TEST_CASE("an event written to under a clock that ran ahead moves no other event") {
    Orchard device;
    const Instant right =
        device.writeAhead([&](auto& session) { return session.start(device.first); });
    CHECK(device.session->now() == right + 24h);

    REQUIRE(device.session->open(device.other));
    CHECK(device.session->now() == right);
    CHECK_FALSE(shows(*device.session->look(), app::Notice::What::ClockJumped));
    REQUIRE(device.session->moveServe(device.session->look()->serve + 10min));
    CHECK(device.store->read(device.other)->back().stamp.wall == right);
}

TEST_CASE("an event begun beside one that was written under a clock ahead has the right time") {
    Orchard device;
    const Instant right =
        device.writeAhead([&](auto& session) { return session.start(device.first); });

    SECTION("a rehearsal") {
        REQUIRE(device.session->rehearse(1, 5min));
        const Instant began = device.session->now();
        device.clock.advance(10min);
        CHECK(device.session->now() == began + 10min);
    }
    SECTION("a new event") {
        auto other = event::parse(samples::orchard()).value();
        other.id = EventId("another-day");
        const auto id = device.session->importEvent(event::write(other));
        REQUIRE(id);
        CHECK(device.session->now() == right);
        CHECK(device.store->read(*id)->front().stamp.wall == right);
    }
}

TEST_CASE("local limits taken over from an event under a clock ahead count at once") {
    Orchard device;
    const Instant right = device.writeAhead([](auto& session) {
        return session.nameLocalRules(
            {"Orchard County", {{"cookIntact", safety::inFahrenheit(170)}}});
    });
    app::NewEvent wanted;
    wanted.from = device.event;
    wanted.document = samples::orchard();
    wanted.serve = ZonedInstant{right + 240h, UtcOffset{0}};
    REQUIRE(device.session->newDraft(wanted));
    REQUIRE(device.session->planDraft());
    CHECK(device.session->look()->food.limits.authority() == "Orchard County");
}

TEST_CASE("undo goes back and forth while stamps stand still") {
    Orchard device;
    device.clock.setWall(device.clock.wall() + 24h);
    device.restart();
    REQUIRE(device.session->open(device.event));
    REQUIRE(device.session->nameLocalRules({"Orchard County", {}}));
    device.clock.setWall(device.clock.wall() - 24h);
    device.session->followWallClock();
    device.clock.advance(15s);
    const auto before = *device.session->sheet();
    REQUIRE(device.session->setGuests(40, 0));
    const auto after = *device.session->sheet();
    REQUIRE_FALSE(after == before);
    for (int times = 0; times < 3; ++times) {
        REQUIRE(device.session->undo());
        CHECK(*device.session->sheet() == before);
        REQUIRE(device.session->undo());
        CHECK(*device.session->sheet() == after);
    }
}

TEST_CASE("a touch can be taken back for as long when the clock was set right before it") {
    Orchard device;
    device.clock.setWall(device.clock.wall() + 3h);
    device.restart();
    REQUIRE(device.session->open(device.event));
    REQUIRE(device.session->start(device.first));
    device.clock.setWall(device.clock.wall() - 3h);
    device.session->followWallClock();

    REQUIRE(device.session->moveServe(device.session->look()->serve + 10min));
    CHECK(device.session->look()->undo);
    device.clock.advance(14s);
    CHECK(device.session->look()->undo);
    device.clock.advance(1s);
    CHECK_FALSE(device.session->look()->undo);
}

TEST_CASE("a device that slept has not jumped") {
    Orchard device;
    (void)device.session->look();

    device.clock.advance(3h);

    CHECK_FALSE(shows(*device.session->look(), app::Notice::What::ClockJumped));
}
