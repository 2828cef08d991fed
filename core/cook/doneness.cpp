#include "cook/doneness.h"

namespace cinder::cook {

using namespace std::chrono_literals;

SafeMinimum safeMinimum(Meat meat) {
    switch (meat) {
        case Meat::GroundMeat:
            return {Temperature::fromCelsius(68), 17s, "FDA Food Code 2022, 3-401.11(A)(2)"};
        case Meat::Poultry:
            return {Temperature::fromCelsius(74), 0s, "FDA Food Code 2022, 3-401.11(A)(3)"};
        case Meat::IntactBeef:
        case Meat::IntactLamb:
        case Meat::IntactPork:
        case Meat::Fish:
            break;
    }
    return {Temperature::fromCelsius(63), 15s, "FDA Food Code 2022, 3-401.11(A)(1)"};
}

std::optional<PullTarget> pullTarget(Meat meat, Doneness doneness) {
    const SafeMinimum minimum = safeMinimum(meat);
    const auto at = [&](double celsius) {
        return PullTarget{Temperature::fromCelsius(celsius), minimum};
    };
    const bool isRed = meat == Meat::IntactBeef || meat == Meat::IntactLamb;
    switch (meat) {
        case Meat::GroundMeat:
            return doneness == Doneness::WellDone ? std::optional(at(71)) : std::nullopt;
        case Meat::Poultry:
            return doneness == Doneness::WellDone ? std::optional(at(74)) : std::nullopt;
        case Meat::Fish:
            return doneness >= Doneness::MediumWell ? std::optional(at(63)) : std::nullopt;
        case Meat::IntactBeef:
        case Meat::IntactLamb:
        case Meat::IntactPork:
            break;
    }
    switch (doneness) {
        case Doneness::Rare:
            return isRed ? std::optional(at(47)) : std::nullopt;
        case Doneness::MediumRare:
            return isRed ? std::optional(at(52)) : std::nullopt;
        case Doneness::Medium:
            return at(isRed ? 57 : 60);
        case Doneness::MediumWell:
            return at(63);
        case Doneness::WellDone:
            break;
    }
    return at(68);
}

}  // namespace cinder::cook
