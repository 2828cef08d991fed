#include "grate/outline.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace cinder::grate {

namespace {

/// Sides of a whole turn. Divisible by 12, so that a disc touches its box on all four sides and
/// its six neighbours in a honeycomb: round pieces lose nothing there.
constexpr int kSides = 24;

struct Vec {
    double x = 0;
    double y = 0;
};

Vec inMillimetres(const Point& p) {
    return {p.x.millimetres(), p.y.millimetres()};
}

/// Directions a whole turn around, ascending; `more` are angles from 0 to a turn besides.
std::vector<Vec> directions(std::initializer_list<double> more) {
    std::vector<double> angles(more);
    for (int side = 0; side < kSides; ++side) {
        const double angle = 2.0 * std::numbers::pi * side / kSides;
        const auto isNear = [angle](double other) { return std::abs(other - angle) < 1e-3; };
        if (std::none_of(more.begin(), more.end(), isNear)) angles.push_back(angle);
    }
    std::sort(angles.begin(), angles.end());
    std::vector<Vec> made;
    made.reserve(angles.size());
    for (const double angle : angles)
        made.push_back({std::cos(angle), std::sin(angle)});
    return made;
}

std::vector<Vec> flanked(double angle) {
    return directions({angle, 2.0 * std::numbers::pi - angle});
}

/// Where two lines {p : direction·p = reach} cross.
Vec cross(Vec a, double reachA, Vec b, double reachB) {
    const double turn = a.x * b.y - a.y * b.x;
    return {(reachA * b.y - reachB * a.y) / turn, (reachB * a.x - reachA * b.x) / turn};
}

/// The polygon around a convex body, from how far the body reaches in each direction.
template <class Reach>
std::vector<Vec> around(const std::vector<Vec>& sides, Reach&& reach) {
    std::vector<Vec> corners;
    for (std::size_t i = 0; i < sides.size(); ++i) {
        const Vec a = sides[i];
        const Vec b = sides[(i + 1) % sides.size()];
        corners.push_back(cross(a, reach(a), b, reach(b)));
    }
    return corners;
}

/// The piece along the grate, wide end first, in its bounding box from the origin.
std::vector<Vec> atOrigin(const Footprint& piece) {
    const double length = piece.length.millimetres();
    const double width = piece.width.millimetres();
    const double narrow = piece.narrowWidth.millimetres();
    switch (piece.shape) {
        case Shape::Round:
            return around(directions({}), [&](Vec d) {
                return d.x * length / 2 + d.y * width / 2 +
                       std::hypot(d.x * length / 2, d.y * width / 2);
            });
        case Shape::Teardrop: {
            // The straight flanks touch both circles; where one circle holds the other, none.
            const double apart = length - (width + narrow) / 2;
            const double taper = (width - narrow) / 2;
            const auto sides =
                taper < apart - 1e-3 ? flanked(std::acos(taper / apart)) : directions({});
            return around(sides, [&](Vec d) {
                const double wide = d.x * width / 2 + d.y * width / 2 + width / 2;
                const double tail = d.x * (length - narrow / 2) + d.y * width / 2 + narrow / 2;
                return std::max(wide, tail);
            });
        }
        case Shape::Tapered:
        case Shape::Skewer:
            break;
    }
    const double inset = piece.shape == Shape::Skewer ? 0.0 : (width - narrow) / 2;
    return {{0, 0}, {length, inset}, {length, width - inset}, {0, width}};
}

/// How far a polygon reaches along `direction`.
double reachOf(const std::vector<Vec>& polygon, Vec direction) {
    double reach = -1e300;
    for (const Vec& p : polygon)
        reach = std::max(reach, p.x * direction.x + p.y * direction.y);
    return reach;
}

/// The piece as it lies, unrounded.
std::vector<Vec> lying(const Footprint& piece, const Place& place) {
    std::vector<Vec> points = atOrigin(piece);
    for (Vec& p : points) {
        if (place.isReversed) {
            p.x = piece.length.millimetres() - p.x;
            p.y = piece.width.millimetres() - p.y;
        }
        if (place.isAcross) std::swap(p.x, p.y);
        p.x += place.x.millimetres();
        p.y += place.y.millimetres();
    }
    // A mirror image runs the other way round.
    if (place.isAcross) std::reverse(points.begin(), points.end());
    return points;
}

/// Outward normals of the sides, `sign` -1 for those of the mirrored polygon.
void addNormals(const std::vector<Vec>& polygon, double sign, std::vector<Vec>& normals) {
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        const Vec& a = polygon[i];
        const Vec& b = polygon[(i + 1) % polygon.size()];
        const double size = std::hypot(b.x - a.x, b.y - a.y);
        if (size > 1e-9) normals.push_back({sign * (b.y - a.y) / size, sign * (a.x - b.x) / size});
    }
}

}  // namespace

bool isReal(const Footprint& piece) {
    const Length zero;
    const bool isSized = piece.length > zero && piece.width > zero && piece.narrowWidth >= zero &&
                         piece.narrowWidth <= piece.width;
    return isSized && (piece.shape != Shape::Teardrop || piece.length >= piece.width);
}

std::int32_t angleDegrees(const Place& place) {
    return (place.isAcross ? 90 : 0) + (place.isReversed ? 180 : 0);
}

Polygon outlineAt(const Footprint& piece, const Place& place) {
    Polygon polygon;
    for (const Vec& p : lying(piece, place))
        polygon.push_back({Length::fromMillimetres(p.x), Length::fromMillimetres(p.y)});
    return polygon;
}

double areaSquareMillimetres(const Polygon& polygon) {
    double twice = 0;
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        const Vec a = inMillimetres(polygon[i]);
        const Vec b = inMillimetres(polygon[(i + 1) % polygon.size()]);
        twice += a.x * b.y - b.x * a.y;
    }
    return 0.5 * twice;
}

double perimeterMillimetres(const Polygon& polygon) {
    double sum = 0;
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        const Vec a = inMillimetres(polygon[i]);
        const Vec b = inMillimetres(polygon[(i + 1) % polygon.size()]);
        sum += std::hypot(b.x - a.x, b.y - a.y);
    }
    return sum;
}

Length pushClear(const Footprint& piece, const Place& fixed, const Place& moving, Axis axis,
                 Length gap) {
    // Two convex outlines are `gap` apart as soon as a line with that much room on one side keeps
    // them apart: for each direction, the push that opens it; the shortest push is enough.
    const auto one = lying(piece, fixed);
    const auto other = lying(piece, moving);
    std::vector<Vec> normals;
    addNormals(one, 1, normals);
    addNormals(other, -1, normals);
    normals.push_back(axis == Axis::X ? Vec{1, 0} : Vec{0, 1});
    double least = 1e300;
    for (const Vec& n : normals) {
        const double along = axis == Axis::X ? n.x : n.y;
        const double needed = reachOf(one, n) + reachOf(other, {-n.x, -n.y}) + gap.millimetres();
        if (needed <= 1e-7) return Length{};
        if (along > 1e-9) least = std::min(least, needed / along);
    }
    // Up to the next micrometre: rounding must never eat into the gap.
    return Length::fromMillimetres(std::ceil(least * 1000.0 - 1e-4) / 1000.0);
}

}  // namespace cinder::grate
