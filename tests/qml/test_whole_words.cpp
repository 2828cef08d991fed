/// No word is cut: every text of every scene has room for all it says, in both languages, on both
/// screens, and at the largest size of text.

#include <catch2/catch.hpp>

#include <algorithm>

#include <QQuickItem>

#include "scene.h"
#include "scenes.h"

using namespace cinder::face::scene;

namespace {

// A pixel of rounding at each edge.
constexpr double kRounding = 2;

/// The nearest thing with an edge around `text`: a plate, a button, what scrolls, the window.
const QQuickItem& boxOf(const QQuickItem& text) {
    const auto* box = text.parentItem();
    while (box->parentItem() != nullptr && !box->clip() && !box->inherits("QQuickRectangle") &&
           !box->inherits("QQuickAbstractButton"))
        box = box->parentItem();
    return *box;
}

/// What is wrong with `text`; empty when all of it can be read.
std::string cutOf(QQuickItem& text) {
    if (text.property("truncated").toBool()) return "is cut short";
    const double width = text.property("contentWidth").toDouble();
    const double height = text.property("contentHeight").toDouble();
    if (width > text.width() + kRounding) return "is wider than its place";
    if (height > text.height() + kRounding) return "is higher than its place";
    const auto& box = boxOf(text);
    const QRectF place = box.mapRectFromItem(&text, text.boundingRect());
    const bool isScroller = box.inherits("QQuickFlickable");
    if (place.left() < -kRounding || place.right() > box.width() + kRounding)
        return "crosses the side of " + describe(const_cast<QQuickItem&>(box));
    if (!isScroller && (place.top() < -kRounding || place.bottom() > box.height() + kRounding))
        return "crosses the top or foot of " + describe(const_cast<QQuickItem&>(box));
    return {};
}

void readEverything(const Manner& manner) {
    int read = 0;
    forEveryScene(manner, [&](QQuickItem& root, const std::string& scene) {
        for (auto* item : shown(root)) {
            // The chart is a picture of the day; its names are whole in the list beside it.
            if (!item->inherits("QQuickText") || isInside(*item, "RunChart") ||
                item->property("text").toString().isEmpty())
                continue;
            ++read;
            const std::string cut = cutOf(*item);
            INFO(scene << ", " << manner.language << ", text " << manner.textScale << ": "
                       << describe(*item) << " " << cut);
            CHECK(cut.empty());
        }
    });
    CHECK(read > 150);
}

}  // namespace

TEST_CASE("no word is cut on a tablet") {
    readEverything({&kTablet, "noon", "en", 1});
    readEverything({&kTablet, "noon", "es", 1});
}

TEST_CASE("no word is cut on a phone") {
    readEverything({&kPhone, "noon", "en", 1});
    readEverything({&kPhone, "noon", "es", 1});
}

TEST_CASE("no word is cut when text is set a third larger") {
    for (const auto* glass : {&kTablet, &kPhone})
        for (const char* language : {"en", "es"})
            readEverything({glass, "noon", language, 1.3});
}
