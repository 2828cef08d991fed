#pragma once

/// Cooks drawn from a richer model than the one the forecast fits.
///
/// The fitted model: a slab of constant properties, one start temperature, a steady fire as
/// believed times one factor, one film on the air side, a fixed boiling face, turns on the minute.
/// The truth drawn here differs in what the forecast cannot see:
///  - properties follow temperature (Choi-Okos), mixed between the bounds by chance;
///  - the fire dies away by 0 to 35 % over an hour and jumps at every turn as the piece comes down
///    on another spot; its slope with the face's temperature is drawn too;
///  - the air side's film and temperature are drawn and gust from turn to turn;
///  - the boiling film is drawn, and a drying face boils a few degrees above 100;
///  - the start is not uniform: the piece stood in the air for up to 40 minutes;
///  - the thickness differs from what was measured, the core lies where it lies, the tip of the
///    probe misses its place and the thermometer has its own bias besides its noise;
///  - turns come late by up to a minute and a half.

#include <cmath>
#include <numbers>

#include "base/rng.h"
#include "cook/forecast.h"

namespace cinder::bench {

using namespace cook;

struct SimulatedCook {
    Batch believed;                                  ///< without readings
    Duration trulyDone{0};                           ///< coldest place at the target
    std::vector<std::pair<Duration, Slab>> history;  ///< every half minute
    std::vector<int> turnsDone;                      ///< with each
    double probeBias = 0;
};

class Draw {
  public:
    explicit Draw(std::uint64_t seed) : rng_(seed, 99) {}
    double uniform(double low, double high) { return low + (high - low) * rng_.unit(); }
    double normal(double sd) {
        const double r = std::sqrt(-2 * std::log(1 - rng_.unit()));
        return sd * r * std::cos(2 * std::numbers::pi * rng_.unit());
    }
    std::uint64_t bits() { return (std::uint64_t{rng_.next()} << 32U) | rng_.next(); }

  private:
    Rng rng_;
};

inline Slab drawPiece(Draw& draw, const PieceOnGrate& piece) {
    const double thick = piece.thickness.metres() * std::exp(draw.normal(piece.thicknessSpread));
    const double scale = draw.uniform(0.82, 1.02);
    const Composition& food = draw.uniform(0, 1) < 0.5 ? kLeanBeef : kPorkLoin;
    const Layer layer{Length::fromMetres(thick),
                      Material::of(food, Mixing::Parallel, scale).value()};
    Side air;
    air.film = {8};
    air.surroundings = Temperature::fromCelsius(25);
    const Duration stood(static_cast<int>(draw.uniform(0, 40) * 60000));
    Slab cold =
        Slab::make(
            {&layer, 1},
            piece.start + TemperatureDelta::fromKelvin(-static_cast<double>(stood.count()) / 6e5),
            {40, std::chrono::seconds(15)})
            .value();
    cold.advance(air, air, stood);
    return cold;
}

inline SimulatedCook drawCook(std::uint64_t seed) {
    Draw draw(seed);
    SimulatedCook cook;
    Batch& batch = cook.believed;
    batch.food = meatProperties(kLeanBeef).value();
    const double seconds = draw.uniform(2, 5.5);
    const auto belief =
        fireFromHandTest(Duration(static_cast<int>(1000 * std::round(seconds)))).value();
    batch.fire = {{Instant{}, belief}};
    batch.pullAt = Temperature::fromCelsius(draw.uniform(48, 60));
    PieceOnGrate piece;
    piece.number = {1};
    piece.thickness = Length::fromMillimetres(draw.uniform(28, 65));
    piece.start = Temperature::fromCelsius(draw.uniform(4, 14));
    batch.pieces = {piece};

    // The truth.
    Slab slab = drawPiece(draw, piece);
    const double flux = belief.atHundred.wattsPerSquareMetre * std::exp(draw.normal(0.33));
    const double slope = draw.uniform(20, 55);
    const double fading = draw.uniform(0, 0.35);
    const double place = std::exp(draw.normal(0.12));
    const double airFilm = draw.uniform(10, 20);
    const double airTemperature = draw.uniform(45, 90);
    const double boilingFilm = draw.uniform(300, 4000);
    const double boiling = draw.uniform(98, 104);
    cook.probeBias = draw.normal(0.5);
    Duration now(0);
    bool firstDown = true;
    int turns = 0;
    double coldestBefore = slab.coldestCelsius();
    while (cook.trulyDone == Duration(0) && now < std::chrono::hours(4)) {
        const Duration end = now + std::chrono::minutes(5) +
                             Duration(static_cast<int>(draw.uniform(-30, 90) * 1000));
        const double hour = std::chrono::duration<double>(now).count() / 3600;
        Side fire;
        fire.film = {slope};
        fire.surroundings = Temperature::fromCelsius(100);
        fire.radiant = {flux * place * std::exp(draw.normal(0.15)) * std::pow(1 - fading, hour)};
        fire.evaporation = Evaporation{{boilingFilm}, Temperature::fromCelsius(boiling)};
        Side air;
        air.film = {airFilm * std::exp(draw.normal(0.2))};
        air.surroundings = Temperature::fromCelsius(airTemperature + draw.normal(8));
        air.evaporation = fire.evaporation;
        while (now < end) {
            const Duration step = std::min(Duration(30000), end - now);
            firstDown ? slab.advance(fire, air, step) : slab.advance(air, fire, step);
            now += step;
            cook.history.emplace_back(now, slab);
            cook.turnsDone.push_back(turns);
            const double coldest = slab.coldestCelsius();
            if (cook.trulyDone == Duration(0) && coldest >= batch.pullAt.celsius()) {
                const double share =
                    (batch.pullAt.celsius() - coldestBefore) / (coldest - coldestBefore);
                cook.trulyDone =
                    now - step +
                    Duration(static_cast<int>(share * static_cast<double>(step.count())));
            }
            coldestBefore = coldest;
        }
        batch.pieces[0].turns.push_back(Instant{} + now);
        firstDown = !firstDown;
        ++turns;
    }
    return cook;
}

/// The batch as it is known at `now`: turns made, and the readings taken so far.
inline Batch knownAt(const SimulatedCook& cook, const std::vector<ProbeReading>& readings,
                     Instant now) {
    Batch batch = cook.believed;
    auto& turns = batch.pieces[0].turns;
    while (!turns.empty() && turns.back() > now)
        turns.pop_back();
    batch.probes = readings;
    return batch;
}

inline ProbeReading probeAt(const SimulatedCook& cook, Duration at, Draw& draw) {
    std::size_t i = 0;
    while (i + 1 < cook.history.size() && cook.history[i].first < at)
        ++i;
    const Slab& slab = cook.history[i].second;
    const double tip = 0.5 * slab.nodesMetres().back() + draw.normal(0.004);
    ProbeReading reading;
    reading.piece = {1};
    reading.at = Instant{} + cook.history[i].first;
    reading.depth = Length::fromMetres(0.5 * cook.believed.pieces[0].thickness.metres());
    reading.reading =
        Temperature::fromCelsius(slab.celsiusAt(tip) + cook.probeBias + draw.normal(0.5));
    return reading;
}

}  // namespace cinder::bench
