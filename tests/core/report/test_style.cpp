#include <catch2/catch.hpp>

#include "event/words.h"
#include "report/style.h"

using namespace cinder;
using namespace cinder::report;

namespace {

const Style kMetric{"en", Measures::Metric, Hours::TwentyFour};
const Style kCustomary{"en", Measures::Customary, Hours::Twelve};
const Style kSpanish{"es", Measures::Metric, Hours::TwentyFour};

}  // namespace

TEST_CASE("Weights are written in the unit asked for, never rounded down") {
    CHECK(massText(Mass::fromGrams(850), kMetric) == "850 g");
    CHECK(massText(Mass::fromGrams(5940), kMetric) == "5.94 kg");
    CHECK(massText(Mass::fromGrams(12345), kMetric) == "12.35 kg");
    CHECK(massText(Mass::fromPounds(40), kCustomary) == "40 lb");
    CHECK(massText(Mass::fromGrams(454), kCustomary) == "1 lb");
    CHECK(massText(Mass::fromGrams(460), kCustomary) == "1 lb 1 oz");  // 16.2 oz
    CHECK(massText(Mass::fromGrams(100), kCustomary) == "3.6 oz");     // 3.53 oz
    CHECK(massText(Mass::fromGrams(90), kCustomary) == "3.2 oz");      // 3.17 oz
    CHECK(massText(Mass::fromGrams(453), kCustomary) == "1 lb");
}

TEST_CASE("Volumes, lengths and temperatures follow the measures") {
    CHECK(volumeText(Volume::fromLitres(3.933), kMetric) == "4 L");
    CHECK(volumeText(Volume::fromLitres(3.785), kCustomary) == "4 qt");
    CHECK(lengthText(Length::fromInches(72), kCustomary) == "6 ft 0 in");
    CHECK(lengthText(Length::fromMillimetres(1829), kCustomary) == "6 ft 0 in");
    CHECK(lengthText(Length::fromMillimetres(1850), kCustomary) == "6 ft 1 in");  // 72.8 in
    CHECK(roomText(Length::fromMillimetres(1829), kCustomary) == "6 ft 0 in");
    CHECK(roomText(Length::fromMillimetres(1850), kCustomary) == "6 ft 0 in");
    CHECK(lengthText(Length::fromMillimetres(1829), kMetric) == "1.83 m");
    CHECK(temperatureText(Temperature::fromFahrenheit(165), kMetric) == "74 °C (165 °F)");
    CHECK(temperatureText(Temperature::fromFahrenheit(41), kCustomary) == "41 °F (5 °C)");
}

TEST_CASE("The wall shows twelve or twenty-four hours") {
    const auto serve = parseRfc3339("2027-09-18T13:05:00-04:00");
    REQUIRE(serve);
    CHECK(timeText(serve->at, serve->offset, kMetric) == "13:05");
    CHECK(timeText(serve->at, serve->offset, kCustomary) == "1:05 pm");
    CHECK(timeText(serve->at - std::chrono::hours{13}, serve->offset, kCustomary) == "12:05 am");
    CHECK(dayText(serve->at, serve->offset, kMetric) == "Sat 18 Sep 13:05");
    CHECK(dayText(serve->at, serve->offset, kSpanish) == "sáb 18 sep 13:05");
}

TEST_CASE("Amounts carry their unit, in the singular where there is one") {
    CHECK(amountText({1, quantity::Unit::Packs}, kMetric) == "1 pack");
    CHECK(amountText({2.2, quantity::Unit::Bags}, kMetric) == "3 bags");
    CHECK(amountText({175, quantity::Unit::Minutes}, kMetric) == "2 h 55 min");
    CHECK(amountText({1, quantity::Unit::Portions}, kSpanish) == "1 porción");
    CHECK(amountText({0.84, quantity::Unit::Ratio}, kMetric) == "0.84");
    CHECK(amountText({84, quantity::Unit::Percent}, kMetric) == "84 %");
}

TEST_CASE("Every allergen, diet and vessel has a word in both languages") {
    const auto check = [](auto value) {
        for (const auto& known : event::wordsOf(value)) {
            CHECK_FALSE(word(known.value, kMetric).empty());
            CHECK_FALSE(word(known.value, kSpanish).empty());
        }
    };
    check(event::Allergen{});
    check(event::Diet{});
    check(event::Vessel{});
    check(event::Keeping{});
}
