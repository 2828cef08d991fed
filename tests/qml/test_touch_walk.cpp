/// The whole day by touch alone: every control is found as a person finds it, must be in view,
/// enabled and uncovered, and every touch must show on the screen and stand in the journal.

#include <catch2/catch.hpp>

#include <algorithm>

#include <QColor>
#include <QCoreApplication>
#include <QQuickWindow>
#include <QTest>

#include "day.h"
#include "settings.h"
#include "walk.h"
#include "words.h"

using namespace cinder;
using namespace cinder::face;
using namespace cinder::face::scene;
using app::TaskState;
using plan::TaskKind;
using std::chrono::minutes;
using std::chrono::seconds;

namespace {

// Two minutes before the crew of demo-data/orchard-harvest-lunch.json drives in.
const Instant kBefore = parseRfc3339("2027-09-18T10:58:00-04:00").value().at;

QString text(const char* words) {
    return QString::fromUtf8(words);
}

bool isFireWork(TaskKind kind) {
    return kind == TaskKind::Fire || kind == TaskKind::Cook || kind == TaskKind::Warm ||
           kind == TaskKind::Rest || kind == TaskKind::Slice;
}

void goWhereItIs(Walk& walk, const app::TaskCard& card) {
    const QString board = isFireWork(card.kind) ? text("Fire") : text("Buffet");
    if (!walk.isAt(board)) walk.go(board);
}

void openTheDemo(Walk& walk) {
    REQUIRE(walk.isAt(text("Events")));
    REQUIRE(walk.app.journal().empty());
    const std::string fault =
        walk.finger.touch(walk.button(text("Open Harvest lunch in the orchard")));
    INFO(fault);
    REQUIRE(fault.empty());
    walk.app.settlePlan();
    const auto operations = walk.app.journal();
    REQUIRE(operations.size() == 2);
    CHECK(std::holds_alternative<journal::EventDescribed>(operations[0].body));
    CHECK(std::holds_alternative<journal::PlanPublished>(operations[1].body));
    CHECK(walk.isAt(text("Who holds this device?")));
    CHECK(isReadable(walk.app.root(), text("Harvest lunch in the orchard")));
}

void chooseWhoAndWhere(Walk& walk) {
    walk.touch(walk.button(text("Inés")));
    CHECK(walk.app.day().person() == text("ines"));
    walk.touch(scene::find(walk.app.root(), [](QQuickItem& item) {
        return roleOf(item) == QAccessible::Button && nameOf(item).startsWith(text("Fire"));
    }));
    CHECK(walk.isAt(text("Fire")));
    CHECK_FALSE(walk.isAt(text("Who holds this device?")));
}

void visitEveryBoard(Walk& walk) {
    for (const char* board : {"Lead", "Buffet", "Fire", "More"}) {
        walk.go(text(board));
        CHECK(walk.isAt(text(board)));
        walk.touchWhatIsCovered();
    }
    walk.goOn(text("More"), text("Run sheet"));
    CHECK(walk.isAt(text("Run sheet")));
    for (const char* how : {"By station", "List", "By person"}) {
        auto* one = walk.find(QAccessible::RadioButton, text(how));
        walk.touch(one);
        CHECK(isChecked(*one));
    }
}

/// Touches the button `verb` on the plate of `card`.
template <class Body>
Body work(Walk& walk, const app::TaskCard& card, const QString& verb) {
    goWhereItIs(walk, card);
    INFO(verb.toStdString() << " on " << card.id.text());
    auto* plate = walk.plateOf(card.id);
    REQUIRE(plate != nullptr);
    Body body = walk.note<Body>(scene::find(*plate, named(QAccessible::Button, verb)));
    CHECK(body.task == card.id);
    CHECK(body.at == walk.app.look()->now);
    // What was noted stands in the bar, with the way back.
    CHECK((walk.undoButton() != nullptr || walk.call() != nullptr));
    CHECK_FALSE(walk.app.day().line().undo.isEmpty());
    return body;
}

/// Ticks two of the three things asked before a fire and passes one over, by holding it.
void answerForTheFire(Walk& walk, const app::TaskCard& fire) {
    goWhereItIs(walk, fire);
    const auto openItem = [&](QAccessible::Role role, const char* words) {
        return scene::find(walk.app.root(), [&](QQuickItem& item) {
            return roleOf(item) == role && nameOf(item).startsWith(text(words)) && !isChecked(item);
        });
    };
    for (const char* asked : {"Extinguisher", "Clear ground"})
        static_cast<void>(walk.note<safety::Fact>(openItem(QAccessible::CheckBox, asked)));
    CHECK(walk.finger.hold(openItem(QAccessible::Button, "Hold: skip"), 900).empty());
    CHECK(walk.app.look()->food.beforeFire.at(2).skipped.has_value());
}

void begin(Walk& walk, const app::TaskCard& card) {
    const auto asked = walk.app.look()->food.beforeFire;
    if (card.kind == TaskKind::Fire &&
        std::any_of(asked.begin(), asked.end(), [](const auto& a) { return !a.isAnswered(); }))
        answerForTheFire(walk, card);
    work<journal::TaskStarted>(walk, card, Words::startVerb(card.kind));
    CHECK(walk.card(card.id).state == TaskState::Running);
    auto* plate = walk.plateOf(card.id);
    REQUIRE(plate != nullptr);
    CHECK(scene::find(*plate, named(QAccessible::Button, Words::finishVerb(card.kind))) != nullptr);
}

void finish(Walk& walk, const app::TaskCard& card) {
    work<journal::TaskFinished>(walk, card, Words::finishVerb(card.kind));
    CHECK(walk.card(card.id).state == TaskState::Done);
}

void turn(Walk& walk, const app::TaskCard& card) {
    const auto turned = work<journal::Turned>(walk, card, Words::turn(card));
    CHECK(turned.turn == card.turnsDone + 1);
    CHECK(walk.card(card.id).turnsDone == card.turnsDone + 1);
}

/// The tile of one line of a checklist, on the plate of its task.
QQuickItem& tile(Walk& walk, const TaskId& task, std::size_t line) {
    const auto card = walk.card(task);
    const auto words = card.checklist.at(line).text.in("en");
    auto* plate = walk.plateOf(task);
    REQUIRE(plate != nullptr);
    auto* found = scene::find(
        *plate,
        named(QAccessible::CheckBox, QString::fromUtf8(words.data(), qsizetype(words.size()))));
    REQUIRE(found != nullptr);
    return *found;
}

void tick(Walk& walk, const TaskId& task, std::size_t line) {
    CHECK_FALSE(isChecked(tile(walk, task, line)));
    const auto ticked = walk.note<journal::LineTicked>(&tile(walk, task, line));
    CHECK(ticked.task == task);
    CHECK(ticked.line == static_cast<int>(line));
    CHECK(walk.card(task).checklist[line].isTicked);
    CHECK(isReadable(walk.app.root(), walk.app.day().line().undo));
    walk.touchWhatIsCovered();
}

/// Ticks every line on the plate of a running task; the first is ticked, taken back and ticked
/// again. A task that is nothing but its lines is done with the last.
void tickTheLines(Walk& walk, const TaskId& task) {
    const auto lines = walk.card(task).checklist.size();
    tick(walk, task, 0);
    CHECK(isChecked(tile(walk, task, 0)));
    walk.undo();
    CHECK_FALSE(walk.card(task).checklist[0].isTicked);
    for (std::size_t line = 0; line < lines; ++line) {
        tick(walk, task, line);
        if (line + 1 < lines) CHECK(isChecked(tile(walk, task, line)));
    }
}

/// The deed that is due first, and when.
struct Deed {
    Instant at;
    app::TaskCard card;
};

Deed nextDeed(const app::Snapshot& day) {
    std::optional<Deed> first;
    for (const auto& card : day.tasks) {
        const bool isGoing = card.state == TaskState::Running || card.state == TaskState::Over;
        if (!isGoing && card.state != TaskState::Ready) continue;
        const Instant at = !isGoing ? card.start : card.nextTurn.value_or(card.finish);
        if (!first || at < first->at) first = Deed{at, card};
    }
    REQUIRE(first.has_value());
    return *first;
}

/// What a walk has done at the fire so far.
struct Done {
    int turnsBefore = 0;  ///< turned by the plate's button, before the call
    int turnsCalled = 0;  ///< turned from the call itself
    int turnsHeard = 0;   ///< silenced first, then turned
    int pulled = 0, rested = 0, linesTicked = 0;
    [[nodiscard]] bool isAll() const {
        return turnsBefore > 0 && turnsCalled > 0 && turnsHeard > 0 && pulled > 0 && rested > 0 &&
               linesTicked > 0;
    }
};

void turnInOneOfThreeWays(Walk& walk, const Deed& deed, Done& done) {
    if (done.turnsBefore == 0) {
        walk.app.passUntil(deed.at - seconds(10));
        walk.hearCalls();
        turn(walk, deed.card);
        ++done.turnsBefore;
        return;
    }
    walk.app.passUntil(deed.at - seconds(5));
    walk.hearCalls();
    walk.app.passUntil(deed.at + seconds(3));
    walk.faceTheCall();
    CHECK(walk.app.loudspeaker.rings > 0);
    if (done.turnsCalled == 0) {
        walk.touchWhatIsCovered();
        const auto turned = walk.note<journal::Turned>(walk.button(text("Turned")));
        CHECK(turned.task == deed.card.id);
        CHECK(walk.call() == nullptr);
        ++done.turnsCalled;
        return;
    }
    walk.hearCalls();
    turn(walk, deed.card);
    ++done.turnsHeard;
}

void doNext(Walk& walk, Done& done) {
    const Deed deed = nextDeed(*walk.app.look());
    const auto& card = deed.card;
    const bool isToTurn = card.state != TaskState::Ready && card.nextTurn.has_value();
    if (isToTurn) {
        turnInOneOfThreeWays(walk, deed, done);
        return;
    }
    walk.app.passUntil(deed.at - seconds(10));
    walk.hearCalls();
    if (card.state == TaskState::Ready) {
        begin(walk, card);
        if (done.linesTicked == 0 && !isFireWork(card.kind) && card.checklist.size() > 1) {
            tickTheLines(walk, card.id);
            ++done.linesTicked;
        }
        return;
    }
    finish(walk, card);
    done.pulled += card.kind == TaskKind::Cook ? 1 : 0;
    done.rested += card.kind == TaskKind::Rest ? 1 : 0;
}

void workUntilTheFirstRestIsOver(Walk& walk) {
    Done done;
    for (int deeds = 0; !done.isAll(); ++deeds) {
        REQUIRE(deeds < 150);
        doNext(walk, done);
    }
}

void moveTheBell(Walk& walk) {
    walk.hearCalls();
    walk.go(text("Lead"));
    const Instant agreed = walk.app.look()->serve;
    const auto open = [&walk] {
        if (walk.find(QAccessible::Dialog, {}) == nullptr)
            walk.touch(walk.button(text("Move the bell")));
        REQUIRE(walk.find(QAccessible::Dialog, {}) != nullptr);
    };
    open();
    walk.touchWhatIsCovered(open);
    const auto moved = walk.note<journal::ServeTimeMoved>(walk.button(text("15 min later")));
    CHECK(moved.serve == agreed + minutes(15));
    CHECK(isReadable(walk.app.root(), text("Serve at 13:15")));
    walk.touch(walk.button(text("Done")));
    CHECK(walk.find(QAccessible::Dialog, {}) == nullptr);
    walk.undo();
    CHECK(walk.app.look()->serve == agreed);
}

void changeLightAndLanguage(Walk& walk) {
    walk.hearCalls();
    walk.goOn(text("More"), text("Settings"));
    const auto ground = [&] { return walk.app.window().property("color").value<QColor>(); };
    const QColor noon = ground();
    walk.touch(walk.find(QAccessible::RadioButton, text("Dusk")));
    CHECK(walk.app.settings().theme() == text("dusk"));
    CHECK(ground().lightness() < noon.lightness());
    walk.touch(walk.find(QAccessible::RadioButton, text("Noon")));
    CHECK(ground() == noon);

    walk.touch(walk.find(QAccessible::RadioButton, text("Español")));
    const QString fire = QCoreApplication::translate("Ways", "Fire");
    CHECK(fire != text("Fire"));
    walk.go(fire);
    CHECK(walk.isAt(QCoreApplication::translate("FireBoard", "Fire")));
    walk.goOn(QCoreApplication::translate("Ways", "More"),
              QCoreApplication::translate("MorePage", "Settings"));
    walk.touch(walk.find(QAccessible::RadioButton, text("English")));
    CHECK(walk.isAt(text("Settings")));
}

/// Touches the `speed` of the sheet; the journal gets the rehearsal's clock, anchored now.
void chooseSpeed(Walk& walk, int speed) {
    REQUIRE(walk.find(QAccessible::Dialog, {}) != nullptr);
    const auto events = walk.app.journal();
    const std::string fault =
        walk.finger.touch(walk.button(QString::number(speed) + QChar(0x00D7)));
    INFO(fault);
    REQUIRE(fault.empty());
    std::vector<RehearsalClock::Anchor> anchors;
    for (const auto& operation : walk.app.journal())
        if (const auto* set = std::get_if<journal::RehearsalSet>(&operation.body))
            anchors.push_back(set->anchor);
    REQUIRE_FALSE(anchors.empty());
    CHECK(anchors.back().speed == speed);
    CHECK(walk.app.look()->speed == speed);
    CHECK(walk.find(QAccessible::Dialog, {}) == nullptr);
}

void rehearse(Walk& walk) {
    const auto real = walk.app.look()->event;
    walk.touch(walk.button(text("Rehearse")));
    chooseSpeed(walk, 10);
    CHECK(walk.app.look()->isRehearsal);
    CHECK(walk.app.look()->event != real);
    walk.touch(walk.button(walk.app.day().line().rehearsal));
    chooseSpeed(walk, 60);
    const Instant from = walk.app.look()->now;
    walk.app.pass(seconds(2));
    CHECK(walk.app.look()->now - from == seconds(120));
}

void runTheDayByTouch(const Glass& glass) {
    static_cast<void>(takeComplaints());
    Walk walk(glass, kBefore);
    openTheDemo(walk);
    chooseWhoAndWhere(walk);
    visitEveryBoard(walk);
    workUntilTheFirstRestIsOver(walk);
    moveTheBell(walk);
    changeLightAndLanguage(walk);
    rehearse(walk);
    for (const auto& complaint : takeComplaints())
        FAIL_CHECK(complaint);
}

}  // namespace

TEST_CASE("a day is run by touch alone on a tablet") {
    runTheDayByTouch(kTablet);
}

TEST_CASE("a day is run by touch alone on a phone") {
    runTheDayByTouch(kPhone);
}
