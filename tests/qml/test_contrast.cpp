/// The contrast of every text with the ground it really stands on, found in the live scenes.
///
/// Source: W3C, Web Content Accessibility Guidelines (WCAG) 2.1, definitions of "relative
/// luminance" and "contrast ratio"; success criteria 1.4.3 (4.5:1) and 1.4.6 (7:1) for text, 1.4.11
/// (3:1) for drawings that carry meaning.

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <map>

#include <QColor>
#include <QMetaProperty>
#include <QQmlComponent>
#include <QQmlEngine>
#include <QQuickItem>
#include <QQuickWindow>

#include "eyes.h"
#include "likeness.h"
#include "scene.h"
#include "scenes.h"

using namespace cinder::face::scene;

namespace {

double linear(double channel) {
    return channel <= 0.03928 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

double luminance(const QColor& c) {
    return 0.2126 * linear(c.redF()) + 0.7152 * linear(c.greenF()) + 0.0722 * linear(c.blueF());
}

double contrast(const QColor& a, const QColor& b) {
    const std::pair<double, double> both = std::minmax({luminance(a), luminance(b)});
    return (both.second + 0.05) / (both.first + 0.05);
}

/// What lies under `text`: the last opaque fill painted before it that holds its middle.
QColor groundOf(QQuickItem& text) {
    const QPointF middle = visiblePart(text).center();
    const auto order = shown(*text.window()->contentItem());
    QColor ground = text.window()->property("color").value<QColor>();
    for (auto* item : order) {
        if (item == &text) break;
        if (!item->inherits("QQuickRectangle") || !visiblePart(*item).contains(middle)) continue;
        const auto fill = item->property("color").value<QColor>();
        if (fill.alpha() == 255) ground = fill;
    }
    return ground;
}

/// The colours of a theme by their value; two roles of one colour share a name.
class Palette {
  public:
    explicit Palette(const char* theme) {
        QQmlEngine engine;
        engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
        QQmlComponent component(&engine);
        component.setData("import Cinderbell.Theme\n" + QByteArray(theme) + " {}", {});
        const std::unique_ptr<QObject> hues(component.create());
        REQUIRE(hues != nullptr);
        leastContrast = hues->property("leastContrast").toDouble();
        const auto* kind = hues->metaObject();
        for (int i = 0; i < kind->propertyCount(); ++i) {
            const auto property = kind->property(i);
            if (property.typeId() != QMetaType::QColor) continue;
            auto& name = names_[property.read(hues.get()).value<QColor>().name().toStdString()];
            name += (name.empty() ? "" : "/") + std::string(property.name());
        }
    }
    /// The colour of a role.
    [[nodiscard]] QColor of(const char* role) const {
        for (const auto& [colour, name] : names_)
            if (("/" + name + "/").find("/" + std::string(role) + "/") != std::string::npos)
                return QColor(QString::fromStdString(colour));
        FAIL("no such role: " << role);
        return {};
    }
    [[nodiscard]] std::string nameOf(const QColor& colour) const {
        const auto at = names_.find(colour.name().toStdString());
        return at == names_.end() ? colour.name().toStdString() : at->second;
    }
    double leastContrast = 0;

  private:
    std::map<std::string, std::string> names_;
};

struct Pair {
    double ratio = 0;
    int uses = 0;
    std::string where;
};
using Pairs = std::map<std::pair<std::string, std::string>, Pair>;

/// Every colour on every ground it is seen on.
struct Seen {
    Pairs words, drawings;
};

void note(Pairs& pairs, const Palette& palette, QQuickItem& item, const std::string& scene) {
    const QRectF part = visiblePart(item);
    if (part.isEmpty() || coverOf(item, part.center()) != nullptr) return;
    const auto ink = item.property("color").value<QColor>();
    const auto ground = groundOf(item);
    auto& pair = pairs[{palette.nameOf(ink), palette.nameOf(ground)}];
    pair.ratio = contrast(ink, ground);
    if (pair.uses++ == 0) pair.where = scene + ": " + describe(item);
}

void collect(const Manner& manner, const Palette& palette, Seen& seen) {
    forEveryScene(manner, [&](QQuickItem& root, const std::string& scene) {
        for (auto* item : shown(root)) {
            const bool isText = item->inherits("QQuickText");
            if (isText && !item->property("text").toString().isEmpty())
                note(seen.words, palette, *item, scene);
            if (!isText && isInside(*item, "Glyph")) note(seen.drawings, palette, *item, scene);
        }
    });
}

void judge(const Pairs& pairs, const char* theme, const char* kind, double least) {
    CHECK(pairs.size() >= 5);
    for (const auto& [colours, pair] : pairs) {
        std::printf("%-5s %-8s %-12s on %-10s %6.2f : 1  (needs %.1f, seen %d times)\n", theme,
                    kind, colours.first.c_str(), colours.second.c_str(), pair.ratio, least,
                    pair.uses);
        INFO(colours.first << " on " << colours.second << ", " << pair.where);
        CHECK(pair.ratio >= least);
    }
}

/// Words and drawings in one walk through every scene: a walk takes long.
void judge(const char* hues, const char* theme, double leastOfWords) {
    const Palette palette(hues);
    CHECK(palette.leastContrast == leastOfWords);
    Seen seen;
    for (const auto* glass : {&kTablet, &kPhone})
        collect({glass, theme, "en", 1}, palette, seen);
    judge(seen.words, theme, "text", leastOfWords);
    judge(seen.drawings, theme, "drawing", 3);
}

}  // namespace

TEST_CASE("contrast is reckoned as WCAG 2.1 defines it") {
    // The ends of the scale, by the definition of contrast ratio: 1 to 21.
    CHECK(contrast(Qt::black, Qt::white) == Approx(21));
    CHECK(contrast(Qt::white, Qt::white) == Approx(1));
    // The lightest grey that passes 4.5:1 on white, and the next that fails; widely published,
    // from memory.
    CHECK(contrast(QColor(0x76, 0x76, 0x76), Qt::white) == Approx(4.54).margin(0.005));
    CHECK(contrast(QColor(0x77, 0x77, 0x77), Qt::white) == Approx(4.48).margin(0.005));
    CHECK(contrast(Qt::red, Qt::white) == Approx(4.00).margin(0.005));
}

TEST_CASE("in full sun words stand out by 7 to 1 and drawings by 3 to 1") {
    judge("Noon", "noon", 7);
}

TEST_CASE("at dusk words stand out by 4.5 to 1 and drawings by 3 to 1") {
    judge("Dusk", "dusk", 4.5);
}

TEST_CASE("words and hues are told apart by eyes that lack one kind of cone") {
    using cinder::face::Eyes;
    const std::pair<Eyes, const char*> kinds[] = {
        {Eyes::Protan, "no red"}, {Eyes::Deutan, "no green"}, {Eyes::Tritan, "no blue"}};
    for (const char* hues : {"Noon", "Dusk"}) {
        const Palette palette(hues);
        for (const auto& [eyes, name] : kinds) {
            const auto seen = [&](const char* role) {
                return QColor(cinder::face::seenBy(eyes, palette.of(role).rgb()));
            };
            // Words on the grounds that mean something: WCAG 2.1, 1.4.3, as for all eyes.
            for (const auto& [ink, ground] :
                 {std::pair("ember", "plate"), std::pair("ember", "emberWash"),
                  std::pair("water", "plate"), std::pair("ink", "emberWash"),
                  std::pair("ink", "waterWash"), std::pair("emberInk", "ember"),
                  std::pair("waterInk", "water")}) {
                const double ratio = contrast(seen(ink), seen(ground));
                std::printf("%-5s %-8s %-9s on %-10s %6.2f : 1\n", hues, name, ink, ground, ratio);
                INFO(hues << ", " << name << ": " << ink << " on " << ground);
                CHECK(ratio >= 4.5);
            }
            // The two hues beside each other. Every state has its shape and word as well; four
            // times what is just seen (likeness.h) keeps the hue a help.
            const double apart = cinder::face::difference(cinder::face::labOf(seen("ember").rgb()),
                                                          cinder::face::labOf(seen("water").rgb()));
            std::printf("%-5s %-8s ember and water lie %.0f apart\n", hues, name, apart);
            CHECK(apart >= 4 * 2.3);
        }
    }
}

TEST_CASE("eyes that lack nothing see every colour as it is, and grey is grey to all") {
    using cinder::face::Eyes;
    for (const QRgb colour : {qRgb(0, 0, 0), qRgb(255, 255, 255), qRgb(132, 39, 7)})
        CHECK(cinder::face::seenBy(Eyes::Usual, colour) == colour);
    // The rows of each matrix sum to one: white and grey stay.
    for (const auto eyes : {Eyes::Protan, Eyes::Deutan, Eyes::Tritan})
        for (const QRgb grey : {qRgb(255, 255, 255), qRgb(128, 128, 128)})
            CHECK(cinder::face::seenBy(eyes, grey) == grey);
}
