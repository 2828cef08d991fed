#include <catch2/catch.hpp>

#include "live/pull_target.h"

using namespace cinder;
using event::Doneness;
using event::Food;
using event::Meat;

namespace {

double pulled(Food food, std::optional<Meat> meat, std::optional<Doneness> doneness,
              std::optional<Temperature> wish = {}) {
    return live::pullTargetOf(food, meat, doneness, wish).celsius();
}

}  // namespace

// The targets themselves are common practice - no source (cook/doneness.h).
TEST_CASE("a wish for a temperature outranks everything") {
    CHECK(pulled(Food::WholeMeat, Meat::Pork, Doneness::Medium, Temperature::fromCelsius(66)) ==
          Approx(66));
}

TEST_CASE("what is pink in beef and lamb is not offered in pork: the next further one is meant") {
    CHECK(pulled(Food::WholeMeat, Meat::Beef, Doneness::MediumRare) == Approx(52));
    CHECK(pulled(Food::WholeMeat, Meat::Lamb, Doneness::MediumRare) == Approx(52));
    CHECK(pulled(Food::WholeMeat, Meat::Pork, Doneness::MediumRare) ==
          pulled(Food::WholeMeat, Meat::Pork, Doneness::Medium));
    CHECK(pulled(Food::WholeMeat, Meat::Pork, Doneness::Medium) == Approx(60));
}

TEST_CASE("whole meat nobody said more of is taken medium, poultry to the published minimum") {
    CHECK(pulled(Food::WholeMeat, {}, {}) == pulled(Food::WholeMeat, Meat::Beef, Doneness::Medium));
    // FDA Food Code 2022, 3-401.11(A)(3): 165 degF, printed as 74 degC.
    CHECK(pulled(Food::Poultry, {}, {}) == Approx(74));
    CHECK(pulled(Food::Poultry, {}, Doneness::Rare) == Approx(74));
}

TEST_CASE("further done is never cooler, in any meat") {
    for (const auto food : {Food::WholeMeat, Food::GroundMeat, Food::Poultry, Food::Fish})
        for (const auto meat : {Meat::Beef, Meat::Lamb, Meat::Pork}) {
            double before = 0;
            for (const auto doneness : {Doneness::Rare, Doneness::MediumRare, Doneness::Medium,
                                        Doneness::MediumWell, Doneness::WellDone}) {
                const double now = pulled(food, meat, doneness);
                CHECK(now >= before);
                before = now;
            }
        }
}

TEST_CASE("bread and vegetables have no doneness") {
    CHECK_FALSE(live::meatOf(Food::Grain, {}));
    CHECK_FALSE(live::meatOf(Food::Plant, Meat::Beef));
    CHECK(pulled(Food::Plant, {}, {}) == Approx(Temperature{}.celsius()));
}
