#include "safety/thermometer.h"

namespace cinder::safety {

TemperatureDelta accuracyOn(Scale scale) {
    return scale == Scale::Celsius ? TemperatureDelta::fromKelvin(1)
                                   : Temperature::fromFahrenheit(34) - kIcePoint;
}

bool isAccurate(const ThermometerTested& test) {
    const TemperatureDelta off = test.reading.value - kIcePoint;
    const TemperatureDelta most = accuracyOn(test.reading.scale);
    return off <= most && TemperatureDelta{} - off <= most;
}

}  // namespace cinder::safety
