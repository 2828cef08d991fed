/// The food-safety record by touch alone: a check is entered, a reading out of limit does not let
/// go before somebody says what is done, time control counts down to its discard, and a correction
/// stands beside what it corrects.

#include <catch2/catch.hpp>

#include <cstdio>

#include <QQuickWindow>
#include <QTest>

#include "food_entry.h"
#include "walk.h"

using namespace cinder;
using namespace cinder::face;
using namespace cinder::face::scene;
using std::chrono::hours;
using std::chrono::minutes;

namespace {

// The crew of demo-data/orchard-harvest-lunch.json has just driven in.
const Instant kArrived = parseRfc3339("2027-09-18T11:02:00-04:00").value().at;
const safety::Pan kStew{DishId("stew"), 0};

QString text(const char* words) {
    return QString::fromUtf8(words);
}

/// A crew member at the record page, counting touches.
struct Keeper {
    explicit Keeper(const Glass& glass) : walk(glass, kArrived) {
        static_cast<void>(takeComplaints());
        walk.openTheOrchard(text("Buffet"));
        walk.hearCalls();
    }
    ~Keeper() {
        for (const auto& complaint : takeComplaints())
            FAIL_CHECK(complaint);
    }
    Keeper(const Keeper&) = delete;
    Keeper& operator=(const Keeper&) = delete;

    void touch(QQuickItem* item) {
        ++touches;
        walk.touch(item);
    }
    template <class Fact>
    Fact write(QQuickItem* item) {
        ++touches;
        return std::get<Fact>(walk.note<safety::Fact>(item));
    }
    /// The first button whose name begins with `words`, scrolled for.
    QQuickItem* starting(const char* words) {
        return scene::find(walk.app.root(), [&](QQuickItem& item) {
            return roleOf(item) == QAccessible::Button && nameOf(item).startsWith(text(words));
        });
    }
    QQuickItem* onSheet(const QString& name) {
        auto* sheet = walk.find(QAccessible::Dialog, {});
        REQUIRE(sheet != nullptr);
        return scene::find(*sheet, named(QAccessible::Button, name));
    }
    bool isSheetOpen() { return walk.find(QAccessible::Dialog, {}) != nullptr; }
    void type(const char* digits) {
        for (const char* digit = digits; *digit != 0; ++digit)
            touch(onSheet(QString(QLatin1Char(*digit))));
    }
    void goToTheRecord() {
        ++touches;
        ++touches;
        walk.goOn(text("More"), text("Record"));
    }
    app::FoodPanCard pan(const safety::Pan& wanted) {
        for (const auto& card : walk.app.look()->food.pans)
            if (card.pan == wanted) return card;
        FAIL("no such pan");
        return {};
    }

    Walk walk;
    int touches = 0;
};

void enterACheck(const Glass& glass) {
    Keeper keeper(glass);
    keeper.goToTheRecord();
    const int way = keeper.touches;
    keeper.touches = 0;
    keeper.touch(keeper.starting("Apple and fennel slaw"));
    keeper.type("39");
    const auto good = keeper.write<safety::FoodMeasured>(keeper.onSheet(text("Write down")));
    CHECK(good.pan.dish == DishId("slaw"));
    CHECK(good.purpose == safety::Purpose::ArriveCold);
    CHECK(good.reading == safety::inFahrenheit(39));
    CHECK_FALSE(keeper.isSheetOpen());
    CHECK(keeper.pan({DishId("slaw"), 0}).standing.control == safety::Control::Cold);
    std::printf("%s: %d touches to the record, then %d for a check in limit (two digits)\n",
                glass.name, way, keeper.touches);
}

}  // namespace

TEST_CASE("a check is entered with one hand on a tablet") {
    enterACheck(kTablet);
}

TEST_CASE("a check is entered with one hand on a phone") {
    enterACheck(kPhone);
}

TEST_CASE("a reading out of limit asks what is done, and does not close before it is said") {
    Keeper keeper(kPhone);
    keeper.goToTheRecord();
    keeper.touches = 0;
    keeper.touch(keeper.starting("Apple and fennel slaw"));
    keeper.type("52");
    static_cast<void>(keeper.write<safety::FoodMeasured>(keeper.onSheet(text("Write down"))));
    REQUIRE(keeper.isSheetOpen());
    CHECK(isReadable(keeper.walk.app.root(), text("52\u00a0°F is out of limit.")));
    CHECK(keeper.onSheet(text("Close")) == nullptr);
    // The dimmed board beside the sheet does not let go either.
    keeper.walk.finger.touchAt({5, 5});
    CHECK(keeper.isSheetOpen());
    const auto open = keeper.pan({DishId("slaw"), 0}).standing.open;
    REQUIRE(open.size() == 1);
    CHECK(keeper.walk.app.look()->food.withoutAction == 1);

    // FDA Food Code 2022, 3-202.11: what comes too warm is not taken in.
    auto* discard = keeper.onSheet(text("Hold to discard"));
    const auto before = keeper.walk.app.journal().size();
    CHECK(keeper.walk.finger.hold(discard, 900).empty());
    CHECK(keeper.walk.app.journal().size() == before + 1);
    CHECK_FALSE(keeper.isSheetOpen());
    CHECK(keeper.walk.app.look()->food.withoutAction == 0);
    CHECK(keeper.pan({DishId("slaw"), 0}).standing.control == safety::Control::Discarded);
}

TEST_CASE("a roast below the minimum counts when it was kept for the time of the chart") {
    Keeper keeper(kPhone);
    keeper.goToTheRecord();
    keeper.touch(keeper.walk.find(QAccessible::RadioButton, text("Pans")));
    const auto measure = [&] {
        keeper.touch(scene::find(keeper.walk.app.root(), [](QQuickItem& item) {
            return roleOf(item) == QAccessible::Button &&
                   item.property("key").toString() == text("lamb#0");
        }));
        keeper.touch(keeper.onSheet(text("Measure")));
        auto* sheet = keeper.walk.find(QAccessible::Dialog, {});
        REQUIRE(sheet != nullptr);
        keeper.touch(scene::find(*sheet, [](QQuickItem& item) {
            return roleOf(item) == QAccessible::Button &&
                   nameOf(item).startsWith(text("Butterflied leg of lamb"));
        }));
        keeper.touch(keeper.onSheet(text("Cooked through")));
        keeper.type("134");
        keeper.touch(keeper.onSheet(text("Write down")));
    };
    // FDA Food Code 2022, 3-401.11(B): 56 min at 133 degF.
    measure();
    const auto kept = keeper.write<safety::FoodMeasured>(
        keeper.onSheet(text("Kept at 133\u00a0°F or above for 56\u00a0min or longer")));
    CHECK(kept.held == minutes(56));
    CHECK_FALSE(keeper.isSheetOpen());
    CHECK(keeper.walk.app.look()->food.withoutAction == 0);

    measure();
    const auto brief = keeper.write<safety::FoodMeasured>(keeper.onSheet(text("Not that long")));
    CHECK_FALSE(brief.held);
    CHECK(isReadable(keeper.walk.app.root(), text("134\u00a0°F is out of limit.")));
}

// FDA Food Code 2022, 3-202.11(A): 5 degC or 41 degF on arrival; 20 degC is far above, 20 degF
// frozen.
TEST_CASE("digits that pass only on the wrong scale are asked about before they are written") {
    Keeper keeper(kPhone);
    keeper.goToTheRecord();
    const auto type = [&] {
        keeper.touch(keeper.starting("Apple and fennel slaw"));
        keeper.type("20");
        keeper.touch(keeper.onSheet(text("Write down")));
        CHECK(isReadable(keeper.walk.app.root(),
                         text("20\u00a0°F: is that the scale it was read on?")));
    };
    SECTION("it was degrees Celsius, and too warm") {
        type();
        const auto other = keeper.write<safety::FoodMeasured>(keeper.onSheet(text("20\u00a0°C")));
        INFO(other.reading.value.celsius());
        CHECK(other.reading.scale == safety::Scale::Celsius);
        CHECK(other.reading.value.celsius() == Approx(20));
        CHECK(isReadable(keeper.walk.app.root(), text("20\u00a0°C is out of limit.")));
    }
    SECTION("it is frozen, and taken as it is") {
        type();
        const auto frozen = keeper.write<safety::FoodMeasured>(keeper.onSheet(text("20\u00a0°F")));
        CHECK(frozen.reading == safety::inFahrenheit(20));
        CHECK_FALSE(keeper.isSheetOpen());
    }
    SECTION("closing goes back to the keys with nothing written") {
        const auto before = keeper.walk.app.journal().size();
        type();
        keeper.touch(keeper.onSheet(text("Close")));
        CHECK(keeper.onSheet(text("Write down")) != nullptr);
        CHECK(keeper.walk.app.journal().size() == before);
    }
}

TEST_CASE("a new pan is asked what it was filled out of, and takes that record along") {
    Keeper keeper(kTablet);
    keeper.goToTheRecord();
    keeper.touch(keeper.starting("Apple and fennel slaw"));
    keeper.touch(keeper.onSheet(text("Whole dish")));
    keeper.touch(keeper.onSheet(text("Pan 1, new")));
    keeper.type("39");
    const auto first = keeper.write<safety::FoodMeasured>(keeper.onSheet(text("Write down")));
    CHECK(first.pan.number == 1);
    CHECK_FALSE(first.from);
    const auto openNewPan = [&] {
        keeper.touch(scene::find(keeper.walk.app.root(), [](QQuickItem& item) {
            return roleOf(item) == QAccessible::Button &&
                   item.property("key").toString() == text("slaw#1");
        }));
        keeper.touch(keeper.onSheet(text("Measure")));
        keeper.touch(keeper.onSheet(text("Pan 1")));
        keeper.touch(keeper.onSheet(text("Pan 2, new")));
        CHECK(isReadable(keeper.walk.app.root(), text("Out of which pan was it filled?")));
    };
    SECTION("out of the first") {
        openNewPan();
        keeper.touch(keeper.onSheet(text("Pan 1")));
        keeper.type("40");
        const auto second = keeper.write<safety::FoodMeasured>(keeper.onSheet(text("Write down")));
        CHECK(second.pan.number == 2);
        CHECK(second.from == 1);
    }
    SECTION("not answered, out of the one that is lost first") {
        openNewPan();
        keeper.touch(keeper.onSheet(text("Close")));
        keeper.type("40");
        CHECK(keeper.write<safety::FoodMeasured>(keeper.onSheet(text("Write down"))).from == 1);
    }
    SECTION("out of none") {
        openNewPan();
        keeper.touch(keeper.onSheet(text("Out of none of them")));
        keeper.type("40");
        CHECK_FALSE(keeper.write<safety::FoodMeasured>(keeper.onSheet(text("Write down"))).from);
    }
}

TEST_CASE("a slip of the finger is taken back from the sheet itself") {
    Keeper keeper(kTablet);
    keeper.goToTheRecord();
    keeper.touch(keeper.starting("Apple and fennel slaw"));
    keeper.type("93");
    static_cast<void>(keeper.write<safety::FoodMeasured>(keeper.onSheet(text("Write down"))));
    REQUIRE(keeper.isSheetOpen());
    auto* slip = scene::find(keeper.walk.app.root(), [](QQuickItem& item) {
        return roleOf(item) == QAccessible::Button && nameOf(item).startsWith(text("Slip"));
    });
    static_cast<void>(keeper.walk.note<journal::Undone>(slip));
    CHECK_FALSE(keeper.isSheetOpen());
    CHECK(keeper.walk.app.look()->food.withoutAction == 0);
}

TEST_CASE("on a sheet that asks for an answer no touch but its own reading is taken back") {
    Keeper keeper(kTablet);
    const auto slip = [&] {
        return scene::find(keeper.walk.app.root(), [](QQuickItem& item) {
            return roleOf(item) == QAccessible::Button && nameOf(item).startsWith(text("Slip"));
        });
    };
    keeper.goToTheRecord();
    keeper.touch(keeper.starting("Apple and fennel slaw"));
    keeper.type("52");
    static_cast<void>(keeper.write<safety::FoodMeasured>(keeper.onSheet(text("Write down"))));
    CHECK(slip() != nullptr);
    // Somebody else at the same device: the newest touch is theirs, and the offer with it.
    auto& session = keeper.walk.app.session();
    REQUIRE(session.moveServe(keeper.walk.app.look()->serve + minutes(5)));
    keeper.walk.app.beat();
    settle(keeper.walk.app.window());
    REQUIRE(keeper.walk.app.look()->undo);
    REQUIRE(keeper.isSheetOpen());
    CHECK(slip() == nullptr);
    // The same for another entry of the record.
    REQUIRE(session.testThermometer(safety::ThermometerId("probe-1"), safety::inFahrenheit(32)));
    keeper.walk.app.beat();
    settle(keeper.walk.app.window());
    REQUIRE(keeper.walk.app.look()->undo->what == app::UndoOffer::What::Record);
    REQUIRE(keeper.isSheetOpen());
    CHECK(slip() == nullptr);
}

TEST_CASE("food that leaves control counts down and ends in discard") {
    Keeper keeper(kTablet);
    keeper.goToTheRecord();
    keeper.touch(keeper.starting("Apple and fennel slaw"));
    keeper.type("39");
    static_cast<void>(keeper.write<safety::FoodMeasured>(keeper.onSheet(text("Write down"))));
    const auto openSlaw = [&] {
        keeper.touch(scene::find(keeper.walk.app.root(), [](QQuickItem& item) {
            return roleOf(item) == QAccessible::Button &&
                   item.property("key").toString() == text("slaw#0");
        }));
    };
    openSlaw();
    keeper.touch(keeper.onSheet(text("No longer kept hot or cold")));
    keeper.type("40");
    const auto left = keeper.write<safety::ControlLeft>(keeper.onSheet(text("Write down")));
    CHECK(left.rule == safety::TimeRule::Cold);
    CHECK(isReadable(keeper.walk.app.root(), text("4:00")));
    openSlaw();
    // FDA Food Code 2022, 3-501.19(B): the clock cannot be started again.
    CHECK(keeper.onSheet(text("No longer kept hot or cold")) == nullptr);
    keeper.touch(keeper.onSheet(text("Close")));
    keeper.walk.app.pass(hours(4));
    const auto standing = keeper.pan({DishId("slaw"), 0}).standing;
    REQUIRE(standing.lost);
    CHECK(standing.lost->why == safety::Lost::Why::TimeOver);
    CHECK_FALSE(standing.mayServe);
}

TEST_CASE("a correction is a new entry and the old one stays to be seen") {
    Keeper keeper(kTablet);
    keeper.goToTheRecord();
    keeper.touch(keeper.starting("Apple and fennel slaw"));
    keeper.type("40");
    static_cast<void>(keeper.write<safety::FoodMeasured>(keeper.onSheet(text("Write down"))));
    keeper.touch(keeper.walk.find(QAccessible::RadioButton, text("Entries")));
    keeper.touch(keeper.starting("Amend Apple and fennel slaw"));
    keeper.type("38");
    keeper.touch(keeper.onSheet(text("Write down")));
    const auto corrected = keeper.write<safety::FoodMeasured>(keeper.onSheet(text("Typed wrong")));
    REQUIRE(corrected.corrects);
    CHECK(corrected.reason == "Typed wrong");
    CHECK(keeper.walk.app.look()->food.entries.size() == 2);
    CHECK(isReadable(keeper.walk.app.root(), text("corrects an earlier entry: Typed wrong")));
}

TEST_CASE("a thermometer that fails its ice point speaks for nothing") {
    Keeper keeper(kTablet);
    keeper.goToTheRecord();
    keeper.touch(keeper.starting("Test a thermometer"));
    keeper.type("36");
    static_cast<void>(keeper.write<safety::ThermometerTested>(keeper.onSheet(text("Write down"))));
    keeper.touch(keeper.starting("Apple and fennel slaw"));
    keeper.type("39");
    static_cast<void>(keeper.write<safety::FoodMeasured>(keeper.onSheet(text("Write down"))));
    CHECK_FALSE(keeper.pan({DishId("slaw"), 0}).standing.mayServe);
}

TEST_CASE("signature and limits are one touch from the record on a phone") {
    Keeper keeper(kPhone);
    keeper.goToTheRecord();
    for (const char* part : {"Checks", "Entries"}) {
        INFO(part);
        keeper.touch(keeper.walk.find(QAccessible::RadioButton, text(part)));
        keeper.touch(keeper.walk.button(text("Sign and limits")));
        CHECK(isReadable(keeper.walk.app.root(), text("Signature of the person in charge")));
    }
}

TEST_CASE("the record is verified and signed, and a stricter local rule is named, by touch") {
    Keeper keeper(kTablet);
    keeper.goToTheRecord();
    keeper.touch(keeper.walk.find(QAccessible::RadioButton, text("Sign and limits")));
    keeper.touch(keeper.starting("Verify"));
    CHECK(isReadable(keeper.walk.app.root(), text("Every entry is as it was written.")));

    keeper.touch(keeper.starting("Hot holding: 135"));
    // Looser than FDA Food Code 2022, 3-501.16(A)(1): refused beside the field, with the remedy.
    keeper.type("130");
    CHECK(isReadable(keeper.walk.app.root(), text("At least 135\u00a0°F")));
    CHECK_FALSE(keeper.onSheet(text("Write down"))->isEnabled());
    for (int i = 0; i < 3; ++i)
        keeper.touch(keeper.onSheet(text("Erase")));
    keeper.type("140");
    keeper.touch(keeper.onSheet(text("Write down")));
    const auto rules =
        keeper.write<safety::LocalRulesNamed>(keeper.onSheet(text("County health department")));
    REQUIRE(rules.rules.limits.size() == 1);
    CHECK(rules.rules.limits[0].field == "hotHold");
    const auto limits = keeper.walk.app.look()->food.limits;
    CHECK_FALSE(limits.meets(safety::Degree::HotHold, safety::inFahrenheit(139)));
    CHECK(limits.meets(safety::Degree::HotHold, safety::inFahrenheit(140)));

    // An authority that is none of those offered is named in words.
    keeper.touch(keeper.starting("Cold holding: 41"));
    keeper.type("38");
    keeper.touch(keeper.onSheet(text("Write down")));
    keeper.touch(scene::find(keeper.walk.app.root(), [](QQuickItem& item) {
        return item.objectName() == QLatin1String("ownWords");
    }));
    for (const char letter : std::string(" Lake district "))
        QTest::keyClick(&keeper.walk.app.window(), letter);
    const auto named = keeper.write<safety::LocalRulesNamed>(keeper.onSheet(text("Write down")));
    CHECK(named.rules.authority == "Lake district");
    CHECK(named.rules.limits.size() == 2);
    CHECK(keeper.walk.app.look()->food.limits.authority() == "Lake district");

    const auto before = keeper.walk.app.journal().size();
    CHECK(keeper.walk.finger.hold(keeper.starting("Hold: sign as In"), 900).empty());
    CHECK(keeper.walk.app.journal().size() == before + 1);
    REQUIRE(keeper.walk.app.look()->food.signature);
    CHECK(keeper.walk.app.look()->food.signature->name == "Inés");
}
