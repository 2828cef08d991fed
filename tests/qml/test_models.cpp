/// Every list a board shows, watched while a whole day is played: its notices are lawful, say all
/// that changed and nothing else, and never build a list anew.

#include <catch2/catch.hpp>

#include "app/rehearsal_crew.h"
#include "day.h"
#include "events.h"
#include "mirror.h"
#include "real_day.h"

using namespace cinder;
using namespace cinder::face;
using namespace cinder::face::scene;
using std::chrono::hours;
using std::chrono::milliseconds;
using std::chrono::seconds;

namespace {

const Instant kBefore = parseRfc3339("2027-09-18T10:58:00-04:00").value().at;

/// The orchard's day, opened, and all its lists watched.
struct WatchedDay {
    WatchedDay() : app(kTablet, kBefore) {
        static_cast<void>(takeComplaints());
        watch();
        const QString demo =
            app.events().demos()->data(app.events().demos()->index(0), Qt::UserRole).toString();
        app.events().openDemo(demo, 0);
        app.settlePlan();
        look();
    }
    void watch() {
        auto& day = app.day();
        mirrors.watch("grate", *day.grate());
        mirrors.watch("coals", *day.coals());
        mirrors.watch("rests", *day.rests());
        mirrors.watch("next at the fire", *day.nextAtFire());
        mirrors.watch("between", *day.between());
        mirrors.watch("buffet", *day.buffet());
        mirrors.watch("all", *day.all());
        mirrors.watch("ahead", *day.ahead());
        mirrors.watch("strike", *day.strike());
        mirrors.watch("people", *day.people());
        mirrors.watch("ringing", *day.ringing());
        mirrors.watch("notices", *day.notices());
        mirrors.watch("by person", *day.runSheet()->byPerson());
        mirrors.watch("by station", *day.runSheet()->byStation());
        mirrors.watch("axis", *day.runSheet()->axis());
        mirrors.watch("coming events", *app.events().coming());
        mirrors.watch("past events", *app.events().past());
        mirrors.watch("demos", *app.events().demos());
    }
    void look() {
        app.beat();
        mirrors.watchInside();
    }
    void pass(Duration length) {
        app.clock.advance(length);
        look();
    }
    void expectNoFaults() {
        for (const auto& fault : mirrors.faults())
            FAIL_CHECK(fault);
        // The tester of Qt says what it finds as a warning.
        for (const auto& complaint : takeComplaints())
            FAIL_CHECK(complaint);
    }

    RealDay app;
    Mirrors mirrors;
};

}  // namespace

TEST_CASE("the lists of a day tell all that changes and nothing else") {
    WatchedDay watched;
    app::RehearsalCrew crew(watched.app.session(), {7, seconds(90), 20});
    const Instant late = kBefore + hours(6);
    int looks = 0;
    CHECK_FALSE(watched.app.day().line().isUnderWay);
    while (!crew.isDayOver() && watched.app.clock.wall() < late) {
        REQUIRE(crew.act().has_value());
        watched.pass(seconds(20));
        ++looks;
        if (looks == 200) {
            CHECK(watched.app.day().line().isUnderWay);
            watched.app.day().moveServe(15);
        }
    }
    REQUIRE(crew.isDayOver());
    CHECK_FALSE(watched.app.day().line().isUnderWay);
    watched.expectNoFaults();
    CHECK(watched.mirrors.count() > 60);
    CHECK(watched.mirrors.rowNotices() > 100);
    std::printf("%d looks, %zu lists, %d notices of which %d of whole rows\n", looks,
                watched.mirrors.count(), watched.mirrors.notices(), watched.mirrors.rowNotices());
}

TEST_CASE("a board at rest is told nothing, and a second moves countdowns only") {
    WatchedDay watched;
    app::RehearsalCrew crew(watched.app.session());
    for (int minute = 0; minute < 45; ++minute) {
        REQUIRE(crew.act().has_value());
        watched.pass(seconds(60));
    }
    REQUIRE(crew.act().has_value());
    watched.look();
    REQUIRE(watched.app.day().grate()->count() > 0);

    const int before = watched.mirrors.notices();
    const int rowsBefore = watched.mirrors.rowNotices();
    watched.look();
    watched.pass(milliseconds(1));
    CHECK(watched.mirrors.notices() == before);

    watched.pass(seconds(1));
    CHECK(watched.mirrors.notices() > before);
    CHECK(watched.mirrors.rowNotices() == rowsBefore);
    watched.expectNoFaults();
}
