#pragma once

/// What a piece looks like from above, and how far apart two of them must lie.
///
/// Outlines are convex polygons. Round edges are drawn as polygons around them, never inside them,
/// so what keeps its distance as a polygon keeps it as meat.

#include <cstdint>
#include <vector>

#include "base/units.h"

namespace cinder::grate {

/// x along the grate, y across it.
struct Point {
    Length x;
    Length y;
    friend bool operator==(const Point&, const Point&) = default;
};

/// Convex, counter-clockwise when x points right and y points up.
using Polygon = std::vector<Point>;

enum class Shape : std::uint8_t {
    Tapered,   ///< an isosceles trapezium; a rectangle when both ends are as wide
    Teardrop,  ///< round at both ends: a wide circle, a narrow one, and what lies between
    Round,     ///< a disc, or an oval when length and width differ
    Skewer,    ///< a straight strip
};

/// A piece seen from above; `length` is measured over all.
struct Footprint {
    Length length;
    Length width;        ///< of the wide end
    Length narrowWidth;  ///< of the other end; equal to `width` when the piece is not tapered
    Shape shape = Shape::Tapered;
    friend bool operator==(const Footprint&, const Footprint&) = default;
};

/// Every size is positive, the narrow end is no wider than the wide one, and round ends fit into
/// the length.
[[nodiscard]] bool isReal(const Footprint& piece);

/// One piece by the corner of its bounding box nearest to the grate's beginning.
struct Place {
    Length x;  ///< along the grate
    Length y;  ///< across it
    /// The piece's length lies across the grate.
    bool isAcross = false;
    /// The narrow end comes first (smaller x, or smaller y when across).
    bool isReversed = false;
    friend bool operator==(const Place&, const Place&) = default;
};

/// Which way the narrow end points: 0 along the grate, then counter-clockwise, in degrees.
[[nodiscard]] std::int32_t angleDegrees(const Place& place);

/// The piece as it lies at `place`. `piece` must be real.
[[nodiscard]] Polygon outlineAt(const Footprint& piece, const Place& place);

[[nodiscard]] double areaSquareMillimetres(const Polygon& polygon);
[[nodiscard]] double perimeterMillimetres(const Polygon& polygon);

enum class Axis : std::uint8_t { X, Y };

/// How far a piece at `moving` must be pushed along the axis, towards larger values, until it is
/// `gap` clear of an equal piece at `fixed`; rounded up to the next micrometre. 0 when it is clear
/// already. Sufficient always, and the least distance wherever the two would meet side to side.
[[nodiscard]] Length pushClear(const Footprint& piece, const Place& fixed, const Place& moving,
                               Axis axis, Length gap);

}  // namespace cinder::grate
