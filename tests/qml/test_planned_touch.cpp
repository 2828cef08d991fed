/// Touches that wait for a plan: the key says so, everything else goes on, and what was noted
/// meanwhile stands. No event is handled between a touch and what is noted "meanwhile", so that the
/// plan cannot be there before.

#include <catch2/catch.hpp>

#include "day.h"
#include "event/json.h"
#include "events.h"
#include "lists.h"
#include "promise.h"
#include "session_door.h"
#include "settings.h"
#include "walk.h"

#include <QFile>
#include <QQuickWindow>

using namespace cinder;
using namespace cinder::face;
using namespace cinder::face::scene;
using std::chrono::minutes;

namespace {

// The crew of demo-data/orchard-harvest-lunch.json has just driven in.
const Instant kArrived = parseRfc3339("2027-09-18T11:02:00-04:00").value().at;
// So late that the phone offers to plan again.
const Instant kLate = kArrived + minutes(45);
const Instant kDaysBefore = parseRfc3339("2027-09-14T09:00:00-04:00").value().at;

QString text(const char* words) {
    return QString::fromUtf8(words);
}

struct PlannedWalk : Walk {
    explicit PlannedWalk(const Glass& glass, Instant start) : Walk(glass, start) {
        static_cast<void>(takeComplaints());
    }
    ~PlannedWalk() {
        for (const auto& complaint : takeComplaints())
            FAIL_CHECK(complaint);
    }
    template <class Body>
    [[nodiscard]] int noted() const {
        int count = 0;
        for (const auto& operation : app.journal())
            count += std::holds_alternative<Body>(operation.body) ? 1 : 0;
        return count;
    }
    /// The key that was touched says what it waits for, and feels nothing.
    void expectWaiting() const {
        auto* key = button(text("Planning…"));
        REQUIRE(key != nullptr);
        CHECK_FALSE(key->isEnabled());
    }
    [[nodiscard]] Promise& promise() const {
        return *app.window().property("promise").value<Promise*>();
    }
    [[nodiscard]] Figures& figures() const {
        return *app.window().property("lists").value<Lists*>()->figures();
    }
    [[nodiscard]] event::Guests guests() const { return app.session().described()->guests; }
};

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
    walk.app.pass(minutes(20));
    // Until the new ones are there the last ones stay.
    CHECK(walk.promise().waysOut()->isReckoning());
    CHECK(noteOf() == before);
    walk.app.settlePlan();
    CHECK(noteOf() != before);
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
    walk.expectWaiting();
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

TEST_CASE("what would help is reckoned again while a late day goes on") {
    waitAtTheWaysOut(kPhone);
}

TEST_CASE("other guests are planned for while the van is loaded, on a tablet") {
    setGuestsWhileOthersPack(kTablet);
}

TEST_CASE("other guests are planned for while the van is loaded, on a phone") {
    setGuestsWhileOthersPack(kPhone);
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
