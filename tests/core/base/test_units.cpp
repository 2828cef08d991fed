#include <catch2/catch.hpp>

#include <type_traits>

#include "base/units.h"

using namespace cinder;

namespace {

template <class A, class B>
concept CanAdd = requires(A a, B b) {
    a + b;
};

}  // namespace

TEST_CASE("units convert by their published factors") {
    // Source: NIST Special Publication 811 (2008), appendix B.8: lb and in are exact.
    CHECK(Mass::fromPounds(1000).grams() == 453592);
    CHECK(Length::fromInches(1).millimetres() == 25.4);
    CHECK(Temperature::fromFahrenheit(212).celsius() == 100.0);
    CHECK(Temperature::fromFahrenheit(135).celsius() == Approx(57.222).margin(0.0005));
    CHECK(Temperature::fromCelsius(-40).fahrenheit() == -40.0);
}

TEST_CASE("what has no meaning does not compile") {
    STATIC_REQUIRE(CanAdd<Mass, Mass>);
    STATIC_REQUIRE(CanAdd<Temperature, TemperatureDelta>);
    STATIC_REQUIRE_FALSE(CanAdd<Temperature, Temperature>);
    STATIC_REQUIRE_FALSE(CanAdd<Mass, Length>);
    STATIC_REQUIRE_FALSE(std::is_convertible_v<int, Mass>);
}

TEST_CASE("a quantity rounds to its smallest unit on both sides of zero") {
    CHECK(Mass::fromKilograms(0.0015).grams() == 2);
    CHECK(TemperatureDelta::fromKelvin(-0.0015).kelvin() == -0.002);
    CHECK(Area::ofRectangle(Length::fromMillimetres(600), Length::fromMillimetres(400))
              .squareMillimetres() == 240000);
}
