#include "cook/fire.h"

#include <cmath>

namespace cinder::cook {

namespace {

constexpr double kHandSpread = 0.35;
constexpr double kGrateFilm = 45;
constexpr double kFilmSpread = 0.30;
constexpr double kReadingKelvin = 25;
/// Radiation changes by 15 to 25 W/m²K with the face, convection adds 10 to 20; computed from the
/// Stefan-Boltzmann law for a bed at 700 to 800 °C.
constexpr double kHandSlope = 35;

double seconds(Duration d) {
    return std::chrono::duration<double>(d).count();
}

}  // namespace

Result<FireBelief, CookError> fireFromHandTest(Duration held) {
    const double s = seconds(held);
    if (!(s >= 1 && s <= 14)) return fail(CookError{CookError::Kind::OutOfRange, "seconds"});
    const double skin = 35000.0 * std::pow(s, -0.752);
    return FireBelief{{skin - 1500.0}, {kHandSlope}, kHandSpread};
}

Result<FireBelief, CookError> fireFromGrateThermometer(Temperature reading) {
    const double over = reading.celsius() - 100;
    if (!(over >= 20 && over <= 350)) {
        return fail(CookError{CookError::Kind::OutOfRange, "grateTemperature"});
    }
    return FireBelief{
        {kGrateFilm * over}, {kGrateFilm}, std::hypot(kFilmSpread, kReadingKelvin / over)};
}

Side fireSide(const FireBelief& fire, double factor, Temperature boiling) {
    Side side;
    side.film = fire.slope;
    side.surroundings = Temperature::fromCelsius(100);
    side.radiant = {factor * fire.atHundred.wattsPerSquareMetre};
    side.evaporation = Evaporation{.boiling = boiling};
    return side;
}

Side airSide(Temperature boiling) {
    Side side;
    side.film = {15};
    side.surroundings = Temperature::fromCelsius(75);
    side.evaporation = Evaporation{.boiling = boiling};
    return side;
}

Side coolSide(Temperature boiling) {
    Side side = airSide(boiling);
    side.film = {20};
    side.surroundings = Temperature::fromCelsius(110);
    return side;
}

Result<HandBand, CookError> handBand(Duration held) {
    struct Entry {
        double upTo, low, high;
    };
    constexpr Entry kTable[] = {{1.5, 290, 340},  {2.5, 205, 285}, {3.5, 190, 270},
                                {4.5, 175, 220},  {5.5, 150, 215}, {7.5, 150, 190},
                                {10.5, 130, 155}, {14.5, 100, 130}};
    const double s = seconds(held);
    if (s >= 1 && s <= 14) {
        for (const Entry& entry : kTable) {
            if (s < entry.upTo) {
                return HandBand{Temperature::fromCelsius(entry.low),
                                Temperature::fromCelsius(entry.high)};
            }
        }
    }
    return fail(CookError{CookError::Kind::OutOfRange, "seconds"});
}

}  // namespace cinder::cook
