#pragma once

/// What a layer of a slab is made of, in the form the solver wants: conductivity and heat capacity
/// as functions of temperature, constant or from composition.

#include <vector>

#include "cook/composition.h"

namespace cinder::cook {

class Material {
  public:
    /// Errors: `NotPositive` naming the property.
    [[nodiscard]] static Result<Material, CookError> constant(const ThermalProperties& properties);

    /// Properties that follow the temperature. `conductivityScale` multiplies the mixed
    /// conductivity (see `kMeasuredOverParallel`). Outside 0…150 °C the nearest end is used, so
    /// that a face driven hotter does not stop the solver.
    [[nodiscard]] static Result<Material, CookError> of(const Composition& food, Mixing mixing,
                                                        double conductivityScale = 1.0);

    [[nodiscard]] bool isConstant() const { return conductivity_.size() == 1; }
    /// W/mK.
    [[nodiscard]] double conductivityAt(double celsius) const { return at(conductivity_, celsius); }
    /// Density times specific heat, J/m³K.
    [[nodiscard]] double heatCapacityAt(double celsius) const { return at(heatCapacity_, celsius); }

  private:
    [[nodiscard]] static double at(const std::vector<double>& byDegree, double celsius);

    // One value, or one per degree from 0 to 150 °C: a table look-up costs a tenth of six
    // quadratics and is exact to 1e-6 for curves this flat.
    std::vector<double> conductivity_;
    std::vector<double> heatCapacity_;
};

}  // namespace cinder::cook
