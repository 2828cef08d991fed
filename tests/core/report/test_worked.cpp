// What stands before the sign of equality is reckoned again here, from the printed text alone, as
// the person does who reads it with a pocket reckoner in hand.

#include <algorithm>
#include <catch2/catch.hpp>
#include <cctype>
#include <cmath>
#include <cstring>
#include <fstream>
#include <sstream>
#include <string>
#include <string_view>

#include "event/json.h"
#include "quantity/build/reckon.h"
#include "report/worked.h"

using namespace cinder;
using namespace cinder::report;

namespace {

const Style kMetric{"en", Measures::Metric, Hours::TwentyFour};
const Style kCustomary{"en", Measures::Customary, Hours::Twelve};

event::Event demo(const std::string& name) {
    const std::ifstream file(std::string(CINDER_SOURCE) + "/demo-data/" + name + ".json");
    std::stringstream text;
    text << file.rdbuf();
    auto event = event::parse(text.str());
    REQUIRE(event.has_value());
    return *std::move(event);
}

quantity::Reckoning reckoned(const event::Event& event) {
    return quantity::reckon(event, {event.serve.at - std::chrono::minutes{110}, {}});
}

/// Grams, millilitres and minutes; what is counted counts as it stands.
/// Source of the customary units: NIST Handbook 44, appendix C.
double scaleOf(std::string_view unit) {
    if (unit == "kg" || unit == "L") return 1000;
    if (unit == "%") return 0.01;
    if (unit == "lb") return 453.59237;
    if (unit == "oz") return 453.59237 / 16;
    if (unit == "qt") return 946.352946;
    if (unit == "lb per qt") return 453.59237 / 946.352946;
    return 1;
}

class Reckoner {
  public:
    explicit Reckoner(std::string_view text) : rest_(text) {}

    double all() {
        double value = 0;
        if (took("the larger of ")) {
            const double first = list();
            REQUIRE(took(" and "));
            value = std::max(first, list());
        } else {
            value = list();
        }
        CHECK(rest_ == "");
        return value;
    }

  private:
    bool took(std::string_view word) {
        if (!rest_.starts_with(word)) return false;
        rest_.remove_prefix(word.size());
        return true;
    }
    double list() {
        double value = product();
        while (took(" + "))
            value += product();
        // The steps as they stand, forgiving what printing made of the last digit.
        if (took(", rounded up")) return std::ceil(value - 1e-6);
        return value;
    }
    double product() {
        double value = one();
        while (true) {
            if (took(" x "))
                value *= one();
            else if (took(" / "))
                value /= one();
            else
                return value;
        }
    }
    double one() {
        if (took("(")) {
            const double value = list();
            REQUIRE(took(")"));
            return value;
        }
        REQUIRE(std::isdigit(static_cast<unsigned char>(rest_[0])));
        std::size_t used = 0;
        const double number = std::stod(std::string(rest_), &used);
        rest_.remove_prefix(used);
        const bool hasUnit =
            rest_.size() > 1 && rest_[0] == ' ' && std::strchr("x/+", rest_[1]) == nullptr;
        if (!hasUnit || !took(" ")) return number;
        return number * scaleOf(unit());
    }
    std::string_view unit() {
        std::size_t end = rest_.size();
        for (const std::string_view stop : {" x ", " / ", " + ", " and ", ")", ","})
            end = std::min(end, rest_.find(stop));
        const std::string_view unit = rest_.substr(0, end);
        rest_.remove_prefix(end);
        return unit;
    }

    std::string_view rest_;
};

/// The figures of the page, each with everything that went into it.
std::vector<const quantity::Figure*> onThePage(const quantity::Reckoning& all) {
    std::vector<const quantity::Figure*> figures;
    for (const auto& dish : all.dishes)
        for (const auto* one :
             {&dish.portions, &dish.pieces, &dish.weight, &dish.vessels, &dish.onLine})
            if (*one) figures.push_back(&**one);
    for (const auto& buy : all.purchase)
        figures.push_back(&buy.toBuy);
    for (const auto& supply : all.supplies)
        figures.push_back(&supply);
    if (all.departure) figures.push_back(&all.departure->beforeBell);
    return figures;
}

}  // namespace

TEST_CASE("A weight says its own guests, portions and shares, step by step") {
    const auto all = reckoned(demo("orchard-harvest-lunch"));
    const auto* slaw = quantity::findFigure(all, "dish/slaw/weight");
    REQUIRE(slaw);
    const auto* water = quantity::findFigure(all, "supply/water");
    REQUIRE(water);
    CHECK_FALSE(water->worked.empty());

    CHECK(workedLines(*slaw, kMetric) ==
          std::vector<std::string>{
              "((88 adults x 85 %, rounded up) + (8 children x 85 %, rounded up) x 60 %) x "
              "(1 + 10 %), rounded up = 88 portions",
              "88 portions x 90 g = 7.92 kg"});
    CHECK(workedLines(*slaw, {"es", Measures::Customary, Hours::Twelve}) ==
          std::vector<std::string>{
              "((88 adultos x 85 %, hacia arriba) + (8 niños x 85 %, hacia arriba) x 60 %) x "
              "(1 + 10 %), hacia arriba = 88 porciones",
              "88 porciones x 3.175 oz = 17.46 lb"});
}

TEST_CASE("What a person put in place of a figure is used, and not asked where it comes from") {
    auto event = demo("orchard-harvest-lunch");
    event.quantities->overrides = {{"dish/slaw/portions", 100, {}, {}}};
    const auto all = reckoned(event);

    const auto* weight = quantity::findFigure(all, "dish/slaw/weight");
    CHECK(workedLines(*weight, kMetric) == std::vector<std::string>{"100 portions x 90 g = 9 kg"});
    // Of itself the figure says what the app reckons; the person's own value stands beside.
    const auto* portions = quantity::findFigure(all, "dish/slaw/portions");
    REQUIRE(workedLines(*portions, kMetric).size() == 1);
    CHECK(workedLines(*portions, kMetric).front().ends_with(" = 88 portions"));
}

TEST_CASE("Every line comes to what it says when it is reckoned again from what is printed") {
    for (const auto* name : {"orchard-harvest-lunch", "last-apple-feast", "pruning-day-supper"}) {
        const auto all = reckoned(demo(name));
        for (const Style& style : {kMetric, kCustomary}) {
            for (const auto* figure : onThePage(all)) {
                for (const std::string& line : workedLines(*figure, style)) {
                    INFO(name << ": " << line);
                    CHECK(line.find('{') == std::string::npos);
                    const auto sign = line.find(" = ");
                    REQUIRE(sign != std::string::npos);
                    const double stated = Reckoner(line.substr(sign + 3)).all();
                    // A gram, or half of the last printed digit, and as much of what went in.
                    CHECK(Reckoner(line.substr(0, sign)).all() ==
                          Approx(stated).margin(2).epsilon(0.0005));
                }
            }
        }
    }
}
