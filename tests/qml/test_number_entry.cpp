/// A number while it is typed. Unit factors are those of NIST Special Publication 811 (2008),
/// appendix B.8; temperatures of water's ice and boiling points on both scales.

#include <catch2/catch.hpp>

#include "number_entry.h"
#include "settings.h"
#include "words.h"

using namespace cinder;
using namespace cinder::face;
using Kind = NumberEntry::Kind;

namespace {

void type(NumberEntry& entry, const char* keys) {
    for (const char* key = keys; *key != '\0'; ++key)
        entry.press(QString(QLatin1Char(*key)));
}

}  // namespace

TEST_CASE("a temperature is typed on either scale and means the same") {
    NumberEntry entry;
    entry.begin(Kind::Temperature, -30, 300, true);
    type(entry, "212");
    CHECK(entry.isReady());
    CHECK(entry.value() == Approx(100));
    entry.useUnit(1);
    CHECK(entry.text() == QLatin1String("100"));
    entry.clear();
    type(entry, "-4.5");
    CHECK(entry.value() == Approx(-4.5));
}

TEST_CASE("a mass keeps its worth when the unit is switched") {
    NumberEntry entry;
    entry.begin(Kind::Mass, 0, 100000, true);
    type(entry, "40");
    CHECK(entry.value() == Approx(18143.69));
    entry.useUnit(2);
    CHECK(entry.unitWord() == QLatin1String("kg"));
    CHECK(entry.text() == QLatin1String("18.144"));
}

TEST_CASE("a number out of its limits says which limit, in the unit that is shown") {
    NumberEntry entry;
    entry.begin(Kind::Temperature, 0, 100, true);
    type(entry, "500");
    CHECK_FALSE(entry.isReady());
    CHECK(entry.problem().contains(QStringLiteral("212 °F")));
    entry.clear();
    type(entry, "31");
    CHECK(entry.problem().contains(QStringLiteral("32 °F")));
}

TEST_CASE("a temperature that fits only the other scale is asked about, and kept by its touch") {
    NumberEntry entry;
    entry.begin(Kind::Temperature, -17.7, 105, false);
    type(entry, "125");
    CHECK_FALSE(entry.isReady());
    CHECK(entry.problem().contains(QStringLiteral("105 °C")));
    CHECK(entry.problem().contains(QStringLiteral("Is that °F?")));
    entry.useUnit(0);
    CHECK(entry.text() == QLatin1String("125"));
    CHECK(entry.isReady());
    // 125 degF is 51.7 degC: (125 - 32) / 1.8.
    CHECK(entry.value() == Approx(51.667).margin(0.001));
    // Nothing of the kind where no scale makes it right.
    entry.clear();
    type(entry, "900");
    CHECK_FALSE(entry.problem().contains(QStringLiteral("Is that")));
}

TEST_CASE("both limits themselves can be typed in every unit") {
    const auto kind = GENERATE(Kind::Temperature, Kind::Mass, Kind::Length, Kind::Volume);
    const double limit = GENERATE(3.3, 57.0, 41.7);
    NumberEntry entry;
    entry.beginAt(kind, limit, limit, true, limit);
    for (int unit = 0; unit < entry.units().size(); ++unit) {
        entry.useUnit(unit);
        INFO(entry.text().toStdString() << " " << entry.unitWord().toStdString());
        CHECK(entry.problem().isEmpty());
    }
}

TEST_CASE("keys that cannot follow are let go") {
    NumberEntry entry;
    entry.begin(Kind::Count, 1, 5000, true);
    type(entry, "-.9.6");
    CHECK(entry.text() == QLatin1String("96"));
    type(entry, "0000000");
    CHECK(entry.text() == QLatin1String("960000"));
    CHECK_FALSE(entry.isReady());
    entry.erase();
    CHECK(entry.text() == QLatin1String("96000"));
}

TEST_CASE("the first key replaces what stood there, erasing does not") {
    NumberEntry entry;
    entry.beginAt(Kind::Count, 1, 5000, true, 96);
    type(entry, "8");
    CHECK(entry.text() == QLatin1String("8"));
    entry.beginAt(Kind::Count, 1, 5000, true, 96);
    entry.erase();
    type(entry, "8");
    CHECK(entry.text() == QLatin1String("98"));
}

TEST_CASE("degrees and weights are chosen apart") {
    Settings settings{QString()};
    settings.setFahrenheit(true);
    settings.setCustomary(false);
    const Words words(settings);
    CHECK(isCustomaryFor(Kind::Temperature, settings));
    CHECK_FALSE(isCustomaryFor(Kind::Mass, settings));
    CHECK(words.temperature(Temperature::fromCelsius(57)) == QStringLiteral("135\u00a0°F"));
    CHECK(words.mass(Mass::fromKilograms(18)) == QLatin1String("18 kg"));
    settings.setFahrenheit(false);
    settings.setCustomary(true);
    CHECK_FALSE(isCustomaryFor(Kind::Temperature, settings));
    CHECK(isCustomaryFor(Kind::Length, settings));
    // NIST Special Publication 811 (2008), B.8: one pound is 0.45359237 kg.
    CHECK(words.mass(Mass::fromKilograms(18.1437)) == QLatin1String("40 lb"));
}
