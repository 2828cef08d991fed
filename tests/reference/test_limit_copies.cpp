#include <algorithm>
#include <catch2/catch.hpp>

#include "cook/doneness.h"
#include "cook/holding.h"
#include "cook/lethality.h"
#include "safety/cooked.h"

// The heat model lies beside the record and cannot read its limits, so it says the figures it needs
// once more. All are FDA Food Code 2022, by the sections in core/safety/limits.cpp, which
// test_food_limits.cpp holds against the reference table. The kitchen's list is held to the record
// in test_quantities.cpp.

using namespace cinder;
using safety::Degree;
using safety::Scale;

namespace {

const safety::Limits kPublished;

std::string sourceOf(const auto& limit) {
    return std::string(limit.edition) + ", " + std::string(limit.section);
}

}  // namespace

TEST_CASE("the minimum the fire aims by is the one the record asks for") {
    using cook::Meat;
    using event::Food;
    const auto [meat, food] = GENERATE(table<Meat, Food>({{Meat::IntactBeef, Food::WholeMeat},
                                                          {Meat::IntactLamb, Food::WholeMeat},
                                                          {Meat::IntactPork, Food::WholeMeat},
                                                          {Meat::Fish, Food::Fish},
                                                          {Meat::GroundMeat, Food::GroundMeat},
                                                          {Meat::Poultry, Food::Poultry}}));
    const cook::SafeMinimum minimum = cook::safeMinimum(meat);
    const Degree degree = safety::cookingMinimum(food);
    CHECK(minimum.temperature == kPublished.figure(degree, Scale::Celsius));
    CHECK(minimum.hold == safety::cookingHold(degree, kPublished));
    CHECK(minimum.source == sourceOf(safety::published(degree)));
}

TEST_CASE("the forecast of holding falls to the limit of the record") {
    CHECK(cook::kHotHoldMinimum == kPublished.figure(Degree::HotHold, Scale::Celsius));
}

TEST_CASE("the time a roast needs at 60 degC is that of the record's chart") {
    const auto rows = safety::roastRows();
    const auto row = std::find_if(rows.begin(), rows.end(),
                                  [](const safety::CookRow& one) { return one.celsius == 60; });
    REQUIRE(row != rows.end());
    CHECK(cook::kRoastNeedAt60 == row->hold);
}
