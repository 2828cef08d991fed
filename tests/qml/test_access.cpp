/// Without sight and without touch: everything that is touched says what it is and what it is
/// called, the Tab key comes to all of it and to nothing that lies behind something else, and a day
/// is begun from the keyboard, which is also what a switch sends.

#include <catch2/catch.hpp>

#include <functional>
#include <set>

#include <QQuickItem>
#include <QQuickWindow>
#include <QTest>

#include "scenes.h"
#include "walk.h"

using namespace cinder;
using namespace cinder::face;
using namespace cinder::face::scene;

namespace {

QString text(const char* words) {
    return QString::fromUtf8(words);
}

bool isTabStop(QQuickItem& item) {
    if (!item.isEnabled()) return false;
    // A grip is dragged; what it does the keys beside it do too.
    return item.inherits("QQuickAbstractButton") ||
           (roleOf(item) == QAccessible::Button && !item.inherits("QQuickMouseArea"));
}

/// Whether any of it is where a person can see it.
bool isInSight(QQuickItem& item) {
    const QRectF part = visiblePart(item);
    return !part.isEmpty() && coverOf(item, part.center()) == nullptr;
}

/// Tabs once around and shows `look` whatever comes into focus.
void tabAround(QQuickWindow& window, const std::function<void(QQuickItem&)>& look) {
    std::set<QQuickItem*> met;
    for (int press = 0; press < 400; ++press) {
        QTest::keyClick(&window, Qt::Key_Tab);
        QCoreApplication::processEvents();
        auto* now = window.activeFocusItem();
        if (now == nullptr || !met.insert(now).second) break;
        look(*now);
    }
}

void tabEverywhere(const Glass& glass) {
    int stops = 0;
    forEveryScene({&glass, "noon", "en", 1}, [&](QQuickItem& root, const std::string& scene) {
        QQuickWindow& window = *root.window();
        std::set<QQuickItem*> wanted;
        for (auto* item : shown(root))
            if (isTabStop(*item)) wanted.insert(item);
        tabAround(window, [&](QQuickItem& stop) {
            auto* cover = coverOf(stop, visiblePart(stop).center());
            INFO(scene << ": " << describe(stop)
                       << (cover == nullptr ? "" : ", under " + describe(*cover)));
            wanted.erase(&stop);
            ++stops;
            CHECK(isInSight(stop));
        });
        for (auto* missed : wanted) {
            INFO(scene << ": no Tab comes to " << describe(*missed));
            CHECK(false);
        }
    });
    CHECK(stops > 300);
}

/// Tabs to the first thing whose name begins so, and presses the space bar.
void press(Walk& walk, const QString& name) {
    for (int step = 0; step < 400; ++step) {
        QTest::keyClick(&walk.app.window(), Qt::Key_Tab);
        auto* now = walk.app.window().activeFocusItem();
        if (now == nullptr || !nameOf(*now).startsWith(name)) continue;
        QTest::keyClick(&walk.app.window(), Qt::Key_Space);
        settle(walk.app.window());
        return;
    }
    FAIL("no Tab comes to " << name.toStdString());
}

}  // namespace

TEST_CASE("everything that is touched says what it is and what it is called") {
    for (const char* language : {"en", "es"})
        forEveryScene({&kPhone, "noon", language, 1},
                      [&](QQuickItem& root, const std::string& scene) {
                          for (auto* item : shown(root)) {
                              if (!item->inherits("QQuickAbstractButton")) continue;
                              INFO(scene << ": " << describe(*item));
                              CHECK(roleOf(*item) != QAccessible::NoRole);
                              CHECK_FALSE(nameOf(*item).trimmed().isEmpty());
                          }
                      });
}

TEST_CASE("the Tab key comes to everything on a tablet, and to nothing behind something else") {
    tabEverywhere(kTablet);
}

TEST_CASE("the Tab key comes to everything on a phone, and to nothing behind something else") {
    tabEverywhere(kPhone);
}

TEST_CASE("a day is begun from the keyboard alone") {
    // Two minutes before the crew of demo-data/orchard-harvest-lunch.json drives in.
    Walk walk(kTablet, parseRfc3339("2027-09-18T10:58:00-04:00").value().at);
    press(walk, text("Open Harvest lunch in the orchard"));
    walk.app.settlePlan();
    press(walk, text("Fire"));
    REQUIRE(walk.isAt(text("Fire")));
    const auto before = walk.app.journal().size();
    press(walk, text("Begin"));
    CHECK(walk.app.journal().size() == before + 1);
    press(walk, text("Undo"));
    CHECK(walk.app.journal().size() == before + 2);
}
