/// The size in millimetres of everything that is touched, measured in the live scenes by the
/// theme's own ruler. The sizes are those the design asks for: a gloved thumb, 15 mm; what is hit
/// in a hurry (turn, pull, tick, and the answer to a call), 25 mm.

#include <catch2/catch.hpp>

#include <algorithm>
#include <cstdio>
#include <map>
#include <utility>

#include <QQuickItem>

#include "ruler.h"
#include "scene.h"
#include "scenes.h"

using namespace cinder::face;
using namespace cinder::face::scene;

namespace {

constexpr double kTouch = 15;
constexpr double kHurried = 25;

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

void measure(const Glass& glass) {
    std::map<std::string, Measured> table;
    forEveryScene({&glass, "noon", "en", 1}, [&](QQuickItem& root, const std::string& scene) {
        for (auto* item : shown(root)) {
            // The dimmed board behind a sheet is touched anywhere.
            if (!isTarget(*item) || item->inherits("QQuickMouseArea")) continue;
            const double mm = Ruler::instance().pixelsPerMm();
            const QRectF place = item->mapRectToScene(item->boundingRect());
            const double width = place.width() / mm, height = place.height() / mm;
            auto& row = table[scene.substr(0, scene.find(',')) + "  " + typeOf(*item) +
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
    });
    CHECK(table.size() > 15);
    for (const auto& [what, row] : table)
        std::printf("%-16s %-34s %3d  least %5.1f x %5.1f mm\n", glass.name, what.c_str(),
                    row.count, row.width, row.height);
}

}  // namespace

TEST_CASE("everything to be touched on a tablet is as large as a glove needs") {
    measure(kTablet);
}

TEST_CASE("everything to be touched on a phone is as large as a glove needs") {
    measure(kPhone);
}
