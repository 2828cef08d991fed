/// After the bell by touch alone: the van does not leave before the fire is safe, and the day is
/// looked back upon.

#include <catch2/catch.hpp>

#include "app/rehearsal_crew.h"
#include "walk.h"

using namespace cinder;
using namespace cinder::face;
using namespace cinder::face::scene;
using std::chrono::seconds;

namespace {

// The crew of demo-data/orchard-harvest-lunch.json has just driven in.
const Instant kArrived = parseRfc3339("2027-09-18T11:02:00-04:00").value().at;

QString text(const char* words) {
    return QString::fromUtf8(words);
}

/// A crew that is not there works until so long after the bell.
void playUntil(Walk& walk, Duration afterBell) {
    app::RehearsalCrew crew(walk.app.session());
    const Instant until = walk.app.look()->serve + afterBell;
    while (walk.app.clock.wall() < until) {
        walk.app.clock.advance(seconds(20));
        REQUIRE(crew.act().has_value());
    }
    walk.app.pass(seconds(1));
    walk.hearCalls();
}

QQuickItem* saying(const Walk& walk, const char* words) {
    return scene::find(walk.app.root(),
                       [&](QQuickItem& item) { return nameOf(item).contains(text(words)); });
}

void endByTouch(const Glass& glass) {
    static_cast<void>(takeComplaints());
    Walk walk(glass, kArrived);
    walk.openTheOrchard(text("Lead"));
    walk.hearCalls();
    playUntil(walk, std::chrono::minutes(50));

    walk.goOn(text("More"), text("Strike"));
    CHECK(saying(walk, "Do not leave yet. Still to do: fire") != nullptr);
    CHECK(saying(walk, "Not yet:") != nullptr);
    walk.touch(walk.button(text("To the van")));
    CHECK(saying(walk, "back in the van") != nullptr);

    playUntil(walk, std::chrono::hours(4));
    walk.goOn(text("More"), text("Strike"));
    CHECK(saying(walk, "Do not leave yet. Still to do: fire") == nullptr);
    CHECK(saying(walk, "All is done at the fire") != nullptr);

    walk.goOn(text("More"), text("Debrief"));
    const auto debrief = walk.app.session().debrief().value();
    REQUIRE(debrief.tasks.size() > 10);
    const auto& first = debrief.tasks.front().actual;
    const QString name = QString::fromStdString(std::string(first.name.in("en")));
    const auto marked =
        walk.note<journal::TaskInterrupted>(walk.button(text("Interrupted: ") + name));
    CHECK(marked.task == first.task);
    CHECK(marked.isInterrupted);
    walk.undo();
    CHECK(walk.button(text("It counts: ") + name) == nullptr);
    walk.note<journal::TaskInterrupted>(walk.button(text("Interrupted: ") + name));
    CHECK_FALSE(
        walk.note<journal::TaskInterrupted>(walk.button(text("It counts: ") + name)).isInterrupted);
    for (const auto& lesson : debrief.lessons) {
        const QString what = QString::fromStdString(std::string(lesson.name.in("en")));
        const auto taken =
            walk.note<journal::LessonAnswered>(walk.button(text("Take it along: ") + what));
        CHECK(taken.isAccepted);
        CHECK(taken.value == lesson.learned);
        break;
    }
    for (const auto& complaint : takeComplaints())
        FAIL_CHECK(complaint);
}

}  // namespace

TEST_CASE("the day is struck and looked back upon by touch on a tablet") {
    endByTouch(kTablet);
}

TEST_CASE("the day is struck and looked back upon by touch on a phone") {
    endByTouch(kPhone);
}
