#pragma once

/// How different two pictures look. Both are seen from a step away: reduced to blocks of 6 x 6
/// pixels, so that a letter drawn half a pixel further is no difference, and compared by CIE 1976
/// colour difference.
///
/// Sources: IEC 61966-2-1 (sRGB, D65); CIE 15:2004, Colorimetry (CIE 1976 L*a*b*, Delta E*ab).

#include <QImage>

namespace cinder::face {

/// A colour in CIE 1976 L*a*b*, white D65.
struct Lab {
    double l = 0, a = 0, b = 0;
};

[[nodiscard]] Lab labOf(QRgb colour);
/// Delta E*ab: about 2.3 is just seen.
[[nodiscard]] double difference(const Lab& one, const Lab& other);

/// What is kept of a picture: one pixel for a block.
[[nodiscard]] QImage reduced(const QImage& picture);

/// The share of blocks, 0 to 1, that clearly differ; 1 when the sizes do.
[[nodiscard]] double unlikeness(const QImage& reducedOne, const QImage& reducedOther);

}  // namespace cinder::face
