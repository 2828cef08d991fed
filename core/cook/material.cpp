#include "cook/material.h"

namespace cinder::cook {

Result<Material, CookError> Material::constant(const ThermalProperties& properties) {
    const double k = properties.conductivity.wattsPerMetreKelvin;
    const double rho = properties.density.kilogramsPerCubicMetre;
    const double cp = properties.specificHeat.joulesPerKilogramKelvin;
    if (!(k > 0)) return fail(CookError{CookError::Kind::NotPositive, "conductivity"});
    if (!(rho > 0)) return fail(CookError{CookError::Kind::NotPositive, "density"});
    if (!(cp > 0)) return fail(CookError{CookError::Kind::NotPositive, "specificHeat"});
    Material made;
    made.conductivity_ = {k};
    made.heatCapacity_ = {rho * cp};
    return made;
}

Result<Material, CookError> Material::of(const Composition& food, Mixing mixing,
                                         double conductivityScale) {
    if (!(conductivityScale > 0)) {
        return fail(CookError{CookError::Kind::NotPositive, "conductivityScale"});
    }
    Material made;
    for (int degree = 0; degree <= 150; ++degree) {
        const auto p = propertiesOf(food, Temperature::fromCelsius(degree), mixing);
        if (!p) return fail(p.error());
        made.conductivity_.push_back(conductivityScale * p->conductivity.wattsPerMetreKelvin);
        made.heatCapacity_.push_back(p->density.kilogramsPerCubicMetre *
                                     p->specificHeat.joulesPerKilogramKelvin);
    }
    return made;
}

double Material::at(const std::vector<double>& byDegree, double celsius) {
    const auto last = static_cast<double>(byDegree.size() - 1);
    if (!(celsius > 0.0)) return byDegree.front();
    if (celsius >= last) return byDegree.back();
    const auto below = static_cast<std::size_t>(celsius);
    const double share = celsius - static_cast<double>(below);
    return byDegree[below] + share * (byDegree[below + 1] - byDegree[below]);
}

}  // namespace cinder::cook
