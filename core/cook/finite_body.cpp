#include "cook/finite_body.h"

#include <algorithm>

#include "cook/series.h"

namespace cinder::cook {

namespace {

/// One plane wall of the product, with its terms worked out once.
class Wall {
  public:
    Wall(double thickness, double film, double conductivity)
        : half_(0.5 * thickness),
          terms_(seriesTerms(Body::PlaneWall, film * half_ / conductivity, 30)) {}
    /// Centre, after `spread` = diffusivity · time, m².
    [[nodiscard]] double theta(double spread) const {
        double sum = 0;
        for (const SeriesTerm& t : terms_) {
            sum += t.coefficient * std::exp(-t.root * t.root * spread / (half_ * half_));
        }
        return sum;
    }

  private:
    double half_;
    std::vector<SeriesTerm> terms_;
};

}  // namespace

Result<Side, CookError> meanSide(const Side& fire, const Side& air) {
    const double a = fire.film.wattsPerSquareMetreKelvin;
    const double b = air.film.wattsPerSquareMetreKelvin;
    if (!(a + b > 0)) return fail(CookError{CookError::Kind::NotPositive, "film"});
    const double heat = a * fire.surroundings.celsius() + fire.radiant.wattsPerSquareMetre +
                        b * air.surroundings.celsius() + air.radiant.wattsPerSquareMetre;
    Side mean;
    mean.film = {0.5 * (a + b)};
    mean.surroundings = Temperature::fromCelsius(heat / (a + b));
    return mean;
}

Result<Length, CookError> equivalentThickness(const PieceSize& piece, const Side& fire,
                                              const Side& air, const ThermalProperties& food,
                                              Temperature start, Temperature target) {
    for (const Length size : {piece.thickness, piece.width, piece.length}) {
        if (!(size > Length{})) return fail(CookError{CookError::Kind::NotPositive, "size"});
    }
    const auto mean = meanSide(fire, air);
    if (!mean) return fail(mean.error());
    const double around = mean->surroundings.celsius();
    const double theta = (target.celsius() - around) / (start.celsius() - around);
    if (!(theta > 0 && theta < 1)) return fail(CookError{CookError::Kind::NeverReached, "target"});

    const double film = mean->film.wattsPerSquareMetreKelvin;
    const double k = food.conductivity.wattsPerMetreKelvin;
    const Wall thick(piece.thickness.metres(), film, k);
    const Wall wide(piece.width.metres(), film, k);
    const Wall longs(piece.length.metres(), film, k);
    const double half = 0.5 * piece.thickness.metres();
    double low = 0;
    double high = half * half * seriesFourier(Body::PlaneWall, film * half / k, theta);
    for (int i = 0; i < 50; ++i) {
        const double spread = 0.5 * (low + high);
        const double left = thick.theta(spread) * wide.theta(spread) * longs.theta(spread);
        (left > theta ? low : high) = spread;
    }
    const double bodySpread = high;
    double thin = 0.02 * piece.thickness.metres();
    double full = piece.thickness.metres();
    for (int i = 0; i < 40; ++i) {
        const double middle = 0.5 * (thin + full);
        const double h = 0.5 * middle;
        const double spread = h * h * seriesFourier(Body::PlaneWall, film * h / k, theta);
        (spread < bodySpread ? thin : full) = middle;
    }
    return Length::fromMetres(full);
}

}  // namespace cinder::cook
