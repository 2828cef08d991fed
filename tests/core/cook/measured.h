#pragma once

/// Points of a measured curve, counted from the epoch.

#include <chrono>

#include "cook/lethality.h"

namespace samples {

inline cinder::cook::MeasuredPoint point(cinder::Duration at, double celsius) {
    return {cinder::Instant{} + at, cinder::Temperature::fromCelsius(celsius)};
}

inline double minutes(cinder::Duration length) {
    return std::chrono::duration<double>(length).count() / 60;
}

inline double minutes(cinder::Instant at) {
    return minutes(at.time_since_epoch());
}

}  // namespace samples
