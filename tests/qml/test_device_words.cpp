/// What is said of the other devices of a crew: where each stands, what to do, and when the boards
/// say it.

#include <catch2/catch.hpp>

#include <set>

#include "crew_devices.h"
#include "day.h"
#include "fixed_crew_devices.h"
#include "fixed_day.h"
#include "settings.h"

using namespace cinder;
using namespace cinder::face;
using fixed::FixedCrewDevices;
using fixed::nearDevice;
using std::chrono::hours;
using std::chrono::minutes;
using std::chrono::seconds;

namespace {

QString text(const char* words) {
    return QString::fromUtf8(words);
}

/// The view model alone, on the day that stands still.
struct Alone {
    Alone() { day.beat(); }
    [[nodiscard]] std::string of(const CrewDevices::Other& other, const char* role) {
        others.seen = {other};
        view.look();
        const auto* rows = view.rows();
        REQUIRE(rows->rowCount() == 1);
        return rows->data(rows->index(0), rows->roleNames().key(role)).toString().toStdString();
    }
    [[nodiscard]] CrewDevices::Other rowan() const { return nearDevice("3f2a91c4", "Rowan", now); }

    fixed::FixedDoor door{fixed::orchardLunch()};
    Settings settings{QString()};
    Day day{door, settings};
    Instant now = door.day.now;
    FixedCrewDevices others;
    CrewDevicesView view{&others, day, settings, [this] { return now; }};
};

}  // namespace

TEST_CASE("nobody is missed in a rehearsal, on another day, or who was seen on another day") {
    Alone at;
    auto rowan = at.rowan();
    rowan.isInReach = false;
    at.others.kept = fixed::kCode;
    const auto noticeOf = [&](Duration ago) {
        rowan.lastSeen = at.now - ago;
        at.others.seen = {rowan};
        at.view.look();
        return at.view.notice().toStdString();
    };
    CHECK_THAT(noticeOf(minutes(3)), Catch::Contains("out of reach"));
    CHECK(noticeOf(hours(13)).empty());
    at.now += hours(24);
    CHECK(noticeOf(minutes(3)).empty());
    at.now -= hours(24);
    at.door.day.isRehearsal = true;
    at.day.beat();
    CHECK(noticeOf(minutes(3)).empty());
}

TEST_CASE("of several devices out of reach the boards say how many, and since when") {
    Alone at;
    at.others.kept = fixed::kCode;
    auto rowan = at.rowan();
    rowan.isInReach = false;
    rowan.lastSeen = at.now - minutes(5);
    auto ines = nearDevice("b07d5512", "Inés", at.now);
    ines.isInReach = false;
    ines.lastSeen = at.now - minutes(12);
    at.others.seen = {rowan, ines};
    at.view.look();
    CHECK(at.view.notice() == text("2 devices are out of reach, one since 11:30: bring them near, "
                                   "into the same network."));
}

TEST_CASE("where each device stands is said in words and by a shape") {
    using sync::Standing;
    Alone at;
    auto other = at.rowan();
    CHECK(at.of(other, "name") == "Rowan's device");
    CHECK(at.of(other, "standing") == "In reach, everything is on both");
    CHECK(at.of(other, "mark") == "done");

    other.peer.standing = Standing::Exchanging;
    other.peer.toCome = 12;
    other.peer.toGo = 1;
    CHECK(at.of(other, "standing") == "In reach, 12 entries to come, 1 entry to go");
    CHECK(at.of(other, "mark") == "running");
    for (const auto stuck : {Standing::ClocksApart, Standing::OtherVersion, Standing::NotNoted}) {
        other.peer.standing = stuck;
        CHECK_THAT(at.of(other, "standing"), Catch::Contains(": "));
        CHECK(at.of(other, "mark") == "late");
    }
    other.isInReach = false;
    other.lastSeen = at.now - minutes(25);
    CHECK_THAT(at.of(other, "standing"), Catch::StartsWith("Out of reach since 11:17."));
    CHECK(at.of(other, "mark") == "waiting");
    other.lastSeen = at.now - hours(48);
    CHECK_THAT(at.of(other, "standing"), Catch::Contains("September 2027 · 11:42."));
    other.holder.clear();
    CHECK(at.of(other, "name") == "Device 3F2A");
}

TEST_CASE("how far the clock of another device is off is said from two seconds on") {
    Alone at;
    auto other = at.rowan();
    const auto clockOf = [&](Duration ahead) {
        other.peer.clock = sync::ClockOffset{ahead, Duration{20}};
        return at.of(other, "clock");
    };
    CHECK(clockOf(std::chrono::milliseconds(-1900)) == "The clocks agree");
    CHECK(clockOf(seconds(3)) == "Its clock is 3\u00a0s ahead");
    CHECK(clockOf(-minutes(61)) == "Its clock is 1\u00a0h\u00a001\u00a0min behind");
    other.peer.clock.reset();
    CHECK(at.of(other, "clock").empty());
}

TEST_CASE("an event whose record went two ways is named as left alone on both") {
    Alone at;
    auto other = at.rowan();
    CHECK(at.of(other, "parted").empty());
    other.peer.parted = {EventId("barn")};
    CHECK(at.of(other, "parted") ==
          "The record of one event went two ways; it is left as it is on both.");
    other.peer.parted.insert(EventId("quince"));
    CHECK_THAT(at.of(other, "parted"), Catch::StartsWith("The records of 2 events"));
}

TEST_CASE("a device without room for the key says so, and any digit tries again") {
    Alone at;
    at.others.hasRoom = false;
    at.view.begin();
    CHECK(at.view.page() == text("none"));
    CHECK(at.view.problem().contains(text("no room")));
    at.view.ask();
    CHECK(at.view.problem().isEmpty());
    for (const char* digit = fixed::kCode; *digit != '\0'; ++digit)
        at.view.press(QString(QLatin1Char(*digit)));
    CHECK(at.view.page() == text("enter"));
    CHECK(at.view.problem().contains(text("no room")));
    at.others.hasRoom = true;
    at.view.press(text("8"));
    CHECK(at.view.page() == text("joined"));
    CHECK(at.view.problem().isEmpty());
}

TEST_CASE("each trouble of this device has its own remedy") {
    using Trouble = CrewDevices::Trouble;
    Alone at;
    std::set<QString> said;
    for (const auto trouble :
         {Trouble::NoNetwork, Trouble::PortTaken, Trouble::NotKept, Trouble::NotEncrypted}) {
        at.others.hindrance = trouble;
        at.view.look();
        said.insert(at.view.trouble());
    }
    CHECK(said.size() == 4);
    CHECK(said.count(QString()) == 0);
    at.others.hindrance = Trouble::None;
    at.view.look();
    CHECK(at.view.trouble().isEmpty());
}
