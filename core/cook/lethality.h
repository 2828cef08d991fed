#pragma once

/// How much a measured temperature history has done to the bacteria of the published roast table.
///
/// Information only. It counts the readings of one thermometer at one place, knows nothing of the
/// colder places and of the time between readings, and is for intact roasts of beef, lamb and pork:
/// poultry, minced, injected or tenderised meat need their own, longer times. `kLethalityWarning`
/// is shown wherever a number from here is shown. Nothing here decides whether food may be served.

#include <span>
#include <string_view>

#include "base/result.h"
#include "base/time.h"
#include "base/units.h"
#include "cook/thermal_units.h"

namespace cinder::cook {

/// McMinn et al. (Meat and Muscle Biology) did not find the table's kill at 54.4 °C in three
/// products, and Listeria outlived Salmonella there: hence the 58 °C.
inline constexpr std::string_view kLethalityWarning =
    "Information only: one probe at one place, intact roasts of beef, lamb or pork. Below 58 degC "
    "treat it as advice and add margin. The food code and a thermometer at the published minimum "
    "decide.";

/// Reference temperature and the rise that makes killing ten times faster.
struct ThermalDeath {
    Temperature reference;
    TemperatureDelta tenfold;  ///< z
};

/// Fit of the 28 whole-Fahrenheit rows of the roast table: z 5.56 K about 60 °C. Source: USDA FSIS,
/// "Compliance Guidelines for Meeting Lethality Performance Standards for Certain Meat and Poultry
/// Products" (1999), Appendix A; its 6.5-log column is FDA Food Code 3-401.11(B) where the two
/// share rows.
inline constexpr ThermalDeath kSalmonellaInRoasts{Temperature::fromCelsius(60),
                                                  TemperatureDelta::fromKelvin(5.56)};
struct MeasuredPoint {
    Instant at;
    Temperature reading;
};

/// Minutes at the reference that would have done the same, F = ∫ 10^((T - reference)/z) dt. Between
/// readings the temperature is taken as a straight line and integrated exactly: the trapezoid on
/// minute readings overstates a ramp by 1.5 %. A gap longer than `longestGap` counts for nothing
/// and is reported. Errors: `TooFewReadings` under two, `OutOfOrder`.
struct Lethality {
    Duration equivalent{0};
    int gaps = 0;
    friend bool operator==(const Lethality&, const Lethality&) = default;
};
[[nodiscard]] Result<Lethality, CookError> lethalityOf(
    std::span<const MeasuredPoint> history, const ThermalDeath& death,
    Duration longestGap = std::chrono::minutes(15));

/// How fast it kills at `t`, 1 at the reference.
[[nodiscard]] double lethalRate(const ThermalDeath& death, Temperature t);

/// What the table's own row at 60 °C asks: 12 minutes there.
inline constexpr Duration kRoastNeedAt60 = std::chrono::minutes(12);

}  // namespace cinder::cook
