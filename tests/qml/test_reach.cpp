/// What must be in reach wherever somebody is: a call on every page, the key that notes a number on
/// a phone, the way back and the refusal on a sheet, and what is held by a key or a switch.

#include <catch2/catch.hpp>

#include <QCoreApplication>
#include <QQuickWindow>
#include <QTest>

#include "day.h"
#include "editor.h"
#include "fixed_day.h"
#include "planned_walk.h"
#include "ruler.h"
#include "scenes.h"

using namespace cinder;
using namespace cinder::face;
using namespace cinder::face::scene;

namespace {

// Two minutes before the crew of demo-data/orchard-harvest-lunch.json drives in.
const Instant kBefore = parseRfc3339("2027-09-18T10:58:00-04:00").value().at;

QQuickItem* startingWith(Walk& walk, const char* words) {
    return scene::find(walk.app.root(), [&](QQuickItem& item) {
        return roleOf(item) == QAccessible::Button && nameOf(item).startsWith(text(words));
    });
}

QQuickItem* called(QQuickItem& root, const char* name) {
    return scene::find(root,
                       [&](QQuickItem& item) { return item.objectName() == QLatin1String(name); });
}

bool isWhollyInSight(QQuickItem& item) {
    const QRectF whole = item.mapRectToScene(item.boundingRect());
    return visiblePart(item).adjusted(-1, -1, 1, 1).contains(whole) &&
           coverOf(item, whole.center()) == nullptr;
}

/// A face on a day that stands still.
struct Still {
    explicit Still(const Glass& glass)
        : face(std::make_unique<fixed::FixedDoor>(fixed::orchardLunch()), clock,
               {sound, motor, screen}, {{}, {}}) {
        REQUIRE(face.show());
        Ruler::instance().pretend(glass.ppi);
        face.window()->resize({glass.width, glass.height});
    }
    [[nodiscard]] QQuickItem& root() { return *face.window()->contentItem(); }
    [[nodiscard]] Day& day() { return *face.window()->property("day").value<Day*>(); }
    SimulatedClock clock{Instant{}};
    Loudspeaker sound;
    NoMotor motor;
    AnyScreen screen;
    Face face;
};

}  // namespace

TEST_CASE("a call is seen and can be silenced on the pages without ways to the boards") {
    const auto* glass = GENERATE(&kTablet, &kPhone);
    for (const char* page : {"Who holds this device?", "Edit the event"}) {
        INFO(page);
        Walk walk(*glass, kBefore);
        walk.openTheOrchard(text("Fire"));
        walk.goOn(text("More"), text(page));
        walk.app.pass(minutes(4));
        const QString words = walk.app.day().line().callText;
        REQUIRE_FALSE(words.isEmpty());
        CHECK(walk.call() == nullptr);
        auto* band = walk.find(QAccessible::AlertMessage, words);
        REQUIRE(band != nullptr);
        CHECK(isWhollyInSight(*band));
        for (int calls = walk.app.day().ringing()->count(); calls > 0; --calls)
            walk.note<journal::AlarmAcknowledged>(walk.button(text("Heard")));
        CHECK(walk.app.day().ringing()->count() == 0);
        CHECK(walk.button(text("Heard")) == nullptr);
    }
}

TEST_CASE("the device is handed on from the pages of the day") {
    Walk walk(kPhone, kBefore);
    walk.openTheOrchard(text("Fire"), text("Inés"));
    walk.goOn(text("More"), text("Who holds this device?"));
    walk.touch(walk.button(text("Rowan")));
    CHECK(walk.app.day().person() == text("rowan"));
}

TEST_CASE("every key of a number and the key that notes it are in sight on a phone") {
    Still still(kPhone);
    const char* language = GENERATE("en", "es");
    auto& day = still.day();
    for (const char* place : {"fireProbe", "fire", "firePiece"}) {
        static_cast<void>(still.face.draw({text(place),
                                           {kPhone.width, kPhone.height},
                                           kPhone.ppi,
                                           text("noon"),
                                           text(language)}));
        if (place == std::string("fire")) day.fire()->askCoal(text("grate"));
        if (place == std::string("firePiece")) day.fire()->askStart(text("cook/1"));
        if (day.fire()->sheet() == text("piece")) day.fire()->askHand(text("grate"));
        settle(*still.face.window());
        auto* sheet = scene::find(still.root(), named(QAccessible::Dialog, {}));
        REQUIRE(sheet != nullptr);
        INFO(language << ", " << nameOf(*sheet).toStdString());
        int keys = 0;
        for (auto* item : shown(*sheet)) {
            if (!item->inherits("QQuickAbstractButton")) continue;
            INFO(describe(*item));
            CHECK(isWhollyInSight(*item));
            ++keys;
        }
        CHECK(keys >= 12);
    }
}

TEST_CASE("the unit of a number is one key on a phone, and the figure goes along with it") {
    Still still(kPhone);
    static_cast<void>(still.face.draw(
        {text("fire"), {kPhone.width, kPhone.height}, kPhone.ppi, text("noon"), text("en")}));
    auto& fire = *still.day().fire();
    fire.askCoal(text("grate"));
    settle(*still.face.window());
    auto& pad = *fire.pad();
    pad.press(text("2"));
    Finger finger(*still.face.window());
    QStringList met;
    for (qsizetype unit = 0; unit < pad.units().size(); ++unit) {
        met << pad.unitWord();
        CHECK(finger.touch(called(still.root(), "unitKey")).empty());
    }
    CHECK(met == QStringList(pad.units()));
    CHECK(pad.text() == text("2"));
    // A keyboard has its way out of the sheet.
    QTest::keyClick(still.face.window(), Qt::Key_Escape);
    CHECK(fire.sheet().isEmpty());
}

TEST_CASE("on the sheet that moves the bell a touch can be taken back, and a refusal is read") {
    const auto* glass = GENERATE(&kTablet, &kPhone);
    Walk walk(*glass, kBefore);
    walk.openTheOrchard(text("Lead"));
    walk.touch(called(walk.app.root(), "moveBell"));
    walk.note<journal::ServeTimeMoved>(walk.button(text("15 min later")));
    const auto undone = walk.note<journal::Undone>(called(walk.app.root(), "sheetUndo"));
    CHECK(undone.operation.sequence > 0);
    const QString why = text("That is not open just now; nothing was noted.");
    walk.app.day().refuse(why);
    settle(walk.app.window());
    CHECK(isReadable(walk.app.root(), why));
    // A call leads to the board where it is answered.
    walk.app.day().dropRefusal();
    walk.app.pass(minutes(4));
    auto* band = called(walk.app.root(), "sheetCall");
    REQUIRE(band != nullptr);
    walk.touch(band);
    CHECK(walk.call() != nullptr);
}

TEST_CASE("what is held is held on a keyboard too, and pressed twice by a switch") {
    Walk walk(kTablet, kBefore);
    walk.openTheOrchard(text("Fire"));
    auto& window = walk.app.window();
    const auto skips = [&] { return walk.app.journal().size(); };
    const auto focus = [&] {
        auto* held = startingWith(walk, "Hold: skip, on record");
        REQUIRE(held != nullptr);
        held->forceActiveFocus(Qt::TabFocusReason);
    };
    const auto before = skips();
    focus();
    QTest::keyClick(&window, Qt::Key_Return);
    CHECK(skips() == before);
    QTest::keyClick(&window, Qt::Key_Return);
    CHECK(skips() == before + 1);
    settle(window);
    focus();
    QTest::keyPress(&window, Qt::Key_Space);
    QTest::qWait(900);
    CHECK(skips() == before + 2);
    QTest::keyRelease(&window, Qt::Key_Space);
    CHECK(skips() == before + 2);
}

TEST_CASE("a list is ticked from the keyboard without losing the place") {
    Walk walk(kTablet, kBefore);
    walk.openTheOrchard(text("Fire"));
    auto& window = walk.app.window();
    auto* tile = walk.find(QAccessible::CheckBox, {});
    REQUIRE(tile != nullptr);
    tile->forceActiveFocus(Qt::TabFocusReason);
    const auto before = walk.app.journal().size();
    QTest::keyClick(&window, Qt::Key_Space);
    settle(window);
    CHECK(walk.app.journal().size() == before + 1);
    REQUIRE(window.activeFocusItem() != nullptr);
    CHECK(roleOf(*window.activeFocusItem()) == QAccessible::CheckBox);
    CHECK(isChecked(*window.activeFocusItem()));
    // A second time does nothing.
    QTest::keyClick(&window, Qt::Key_Space);
    CHECK(walk.app.journal().size() == before + 1);
}

TEST_CASE("a piece on the grate is opened from the keyboard") {
    Still still(kTablet);
    static_cast<void>(still.face.draw(
        {text("fire"), {kTablet.width, kTablet.height}, kTablet.ppi, text("noon"), text("en")}));
    settle(*still.face.window());
    auto* piece = scene::find(still.root(), [](QQuickItem& item) {
        return roleOf(item) == QAccessible::Button && isInside(item, "GratePlate") &&
               !item.inherits("QQuickAbstractButton") && !item.inherits("QQuickMouseArea");
    });
    REQUIRE(piece != nullptr);
    piece->forceActiveFocus(Qt::TabFocusReason);
    QTest::keyClick(still.face.window(), Qt::Key_Return);
    CHECK(still.day().fire()->sheet() == text("piece"));
}

TEST_CASE("once the day has begun the editor says why nothing can be changed, and what can be") {
    const auto* glass = GENERATE(&kTablet, &kPhone);
    PlannedWalk walk(*glass, kBefore);
    walk.openTheOrchard(text("Buffet"));
    const auto tasks = walk.app.look()->tasks;
    REQUIRE(walk.app.session().start(tasks.front().id));
    walk.app.beat();
    const auto before = walk.app.journal().size();
    walk.goOn(text("More"), text("Edit the event"));
    const auto& editor = *walk.app.window().property("editor").value<Editor*>();
    CHECK(editor.locked().startsWith(text("The day has begun")));
    CHECK(isReadable(walk.app.root(), editor.locked()));
    if (glass == &kPhone) walk.touch(startingWith(walk, "Guests"));
    CHECK(isReadable(walk.app.root(), editor.locked()));
    if (glass == &kTablet) walk.touch(startingWith(walk, "Guests"));
    auto* more = startingWith(walk, "More: ");
    REQUIRE(more != nullptr);
    CHECK_FALSE(more->isEnabled());
    if (auto* plan = walk.button(text("Plan it"))) CHECK_FALSE(plan->isEnabled());
    CHECK(walk.app.journal().size() == before);
}

TEST_CASE("a step at the fire is left out by the Fire board, and nothing is held there before") {
    const auto* glass = GENERATE(&kTablet, &kPhone);
    Walk walk(*glass, kBefore);
    walk.openTheOrchard(text("Fire"));
    CHECK(startingWith(walk, "Hold: leave out") == nullptr);
    walk.touch(called(walk.app.root(), "offerSkip"));
    const auto before = walk.app.journal().size();
    CHECK(walk.finger.hold(startingWith(walk, "Hold: leave out"), 900).empty());
    CHECK(walk.app.journal().size() == before + 1);
    CHECK(walk.app.look()->undo->what == app::UndoOffer::What::Skip);
}
