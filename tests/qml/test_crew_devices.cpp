/// The devices of a crew by touch: a code is shown on one and typed on another, who is missing is
/// said on the boards, and what another device adds is there at once.

#include <catch2/catch.hpp>

#include "crew_devices.h"
#include "day.h"
#include "fixed_crew_devices.h"
#include "fixed_day.h"
#include "planned_walk.h"
#include "settings.h"

using namespace cinder;
using namespace cinder::face;
using namespace cinder::face::scene;
using fixed::FixedCrewDevices;
using fixed::nearDevice;
using std::chrono::seconds;

namespace {

constexpr const char* kWrongDigit = "One digit is not right. Compare it with the other screen.";

QQuickItem* startingWith(QQuickItem& root, const char* words) {
    return scene::find(root, [&](QQuickItem& item) {
        return roleOf(item) == QAccessible::Button && nameOf(item).startsWith(text(words));
    });
}

bool isWhollyInSight(QQuickItem& item) {
    const QRectF whole = item.mapRectToScene(item.boundingRect());
    return visiblePart(item).adjusted(-1, -1, 1, 1).contains(whole) &&
           coverOf(item, whole.center()) == nullptr;
}

void type(Walk& walk, const std::string& digits) {
    for (const char digit : digits)
        walk.touch(walk.button(QString(QLatin1Char(digit))));
}

/// A code with a slip in its last digit, mended without typing the rest again.
void enterTheCode(Walk& walk, const FixedCrewDevices& others) {
    walk.touch(startingWith(walk.app.root(), "Enter a code"));
    std::string slip = fixed::kCode;
    slip.back() = '9';
    type(walk, slip);
    CHECK_FALSE(others.isJoined());
    CHECK(isReadable(walk.app.root(), text(kWrongDigit)));
    for (const char* group : {"3141", "5926", "5358", "9729"})
        CHECK(isReadable(walk.app.root(), text(group)));
    for (const char* key : {"1", "2", "3", "4", "5", "6", "7", "8", "9", "0", "Erase"}) {
        INFO(key);
        auto* plate = walk.button(text(key));
        REQUIRE(plate != nullptr);
        CHECK(isWhollyInSight(*plate));
    }

    walk.touch(walk.button(text("Erase")));
    CHECK(isReadable(walk.app.root(), text("972–")));
    CHECK_FALSE(isReadable(walk.app.root(), text(kWrongDigit)));
    type(walk, "8");
    CHECK(others.kept == fixed::kCode);
    CHECK(walk.button(text("Erase")) == nullptr);
    CHECK(isReadable(walk.app.root(), text("No other device has been in reach yet.")));
}

/// A face on a day that stands still.
struct StillDay {
    explicit StillDay(bool isOpen = true) {
        auto made = std::make_unique<fixed::FixedDoor>(fixed::orchardLunch());
        door = made.get();
        door->isOpen = isOpen;
        others.kept = fixed::kCode;
        face = std::make_unique<Face>(std::move(made), clock,
                                      Devices{sound, motor, screen, nullptr, nullptr, &others},
                                      Places{});
        REQUIRE(face->show());
        face->window()->property("settings").value<Settings*>()->setLanguage(text("en"));
        face->window()->property("settings").value<Settings*>()->setTwelveHour(false);
    }
    void go(const char* place) {
        static_cast<void>(face->draw(
            {text(place), {kTablet.width, kTablet.height}, kTablet.ppi, text("noon"), text("en")}));
        settle(*face->window());
    }
    /// The only other device is that of Rowan, and is so.
    void put(const CrewDevices::Other& other) {
        others.seen = {other};
        others.sayChanged();
        settle(*face->window());
    }
    [[nodiscard]] bool says(const char* words) const { return isReadable(root(), text(words)); }
    [[nodiscard]] Instant now() const { return door->day.now; }
    [[nodiscard]] QQuickItem& root() const { return *face->window()->contentItem(); }

    SimulatedClock clock{Instant{}};
    Loudspeaker sound;
    NoMotor motor;
    AnyScreen screen;
    FixedCrewDevices others;
    fixed::FixedDoor* door = nullptr;
    std::unique_ptr<Face> face;
};

}  // namespace

TEST_CASE(
    "a code is typed with a glove on a device without any event, and a slip costs one digit") {
    const auto* glass = GENERATE(&kTablet, &kPhone);
    static_cast<void>(takeComplaints());
    FixedCrewDevices others;
    Walk walk(*glass, kArrived, &others);
    walk.touch(walk.button(text("Devices of the crew")));
    REQUIRE(walk.isAt(text("Devices")));
    enterTheCode(walk, others);
    walk.touch(walk.button(text("Back")));
    CHECK(walk.isAt(text("Events")));
    for (const auto& complaint : takeComplaints())
        FAIL_CHECK(complaint);
}

TEST_CASE("a code is typed in the middle of a day as well, and the way back leads to it") {
    const auto* glass = GENERATE(&kTablet, &kPhone);
    FixedCrewDevices others;
    Walk walk(*glass, kArrived, &others);
    walk.openTheOrchard(text("Lead"));
    walk.hearCalls();
    walk.goOn(text("More"), text("Devices"));
    enterTheCode(walk, others);
    walk.touch(walk.button(text("Back")));
    CHECK(walk.isAt(text("More")));
}

TEST_CASE("whoever looks away from a code that is typed finds it again as it was") {
    FixedCrewDevices others;
    Walk walk(kPhone, kArrived, &others);
    walk.touch(walk.button(text("Devices of the crew")));
    walk.touch(startingWith(walk.app.root(), "Enter a code"));
    type(walk, "31415");
    walk.touch(walk.button(text("Back")));
    walk.touch(startingWith(walk.app.root(), "Enter a code"));
    CHECK(isReadable(walk.app.root(), text("3141")));
    CHECK(isReadable(walk.app.root(), text("5–––")));
}

TEST_CASE("the first device shows its code, who joins appears under it, and leaving is held") {
    const auto* glass = GENERATE(&kTablet, &kPhone);
    FixedCrewDevices others;
    Walk walk(*glass, kArrived, &others);
    walk.openTheOrchard(text("Lead"));
    walk.hearCalls();
    walk.goOn(text("More"), text("Devices"));
    walk.touch(startingWith(walk.app.root(), "Show a code"));
    for (const char* group : {"3141", "5926", "5358", "9728"})
        CHECK(isReadable(walk.app.root(), text(group)));

    others.seen = {nearDevice("3f2a91c4", "Rowan", kArrived)};
    others.sayChanged();
    settle(walk.app.window());
    CHECK(walk.find(QAccessible::ListItem,
                    text("Rowan's device: In reach, everything is on both")) != nullptr);
    walk.touch(walk.button(text("Done")));
    CHECK(isReadable(walk.app.root(), text("1 of 1 in reach")));
    walk.touch(walk.button(text("Show the code again")));
    CHECK(isReadable(walk.app.root(), text("9728")));
    walk.touch(walk.button(text("Back")));

    auto* leave = walk.button(text("Hold: leave the other devices"));
    CHECK(walk.finger.touch(leave).empty());
    CHECK(others.isJoined());
    CHECK(walk.finger.hold(leave, 900).empty());
    CHECK_FALSE(others.isJoined());
    CHECK(startingWith(walk.app.root(), "Show a code") != nullptr);
}

TEST_CASE("a device that knows of no others shows nothing of them") {
    Walk walk(kPhone, kArrived);
    CHECK(walk.button(text("Devices of the crew")) == nullptr);
    walk.openTheOrchard(text("Lead"));
    walk.hearCalls();
    walk.go(text("More"));
    CHECK(walk.button(text("Devices")) == nullptr);
}

TEST_CASE(
    "the others are told who holds this device: the person, or the board until one is named") {
    FixedCrewDevices others;
    Walk walk(kTablet, kArrived, &others);
    walk.openTheOrchard(text("Fire"));
    CHECK(others.holder == "Fire");
    walk.hearCalls();
    walk.goOn(text("More"), text("Who holds this device?"));
    walk.touch(walk.button(text("Rowan")));
    CHECK(others.holder == "Rowan");
    walk.touch(startingWith(walk.app.root(), "Lead"));
    CHECK(others.holder == "Rowan");
}

TEST_CASE("an event that another device adds is in the list at once, also seen from its page") {
    StillDay still(false);
    const auto arrive = [&](const char* name) {
        const auto& day = still.door->day;
        still.door->others.push_back(
            {EventId(name), LocalText(name), day.serve, day.offset, false});
        still.others.sayAdded();
        settle(*still.face->window());
    };
    settle(*still.face->window());
    REQUIRE(startingWith(still.root(), "Open Barn supper") == nullptr);
    arrive("Barn supper");
    CHECK(startingWith(still.root(), "Open Barn supper") != nullptr);

    still.face->go(text("devices"));
    arrive("Quince tea");
    still.face->go(text("start"));
    settle(*still.face->window());
    CHECK(startingWith(still.root(), "Open Quince tea") != nullptr);
}

TEST_CASE("what another device notes is on the boards at once") {
    StillDay still;
    still.go("lead");
    still.door->day.serve += std::chrono::minutes(15);
    still.others.sayAdded();
    settle(*still.face->window());
    CHECK(still.face->window()->property("day").value<Day*>()->snapshot()->serve ==
          still.door->day.serve);
}

TEST_CASE("the lead sees who has been out of reach for more than two minutes, and what to do") {
    constexpr const char* kAway =
        "Rowan's device is out of reach since 11:39: bring it near, into the same network.";
    StillDay still;
    still.go("lead");
    auto rowan = nearDevice("3f2a91c4", "Rowan", still.now());
    rowan.isInReach = false;
    rowan.lastSeen = still.now() - seconds(100);
    still.put(rowan);
    CHECK_FALSE(still.says(kAway));

    rowan.lastSeen = still.now() - minutes(3);
    still.put(rowan);
    CHECK(still.says(kAway));
    // Time alone is enough.
    rowan.lastSeen = still.now() - seconds(60);
    still.put(rowan);
    CHECK_FALSE(still.says(kAway));
    still.door->day.now += minutes(2);
    still.face->beatNow();
    settle(*still.face->window());
    CHECK(
        still.says("Rowan's device is out of reach since 11:41: bring it near, into the same "
                   "network."));

    rowan.isInReach = true;
    still.put(rowan);
    CHECK_FALSE(
        still.says("Rowan's device is out of reach since 11:41: bring it near, into the "
                   "same network."));
}

TEST_CASE("the lead sees clocks that are apart, and a device that is itself alone") {
    StillDay still;
    still.go("lead");
    auto rowan = nearDevice("3f2a91c4", "Rowan", still.now());
    rowan.peer.standing = sync::Standing::ClocksApart;
    rowan.peer.clock->ahead = minutes(41);
    still.put(rowan);
    CHECK(
        still.says("Rowan's device · The clocks are 41\u00a0min apart: set the wrong one right. "
                   "Nothing is exchanged until then."));

    rowan.isInReach = false;
    rowan.lastSeen = still.now() - minutes(3);
    still.others.hindrance = CrewDevices::Trouble::NoNetwork;
    still.put(rowan);
    CHECK(
        still.says("This device is in no local network. Switch on a hotspot on one phone and join "
                   "it with the others; no internet is needed."));
}
