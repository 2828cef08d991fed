#include <catch2/catch.hpp>

#include "cook/finite_body.h"
#include "cook/material.h"
#include "cook/series.h"

using namespace cinder;
using namespace cinder::cook;

TEST_CASE("water and fat are guarded against the misprints of the reprints") {
    // Source: liquid water at 20 °C conducts 0.598 W/mK and holds 4.18 kJ/kgK (steam tables).
    const auto water =
        propertiesOf({.water = 1}, Temperature::fromCelsius(20), Mixing::Parallel).value();
    CHECK(water.conductivity.wattsPerMetreKelvin == Approx(0.598).epsilon(0.02));
    CHECK(water.specificHeat.joulesPerKilogramKelvin == Approx(4182).epsilon(0.002));
    const auto fat =
        propertiesOf({.fat = 1}, Temperature::fromCelsius(60), Mixing::Parallel).value();
    CHECK(fat.conductivity.wattsPerMetreKelvin == Approx(0.1635).margin(0.001));
}

TEST_CASE("density mixes by volume and lies between its parts") {
    // 1 / density = Σ mass fraction / density.
    const auto t = Temperature::fromCelsius(20);
    const auto of = [&](const Composition& food) {
        return propertiesOf(food, t, Mixing::Parallel).value().density.kilogramsPerCubicMetre;
    };
    const double mixed = of({.water = 0.5, .protein = 0.5});
    CHECK(1 / mixed == Approx(0.5 / of({.water = 1}) + 0.5 / of({.protein = 1})).epsilon(1e-12));
}

TEST_CASE("a composition that is not a whole is refused by name") {
    const auto short_ = propertiesOf({.water = 0.7, .protein = 0.2}, Temperature::fromCelsius(20),
                                     Mixing::Parallel);
    REQUIRE_FALSE(short_);
    CHECK(short_.error() == CookError{CookError::Kind::NotAWhole, "composition"});
    CHECK_FALSE(propertiesOf({.water = 1.2, .protein = -0.2}, Temperature::fromCelsius(20),
                             Mixing::Parallel));
    CHECK_FALSE(propertiesOf({.water = 1}, Temperature::fromCelsius(180), Mixing::Parallel));
}

TEST_CASE("a slab needs a thickness and a sensible grid") {
    const Material meat = Material::of(kLeanBeef, Mixing::Parallel).value();
    const Layer none{Length{}, meat};
    const Layer some{Length::fromMillimetres(40), meat};
    const auto t = Temperature::fromCelsius(5);
    CHECK(Slab::make({&none, 1}, t).error().field == "thickness");
    CHECK(Slab::make({}, t).error().field == "layers");
    CHECK(Slab::make({&some, 1}, t, {2, std::chrono::seconds(10)}).error().field == "cells");
}

TEST_CASE("two layers of the same meat are one slab of both") {
    const Material meat = Material::of(kLeanBeef, Mixing::Parallel).value();
    const Layer one[] = {{Length::fromMillimetres(40), meat}};
    const Layer two[] = {{Length::fromMillimetres(10), meat}, {Length::fromMillimetres(30), meat}};
    Side fire, air;
    fire.film = {45};
    fire.surroundings = Temperature::fromCelsius(200);
    air.film = {15};
    air.surroundings = Temperature::fromCelsius(75);
    Slab whole = Slab::make(one, Temperature::fromCelsius(5)).value();
    Slab parts = Slab::make(two, Temperature::fromCelsius(5)).value();
    whole.advance(fire, air, std::chrono::minutes(20));
    parts.advance(fire, air, std::chrono::minutes(20));
    // The elements differ, and each takes its properties at its mean temperature.
    CHECK(parts.middle().celsius() == Approx(whole.middle().celsius()).margin(0.01));
}

TEST_CASE("a fat cap towards the fire slows the piece") {
    const Material meat = Material::of(kLeanBeef, Mixing::Parallel).value();
    const Material fat = Material::of({.water = 0.1, .fat = 0.9}, Mixing::Parallel).value();
    const Layer lean[] = {{Length::fromMillimetres(40), meat}};
    const Layer capped[] = {{Length::fromMillimetres(8), fat}, {Length::fromMillimetres(32), meat}};
    Side fire, air;
    fire.film = {45};
    fire.surroundings = Temperature::fromCelsius(200);
    air.film = {15};
    air.surroundings = Temperature::fromCelsius(75);
    Slab a = Slab::make(lean, Temperature::fromCelsius(5)).value();
    Slab b = Slab::make(capped, Temperature::fromCelsius(5)).value();
    a.advance(fire, air, std::chrono::minutes(20));
    b.advance(fire, air, std::chrono::minutes(20));
    CHECK(b.middle() < a.middle());
}

TEST_CASE("a piece with edges is done as the product of walls says") {
    const ThermalProperties food{{0.48}, {1050}, {3500}};
    Side both;
    both.film = {32};
    both.surroundings = Temperature::fromCelsius(150);
    const PieceSize piece{Length::fromMillimetres(60), Length::fromMillimetres(90),
                          Length::fromMillimetres(240)};
    const auto thin = equivalentThickness(piece, both, both, food, Temperature::fromCelsius(5),
                                          Temperature::fromCelsius(55));
    REQUIRE(thin);
    // Bi 2, 3 and 8 as in the checks of the product rule; time to theta by the thin slab.
    const double theta = (150.0 - 55) / (150 - 5);
    const double half = 0.5 * thin->metres();
    const double spread = half * half * seriesFourier(Body::PlaneWall, 32 * half / 0.48, theta);
    const double product = seriesTheta(Body::PlaneWall, 2, spread / (0.03 * 0.03), 0) *
                           seriesTheta(Body::PlaneWall, 3, spread / (0.045 * 0.045), 0) *
                           seriesTheta(Body::PlaneWall, 8, spread / (0.12 * 0.12), 0);
    CHECK(product == Approx(theta).margin(1e-4));
    CHECK(*thin < piece.thickness);
}
