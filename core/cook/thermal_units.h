#pragma once

/// Quantities of heat transfer that the rest of the core never exchanges: each is one number whose
/// unit is its field's name, so `Density` cannot be handed over where `SpecificHeat` is wanted and
/// the unit is written where the number goes in and where it comes out.

#include <string_view>

namespace cinder::cook {

/// Heat through a face per area and kelvin (convection and linearised radiation together).
struct FilmCoefficient {
    double wattsPerSquareMetreKelvin = 0;
};
/// Heat through a face per area; into the meat is positive.
struct HeatFlux {
    double wattsPerSquareMetre = 0;
};
struct Conductivity {
    double wattsPerMetreKelvin = 0;
};
struct Density {
    double kilogramsPerCubicMetre = 0;
};
struct SpecificHeat {
    double joulesPerKilogramKelvin = 0;
};
struct Diffusivity {
    double squareMetresPerSecond = 0;
};

/// Why a thermal question has no answer. Words for people are made in the view models.
struct CookError {
    enum class Kind {
        NotPositive,     ///< a size, a mass or a film coefficient must be above zero
        OutOfRange,      ///< the value is outside the range the model was checked for
        NotAWhole,       ///< mass fractions do not add up to one
        TooFewReadings,  ///< more readings are needed before anything can be said
        OutOfOrder,      ///< instants must follow one another
        NeverReached,    ///< the temperature asked for is not reached under these conditions
    };
    Kind kind;
    std::string_view field;  ///< the name of the offending field, a literal
    friend bool operator==(const CookError&, const CookError&) = default;
};

}  // namespace cinder::cook
