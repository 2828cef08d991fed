/// Somebody comes and somebody goes in the middle of the day, by touch.

#include <catch2/catch.hpp>

#include "planned_walk.h"

using namespace cinder;
using namespace cinder::face;
using namespace cinder::face::scene;

namespace {

/// At the page of the crew, some three quarters of an hour late.
struct CrewWalk : PlannedWalk {
    explicit CrewWalk(const Glass& glass) : PlannedWalk(glass, kLate) {
        openTheOrchard(text("Lead"));
        hearCalls();
        goOn(text("More"), text("Crew"));
        REQUIRE(isAt(text("Crew")));
    }
    [[nodiscard]] QQuickItem* choice(const char* name) const {
        return find(QAccessible::RadioButton, text(name));
    }
    void plan() {
        touch(button(text("Plan the rest for them")));
        app.settlePlan();
    }
};

void somebodyComes(const Glass& glass) {
    CrewWalk walk(glass);
    const Duration late = walk.app.look()->lateness;
    CHECK_FALSE(walk.button(text("Plan the rest for them"))->isEnabled());
    walk.touch(walk.button(text("Somebody comes")));
    // What they can do, and what they are called.
    walk.touch(walk.button(text("+1: General work")));
    walk.touch(walk.button(text("Name: +1")));
    walk.write(text("Bo"));
    walk.touch(walk.button(text("Take it")));
    CHECK(isReadable(walk.app.root(), text("Bo comes")));
    const auto noted = walk.app.journal().size();

    walk.plan();

    CHECK(walk.app.journal().size() == noted + 2);
    CHECK(walk.noted<journal::CrewChanged>() == 1);
    CHECK(walk.isAt(text("Lead")));
    CHECK(walk.app.look()->lateness <= late);
    CHECK(isReadable(walk.app.root(), text("Planned for those who are there")));
    CHECK(walk.app.look()->people.back().name == "Bo");
    // Both in one undo.
    const auto before = walk.app.journal().size();
    CHECK(walk.finger.touch(walk.undoButton()).empty());
    CHECK(walk.app.journal().size() == before + 2);
    CHECK(walk.app.look()->people.size() == 2);
    walk.goOn(text("More"), text("Crew"));
    CHECK(walk.button(text("Name: Bo")) == nullptr);
}

void somebodyGoes(const Glass& glass) {
    CrewWalk walk(glass);
    const auto noted = walk.app.journal().size();
    // The only one who can tend the fire.
    walk.touch(walk.choice("Inés is gone"));
    walk.plan();
    CHECK(walk.app.journal().size() == noted);
    CHECK(walk.isAt(text("Crew")));
    CHECK(find(walk.app.root(), [](QQuickItem& item) {
        return nameOf(item).startsWith(
            text("Nobody there could do what is still to be done: Fire and grate."));
    }));

    walk.touch(walk.button(text("Rowan: Fire and grate")));
    // It waits while one looks elsewhere.
    walk.go(text("Lead"));
    walk.goOn(text("More"), text("Crew"));
    CHECK(isReadable(walk.app.root(),
                     text("Inés is gone · Rowan does: Fire and grate, Knife, General work")));
    walk.plan();
    CHECK(walk.app.journal().size() == noted + 2);
    REQUIRE(walk.isAt(text("Lead")));
    const auto seen = walk.app.look();
    CHECK_FALSE(seen->people[0].isHere);
    CHECK_FALSE(seen->people[0].next);
    const auto plateOf = [&](const char* name) {
        return find(walk.app.root(), [&](QQuickItem& item) {
            return roleOf(item) == QAccessible::ListItem &&
                   nameOf(item).startsWith(text(name) + text(": "));
        });
    };
    CHECK(plateOf("Rowan") != nullptr);
    CHECK(plateOf("Inés") == nullptr);
}

/// Whoever thinks better of it need not wait.
void stopTheSearch(const Glass& glass) {
    CrewWalk walk(glass);
    walk.touch(walk.choice("Inés is gone"));
    walk.touch(walk.button(text("Rowan: Fire and grate")));
    const auto noted = walk.app.journal().size();
    walk.crew().plan();
    REQUIRE(walk.crew().isPlanning());
    CHECK(walk.button(text("Plan the rest for them")) == nullptr);
    CHECK(isReadable(walk.app.root(), text("Planning…")));
    walk.press(walk.button(text("Hold to stop")));
    CHECK_FALSE(walk.crew().isPlanning());
    walk.app.settlePlan();
    CHECK(walk.app.journal().size() == noted);
    CHECK(walk.isAt(text("Crew")));
    CHECK(isReadable(walk.app.root(),
                     text("Inés is gone · Rowan does: Fire and grate, Knife, General work")));
    CHECK(walk.button(text("Plan the rest for them"))->isEnabled());
}

/// From what would help, one touch to the page where it is said who it is.
void askForOneMore(const Glass& glass) {
    PlannedWalk walk(glass, kLate);
    walk.openTheOrchard(text("Lead"));
    walk.hearCalls();
    // Rowan does not come: now one more would help.
    auto crew = walk.app.session().crew();
    crew[1].isHere = false;
    REQUIRE(walk.app.session().changeCrew({crew[1]}));
    walk.app.pass(minutes(1));
    walk.hearCalls();
    walk.goOn(text("More"), text("Promise"));
    walk.app.settlePlan();
    auto* key = scene::find(walk.app.root(), [](QQuickItem& item) {
        return roleOf(item) == QAccessible::Button &&
               nameOf(item).startsWith(text("Do this: One person more from now on: "));
    });
    REQUIRE(key != nullptr);
    const Duration late = walk.app.look()->lateness;
    walk.touch(key);
    REQUIRE(walk.isAt(text("Crew")));
    CHECK(isReadable(walk.app.root(), text("+1 comes")));
    walk.touch(walk.button(text("Plan the rest for them")));
    walk.app.settlePlan();
    CHECK(walk.app.look()->lateness < late);
}

}  // namespace

TEST_CASE("somebody comes in the middle of the day, by touch, on a tablet") {
    somebodyComes(kTablet);
}

TEST_CASE("somebody comes in the middle of the day, by touch, on a phone") {
    somebodyComes(kPhone);
}

TEST_CASE("somebody goes in the middle of the day, by touch, on a tablet") {
    somebodyGoes(kTablet);
}

TEST_CASE("somebody goes in the middle of the day, by touch, on a phone") {
    somebodyGoes(kPhone);
}

TEST_CASE("the search for another crew is stopped by holding, on a tablet") {
    stopTheSearch(kTablet);
}

TEST_CASE("the search for another crew is stopped by holding, on a phone") {
    stopTheSearch(kPhone);
}

TEST_CASE("one person more is asked for where it would help, on a tablet") {
    askForOneMore(kTablet);
}

TEST_CASE("one person more is asked for where it would help, on a phone") {
    askForOneMore(kPhone);
}
