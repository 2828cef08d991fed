#include "report/worked.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>

namespace cinder::report {

namespace {

using quantity::Amount;
using quantity::Figure;
using quantity::Unit;

/// To the nearest, without trailing zeros; a point in every language, as on the lists.
std::string nearest(double value, int digits) {
    std::array<char, 48> text{};
    const int length = std::snprintf(text.data(), text.size(), "%.*f", digits, value);
    std::string out(text.data(), static_cast<std::size_t>(length));
    if (out.find('.') == std::string::npos) return out;
    out.erase(out.find_last_not_of('0') + 1);
    if (out.back() == '.') out.pop_back();
    return out;
}

/// Four figures that count, so that a product of what is printed comes to what is printed.
std::string precise(double value) {
    return nearest(value, value < 1 ? 4 : value < 10 ? 3 : 2);
}

std::string massFactor(double grams, const Style& style) {
    if (style.measures == Measures::Metric)
        return grams < 1000 ? nearest(grams, 0) + " g" : nearest(grams / 1000, 3) + " kg";
    const double pounds = Mass::fromGrams(std::llround(grams)).pounds();
    return pounds < 1 ? precise(pounds * 16) + " oz" : precise(pounds) + " lb";
}

std::string volumeFactor(double litres, const Style& style) {
    if (style.measures == Measures::Metric) return nearest(litres, 3) + " L";
    return precise(litres / kLitresOfQuart) + " qt";
}

/// The numbers of the inputs in their places.
std::string filled(const Figure& figure, const Style& style) {
    std::string text = style.name(figure.worked);
    for (std::size_t i = 0; i < figure.inputs.size(); ++i) {
        const std::string place = '{' + std::to_string(i) + '}';
        const std::string number = factorText(figure.inputs[i].amount, style);
        for (auto at = text.find(place); at != std::string::npos;
             at = text.find(place, at + number.size()))
            text.replace(at, place.size(), number);
    }
    return text;
}

void collect(const Figure& figure, const Style& style, std::vector<std::string>& lines) {
    for (const Figure& input : figure.inputs)
        if (!input.isOverridden()) collect(input, style, lines);
    if (figure.worked.empty()) return;
    const Amount result{figure.reckoned.value_or(figure.amount.value), figure.amount.unit};
    std::string line = filled(figure, style) + " = " + factorText(result, style);
    if (std::find(lines.begin(), lines.end(), line) == lines.end())
        lines.push_back(std::move(line));
}

}  // namespace

std::string factorText(Amount amount, const Style& style) {
    switch (amount.unit) {
        case Unit::Grams:
            return massFactor(amount.value, style);
        case Unit::Millilitres:
            return volumeFactor(amount.value / 1000, style);
        case Unit::Minutes:
            return nearest(amount.value, 0) + " min";
        case Unit::Percent:
            return nearest(amount.value, 1) + " %";
        case Unit::Ratio:
            return nearest(amount.value, 4);
        default:
            return amountText(amount, style);
    }
}

std::vector<std::string> workedLines(const Figure& figure, const Style& style) {
    std::vector<std::string> lines;
    collect(figure, style, lines);
    return lines;
}

}  // namespace cinder::report
