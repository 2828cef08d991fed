/// The fire by touch: a hand test, a piece found on the map, its probe and what was judged of it,
/// to the cool side, off the grate, and back by undo; each touch on the screen and in the journal.

#include <catch2/catch.hpp>

#include "day.h"
#include "walk.h"

using namespace cinder;
using namespace cinder::face;
using namespace cinder::face::scene;

namespace {

// Before the crew of demo-data/orchard-harvest-lunch.json drives in.
const Instant kBefore = parseRfc3339("2027-09-18T10:58:00-04:00").value().at;
const TaskId kLamb("lamb/cook/1");

QString text(const char* words) {
    return QString::fromUtf8(words);
}

app::PieceCard piece(Walk& walk, std::int32_t number) {
    const auto day = walk.app.look();
    for (const auto& one : day->fire.find(kLamb)->pieces)
        if (one.number == number) return one;
    FAIL("no piece " << number);
    return {};
}

/// The piece on the map, by what a screen reader would say of it.
QQuickItem* onMap(Walk& walk, std::int32_t number) {
    const QString said = text("Piece %1,").arg(number);
    return scene::find(walk.app.root(), [&](QQuickItem& item) {
        return roleOf(item) == QAccessible::Button && nameOf(item).startsWith(said);
    });
}

void type(Walk& walk, const char* digits) {
    for (const char* digit = digits; *digit != '\0'; ++digit)
        walk.touch(walk.button(QString(QLatin1Char(*digit))));
}

void workTheFire(const Glass& glass) {
    static_cast<void>(takeComplaints());
    Walk walk(glass, kBefore);
    walk.openTheOrchard(text("Fire"));

    walk.touch(walk.button(text("Hand test")));
    type(walk, "4");
    const auto held = walk.note<journal::HandHeld>(walk.button(text("Note it")));
    CHECK(held.milliseconds == 4000);

    REQUIRE(walk.app.session().layPieces(kLamb, Temperature::fromCelsius(8)));
    walk.app.pass(std::chrono::seconds(1));
    REQUIRE(walk.app.look()->fire.find(kLamb)->isForecast);

    walk.touch(onMap(walk, 2));
    CHECK(isReadable(walk.app.root(), walk.app.day().fire()->piece().title));
    CHECK(walk.app.day().fire()->piece().title.startsWith(text("Piece 2 ")));
    CHECK_FALSE(walk.app.day().fire()->piece().minimum.isEmpty());
    const auto before = piece(walk, 2).toPull;
    REQUIRE(before);

    walk.touch(walk.button(text("Probe reading")));
    type(walk, "95");
    const auto read = walk.note<journal::PieceRead>(walk.button(text("Note it")));
    CHECK(read.piece == 2);
    CHECK(piece(walk, 2).lastReading->fahrenheit() == Approx(95).margin(0.01));
    CHECK(piece(walk, 2).toPull->likely < before->likely);

    const auto judged = walk.note<journal::PieceJudged>(walk.button(text("Not yet")));
    CHECK_FALSE(judged.isDone);
    walk.note<journal::PiecesMoved>(walk.button(text("To the cool side")));
    CHECK(piece(walk, 2).state == app::PieceState::OnCoolSide);
    CHECK(walk.find(QAccessible::Dialog, {}) == nullptr);

    walk.touch(onMap(walk, 3));
    const auto pulled = walk.note<journal::PiecesPulled>(walk.button(text("Pull into pan 1")));
    CHECK(pulled.pieces == std::vector<std::int32_t>{3});
    CHECK(piece(walk, 3).state == app::PieceState::Pulled);
    walk.undo();
    CHECK(piece(walk, 3).state != app::PieceState::Pulled);

    walk.touch(walk.button(text("Pull several")));
    CHECK_FALSE(walk.app.day().fire()->canPullSeveral());
    for (const std::int32_t number : {4, 6})
        walk.touch(scene::find(walk.app.root(), [&](QQuickItem& item) {
            return roleOf(item) == QAccessible::CheckBox &&
                   nameOf(item).startsWith(text("Piece %1,").arg(number));
        }));
    const auto both =
        walk.note<journal::PiecesPulled>(walk.button(text("Pull 2 pieces into pan 1")));
    CHECK(both.pieces == std::vector<std::int32_t>{4, 6});
    CHECK(walk.find(QAccessible::Dialog, {}) == nullptr);
    CHECK(walk.app.look()->fire.pans.at(0).pulled == 2);
    walk.undo();
    CHECK(piece(walk, 4).state != app::PieceState::Pulled);
    CHECK(piece(walk, 6).state != app::PieceState::Pulled);
    for (const auto& complaint : takeComplaints())
        FAIL_CHECK(complaint);
}

}  // namespace

TEST_CASE("the pieces on the grate are worked by touch on a tablet") {
    workTheFire(kTablet);
}

TEST_CASE("the pieces on the grate are worked by touch on a phone") {
    workTheFire(kPhone);
}
