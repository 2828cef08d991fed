#include "cook/batch.h"

namespace cinder::cook {

std::vector<PieceOnGrate> piecesOf(const ThicknessClass& kind, PieceNumber first, Instant laid) {
    std::vector<PieceOnGrate> pieces;
    for (int i = 0; i < kind.pieces; ++i) {
        PieceOnGrate piece;
        piece.number = {first.value + i};
        piece.thickness = kind.thickness;
        piece.thicknessSpread = 0.08;
        piece.start = kind.start;
        piece.laid = laid;
        pieces.push_back(piece);
    }
    return pieces;
}

ReadingRange possibleReadings(std::optional<Temperature> start, Temperature boiling) {
    return {start ? *start + TemperatureDelta::fromKelvin(-2) : kColdestMeat,
            boiling + TemperatureDelta::fromKelvin(3)};
}

RestPlace insulatedBox() {
    RestPlace place;
    place.handling.film = {10};
    place.handling.surroundings = Temperature::fromCelsius(25);
    place.box.film = {4};
    place.box.surroundings = Temperature::fromCelsius(50);
    return place;
}

Result<ThermalProperties, CookError> meatProperties(const Composition& food) {
    auto properties = propertiesOf(food, Temperature::fromCelsius(50), Mixing::Parallel);
    if (properties) properties->conductivity.wattsPerMetreKelvin *= kMeasuredOverParallel;
    return properties;
}

}  // namespace cinder::cook
