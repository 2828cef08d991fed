/// The size in millimetres of everything that is touched, measured in the live scenes by the
/// theme's own ruler. The sizes are those the design asks for: a gloved thumb, 15 mm; what is hit
/// in a hurry (turn, pull, tick, and the answer to a call), 25 mm; 8 mm around what is hard to take
/// back.

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <map>
#include <utility>

#include <QFontMetricsF>
#include <QQuickItem>
#include <QQuickWindow>

#include "fixed_day.h"
#include "real_day.h"
#include "ruler.h"
#include "scene.h"
#include "scenes.h"

using namespace cinder;
using namespace cinder::face;
using namespace cinder::face::scene;

namespace {

constexpr double kTouch = 15;
constexpr double kHurried = 25;
constexpr double kApart = 8;  ///< from what is hard to take back to anything else, mm

bool isHurried(QQuickItem& item) {
    return roleOf(item) == QAccessible::CheckBox || isInside(item, "BatchPlate") ||
           isInside(item, "CallPlate");
}

/// The least side of `item`, mm.
double leastOf(QQuickItem& item) {
    return isHurried(item) ? kHurried : kTouch;
}

struct Measured {
    double width = 1e9, height = 1e9;  ///< the least of each, mm
    int count = 0;
    std::string smallest;
};

using Sizes = std::map<std::string, Measured>;

void measure(QQuickItem& root, const std::string& scene, Sizes& sizes) {
    for (auto* item : shown(root)) {
        // The dimmed board behind a sheet is touched anywhere.
        if (!isTarget(*item) || item->inherits("QQuickMouseArea")) continue;
        const double mm = Ruler::instance().pixelsPerMm();
        const QRectF place = item->mapRectToScene(item->boundingRect());
        const double width = place.width() / mm, height = place.height() / mm;
        auto& row = sizes[scene.substr(0, scene.find(',')) + "  " + typeOf(*item) +
                          (isHurried(*item) ? " (hurried)" : "")];
        ++row.count;
        if (std::min(width, height) < std::min(row.width, row.height))
            row.smallest = describe(*item);
        row.width = std::min(row.width, width);
        row.height = std::min(row.height, height);
        INFO(scene << ": " << describe(*item) << " is " << width << " x " << height << " mm");
        CHECK(width >= leastOf(*item));
        CHECK(height >= leastOf(*item));
    }
}

/// Between two rectangles, along the longer way of the two axes; 0 where they touch or overlap.
double apart(const QRectF& a, const QRectF& b) {
    const double across = std::max(a.left(), b.left()) - std::min(a.right(), b.right());
    const double down = std::max(a.top(), b.top()) - std::min(a.bottom(), b.bottom());
    return std::max({across, down, 0.0});
}

struct Gaps {
    double least = 1e9;  ///< mm
    int pairs = 0;
};

/// What is hard to take back is held, and no finger that slips lands on it.
void measureGaps(QQuickItem& root, const std::string& scene, Gaps& gaps) {
    const auto items = shown(root);
    for (auto* held : items) {
        if (typeOf(*held) != "HoldPlate" || !held->isEnabled()) continue;
        for (auto* other : items) {
            // What scrolls past something that stands still is no neighbour of it.
            if (other == held || !isTarget(*other) || !other->isEnabled() ||
                other->inherits("QQuickMouseArea") || scrollerOf(*other) != scrollerOf(*held) ||
                other->isAncestorOf(held))
                continue;
            const double mm = apart(held->mapRectToScene(held->boundingRect()),
                                    other->mapRectToScene(other->boundingRect())) /
                              Ruler::instance().pixelsPerMm();
            INFO(scene << ": " << describe(*held) << " and " << describe(*other) << " are " << mm
                       << " mm apart");
            CHECK(mm >= kApart);
            gaps.least = std::min(gaps.least, mm);
            ++gaps.pairs;
        }
    }
}

/// The bell's hours and minutes as they are set on the lead board, by the ink of a digit; how many
/// there were.
int measureBell(QQuickItem& root, const std::string& scene) {
    // 20 minutes of arc at 3 m; MIL-STD-1472 asks for 15 and prefers 20 (from memory).
    const double least = 3000 * std::tan(20.0 / 60 * std::acos(-1.0) / 180);
    int digits = 0;
    for (auto* item : shown(root)) {
        if (!isInside(*item, "BellPanel") || item->objectName() != QLatin1String("bellFigure"))
            continue;
        const QFontMetricsF metrics(item->property("font").value<QFont>());
        for (const QChar digit : item->property("text").toString()) {
            if (!digit.isDigit()) continue;
            const double mm =
                metrics.tightBoundingRect(digit).height() / Ruler::instance().pixelsPerMm();
            INFO(scene << ": " << QString(digit).toStdString() << " is " << mm << " mm high");
            CHECK(mm >= least);
            ++digits;
        }
    }
    return digits;
}

/// One walk through every scene for all of them: a walk takes long.
void judge(const Glass& glass) {
    Sizes sizes;
    Gaps gaps;
    int digits = 0;
    forEveryScene({&glass, "noon", "en", 1}, [&](QQuickItem& root, const std::string& scene) {
        measure(root, scene, sizes);
        measureGaps(root, scene, gaps);
        digits += measureBell(root, scene);
    });
    CHECK(sizes.size() > 15);
    CHECK(gaps.pairs > 0);
    CHECK(digits > 0);
    for (const auto& [what, row] : sizes)
        std::printf("%-16s %-34s %3d  least %5.1f x %5.1f mm\n", glass.name, what.c_str(),
                    row.count, row.width, row.height);
    std::printf("%-16s what is held lies at least %.1f mm from the next target, %d pairs\n",
                glass.name, gaps.least, gaps.pairs);
}

/// The top edge of the first thing on the lead board that is `wanted`.
double topOf(QQuickItem& root, const Wanted& wanted) {
    auto* item = find(root, wanted);
    REQUIRE(item != nullptr);
    return item->mapRectToScene(item->boundingRect()).top();
}

}  // namespace

TEST_CASE("on a phone no notice of a late day stands between what is touched and the crew") {
    auto day = fixed::orchardLunch();
    day.lateness = std::chrono::minutes(12);
    day.notices.push_back({app::Notice::What::ReadOnly, {}, {}});
    Loudspeaker sound;
    NoMotor motor;
    AnyScreen screen;
    const SimulatedClock clock{day.now};
    Face face(std::make_unique<fixed::FixedDoor>(day), clock, {sound, motor, screen}, {{}, {}});
    REQUIRE(face.show());
    static_cast<void>(face.draw({QStringLiteral("lead"),
                                 {kPhone.width, kPhone.height},
                                 kPhone.ppi,
                                 QStringLiteral("noon"),
                                 QStringLiteral("en")}));
    settle(*face.window());
    auto& root = *face.window()->contentItem();
    const auto called = [](const char* name) {
        return [name](QQuickItem& item) { return item.objectName() == QLatin1String(name); };
    };
    const double notice =
        topOf(root, [](QQuickItem& item) { return typeOf(item) == "NoticeColumn"; });
    const double crew = topOf(root, [](QQuickItem& item) { return typeOf(item) == "PersonPlate"; });

    CHECK(notice < topOf(root, called("promise")));
    CHECK(topOf(root, called("promise")) < topOf(root, called("moveBell")));
    CHECK(topOf(root, called("moveBell")) < crew);
}

TEST_CASE("what is touched on a tablet is as large and as far apart as a glove needs") {
    judge(kTablet);
}

TEST_CASE("what is touched on a phone is as large and as far apart as a glove needs") {
    judge(kPhone);
}
