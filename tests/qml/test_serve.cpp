/// The line by touch alone: the first guest, tens, a level, a fresh pan, the last guest.

#include <catch2/catch.hpp>

#include "walk.h"

using namespace cinder;
using namespace cinder::face;
using namespace cinder::face::scene;

namespace {

// The crew of demo-data/orchard-harvest-lunch.json has just driven in.
const Instant kArrived = parseRfc3339("2027-09-18T11:02:00-04:00").value().at;

QString text(const char* words) {
    return QString::fromUtf8(words);
}

void serveByTouch(const Glass& glass) {
    static_cast<void>(takeComplaints());
    Walk walk(glass, kArrived);
    walk.openTheOrchard(text("Buffet"));
    walk.hearCalls();
    walk.goOn(text("More"), text("Serve"));
    CHECK(walk.note<journal::GuestsPassed>(walk.button(text("First guest"))).guests == 0);
    CHECK(walk.note<journal::GuestsPassed>(walk.button(text("+10"))).guests == 10);
    CHECK(walk.note<journal::GuestsPassed>(walk.button(text("+10"))).guests == 20);
    CHECK(walk.app.look()->service.counted == 20);
    const auto level =
        walk.note<journal::PanLevelTapped>(walk.button(text("Apple and fennel slaw: half left")));
    CHECK(level.dish == DishId("slaw"));
    CHECK(level.percent == 50);
    const auto fresh = walk.note<journal::NextPanSet>(
        walk.button(text("Apple and fennel slaw: a fresh pan is on the line")));
    CHECK(fresh.pan == 2);
    walk.note<journal::LastGuestPassed>(walk.button(text("Last guest is through")));
    CHECK(walk.app.look()->service.isOver);
    CHECK(walk.button(text("+10")) == nullptr);
    for (const auto& complaint : takeComplaints())
        FAIL_CHECK(complaint);
}

}  // namespace

TEST_CASE("guests are counted and pans kept full on a tablet") {
    serveByTouch(kTablet);
}

TEST_CASE("guests are counted and pans kept full on a phone") {
    serveByTouch(kPhone);
}
