#include "report/style.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>

namespace cinder::report {

namespace {

/// With at most `digits` after the point, rounded up, no trailing zeros; a point in every language,
/// so that nobody takes a comma for the start of a thousand.
std::string upTo(double value, int digits) {
    const double scale = std::pow(10.0, digits);
    std::array<char, 40> text{};
    const int length =
        std::snprintf(text.data(), text.size(), "%.*f", digits,
                      static_cast<double>(quantity::roundedUp(value * scale)) / scale);
    std::string out(text.data(), static_cast<std::size_t>(length));
    if (out.find('.') != std::string::npos) {
        out.erase(out.find_last_not_of('0') + 1);
        if (out.back() == '.') out.pop_back();
    }
    return out;
}

std::string twoDigits(int value) {
    return (value < 10 ? "0" : "") + std::to_string(value);
}

struct UnitWords {
    quantity::Unit unit;
    const char* one;
    const char* many;
    const char* oneSpanish;
    const char* manySpanish;
};
constexpr UnitWords kUnits[] = {
    {quantity::Unit::Guests, "guest", "guests", "persona", "personas"},
    {quantity::Unit::Adults, "adult", "adults", "adulto", "adultos"},
    {quantity::Unit::Children, "child", "children", "niño", "niños"},
    {quantity::Unit::Portions, "portion", "portions", "porción", "porciones"},
    {quantity::Unit::Pieces, "piece", "pieces", "pieza", "piezas"},
    {quantity::Unit::Packs, "pack", "packs", "paquete", "paquetes"},
    {quantity::Unit::Pans, "pan", "pans", "charola", "charolas"},
    {quantity::Unit::Vessels, "vessel", "vessels", "recipiente", "recipientes"},
    {quantity::Unit::Chafers, "chafer", "chafers", "calientaplatos", "calientaplatos"},
    {quantity::Unit::Cans, "can", "cans", "lata", "latas"},
    {quantity::Unit::Bags, "bag", "bags", "bolsa", "bolsas"},
    {quantity::Unit::Tables, "table", "tables", "mesa", "mesas"},
};

}  // namespace

std::string massText(Mass mass, const Style& style) {
    if (style.measures == Measures::Metric) {
        if (mass < Mass::fromGrams(1000)) return std::to_string(mass.grams()) + " g";
        return upTo(mass.kilograms(), mass < Mass::fromGrams(100000) ? 2 : 1) + " kg";
    }
    // A mass is whole grams, so 40 lb may have come to half a gram more: that is no ounce.
    constexpr double kHalfGramInOunces = 0.5 / 28.349523125;
    // A portion of 90 g is not the quarter pound that whole ounces would make of it.
    if (mass.pounds() * 16 < 15.95) return upTo(mass.pounds() * 16, 1) + " oz";
    const auto ounces =
        std::max<std::int64_t>(0, quantity::roundedUp(mass.pounds() * 16 - kHalfGramInOunces));
    const auto pounds = ounces / 16;
    std::string text = pounds > 0 ? std::to_string(pounds) + " lb" : "";
    if (ounces % 16 != 0 || pounds == 0)
        text += (text.empty() ? "" : " ") + std::to_string(ounces % 16) + " oz";
    return text;
}

std::string volumeText(Volume volume, const Style& style) {
    if (style.measures == Measures::Metric) return upTo(volume.litres(), 1) + " L";
    return upTo(volume.litres() / kLitresOfQuart, 1) + " qt";
}

std::string temperatureText(Temperature temperature, const Style& style) {
    const auto whole = [](double value) { return std::to_string(std::lround(value)); };
    const std::string celsius = whole(temperature.celsius()) + " °C";
    const std::string fahrenheit = whole(temperature.fahrenheit()) + " °F";
    return style.measures == Measures::Metric ? celsius + " (" + fahrenheit + ")"
                                              : fahrenheit + " (" + celsius + ")";
}

namespace {

/// What is measured in whole millimetres may be out by this, in inches: 6 ft is 1829 mm.
constexpr double kHalfMillimetre = 0.5 / 25.4;

std::string feetAndInches(std::int64_t inches) {
    return std::to_string(inches / 12) + " ft " + std::to_string(inches % 12) + " in";
}

}  // namespace

std::string lengthText(Length length, const Style& style) {
    if (style.measures == Measures::Metric) return upTo(length.metres(), 2) + " m";
    return feetAndInches(quantity::roundedUp(length.inches() - kHalfMillimetre));
}

std::string roomText(Length room, const Style& style) {
    if (style.measures == Measures::Metric) return upTo(room.metres(), 2) + " m";
    return feetAndInches(static_cast<std::int64_t>(std::floor(room.inches() + kHalfMillimetre)));
}

std::string timeText(Instant at, UtcOffset offset, const Style& style) {
    const auto wall = std::chrono::floor<std::chrono::minutes>(at + offset);
    const auto ofDay = wall - std::chrono::floor<std::chrono::days>(wall);
    const int hour = static_cast<int>(ofDay.count() / 60);
    const int minute = static_cast<int>(ofDay.count() % 60);
    if (style.hours == Hours::TwentyFour) return twoDigits(hour) + ":" + twoDigits(minute);
    return std::to_string((hour + 11) % 12 + 1) + ":" + twoDigits(minute) +
           (hour < 12 ? " am" : " pm");
}

std::string dayText(Instant at, UtcOffset offset, const Style& style) {
    static constexpr std::array<const char*, 7> kDays{"Sun", "Mon", "Tue", "Wed",
                                                      "Thu", "Fri", "Sat"};
    static constexpr std::array<const char*, 7> kDias{"dom", "lun", "mar", "mié",
                                                      "jue", "vie", "sáb"};
    static constexpr std::array<const char*, 12> kMonths{"Jan", "Feb", "Mar", "Apr", "May", "Jun",
                                                         "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};
    static constexpr std::array<const char*, 12> kMeses{"ene", "feb", "mar", "abr", "may", "jun",
                                                        "jul", "ago", "sep", "oct", "nov", "dic"};
    const auto day = std::chrono::floor<std::chrono::days>(at + offset);
    const std::chrono::year_month_day date{day};
    const auto weekday = std::chrono::weekday{day}.c_encoding();
    const auto month = static_cast<unsigned>(date.month()) - 1;
    return style.say(kDays.at(weekday), kDias.at(weekday)) + " " +
           std::to_string(static_cast<unsigned>(date.day())) + " " +
           style.say(kMonths.at(month), kMeses.at(month)) + " " + timeText(at, offset, style);
}

std::string spanText(Duration span, const Style&) {
    const auto minutes = std::chrono::ceil<std::chrono::minutes>(span).count();
    if (minutes < 60) return std::to_string(minutes) + " min";
    std::string text = std::to_string(minutes / 60) + " h";
    if (minutes % 60 != 0) text += " " + std::to_string(minutes % 60) + " min";
    return text;
}

namespace {

/// "0.95 kg per L" or "1.983 lb per qt".
std::string densityText(double gramsPerLitre, const Style& style) {
    const Mass litre = Mass::fromGrams(std::llround(gramsPerLitre));
    if (style.measures == Measures::Metric)
        return upTo(litre.kilograms(), 3) + style.say(" kg per L", " kg por L");
    return upTo(litre.pounds() * kLitresOfQuart, 3) + style.say(" lb per qt", " lb por qt");
}

}  // namespace

std::string amountText(quantity::Amount amount, const Style& style) {
    using quantity::Unit;
    const auto whole = quantity::roundedUp(amount.value);
    switch (amount.unit) {
        case Unit::Grams:
            return massText(Mass::fromGrams(whole), style);
        case Unit::Millilitres:
            return volumeText(Volume::fromMillilitres(whole), style);
        case Unit::Millimetres:
            return lengthText(Length::fromMillimetres(amount.value), style);
        case Unit::Minutes:
            return spanText(std::chrono::minutes{whole}, style);
        case Unit::Percent:
            return upTo(amount.value, 1) + " %";
        case Unit::Ratio:
            return upTo(amount.value, 3);
        case Unit::GramsPerLitre:
            return densityText(amount.value, style);
        default:
            break;
    }
    for (const UnitWords& words : kUnits) {
        if (words.unit != amount.unit) continue;
        const std::string text = whole == 1 ? style.say(words.one, words.oneSpanish)
                                            : style.say(words.many, words.manySpanish);
        return std::to_string(whole) + " " + text;
    }
    return std::to_string(whole);
}

}  // namespace cinder::report
