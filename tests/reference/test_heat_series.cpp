// Exact solutions and properties against the shared check table, and against a small table of our
// own so that something is checked where the shared one is absent.

#include <catch2/catch.hpp>

#include <cmath>
#include <limits>
#include <numbers>

#include "check_table.h"
#include "cook/composition.h"
#include "cook/series.h"

using namespace cinder;
using namespace cinder::cook;
using namespace cinder::reference;

namespace {

Body bodyOf(const std::string& geometry) {
    if (geometry == "inf_cylinder") return Body::Cylinder;
    return geometry == "sphere" ? Body::Sphere : Body::PlaneWall;
}

}  // namespace

TEST_CASE("first terms agree with the textbook table") {
    // Source: F. P. Incropera et al., "Fundamentals of Heat and Mass Transfer", table 5.1 (four
    // decimals as printed; the plane wall C at Bi 5 is printed 1.2403 and computes to 1.24025).
    struct Printed {
        Body body;
        double biot, root, coefficient;
    };
    const Printed table[] = {
        {Body::PlaneWall, 0.1, 0.3111, 1.0161}, {Body::Cylinder, 0.1, 0.4417, 1.0246},
        {Body::Sphere, 0.1, 0.5423, 1.0298},    {Body::PlaneWall, 0.5, 0.6533, 1.0701},
        {Body::Cylinder, 0.5, 0.9408, 1.1143},  {Body::Sphere, 0.5, 1.1656, 1.1441},
        {Body::PlaneWall, 1, 0.8603, 1.1191},   {Body::Cylinder, 1, 1.2558, 1.2071},
        {Body::Sphere, 1, 1.5708, 1.2732},      {Body::PlaneWall, 5, 1.3138, 1.2403},
        {Body::Cylinder, 5, 1.9898, 1.5029},    {Body::Sphere, 5, 2.5704, 1.7870},
        {Body::PlaneWall, 10, 1.4289, 1.2620},  {Body::Cylinder, 10, 2.1795, 1.5677},
        {Body::Sphere, 10, 2.8363, 1.9249}};
    for (const Printed& row : table) {
        const SeriesTerm first = seriesTerms(row.body, row.biot, 1).front();
        CHECK(first.root == Approx(row.root).margin(0.6e-4));
        CHECK(first.coefficient == Approx(row.coefficient).margin(0.6e-4));
    }
}

TEST_CASE("a wall held at its surroundings follows the closed series") {
    // Source: Carslaw & Jaeger, "Conduction of Heat in Solids", section 3.3: roots (n - 1/2) pi,
    // coefficients ±4 / ((2n - 1) pi).
    const double infinite = std::numeric_limits<double>::infinity();
    const auto terms = seriesTerms(Body::PlaneWall, infinite, 3);
    CHECK(terms[0].coefficient == Approx(4.0 / std::numbers::pi).epsilon(1e-12));
    CHECK(terms[1].coefficient == Approx(-4.0 / (3.0 * std::numbers::pi)).epsilon(1e-12));
    CHECK(terms[2].root == Approx(2.5 * std::numbers::pi).epsilon(1e-12));
}

TEST_CASE("every row of roots, profiles and finite bodies is met") {
    for (const Row& row : heatRows("ZAP", Without::Nothing)) {
        INFO(row.at("id") << " " << row.at("geometry") << " Bi " << row.at("Bi"));
        const double value = number(row.at("value"));
        double ours = 0;
        if (row.at("id")[0] == 'P') {
            ours = 1;
            const std::string& text = row.at("inputs");
            for (std::size_t at = text.find('('); at != std::string::npos;
                 at = text.find('(', at + 1)) {
                const std::string factor = text.substr(at, text.find(')', at) - at);
                const bool isCylinder = at >= 12 && text.substr(at - 12, 12) == "inf_cylinder";
                ours *= seriesTheta(isCylinder ? Body::Cylinder : Body::PlaneWall,
                                    named(factor, "Bi").value(), named(factor, "Fo").value(),
                                    named(factor, "x").value());
            }
        } else if (row.at("id")[0] == 'Z') {
            const auto first = seriesTerms(bodyOf(row.at("geometry")), number(row.at("Bi")), 1);
            ours = row.at("quantity") == "C1" ? first[0].coefficient : first[0].root;
        } else {
            ours = seriesTheta(bodyOf(row.at("geometry")), number(row.at("Bi")),
                               number(row.at("Fo")), number(row.at("x_over_L")));
        }
        CHECK(std::abs(ours - value) <= std::max(tolerance(row), 1e-9 * std::abs(value)));
    }
}

TEST_CASE("textbook problems come out as published or computed") {
    // Sources of the problems: University of Waterloo plane wall worksheet (T001, T002); Incropera
    // problem 5.119, hamburger between two hot plates (T003 to T006); egg problems of two
    // textbooks.
    const auto seconds = [](Body body, double size, double k, double diffusivity, double film,
                            double start, double around, double target) {
        const double theta = (target - around) / (start - around);
        return seriesFourier(body, film * size / k, theta) * size * size / diffusivity;
    };
    const double water = 0.613 / (997.0 * 4179.0);
    const auto patty = [&](double half, double start) {
        return seconds(Body::PlaneWall, half, 0.613, water, 5000, start, 100, 60);
    };
    const std::map<std::string, double> ours = {
        {"T001", seriesTheta(Body::PlaneWall, 0.5, 1.2, 0)},
        {"T002", seriesTheta(Body::PlaneWall, 0.5, 1.2, 1)},
        {"T003", patty(0.005, 20)},
        {"T004", patty(0.010, 20)},
        {"T005", patty(0.015, 20)},
        {"T006", patty(0.005, 5)},
        {"T007", seconds(Body::Sphere, 0.0275, 0.607, 1.46e-7, 800, 4.3, 100, 74)},
        {"T008", seconds(Body::Sphere, 0.025, 0.627, 1.51e-7, 1200, 5, 95, 70)}};
    CHECK(ours.at("T003") == Approx(67.501).margin(0.05));
    CHECK(ours.at("T005") / ours.at("T003") == Approx(std::pow(3.0, 1.97)).epsilon(0.005));
    for (const Row& row : heatRows("T", Without::TheRest)) {
        INFO(row.at("id"));
        REQUIRE(ours.count(row.at("id")) == 1);
        CHECK(std::abs(ours.at(row.at("id")) - number(row.at("value"))) <= tolerance(row));
    }
}

TEST_CASE("properties of food follow its composition") {
    for (const Row& row : heatRows("C", Without::Nothing)) {
        INFO(row.at("id") << " " << row.at("inputs") << " " << row.at("quantity"));
        const std::string& in = row.at("inputs");
        const auto part = [&](const char* a, const char* b) {
            return named(in, a).value_or(named(in, b).value_or(0.0));
        };
        Composition food{.water = part("w", "water"),
                         .protein = part("p", "p"),
                         .fat = part("f", "fat"),
                         .carbohydrate = part("carb", "carb"),
                         .fibre = part("fibre", "fibre"),
                         .ash = part("a", "ash")};
        if (row.at("geometry") == "water") food = {.water = 1.0};
        const bool across = row.at("quantity") == "k_perpendicular";
        const auto p = propertiesOf(food, Temperature::fromCelsius(named(in, "T").value()),
                                    across ? Mixing::Perpendicular : Mixing::Parallel);
        REQUIRE(p);
        const std::string& quantity = row.at("quantity");
        double ours = p->conductivity.wattsPerMetreKelvin;
        if (quantity == "rho") ours = p->density.kilogramsPerCubicMetre;
        if (quantity == "alpha_parallel") ours = p->diffusivity().squareMetresPerSecond;
        if (quantity == "cp") ours = p->specificHeat.joulesPerKilogramKelvin;
        if (row.at("unit") == "kJ/kgK") ours /= 1000.0;
        CHECK(std::abs(ours - number(row.at("value"))) <= tolerance(row));
    }
}
