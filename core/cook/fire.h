#pragma once

/// What is known of the fire: how much heat goes into a wet face at 100 °C.
///
/// That flux is the only property of a fire that a cook can be told by; a film coefficient and a
/// temperature that give the same flux cook alike. A hand over the grate feels the flux; a
/// thermometer on the grate feels a temperature and says less about it.

#include "cook/slab.h"

namespace cinder::cook {

struct FireBelief {
    HeatFlux atHundred;     ///< into a face at 100 °C
    FilmCoefficient slope;  ///< how much less per kelvin the face is hotter
    double spread = 0;      ///< standard deviation of the logarithm of `atHundred`
};

/// From the seconds a palm bears the heat at the height of the grate, 1 to 14 s.
/// Flux to the skin 35·s^-0.752 kW/m² reproduces the pain times 4, 5, 7, 11, 13, 18 s at 12, 10, 8,
/// 6, 5, 4 kW/m² (Handbook of Chemical Hazard Analysis Procedures, 1989, quoted in course notes);
/// meat at 100 °C takes about 1.5 kW/m² less than skin (our estimate). Spread 0.35: the seconds
/// differ from hand to hand by a third (no published figure). Errors: `OutOfRange` "seconds".
[[nodiscard]] Result<FireBelief, CookError> fireFromHandTest(Duration seconds);

/// From a thermometer on the grate, 120 to 450 °C. Film 45 W/m²K ± 30 %, reading ± 25 °C as a
/// measure of what the face sees: plausible values, from memory. Errors: `OutOfRange`.
[[nodiscard]] Result<FireBelief, CookError> fireFromGrateThermometer(Temperature reading);

/// The side the fire shows to a wet face when its flux is `factor` times the belief's.
[[nodiscard]] Side fireSide(const FireBelief& fire, double factor, Temperature boiling);

/// The other face: open air above a hot grate. 15 W/m²K to 75 °C, plausible, from memory; a wet
/// face does not pass boiling on this side either.
[[nodiscard]] Side airSide(Temperature boiling = Temperature::fromCelsius(100));

/// The lower face on the cool side: the hot air of the grate without coals in sight. 20 W/m²K to
/// 110 °C, plausible, from memory.
[[nodiscard]] Side coolSide(Temperature boiling = Temperature::fromCelsius(100));

/// What cooks say a count of seconds means, as a grate temperature. Three published cookery tables
/// disagree because they hold the hand at different heights; this is the span of all three,
/// rounded. Shown beside the count, not used by the forecast. Errors: `OutOfRange` "seconds".
struct HandBand {
    Temperature low;
    Temperature high;
};
[[nodiscard]] Result<HandBand, CookError> handBand(Duration seconds);

}  // namespace cinder::cook
