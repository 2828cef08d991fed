/// A day that has got late, by touch: how late, what would help, and a dish that is left out.

#include <catch2/catch.hpp>

#include "planned_walk.h"
#include "settings.h"

using namespace cinder;
using namespace cinder::face;
using namespace cinder::face::scene;

namespace {

/// Some three quarters of an hour late, at what would help.
struct LateWalk : PlannedWalk {
    explicit LateWalk(const Glass& glass) : PlannedWalk(glass, kLate) {
        openTheOrchard(text("Lead"));
        hearCalls();
        go(text("Lead"));
        const auto line = app.day().line();
        REQUIRE(line.isLate);
        touch(button(line.ready + text(" · ") + line.spare));
        app.settlePlan();
        REQUIRE(isAt(text("Promise")));
    }
    /// What the first way that begins so says of itself; empty: there is none.
    [[nodiscard]] QString way(const QString& begins) const {
        auto* ways = promise().waysOut()->rows();
        for (int row = 0; row < ways->count(); ++row) {
            const QString said =
                ways->data(ways->index(row), ways->roleNames().key("text")).toString();
            if (said.startsWith(begins)) return said;
        }
        return {};
    }
};

/// From the plate that says how late a day has got, the answer that was given before it must not
/// read as if it were of now.
void askHowLateItIs(const Glass& glass) {
    LateWalk walk(glass);
    const auto noted = walk.app.journal().size();
    REQUIRE(walk.promise().isKept());
    CHECK(isReadable(walk.app.root(), text("As the day runs now")));
    CHECK(isReadable(walk.app.root(),
                     walk.app.day().line().ready + text(" · ") + walk.app.day().line().spare));
    CHECK(isReadable(walk.app.root(), text("As it was promised before the day")));
    auto* ways = walk.promise().waysOut()->rows();
    REQUIRE(ways->count() > 0);
    const auto said = [&](const char* role) {
        return ways->data(ways->index(0), ways->roleNames().key(role)).toString();
    };
    CHECK(isReadable(walk.app.root(), said("text")));
    CHECK(isReadable(walk.app.root(), said("note")));
    // Looking for them is no touch: nothing is noted.
    CHECK(walk.app.journal().size() == noted);
    // The answers that stand there speak the language that is chosen.
    walk.app.settings().setLanguage(text("es"));
    CHECK(walk.promise().answer().startsWith(text("Se puede")));
    CHECK(said("note").startsWith(text("list")));
    walk.app.settings().setLanguage(text("en"));
    CHECK(walk.promise().answer().startsWith(text("It can be done")));
}

void leaveOutADish(const Glass& glass) {
    LateWalk walk(glass);
    const QString way = walk.way(text("Leave out: "));
    REQUIRE_FALSE(way.isEmpty());
    const Duration late = walk.app.look()->lateness;
    const auto noted = walk.app.journal().size();
    auto* key = walk.button(text("Hold: ") + way);
    // A slip of the finger leaves nothing out.
    walk.touch(key);
    // Nor does what is stopped while it is planned.
    walk.press(key);
    REQUIRE(walk.promise().waysOut()->isPlanning());
    walk.press(walk.button(text("Hold to stop planning: ") + way));
    CHECK_FALSE(walk.promise().waysOut()->isPlanning());
    walk.app.settlePlan();
    CHECK(walk.app.journal().size() == noted);
    key = walk.button(text("Hold: ") + way);
    CHECK(walk.finger.hold(key, 1500).empty());
    walk.app.settlePlan();

    CHECK(walk.app.journal().size() == noted + 2);
    CHECK(walk.noted<journal::DishLeftOut>() == 1);
    CHECK(walk.app.look()->lateness < late);
    const QString dish = way.mid(text("Leave out: ").size());
    CHECK(isReadable(walk.app.root(), text("Left out: ") + dish));
    CHECK(walk.way(way).isEmpty());

    // Both in one undo.
    const auto before = walk.app.journal().size();
    CHECK(walk.finger.touch(walk.undoButton()).empty());
    walk.app.settlePlan();
    CHECK(walk.app.journal().size() == before + 2);
    CHECK(walk.app.look()->lateness == late);
    CHECK(isReadable(walk.app.root(), text("As the day runs now")));
    CHECK_FALSE(walk.way(way).isEmpty());
}

/// Long after: where the whole plan is listed.
void bringADishBack(const Glass& glass) {
    LateWalk walk(glass);
    const auto left = walk.app.session().askToLeaveOut(DishId{"lamb"}).value();
    const TaskId first = std::get<journal::DishLeftOut>(left.bodies.back()).tasks.front();
    REQUIRE(walk.app.session().leaveOut(DishId{"lamb"}));
    walk.app.pass(minutes(2));
    walk.hearCalls();
    walk.goOn(text("More"), text("Run sheet"));
    walk.touch(walk.find(QAccessible::RadioButton, text("List")));
    auto* plate = walk.plateOf(first);
    REQUIRE(plate != nullptr);
    CHECK(walk.finger
              .touch(scene::find(*plate,
                                 [](QQuickItem& item) {
                                     return roleOf(item) == QAccessible::Button &&
                                            nameOf(item).startsWith(text("Bring back: "));
                                 }))
              .empty());
    walk.app.settlePlan();
    CHECK(walk.noted<journal::Undone>() == 1);
    CHECK(walk.card(first).state != app::TaskState::Skipped);
    CHECK(walk.app.look()->lateness < minutes(90));
}

/// The answers follow the day without a touch.
void waitAtTheWaysOut(const Glass& glass) {
    LateWalk walk(glass);
    const auto noteOf = [&] {
        auto* ways = walk.promise().waysOut()->rows();
        QStringList notes;
        for (int row = 0; row < ways->count(); ++row)
            notes << ways->data(ways->index(row), ways->roleNames().key("note")).toString();
        return notes.join(text("; ")).toStdString();
    };
    const std::string before = noteOf();
    // The answers come out of the event loop, which does not run between these lines.
    walk.app.clock.advance(minutes(20));
    walk.app.beat();
    // Until the new ones are there the last ones stay.
    CHECK(walk.promise().waysOut()->isReckoning());
    CHECK(noteOf() == before);
    walk.app.settlePlan();
    CHECK(noteOf() != before);
}

}  // namespace

TEST_CASE("a late day comes before what was promised, on a tablet") {
    askHowLateItIs(kTablet);
}

TEST_CASE("a late day comes before what was promised, on a phone") {
    askHowLateItIs(kPhone);
}

TEST_CASE("a dish is left out of a late day by touch, and comes back, on a tablet") {
    leaveOutADish(kTablet);
}

TEST_CASE("a dish is left out of a late day by touch, and comes back, on a phone") {
    leaveOutADish(kPhone);
}

TEST_CASE("a dish that was left out is brought back by touch, on a tablet") {
    bringADishBack(kTablet);
}

TEST_CASE("a dish that was left out is brought back by touch, on a phone") {
    bringADishBack(kPhone);
}

TEST_CASE("what would help is reckoned again while a late day goes on") {
    waitAtTheWaysOut(kPhone);
}
