#include <catch2/catch.hpp>

#include <map>
#include <string>

#include "check_table.h"
#include "safety/cooked.h"
#include "safety/limits.h"
#include "safety/thermometer.h"

// Every published limit on both sides of its edge, in both scales. All figures: FDA Food Code 2022
// at the section beside them; those marked `from memory` were not read in a copy of the text.

using namespace cinder;
using namespace cinder::safety;
using namespace cinder::reference;
using namespace std::chrono_literals;

namespace {

struct DegreeRow {
    Degree degree;
    double fahrenheit;
    double celsius;
    bool isMinimum;
    const char* section;
    const char* id;  // in the shared table, without its scale
};

const DegreeRow kDegreeRows[] = {
    {Degree::ColdHold, 41, 5, false, "3-501.16(A)(2)", "cold_hold_max"},
    {Degree::HotHold, 135, 57, true, "3-501.16(A)(1)", "hot_hold_min"},
    {Degree::HotHoldRoast, 130, 54, true, "3-501.16(A)(1)", "hot_hold_min_roast"},
    {Degree::ShellEggAir, 45, 7, false, "3-501.16(B)", "egg_store_max"},
    {Degree::ReceiveCold, 41, 5, false, "3-202.11(A)", "receive_cold_max"},  // from memory
    {Degree::ReceiveHot, 135, 57, true, "3-202.11(D)", "receive_hot_min"},   // from memory
    {Degree::CookPoultry, 165, 74, true, "3-401.11(A)(3)", "cook_poultry"},
    {Degree::CookGround, 155, 68, true, "3-401.11(A)(2)", "cook_ground"},
    {Degree::CookIntact, 145, 63, true, "3-401.11(A)(1)", "cook_intact"},
    {Degree::CookPlant, 135, 57, true, "3-401.13", "cook_plant_hot_hold"},
    {Degree::CookMicrowave, 165, 74, true, "3-401.12", "cook_microwave"},
    {Degree::Reheat, 165, 74, true, "3-403.11(A)", "reheat"},
    {Degree::ReheatPacked, 135, 57, true, "3-403.11(C)", "reheat_commercial"},
    {Degree::CoolStart, 135, 57, true, "3-501.14(A)", "cool_start"},
    {Degree::CoolMiddle, 70, 21, false, "3-501.14(A)(1)", "cool_mid"},
    {Degree::CoolEnd, 41, 5, false, "3-501.14(A)(2)", "cool_end"},
    {Degree::TimeStartHot, 135, 57, true, "3-501.19(B)(1)", "tphc_start_hot"},
    {Degree::TimeStartCold, 41, 5, false, "3-501.19(B)(1)", "tphc_start_cold"},
    {Degree::TimeStartFresh, 70, 21, false, "3-501.19(B)(2)", "tphc_start_produce"},
    {Degree::TimeWarmest, 70, 21, false, "3-501.19(C)", "tphc6_max"},
};

struct SpanRow {
    Span span;
    Duration length;
    bool isMinimum;
    const char* section;
    const char* id;
};

const SpanRow kSpanRows[] = {
    {Span::CookIntactHold, 15s, true, "3-401.11(A)(1)", "cook_intact_hold"},
    {Span::CookGroundHold, 17s, true, "3-401.11(A)(2)", "cook_ground_hold"},
    {Span::MicrowaveStand, 2min, true, "3-401.12", "cook_microwave_stand"},
    {Span::ReheatHold, 15s, true, "3-403.11(A)", "reheat_hold"},
    {Span::ReheatWithin, 2h, false, "3-403.11(D)", "reheat_max_time"},
    {Span::CoolMiddleWithin, 2h, false, "3-501.14(A)(1)", "cool_mid_time"},
    {Span::CoolEndWithin, 6h, false, "3-501.14(A)(2)", "cool_total_time"},
    {Span::CoolAmbientWithin, 4h, false, "3-501.14(B)", "cool_ambient_time"},
    {Span::TimeControl, 4h, false, "3-501.19(B)", "tphc_hours"},
    {Span::TimeControlLong, 6h, false, "3-501.19(C)", "tphc6_hours"},
    {Span::FirstHeating, 60min, false, "3-401.14", "noncontinuous_first_heat"},  // from memory
    {Span::HandWash, 20s, true, "2-301.12(A)", "handwash_total"},
    {Span::HandRub, 10s, true, "2-301.12(B)(3)", "handwash_rub_min"},
    {Span::ChlorineContact, 10s, true, "4-703.11(C)(1)", "chlorine_contact"},
    {Span::SanitizerContact, 30s, true, "4-703.11(C)(3)", "other_sanitizer_contact"},
    // common practice - no source
    {Span::HoldEvery, 60min, false, "", ""},
    // USDA FSIS, 2-hour rule
    {Span::HoldGap, 2h, false, "", "rule_2h"},
};

/// FDA Food Code 2022, 3-401.11(B), chart of whole meat roasts; verified in state texts.
struct ChartRow {
    double fahrenheit;
    double celsius;
    Duration hold;
};
const ChartRow kRoastChart[] = {{130, 54.4, 112min}, {131, 55.0, 89min}, {133, 56.1, 56min},
                                {135, 57.2, 36min},  {136, 57.8, 28min}, {138, 58.9, 18min},
                                {140, 60.0, 12min},  {142, 61.1, 8min},  {144, 62.2, 5min},
                                {145, 62.8, 4min},   {147, 63.9, 134s},  {149, 65.0, 85s},
                                {151, 66.1, 54s},    {153, 67.2, 34s},   {155, 68.3, 22s},
                                {157, 69.4, 14s},    {158, 70.0, 0s}};
/// FDA Food Code 2022, 3-401.11(A)(2), alternatives.
const ChartRow kGroundChart[] = {{145, 63, 3min}, {150, 66, 1min}, {155, 68, 17s}, {158, 70, 0s}};

std::map<std::string, Row> sharedById() {
    std::map<std::string, Row> byId;
    if (const auto table = sharedTable("food_safety.csv", Without::Nothing))
        for (const Row& row : *table)
            byId.emplace(row.at("id"), row);
    return byId;
}

/// "FDA Food Code 2022, 3-501.16(A)(2)" from the shared table names the section of ours.
bool names(const Row& row, const std::string& section) {
    return row.at("source").find(section) != std::string::npos;
}

Duration lengthIn(const Row& row) {
    const double value = number(row.at("value"));
    const std::string& unit = row.at("unit");
    const double seconds = unit == "h" ? value * 3600 : unit == "min" ? value * 60 : value;
    return Duration{static_cast<Duration::rep>(seconds * 1000)};
}

}  // namespace

TEST_CASE("a temperature limit is met at its figure and not a tenth of a degree beyond") {
    REQUIRE(std::size(kDegreeRows) == publishedDegrees().size());
    const Limits limits;
    for (const DegreeRow& row : kDegreeRows) {
        CAPTURE(row.section, row.fahrenheit, row.celsius);
        const double out = row.isMinimum ? -0.1 : 0.1;
        CHECK(limits.meets(row.degree, inFahrenheit(row.fahrenheit)));
        CHECK(limits.meets(row.degree, inFahrenheit(row.fahrenheit - out)));
        CHECK_FALSE(limits.meets(row.degree, inFahrenheit(row.fahrenheit + out)));
        CHECK(limits.meets(row.degree, inCelsius(row.celsius)));
        CHECK(limits.meets(row.degree, inCelsius(row.celsius - out)));
        CHECK_FALSE(limits.meets(row.degree, inCelsius(row.celsius + out)));
        CHECK(published(row.degree).section == row.section);
        CHECK(published(row.degree).edition == "FDA Food Code 2022");
        CHECK(published(row.degree).degree == row.degree);
    }
}

TEST_CASE("a time limit is the published one") {
    REQUIRE(std::size(kSpanRows) == publishedSpans().size());
    for (const SpanRow& row : kSpanRows) {
        CAPTURE(row.section);
        CHECK(Limits{}.length(row.span) == row.length);
        CHECK((published(row.span).sense == Sense::AtLeast) == row.isMinimum);
        CHECK(published(row.span).section == row.section);
        CHECK(published(row.span).span == row.span);
    }
}

TEST_CASE("the shared table of limits has the same figures and sections") {
    const auto shared = sharedById();
    if (shared.empty()) return;
    for (const DegreeRow& row : kDegreeRows) {
        CAPTURE(row.id);
        const Row& fahrenheit = shared.at(std::string(row.id) + "_F");
        const Row& celsius = shared.at(std::string(row.id) + "_C");
        CHECK(number(fahrenheit.at("value")) == row.fahrenheit);
        CHECK(number(celsius.at("value")) == row.celsius);
        CHECK(names(fahrenheit, row.section));
    }
    for (const SpanRow& row : kSpanRows) {
        if (!*row.id) continue;
        CAPTURE(row.id);
        CHECK(lengthIn(shared.at(row.id)) == row.length);
        CHECK(names(shared.at(row.id), row.section));
    }
    for (const ChartRow& row : kRoastChart) {
        CAPTURE(row.fahrenheit);
        const Row& printed = shared.at("roast_" + std::to_string(int(row.fahrenheit)) + "F");
        CHECK(lengthIn(printed) == row.hold);
    }
}

TEST_CASE("the roast chart cooks a whole roast at each row, and not a tenth or a second less") {
    REQUIRE(std::size(kRoastChart) == roastRows().size());
    const Limits limits;
    for (std::size_t i = 0; i < std::size(kRoastChart); ++i) {
        const ChartRow& row = kRoastChart[i];
        CAPTURE(row.fahrenheit);
        for (const bool isCelsius : {false, true}) {
            const auto at = [&](double less) {
                return isCelsius ? inCelsius(row.celsius - less)
                                 : inFahrenheit(row.fahrenheit - less);
            };
            const auto cooked = [&](double less, Duration held) {
                return rowMet(roastRows(), at(less), held) != nullptr;
            };
            CHECK(cooked(0, row.hold));
            if (row.hold > 0s) CHECK_FALSE(cooked(0, row.hold - 1s));
            CHECK_FALSE(cooked(0.1, row.hold));
            CHECK(cookedBy(event::Food::WholeMeat, limits, at(0), row.hold) != Cooked::No);
        }
        CHECK(cookedBy(event::Food::Poultry, limits, inFahrenheit(row.fahrenheit), row.hold) ==
              Cooked::No);
    }
}

TEST_CASE("ground meat is cooked at each of its rows, and not a tenth or a second less") {
    REQUIRE(std::size(kGroundChart) == groundRows().size());
    const Limits limits;
    const auto ground = event::Food::GroundMeat;
    for (const ChartRow& row : kGroundChart) {
        CAPTURE(row.fahrenheit);
        CHECK(cookedBy(ground, limits, inFahrenheit(row.fahrenheit), row.hold) != Cooked::No);
        CHECK(cookedBy(ground, limits, inCelsius(row.celsius), row.hold) != Cooked::No);
        CHECK(cookedBy(ground, limits, inFahrenheit(row.fahrenheit - 0.1), row.hold) == Cooked::No);
        if (row.hold > 0s)
            CHECK(cookedBy(ground, limits, inFahrenheit(row.fahrenheit), row.hold - 1s) ==
                  Cooked::No);
    }
    CHECK(cookedBy(ground, limits, inFahrenheit(154.9), {}) == Cooked::No);
    CHECK(cookedBy(ground, limits, inFahrenheit(155), {}) == Cooked::AtMinimum);
}

TEST_CASE("a reading below the minimum is offered the row that asks for the shortest time") {
    // The rows are those of kRoastChart and kGroundChart above.
    const Limits limits;
    const auto hold = [&](event::Food food, const Reading& reading) -> std::optional<Duration> {
        const auto row = rowInReach(food, limits, reading);
        return row ? std::optional(row->hold) : std::nullopt;
    };
    CHECK(hold(event::Food::WholeMeat, inFahrenheit(134)) == 56min);
    CHECK(hold(event::Food::WholeMeat, inCelsius(54.4)) == 112min);
    CHECK(hold(event::Food::WholeMeat, inFahrenheit(129.9)) == std::nullopt);
    CHECK(hold(event::Food::WholeMeat, inFahrenheit(145)) == std::nullopt);
    CHECK(hold(event::Food::GroundMeat, inFahrenheit(150)) == 1min);
    CHECK(hold(event::Food::Poultry, inFahrenheit(164)) == std::nullopt);
    CHECK(hold(event::Food::Fish, inFahrenheit(140)) == std::nullopt);
    const auto local = Limits::with({"county", {{"cookIntact", inFahrenheit(150)}}});
    REQUIRE(local);
    CHECK_FALSE(rowInReach(event::Food::WholeMeat, *local, inFahrenheit(134)));
}

TEST_CASE("each kind of food has the minimum of its paragraph") {
    const auto [food, fahrenheit, celsius] =
        GENERATE(table<event::Food, double, double>({{event::Food::Poultry, 165, 74},
                                                     {event::Food::GroundMeat, 155, 68},
                                                     {event::Food::Egg, 155, 68},
                                                     {event::Food::WholeMeat, 145, 63},
                                                     {event::Food::Fish, 145, 63},
                                                     {event::Food::Plant, 135, 57},
                                                     {event::Food::Dairy, 135, 57},
                                                     {event::Food::Grain, 135, 57}}));
    const Limits limits;
    CHECK(cookedBy(food, limits, inFahrenheit(fahrenheit), {}) == Cooked::AtMinimum);
    CHECK(cookedBy(food, limits, inFahrenheit(fahrenheit - 0.1), {}) == Cooked::No);
    CHECK(cookedBy(food, limits, inCelsius(celsius), {}) == Cooked::AtMinimum);
    CHECK(cookedBy(food, limits, inCelsius(celsius - 0.1), {}) == Cooked::No);
}

TEST_CASE("a thermometer is accurate to 1 degC or 2 degF at the ice point") {
    // FDA Food Code 2022, 4-203.11; the ice point as a check from memory.
    const auto passes = [](Reading shown) {
        return isAccurate({ThermometerId{"probe"}, shown, {}});
    };
    CHECK(passes(inCelsius(1)));
    CHECK(passes(inCelsius(-1)));
    CHECK_FALSE(passes(inCelsius(1.1)));
    CHECK_FALSE(passes(inCelsius(-1.1)));
    CHECK(passes(inFahrenheit(34)));
    CHECK(passes(inFahrenheit(30)));
    CHECK_FALSE(passes(inFahrenheit(34.1)));
    CHECK_FALSE(passes(inFahrenheit(29.9)));
}
