/// Quantities against published tables, a published buying guide's worked examples and common
/// practice. Tables are read from the shared reference folder; where it is absent, each case says
/// what it skipped and checks the values that stand here with their source.

#include <algorithm>
#include <catch2/catch.hpp>
#include <set>

#include "check_table.h"
#include "event/json.h"
#include "event/words.h"
#include "quantity/build/reckon.h"
#include "quantity/pans.h"
#include "quantity/purchase.h"
#include "quantity/trade.h"
#include "quantity/yields.h"
#include "safety/limits.h"

using namespace cinder;
using Catch::Matchers::WithinAbs;
using reference::number;
using reference::Row;

namespace {

/// Every case that asks for a table checks other things before.
std::optional<std::vector<Row>> table(const std::string& name) {
    return reference::sharedTable(name, reference::Without::TheRest);
}

const Row* find(const std::vector<Row>& rows, const std::string& id) {
    const auto found =
        std::find_if(rows.begin(), rows.end(), [&](const Row& row) { return row.at("id") == id; });
    return found == rows.end() ? nullptr : &*found;
}

double ready(const char* key) {
    const auto* yield = quantity::findYield(key);
    INFO(key);
    REQUIRE(yield != nullptr);
    return quantity::readyForOne(*yield);
}

double pounds(double value) {
    return value * 453.59237;
}

}  // namespace

TEST_CASE("Every yield is what its table prints") {
    REQUIRE_FALSE(quantity::yields().empty());
    CHECK(std::is_sorted(quantity::yields().begin(), quantity::yields().end(),
                         [](const auto& a, const auto& b) { return a.key < b.key; }));
    const auto rows = table("yields.csv");
    if (!rows) return;
    for (const auto& yield : quantity::yields()) {
        INFO(yield.key);
        const Row* row = find(*rows, std::string(yield.key));
        REQUIRE(row != nullptr);
        CHECK(yield.printed == number(row->at("value")));
        CHECK((yield.origin == quantity::Origin::FromMemory) ==
              (row->at("verified").find("from memory") == 0));
    }
    // What is told of meat that was cooked is of cooking; what is trimmed, pared or refused is not.
    for (const auto& yield : quantity::yields()) {
        INFO(yield.key);
        const Row* row = find(*rows, std::string(yield.key));
        REQUIRE(row != nullptr);
        if (row->at("kind") == "cooking_yield") CHECK(quantity::isOfCooking(yield));
        if (row->at("kind") == "refuse") CHECK_FALSE(quantity::isOfCooking(yield));
    }
}

// USDA Food Buying Guide for Child Nutrition Programs, worked examples by the South Dakota
// Department of Education.
TEST_CASE("Buying guide: roast beef for 45 portions of 1.5 oz and 30 of 2 oz is 13 1/4 lb") {
    const Mass cooked = Mass::fromGrams(quantity::roundedUp(pounds((45 * 1.5 + 30 * 2) / 16)));
    const Mass raw = quantity::bought(cooked, ready("fbg_beef_roast_1oz"));
    CHECK_THAT(raw.pounds(), WithinAbs(13.06, 0.01));
    CHECK(quantity::packsFor(raw.pounds(), 0.25) == 4 * 13 + 1);
}

TEST_CASE("Buying guide: 195 servings of carrots at 9.87 a pound is 20 lb") {
    CHECK(quantity::packsFor(195, 9.87) == 20);
    // 19.757 lb, in the guide's own rounding to quarter pounds.
    CHECK(quantity::packsFor(195, 9.87 / 4) == 4 * 20);
    CHECK(quantity::packsFor(20 * 9.87, 9.87) == 20);
    CHECK(quantity::packsFor(20 * 9.87 + 0.1, 9.87) == 21);
}

TEST_CASE("Buying guide: 60 servings of ground beef at 7.89 a pound is 7 3/4 lb") {
    CHECK(quantity::packsFor(60, 7.89 / 4) == 4 * 7 + 3);
    // The same by the yield of 0.74: 60 x 1.5 oz cooked.
    const Mass raw = quantity::bought(Mass::fromGrams(quantity::roundedUp(pounds(90.0 / 16))),
                                      ready("fbg_gb20_yield"));
    CHECK_THAT(raw.pounds(), WithinAbs(7.6, 0.01));
}

TEST_CASE("Buying guide: meatloaf for 400 portions of 2 oz at 11.8 a pound is 68 lb") {
    CHECK(quantity::packsFor(800, 11.8) == 68);
}

TEST_CASE("Buying guide: corn for 460 half cups at 3 cans a hundred quarter cups is 28 cans") {
    CHECK(quantity::packsFor(460 * 2, 100 / 3.0) == 28);
}

// Edible-portion to as-purchased factors: 3 lb of pared cucumber is 3.57 lb bought.
TEST_CASE("Factors: three pounds of pared cucumber is 3.57 lb") {
    const Mass raw =
        quantity::bought(Mass::fromGrams(quantity::roundedUp(pounds(3))), ready("epap_cuke"));
    CHECK_THAT(raw.pounds(), WithinAbs(3.57, 0.005));
}

// USDA Agriculture Handbook No. 102 (1975): pared 81 %, cooked 95 %, mashed with additions 120 %.
TEST_CASE("Yields follow one another by multiplication, as in the handbook's mashed potatoes") {
    event::Event event;
    event.guests.adults = 1;
    event.menu.resize(1);
    event.menu[0].id = DishId("mashed");
    auto& serving = event.menu[0].serving.emplace();
    serving.portion = Mass::fromGrams(923);
    serving.takePercent = 100;
    serving.ingredients.resize(1);
    serving.ingredients[0].id = event::IngredientId("potato");
    // The handbook's later factors are nobody's published yield here: own values stand for them.
    serving.ingredients[0].yields = {"fbg_potato", "epap_potato", "trim_pot"};
    event.quantities.emplace();
    event.quantities->overrides = {{"yield/epap_potato", 0.95, {}, {}},
                                   {"yield/trim_pot", 1.20, {}, {}}};
    CHECK(ready("fbg_potato") == 0.81);
    const auto all = quantity::reckon(event);
    REQUIRE(all.purchase.size() == 1);
    CHECK_THAT(all.purchase[0].need.amount.value,
               WithinAbs(1000, 1));  // 0.81 x 0.95 x 1.20 = 0.923
}

// Own arithmetic on the published yield of 84 %: 100 guests, 6 oz cooked, 44.64 lb raw.
TEST_CASE("Tapered beef roasts for a hundred: 37.5 lb cooked is 44.64 lb raw") {
    const Mass raw =
        quantity::bought(Mass::fromGrams(quantity::roundedUp(pounds(37.5))), ready("cy_13953"));
    CHECK_THAT(raw.pounds(), WithinAbs(44.64, 0.01));
}

TEST_CASE("Cabbage: refuse and factor come to the same 15.625 lb") {
    const Mass edible = Mass::fromGrams(quantity::roundedUp(pounds(12.5)));
    CHECK_THAT(quantity::bought(edible, ready("refuse_11109")).pounds(), WithinAbs(15.625, 0.005));
    CHECK_THAT(quantity::bought(edible, ready("epap_cabbage")).pounds(), WithinAbs(15.625, 0.005));
}

TEST_CASE("Pinto beans: half a cup for a hundred is 9.52 lb dry") {
    // 50 cups of 171 g (USDA FoodData Central).
    const Mass dry = quantity::bought(Mass::fromGrams(50 * 171), ready("fbg_pinto_dry_14"));
    CHECK_THAT(dry.pounds(), WithinAbs(9.52, 0.01));
}

TEST_CASE("Pans hold what the manual says") {
    // 30 portions of 8 fl oz from a full pan 2 1/2 in deep: the manual's own example.
    CHECK_THAT(
        quantity::usableVolume(event::PanSize::Full, event::PanDepth::Shallow).litres() / 0.236588,
        WithinAbs(30, 0.01));
    const auto rows = table("equipment.csv");
    if (!rows) return;
    const std::map<event::PanSize, std::string> sizes{
        {event::PanSize::Full, "full"},       {event::PanSize::TwoThirds, "two_thirds"},
        {event::PanSize::Half, "half"},       {event::PanSize::Third, "third"},
        {event::PanSize::Quarter, "quarter"}, {event::PanSize::Sixth, "sixth"}};
    const std::map<event::PanDepth, std::string> depths{{event::PanDepth::Shallow, "2_5"},
                                                        {event::PanDepth::Medium, "4"},
                                                        {event::PanDepth::Deep, "6"}};
    for (const auto& [size, sizeWord] : sizes) {
        for (const auto& [depth, depthWord] : depths) {
            const Row* row = find(*rows, "pan_" + sizeWord + "_" + depthWord + "_usable");
            REQUIRE(row != nullptr);
            // NIST Handbook 44: 29.5735 mL.
            CHECK_THAT(quantity::usableVolume(size, depth).litres(),
                       WithinAbs(number(row->at("value")) * 0.0295735, 0.001));
        }
    }
}

TEST_CASE("Trade facts are those of the equipment table") {
    const auto trade = [](const char* key) {
        const auto all = quantity::tradeFacts();
        return std::find_if(all.begin(), all.end(), [&](const auto& f) { return f.key == key; })
            ->value;
    };
    CHECK(trade("trade/can-minutes") == 90);  // "falls to 1.5 h in a breeze", row fuel_gel_h
    CHECK_THAT(quantity::chaferFootprint().length.inches(), WithinAbs(25, 1));  // 24 to 26 in
    const auto rows = table("equipment.csv");
    if (!rows) return;
    const auto row = [&](const char* id) { return number(find(*rows, id)->at("value")); };
    CHECK(trade("trade/cans-a-chafer") == row("fuel_cans_per_full"));
    CHECK_THAT(trade("trade/ice-drinks"), WithinAbs(pounds(row("ice_guest_max")), 0.5));
    CHECK_THAT(trade("trade/ice-food"), WithinAbs(pounds(row("ice_food_extra")), 0.5));
    CHECK(trade("trade/can-minutes") <= 60 * row("fuel_gel_h"));
    CHECK_THAT(quantity::chaferWater().litres(),
               WithinAbs(row("pan_full_width") * row("pan_full_length") *
                             row("chafer_water_depth") * 0.016387064,
                         0.001));
}

TEST_CASE("Limits of the kitchen sheet are those of the published code") {
    std::vector<quantity::KeepingLimit> chill;
    std::vector<quantity::KeepingLimit> cold;
    for (const auto& limit : quantity::keepingLimits()) {
        if (limit.keeping == event::Keeping::Chill) chill.push_back(limit);
        if (limit.keeping == event::Keeping::Cold) cold.push_back(limit);
    }
    REQUIRE(chill.size() == 2);
    REQUIRE(cold.size() == 1);
    const auto rows = table("food_safety.csv");
    if (!rows) return;
    const auto row = [&](const char* id) { return number(find(*rows, id)->at("value")); };
    const auto hours = [](Duration span) {
        return std::chrono::duration<double, std::ratio<3600>>(span).count();
    };
    CHECK_THAT(chill[0].temperature.fahrenheit(), WithinAbs(row("cool_mid_F"), 0.01));
    CHECK(hours(chill[0].within) == row("cool_mid_time"));
    CHECK_THAT(chill[1].temperature.fahrenheit(), WithinAbs(row("cool_end_F"), 0.01));
    CHECK(hours(chill[1].within) == row("cool_total_time"));
    CHECK(hours(cold[0].within) == row("cool_ambient_time"));
}

TEST_CASE("The kitchen sheet and the record hold food to the same limits") {
    const auto within = [](safety::Span span) { return safety::published(span).length; };
    const auto degrees = [](safety::Degree degree) {
        return Temperature::fromFahrenheit(safety::published(degree).fahrenheit);
    };
    const auto& limits = quantity::keepingLimits();
    REQUIRE(limits.size() == 4);
    CHECK(limits[0].temperature == degrees(safety::Degree::CoolMiddle));
    CHECK(limits[0].within == within(safety::Span::CoolMiddleWithin));
    CHECK(limits[1].temperature == degrees(safety::Degree::CoolEnd));
    CHECK(limits[1].within == within(safety::Span::CoolEndWithin));
    CHECK(limits[2].temperature == degrees(safety::Degree::CoolEnd));
    CHECK(limits[2].within == within(safety::Span::CoolAmbientWithin));
    CHECK(limits[3].temperature == degrees(safety::Degree::HotHold));
    CHECK_FALSE(limits[3].isAtMost);
}

// Food Allergen Labeling and Consumer Protection Act 2004; FASTER Act 2021, Public Law 117-11.
TEST_CASE("The nine major food allergens can all be declared") {
    for (const auto* word : {"milk", "egg", "fish", "crustaceans", "treeNuts", "peanuts", "wheat",
                             "soybeans", "sesame"})
        CHECK(event::valueOf<event::Allergen>(word));
}

namespace {

/// The plain menu for a hundred: a salad, bread, a sauce and three hot dishes (common practice - no
/// source: T15, T16, T19 of the trade facts).
event::Event plainHundred() {
    const std::ifstream file(std::string(CINDER_SOURCE) + "/tests/reference/practice_event.json");
    std::stringstream text;
    text << file.rdbuf();
    auto event = event::parse(text.str());
    REQUIRE(event.has_value());
    event->quantities.emplace();
    event->quantities->service = std::chrono::minutes{60};
    for (auto& dish : event->menu) {
        auto& serving = dish.serving.emplace();
        serving.portion = Mass::fromGrams(100);
        serving.takePercent = 100;
        serving.gramsPerLitre = 800;
        serving.ingredients.resize(1);
        serving.ingredients[0].id = event::IngredientId(dish.id.text());
        serving.ingredients[0].yieldPercent = 100;
        dish.pieces.reset();
        const bool isHot = dish.course == event::Course::Side || dish.course == event::Course::Main;
        serving.vessel = isHot ? event::Vessel::Chafer : event::Vessel::Bowl;
        serving.panSize = event::PanSize::Full;
        serving.panDepth = event::PanDepth::Medium;
        const bool isSauce = dish.course == event::Course::Sauce;
        serving.vesselVolume = Volume::fromLitres(isSauce ? 1.5 : 8);
        serving.vesselLength = Length::fromMillimetres(isSauce ? 180 : 380);
        serving.vesselWidth = Length::fromMillimetres(isSauce ? 180 : 320);
    }
    return *std::move(event);
}

}  // namespace

TEST_CASE("Practice: a hundred guests and three hot dishes take two six-foot tables, not one") {
    auto event = plainHundred();
    const auto hot = std::count_if(event.menu.begin(), event.menu.end(), [](const auto& dish) {
        return *dish.serving->vessel == event::Vessel::Chafer;
    });
    REQUIRE(hot == 3);
    REQUIRE(event.kit.tables[0].count == 2);
    REQUIRE(event.kit.tables[0].length == Length::fromMillimetres(1829));
    CHECK(quantity::reckon(event).line.shortBy == Length{});
    event.kit.tables[0].count = 1;
    const auto line = quantity::reckon(event).line;
    CHECK(line.shortBy > Length{});
    CHECK(line.moreTables == 1);
}

TEST_CASE("Practice: one chafer for each hot dish, and bags of forty pounds") {
    const auto all = quantity::reckon(plainHundred());
    const auto* chafers = quantity::findFigure(all, "supply/chafers");
    REQUIRE(chafers != nullptr);
    CHECK(chafers->amount.value == 3);
    const auto facts = quantity::tradeFacts();
    const auto bag = std::find_if(facts.begin(), facts.end(), [](const auto& fact) {
        return fact.key == "trade/charcoal-bag";
    });
    CHECK_THAT(bag->value, WithinAbs(pounds(40), 1));
}
