#include "quantity/pans.h"

#include <array>

namespace cinder::quantity {

namespace {

/// US fluid ounces, by size and depth in the order of the enumerations.
constexpr std::array<std::array<double, 3>, 6> kUsable{{{240, 420, 625},
                                                        {175, 294, 435},
                                                        {125, 208, 314},
                                                        {75, 125, 186},
                                                        {55, 95, 140},
                                                        {35, 55, 82}}};

/// US gallon 231 cubic inches, 128 fluid ounces (NIST Handbook 44, appendix C).
constexpr double kMillilitresAnOunce = 231.0 * 16.387064 / 128.0;

}  // namespace

Volume usableVolume(event::PanSize size, event::PanDepth depth) {
    const double ounces =
        kUsable.at(static_cast<std::size_t>(size)).at(static_cast<std::size_t>(depth));
    return Volume::fromLitres(ounces * kMillilitresAnOunce / 1000.0);
}

Footprint panFootprint(event::PanSize size) {
    const Length width = Length::fromInches(12.75);
    switch (size) {
        case event::PanSize::Full:
            return {Length::fromInches(20.75), width};
        case event::PanSize::TwoThirds:
            return {Length::fromInches(13.833), width};
        case event::PanSize::Half:
            return {Length::fromInches(10.375), width};
        case event::PanSize::Third:
            return {Length::fromInches(6.917), width};
        case event::PanSize::Quarter:
            return {Length::fromInches(10.375), Length::fromInches(6.375)};
        case event::PanSize::Sixth:
            return {Length::fromInches(6.917), Length::fromInches(6.375)};
    }
    return {};
}

Footprint chaferFootprint() {
    return {Length::fromInches(25), Length::fromInches(14)};
}

Volume chaferWater() {
    return Volume::fromLitres(12.0 * 20.0 * 1.0 * 16.387064 / 1000.0);
}

}  // namespace cinder::quantity
