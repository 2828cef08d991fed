#include "cook/series.h"

#include <math.h>  // j0 and j1 are POSIX; libc++ has no std::cyl_bessel_j

#include <cassert>
#include <cmath>
#include <functional>
#include <numbers>

namespace cinder::cook {

namespace {

constexpr double kPi = std::numbers::pi;
constexpr int kTerms = 60;

double rootBetween(double low, double high, const std::function<double(double)>& f) {
    const bool rising = f(low) < 0;
    for (int i = 0; i < 200 && high - low > 1e-15 * high; ++i) {
        const double middle = 0.5 * (low + high);
        ((f(middle) < 0) == rising ? low : high) = middle;
    }
    return 0.5 * (low + high);
}

double wallRoot(double biot, int n) {
    const double low = (n - 1) * kPi;
    if (std::isinf(biot)) return low + 0.5 * kPi;
    return rootBetween(low, low + 0.5 * kPi, [=](double z) {
        return z * std::sin(z) * (n % 2 == 0 ? -1.0 : 1.0) -
               biot * std::cos(z) * (n % 2 == 0 ? -1.0 : 1.0);
    });
}

double cylinderRoot(double biot, int n) {
    const auto zeroOfJ0 = [](int m) {
        return rootBetween((m - 0.5) * kPi, m * kPi, [](double z) { return ::j0(z); });
    };
    if (std::isinf(biot)) return zeroOfJ0(n);
    // Roots lie between the zeros of J1 and the following zeros of J0.
    const double low =
        n == 1 ? 0.0
               : rootBetween((n - 1) * kPi, (n - 0.5) * kPi, [](double z) { return ::j1(z); });
    return rootBetween(low, zeroOfJ0(n), [=](double z) { return z * ::j1(z) - biot * ::j0(z); });
}

double sphereRoot(double biot, int n) {
    if (std::isinf(biot)) return n * kPi;
    return rootBetween(n == 1 ? 1e-9 : (n - 1) * kPi, n * kPi,
                       [=](double z) { return (1.0 - biot) * std::sin(z) - z * std::cos(z); });
}

SeriesTerm term(Body body, double biot, int n) {
    switch (body) {
        case Body::PlaneWall: {
            const double z = wallRoot(biot, n);
            return {z, 4.0 * std::sin(z) / (2.0 * z + std::sin(2.0 * z))};
        }
        case Body::Cylinder: {
            const double z = cylinderRoot(biot, n);
            const double j0 = ::j0(z), j1 = ::j1(z);
            return {z, 2.0 * j1 / (z * (j0 * j0 + j1 * j1))};
        }
        case Body::Sphere:
            break;
    }
    const double z = sphereRoot(biot, n);
    return {z, 4.0 * (std::sin(z) - z * std::cos(z)) / (2.0 * z - std::sin(2.0 * z))};
}

double shape(Body body, double argument) {
    switch (body) {
        case Body::PlaneWall:
            return std::cos(argument);
        case Body::Cylinder:
            return ::j0(argument);
        case Body::Sphere:
            break;
    }
    return argument == 0 ? 1.0 : std::sin(argument) / argument;
}

double sum(Body body, const std::vector<SeriesTerm>& terms, double fourier, double place) {
    double theta = 0;
    for (const SeriesTerm& t : terms) {
        const double fading = std::exp(-t.root * t.root * fourier);
        theta += t.coefficient * fading * shape(body, t.root * place);
        if (fading < 1e-18) break;
    }
    return theta;
}

}  // namespace

std::vector<SeriesTerm> seriesTerms(Body body, double biot, int count) {
    assert(biot > 0);
    std::vector<SeriesTerm> terms;
    for (int n = 1; n <= count; ++n)
        terms.push_back(term(body, biot, n));
    return terms;
}

double seriesTheta(Body body, double biot, double fourier, double place) {
    return sum(body, seriesTerms(body, biot, kTerms), fourier, place);
}

double seriesFourier(Body body, double biot, double theta) {
    assert(theta > 0 && theta < 1);
    const auto terms = seriesTerms(body, biot, kTerms);
    double high = 1;
    while (sum(body, terms, high, 0) > theta)
        high *= 2;
    return rootBetween(0.0, high, [&](double fo) { return theta - sum(body, terms, fo, 0); });
}

}  // namespace cinder::cook
