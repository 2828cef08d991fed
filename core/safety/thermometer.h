#pragma once

/// Whether a thermometer may be believed.

#include "safety/facts.h"

namespace cinder::safety {

/// Ice and water at rest: 0 degC, 32 degF. From memory: common calibration practice.
inline constexpr Temperature kIcePoint = Temperature::fromCelsius(0);

/// How far off a food thermometer may be: 1 degC on a Celsius or dual scale, 2 degF on one of
/// Fahrenheit only. FDA Food Code 2022, 4-203.11.
[[nodiscard]] TemperatureDelta accuracyOn(Scale scale);

/// Whether the test at the ice point was passed.
[[nodiscard]] bool isAccurate(const ThermometerTested& test);

}  // namespace cinder::safety
