#pragma once

/// Thermal properties of food from what it is made of.
///
/// Source: Y. Choi, M. R. Okos, "Effects of Temperature and Composition on the Thermal Properties
/// of Foods" (1986), as reprinted in the ASHRAE Handbook, Refrigeration, chapter "Thermal
/// Properties of Foods". Each component has a quadratic in degrees Celsius for conductivity,
/// density and specific heat; valid above freezing and up to 150 °C.
///
/// Reprints differ by misprints. Used here: water conductivity constant 0.57109 (0.457109 is wrong:
/// water at 20 °C conducts 0.60 W/mK), water specific heat constant 4.1762 (4.1289 misses the known
/// 4.18 kJ/kgK at 20 °C), fat conductivity slope -2.7604e-4. The tests hold the properties of
/// liquid water and of fat against these slips.

#include "base/result.h"
#include "base/units.h"
#include "cook/thermal_units.h"

namespace cinder::cook {

/// Mass fractions; they add up to one.
struct Composition {
    double water = 0;
    double protein = 0;
    double fat = 0;
    double carbohydrate = 0;
    double fibre = 0;
    double ash = 0;
};

/// How the components share the heat flow. Measured values of meat lie a little below `Parallel`.
enum class Mixing {
    Parallel,       ///< components side by side along the flow: the upper bound
    Perpendicular,  ///< components in layers across the flow: the lower bound
};

struct ThermalProperties {
    Conductivity conductivity;
    Density density;
    SpecificHeat specificHeat;
    [[nodiscard]] Diffusivity diffusivity() const;
};

/// Errors: `OutOfRange` for a negative fraction or a temperature outside 0…150 °C, `NotAWhole` when
/// the fractions miss one by more than a hundredth (a smaller miss, from rounded tables, is scaled
/// away). Density and conductivity mix by volume, specific heat by mass.
[[nodiscard]] Result<ThermalProperties, CookError> propertiesOf(const Composition& food,
                                                                Temperature at, Mixing mixing);

/// Lean beef as the checks use it: water 72.8, protein 22, fat 4, ash 1.2 %. Near the published
/// records of trimmed beef (USDA top sirloin, lean only: protein 22.3, fat 3.5 %); water and ash
/// from memory.
inline constexpr Composition kLeanBeef{.water = 0.728, .protein = 0.22, .fat = 0.04, .ash = 0.012};
/// Pork loin; USDA tenderloin, lean only, has protein 21, fat 2.2 %; the rest from memory.
inline constexpr Composition kPorkLoin{.water = 0.726, .protein = 0.22, .fat = 0.044, .ash = 0.01};
/// Chicken breast; USDA record, meat only, raw: water 75.79, protein 21.23, fat 2.59 %; ash fills
/// up.
inline constexpr Composition kChickenBreast{
    .water = 0.7579, .protein = 0.2123, .fat = 0.0259, .ash = 0.0039};
/// White fish; USDA cod, raw: water 81.2, protein 17.8, fat 0.7, ash 1.2 % (from memory), scaled to
/// a whole.
inline constexpr Composition kWhiteFish{
    .water = 0.805, .protein = 0.176, .fat = 0.007, .ash = 0.012};
/// A fat cap or a fatty cut taken as one body; from memory.
inline constexpr Composition kFattyMeat{.water = 0.60, .protein = 0.17, .fat = 0.22, .ash = 0.01};

/// Measured conductivity of meat over the parallel bound. Source: V. E. Sweat, C. G. Haugh, W. J.
/// Stadelman, J. Food Sci. 1973, chicken white meat 0.488 W/mK at 20 °C against 0.522 (0.93); beef
/// round and chuck diffusivities from a published table give 0.87 to 0.94. 0.92 is our middle.
inline constexpr double kMeasuredOverParallel = 0.92;

}  // namespace cinder::cook
