#include "cook/composition.h"

#include <array>
#include <cmath>

namespace cinder::cook {

namespace {

struct Quadratic {
    double a, b, c;
    [[nodiscard]] double at(double celsius) const { return a + celsius * (b + celsius * c); }
};

struct Component {
    double Composition::*fraction;
    Quadratic conductivity;  // W/mK
    Quadratic density;       // kg/m³
    Quadratic specificHeat;  // kJ/kgK
};

// Source and misprint notes: composition.h.
constexpr std::array<Component, 6> kComponents{{
    {&Composition::water,
     {0.57109, 1.7625e-3, -6.7036e-6},
     {997.18, 3.1439e-3, -3.7574e-3},
     {4.1762, -9.0864e-5, 5.4731e-6}},
    {&Composition::protein,
     {0.17881, 1.1958e-3, -2.7178e-6},
     {1329.9, -0.51840, 0},
     {2.0082, 1.2089e-3, -1.3129e-6}},
    {&Composition::fat,
     {0.18071, -2.7604e-4, -1.7749e-7},
     {925.59, -0.41757, 0},
     {1.9842, 1.4733e-3, -4.8008e-6}},
    {&Composition::carbohydrate,
     {0.20141, 1.3874e-3, -4.3312e-6},
     {1599.1, -0.31046, 0},
     {1.5488, 1.9625e-3, -5.9399e-6}},
    {&Composition::fibre,
     {0.18331, 1.2497e-3, -3.1683e-6},
     {1311.5, -0.36589, 0},
     {1.8459, 1.8306e-3, -4.6509e-6}},
    {&Composition::ash,
     {0.32962, 1.4011e-3, -2.9069e-6},
     {2423.8, -0.28063, 0},
     {1.0926, 1.8896e-3, -3.6817e-6}},
}};

constexpr double kColdest = 0.0;
constexpr double kHottest = 150.0;

}  // namespace

Diffusivity ThermalProperties::diffusivity() const {
    return {conductivity.wattsPerMetreKelvin /
            (density.kilogramsPerCubicMetre * specificHeat.joulesPerKilogramKelvin)};
}

Result<ThermalProperties, CookError> propertiesOf(const Composition& food, Temperature at,
                                                  Mixing mixing) {
    const double t = at.celsius();
    if (!(t >= kColdest && t <= kHottest)) {
        return fail(CookError{CookError::Kind::OutOfRange, "temperature"});
    }
    double whole = 0;
    for (const Component& part : kComponents) {
        const double x = food.*part.fraction;
        if (!(x >= 0)) return fail(CookError{CookError::Kind::OutOfRange, "composition"});
        whole += x;
    }
    if (!(std::abs(whole - 1.0) <= 0.01)) {
        return fail(CookError{CookError::Kind::NotAWhole, "composition"});
    }

    double volume = 0;  // m³ per kilogram of food
    double heat = 0;    // kJ/kgK
    double along = 0;   // Σ volume · k
    double across = 0;  // Σ volume / k
    for (const Component& part : kComponents) {
        const double x = food.*part.fraction / whole;
        const double v = x / part.density.at(t);
        volume += v;
        heat += x * part.specificHeat.at(t);
        along += v * part.conductivity.at(t);
        across += v / part.conductivity.at(t);
    }
    const double k = mixing == Mixing::Parallel ? along / volume : volume / across;
    return ThermalProperties{{k}, {1.0 / volume}, {1000.0 * heat}};
}

}  // namespace cinder::cook
