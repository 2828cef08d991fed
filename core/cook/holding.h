#pragma once

/// How long a pan or a hot box stays hot: Newton cooling fitted to readings.
///
/// T(t) = surroundings + (T0 - surroundings)·e^(-t/tau). Each opening of the lid drops the
/// temperature by a step, so readings between openings share tau but not their level.

#include <span>
#include <vector>

#include "base/result.h"
#include "base/time.h"
#include "base/units.h"
#include "cook/band.h"
#include "cook/lethality.h"

namespace cinder::cook {

enum class Vessel { InsulatedBox, CoveredPan };

struct Cooling {
    Vessel vessel = Vessel::InsulatedBox;
    std::vector<MeasuredPoint> readings;  ///< ascending, at least one
    std::vector<Instant> openings{};      ///< of the lid, ascending
    Temperature surroundings = Temperature::fromCelsius(22);
    TemperatureDelta surroundingsSpread = TemperatureDelta::fromKelvin(3);
    /// A cold box takes heat at first; readings sooner than this after the first one are left out
    /// when two or more come later.
    Duration settling = std::chrono::minutes(20);
};

/// Hot holding minimum: 57 °C (135 °F), FDA Food Code 2022, 3-501.16(A)(1).
inline constexpr Temperature kHotHoldMinimum = Temperature::fromCelsius(57);

struct HoldingForecast {
    Band<Duration> tau;
    /// When the content falls to the limit if the lid stays shut; the last reading's instant when
    /// it is already there. A forecast to plan by: only a reading shows that food was held hot.
    Band<Instant> fallsTo;
};

/// Before any second reading tau is believed from the vessel: insulated box 8 h, covered pan 1.5 h,
/// each within a factor of 1.6 (one standard deviation); computed from 8 kg of food over plausible
/// losses of 1 and 5 W/K, from memory. Readings scatter by 0.7 °C. Errors: `TooFewReadings`,
/// `OutOfOrder`, `OutOfRange` "reading" not above surroundings, `NeverReached` when the limit is
/// not above the surroundings.
[[nodiscard]] Result<HoldingForecast, CookError> forecastHolding(
    const Cooling& cooling, Temperature limit = kHotHoldMinimum);

}  // namespace cinder::cook
