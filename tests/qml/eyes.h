#pragma once

/// A picture as people see it whose eyes lack one of the three kinds of cone.
///
/// Source: G. M. Machado, M. M. Oliveira, L. A. F. Fernandes, "A Physiologically-based Model for
/// Simulation of Color Vision Deficiency", IEEE TVCG 15(6), 2009, the matrices for severity 1.0,
/// applied to linear sRGB (IEC 61966-2-1). The nine figures of each agree in several public
/// implementations; the paper itself was not at hand.

#include <QImage>

namespace cinder::face {

enum class Eyes { Usual, Protan, Deutan, Tritan };

[[nodiscard]] QRgb seenBy(Eyes eyes, QRgb colour);
[[nodiscard]] QImage seenBy(Eyes eyes, const QImage& picture);

}  // namespace cinder::face
