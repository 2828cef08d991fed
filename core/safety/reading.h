#pragma once

/// A temperature as a person read it: the value together with the scale of the thermometer,
/// because the published limits are printed in both scales and the two figures differ by fractions
/// of a degree (135 degF is printed as 57 degC). A reading is held against the figure of its own
/// scale.

#include <cstdint>

#include "base/units.h"

namespace cinder::safety {

enum class Scale : std::uint8_t { Celsius, Fahrenheit };

struct Reading {
    Temperature value;
    Scale scale = Scale::Celsius;
    friend bool operator==(const Reading&, const Reading&) = default;
};

/// The middle of wet food is never hotter than it boils; what is above was read on the other scale.
/// Water boils at 100 degC at the sea, lower on a mountain; salt and sugar add a little: common
/// practice - no source.
inline constexpr Temperature kHottestFood = Temperature::fromCelsius(105);
[[nodiscard]] inline bool isTooHotForFood(const Reading& reading) {
    return reading.value > kHottestFood;
}

[[nodiscard]] inline Reading inCelsius(double degrees) {
    return {Temperature::fromCelsius(degrees), Scale::Celsius};
}
[[nodiscard]] inline Reading inFahrenheit(double degrees) {
    return {Temperature::fromFahrenheit(degrees), Scale::Fahrenheit};
}

}  // namespace cinder::safety
