/// Touches that wait for a plan: the key says so, everything else goes on, and what was noted
/// meanwhile stands. No event is handled between a touch and what is noted "meanwhile", so that the
/// plan cannot be there before.

#include <catch2/catch.hpp>

#include "event/json.h"
#include "events.h"
#include "planned_walk.h"
#include "session_door.h"

#include <QFile>

using namespace cinder;
using namespace cinder::face;
using namespace cinder::face::scene;
using std::chrono::minutes;

namespace {

void planAgainWhileOthersWork(const Glass& glass) {
    PlannedWalk walk(glass, kLate);
    walk.openTheOrchard(text("Lead"));
    walk.hearCalls();
    walk.go(text("Lead"));
    const auto plans = walk.noted<journal::PlanPublished>();

    walk.app.day().replan();
    walk.expectWaiting();
    walk.app.day().replan();
    walk.app.day().start(text("unload"));
    CHECK(walk.app.day().refusal().isEmpty());
    CHECK(walk.card(TaskId("unload")).state == app::TaskState::Running);
    walk.app.settlePlan();

    CHECK(walk.noted<journal::PlanPublished>() == plans + 1);
    CHECK(walk.noted<journal::TaskStarted>() == 1);
    CHECK(walk.card(TaskId("unload")).state == app::TaskState::Running);
    CHECK(walk.app.day().refusal().isEmpty());
    REQUIRE(walk.button(text("Plan again")) != nullptr);
    CHECK(walk.button(text("Plan again"))->isEnabled());
}

void setGuestsWhileOthersPack(const Glass& glass) {
    PlannedWalk walk(glass, kDaysBefore);
    walk.openTheOrchard(text("Lead"));
    walk.goOn(text("More"), text("Lists"));
    walk.touch(walk.button(text("Quantities")));
    const auto before = walk.guests();
    walk.figures().tryGuests(5, 0);
    walk.figures().useTrial();
    walk.expectWaiting();
    CHECK(walk.figures().isTrial());
    const auto row = walk.app.session().lists()->pack.front().key;
    REQUIRE(walk.app.session().pack(row, journal::Packed::Where::Out, 1));
    walk.app.settlePlan();

    CHECK(walk.guests().adults == before.adults + 5);
    CHECK(walk.noted<journal::Packed>() == 1);
    CHECK(walk.noted<journal::GuestsSet>() == 1);
    CHECK_FALSE(walk.figures().isTrial());
    CHECK(walk.button(text("Planning…")) == nullptr);

    // Whoever thinks better of it need not wait.
    walk.figures().tryGuests(5, 0);
    walk.figures().useTrial();
    CHECK(walk.figures().isPlanning());
    walk.figures().dropTrial();
    CHECK_FALSE(walk.figures().isPlanning());
    walk.app.settlePlan();
    CHECK(walk.guests().adults == before.adults + 5);
}

/// The orchard lunch, but the crew may only come twenty minutes later.
std::string lateOrchard() {
    QFile file(QStringLiteral(CINDER_SOURCE "/demo-data/orchard-harvest-lunch.json"));
    REQUIRE(file.open(QIODevice::ReadOnly));
    auto event = event::parse(file.readAll().toStdString()).value();
    event.site.arrival->at += minutes(20);
    return event::write(event);
}

/// The Promise page of that lunch, with its answer.
struct PromiseWalk : PlannedWalk {
    explicit PromiseWalk(const Glass& glass) : PlannedWalk(glass, kDaysBefore) {
        REQUIRE(app.session().importEvent(lateOrchard()));
        app.beat();
        settle(app.window());
        touch(scene::find(app.root(), [](QQuickItem& item) {
            return roleOf(item) == QAccessible::Button && nameOf(item).startsWith(text("Lead"));
        }));
        touch(scene::find(app.root(), [](QQuickItem& item) {
            return item.objectName() == text("promise") && item.isVisible();
        }));
        app.settlePlan();
        REQUIRE(promise().options()->count() > 0);
    }
    [[nodiscard]] QString firstOption() const {
        auto* options = promise().options();
        return options->data(options->index(0), Qt::UserRole).toString();
    }
};

void takeAnOption(const Glass& glass) {
    PromiseWalk walk(glass);
    // Late as it is planned, not as it runs.
    CHECK(walk.app.day().line().isLate);
    CHECK_FALSE(isReadable(walk.app.root(), text("As the day runs now")));
    const auto before = *walk.app.session().described();
    walk.promise().accept(walk.firstOption());
    CHECK(isReadable(walk.app.root(), text("Planning…")));
    CHECK_FALSE(walk.promise().isReckoning());
    // Whoever looks in again does not stop the plan.
    walk.promise().reckon();
    CHECK(walk.promise().isPlanning());
    walk.promise().accept(walk.firstOption());
    walk.app.settlePlan();

    CHECK(walk.noted<journal::EventDescribed>() == 2);
    CHECK(*walk.app.session().described() != before);
    CHECK_FALSE(walk.promise().isPlanning());
    CHECK(walk.promise().isKept());
}

/// Whoever thinks better of it need not wait.
void stopAnOption(const Glass& glass) {
    PromiseWalk walk(glass);
    const auto before = *walk.app.session().described();
    walk.promise().accept(walk.firstOption());
    walk.press(scene::find(walk.app.root(), [](QQuickItem& item) {
        return nameOf(item).startsWith(text("Hold to stop planning: "));
    }));
    CHECK_FALSE(walk.promise().isPlanning());
    walk.app.settlePlan();
    CHECK(*walk.app.session().described() == before);
    CHECK(walk.noted<journal::EventDescribed>() == 1);
    CHECK(scene::find(walk.app.root(), [](QQuickItem& item) {
              return nameOf(item).startsWith(text("Do this: ")) && item.isEnabled();
          }) != nullptr);
}

void loseNoGuestsToAnOption(const Glass& glass) {
    PromiseWalk walk(glass);
    const auto before = walk.guests();
    walk.promise().accept(walk.firstOption());
    REQUIRE(walk.promise().isPlanning());
    REQUIRE(walk.app.session().setGuests(before.adults - 8, before.children));
    walk.app.settlePlan();

    CHECK(walk.guests().adults == before.adults - 8);
    CHECK(walk.noted<journal::EventDescribed>() == 1);
    // The answer is for those who come now.
    CHECK(walk.promise().asked().startsWith(text("88 guests")));
}

}  // namespace

TEST_CASE("the rest is planned again around what is begun meanwhile, on a tablet") {
    planAgainWhileOthersWork(kTablet);
}

TEST_CASE("the rest is planned again around what is begun meanwhile, on a phone") {
    planAgainWhileOthersWork(kPhone);
}

TEST_CASE("other guests are planned for while the van is loaded, on a tablet") {
    setGuestsWhileOthersPack(kTablet);
}

TEST_CASE("other guests are planned for while the van is loaded, on a phone") {
    setGuestsWhileOthersPack(kPhone);
}

TEST_CASE("an option that is being planned is stopped by holding, on a tablet") {
    stopAnOption(kTablet);
}

TEST_CASE("an option that is being planned is stopped by holding, on a phone") {
    stopAnOption(kPhone);
}

TEST_CASE("an option is taken once, and the promise reckoned for what it makes of the event") {
    takeAnOption(kTablet);
}

TEST_CASE("guests who were set while an option was planned are not lost to it") {
    loseNoGuestsToAnOption(kPhone);
}

TEST_CASE("of two demos that were touched the last one opens") {
    PlannedWalk walk(kPhone, kDaysBefore);
    auto* demos = walk.app.events().demos();
    const auto key = [demos](int row) {
        return demos->data(demos->index(row), Qt::UserRole).toString();
    };
    walk.app.events().openDemo(key(1), 0);
    walk.expectWaiting();
    walk.app.events().openDemo(key(0), 0);
    walk.expectWaiting();
    walk.app.settlePlan();
    CHECK(walk.app.session().events()->size() == 1);
    CHECK(walk.app.session().described()->id == EventId("orchard-harvest-lunch"));
    CHECK(walk.app.day().isOpen());
}

TEST_CASE("a demo is let go when the person opens or makes something else") {
    PlannedWalk walk(kTablet, kDaysBefore);
    auto* demos = walk.app.events().demos();
    walk.app.events().openDemo(demos->data(demos->index(0), Qt::UserRole).toString(), 60);
    walk.expectWaiting();
    REQUIRE(QMetaObject::invokeMethod(walk.find(QAccessible::Pane, text("Events")), "make"));
    walk.app.settlePlan();
    CHECK(walk.app.session().events()->empty());
    CHECK(walk.isAt(text("New event")));
}

TEST_CASE("a crew that is always faster than the search is told so, and nothing is published") {
    PlannedWalk walk(kTablet, kArrived);
    walk.openTheOrchard(text("Lead"));
    const auto plans = walk.noted<journal::PlanPublished>();
    SessionDoor door(walk.app.session());
    SearchThread search;
    int asked = 0;
    Taken taken;
    carryOut(
        search, door,
        [&] {
            auto planning = door.askToReplan();
            ++asked;
            REQUIRE(door.moveServe(walk.app.look()->serve + minutes(1)));
            return planning;
        },
        [&](const Taken& became) { taken = became; });
    search.settle();
    CHECK(asked == 3);
    REQUIRE_FALSE(taken);
    CHECK(taken.error().why == app::Refusal::Why::Overtaken);
    CHECK(Words::refusal(taken.error()).contains(text("Touch again")));
    CHECK(walk.noted<journal::PlanPublished>() == plans);
}

TEST_CASE("a plan that is asked for in one event is not searched again in another") {
    PlannedWalk walk(kTablet, kArrived);
    walk.openTheOrchard(text("Lead"));
    walk.app.day().replan();
    const auto rehearsal = walk.app.session().rehearse(1, minutes(5));
    REQUIRE(rehearsal);
    const auto plans = walk.noted<journal::PlanPublished>();
    walk.app.settlePlan();
    CHECK(walk.noted<journal::PlanPublished>() == plans);
    CHECK(walk.app.day().refusal().isEmpty());
    CHECK_FALSE(walk.app.day().isPlanning());
}
