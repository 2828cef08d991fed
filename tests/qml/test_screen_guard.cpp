/// What a device in a pocket or left alone must not do: the lock that only the slide opens, and the
/// dark screen whose waking touch is no touch of anything under it.

#include <catch2/catch.hpp>

#include <QQuickWindow>
#include <QTest>

#include "walk.h"

using namespace cinder;
using namespace cinder::face;
using namespace cinder::face::scene;

namespace {

// Two minutes before the crew of demo-data/orchard-harvest-lunch.json drives in.
const Instant kBefore = parseRfc3339("2027-09-18T10:58:00-04:00").value().at;

QString text(const char* words) {
    return QString::fromUtf8(words);
}

}  // namespace

TEST_CASE("a locked device answers to the slide alone") {
    const auto* glass = GENERATE(&kTablet, &kPhone);
    Walk walk(*glass, kBefore);
    walk.openTheOrchard(text("Fire"));
    walk.go(text("More"));
    walk.touch(walk.button(text("Lock")));
    const auto before = walk.app.journal().size();
    auto* slide = walk.button(text("Slide to unlock"));
    REQUIRE(slide != nullptr);
    walk.touchWhatIsCovered();
    const QRectF groove = slide->mapRectToScene(slide->boundingRect());
    const QPointF knob(groove.left() + groove.height() / 2, groove.center().y());
    walk.finger.drag(knob, {groove.width() / 2, 0});
    settle(walk.app.window());
    CHECK(slide->isVisible());
    walk.finger.drag(knob, {groove.width() - groove.height(), 0});
    settle(walk.app.window());
    CHECK(walk.button(text("Slide to unlock")) == nullptr);
    CHECK(walk.isAt(text("More")));
    CHECK(walk.app.journal().size() == before);
}

TEST_CASE("an idle device darkens, and the touch that wakes it does nothing else") {
    Walk walk(kPhone, kBefore);
    walk.openTheOrchard(text("Fire"));
    auto* frame = walk.app.root().childItems().value(0);
    REQUIRE(frame != nullptr);
    frame->setProperty("idleAfter", 60);
    QTest::qWait(150);
    const QPointF way = [&] {
        auto* more = walk.find(QAccessible::PageTab, text("More"));
        if (more == nullptr) more = walk.button(text("More"));
        REQUIRE(more != nullptr);
        return more->mapRectToScene(more->boundingRect()).center();
    }();
    frame->setProperty("idleAfter", 120000);
    walk.finger.touchAt(way);
    CHECK(walk.isAt(text("Fire")));
    walk.finger.touchAt(way);
    CHECK(walk.isAt(text("More")));
}

TEST_CASE("an idle device hears the keyboard, and the key that wakes it does nothing else") {
    Walk walk(kTablet, kBefore);
    walk.openTheOrchard(text("Fire"));
    auto* frame = walk.app.root().childItems().value(0);
    REQUIRE(frame != nullptr);
    auto* shade = scene::find(walk.app.root(), [](QQuickItem&) { return false; });
    const auto shadeIs = [&] {
        shade = scene::find(walk.app.root(), [](QQuickItem& item) {
            return QString::fromLatin1(item.metaObject()->className())
                .startsWith(QLatin1String("IdleShade"));
        });
        return shade != nullptr;
    };
    auto* more = walk.find(QAccessible::PageTab, text("More"));
    REQUIRE(more != nullptr);
    more->forceActiveFocus(Qt::TabFocusReason);
    // Keys keep it awake as touches do.
    frame->setProperty("idleAfter", 400);
    for (int stroke = 0; stroke < 6; ++stroke) {
        QTest::keyClick(&walk.app.window(), Qt::Key_Shift);
        QTest::qWait(120);
    }
    CHECK_FALSE(shadeIs());
    QTest::qWait(600);
    CHECK(shadeIs());
    frame->setProperty("idleAfter", 120000);
    QTest::keyClick(&walk.app.window(), Qt::Key_Space);
    CHECK_FALSE(shadeIs());
    CHECK(walk.isAt(text("Fire")));
    QTest::keyClick(&walk.app.window(), Qt::Key_Space);
    CHECK(walk.isAt(text("More")));
}
