#include "cook/shared_fit.h"

#include <algorithm>
#include <cmath>

namespace cinder::cook {

Matrix2 operator+(const Matrix2& m, const Matrix2& n) {
    return {m.a + n.a, m.b + n.b, m.c + n.c, m.d + n.d};
}

Matrix2 operator-(const Matrix2& m, const Matrix2& n) {
    return {m.a - n.a, m.b - n.b, m.c - n.c, m.d - n.d};
}

Matrix2 operator*(const Matrix2& m, const Matrix2& n) {
    return {m.a * n.a + m.b * n.c, m.a * n.b + m.b * n.d, m.c * n.a + m.d * n.c,
            m.c * n.b + m.d * n.d};
}

Pair operator*(const Matrix2& m, const Pair& v) {
    return {m.a * v.flux + m.b * v.thick, m.c * v.flux + m.d * v.thick};
}

Pair operator+(const Pair& v, const Pair& w) {
    return {v.flux + w.flux, v.thick + w.thick};
}

Pair operator-(const Pair& v, const Pair& w) {
    return {v.flux - w.flux, v.thick - w.thick};
}

double dot(const Pair& v, const Pair& w) {
    return v.flux * w.flux + v.thick * w.thick;
}

Matrix2 transposed(const Matrix2& m) {
    return {m.a, m.c, m.b, m.d};
}

Matrix2 inverse(const Matrix2& m) {
    const double over = 1.0 / (m.a * m.d - m.b * m.c);
    return {m.d * over, -m.b * over, -m.c * over, m.a * over};
}

Matrix2 lowerRoot(const Matrix2& m) {
    const double first = std::sqrt(std::max(m.a, 1e-300));
    const double below = m.c / first;
    return {first, 0, below, std::sqrt(std::max(m.d - below * below, 0.0))};
}

SharedFit fitShared(const Matrix2& sharedPrior, std::span<const Matrix2> ownPrior,
                    std::span<const Evidence> evidence) {
    // Minimise, over the shared part g and the pieces u:
    //   g·P·g/2 + Σ (u - g)·L·(u - g)/2 + (u - at)·bend·(u - at)/2 + slope·(u - at).
    // For given g: u = S (pull + L g) with S = (bend + L)^-1 and pull = bend·at - slope.
    SharedFit fit;
    Matrix2 precision = inverse(sharedPrior);
    Pair weight;
    for (std::size_t i = 0; i < evidence.size(); ++i) {
        const Evidence& e = evidence[i];
        const Matrix2 hold = inverse(ownPrior[i]);
        PieceFit piece;
        piece.own = inverse(e.bend + hold);
        piece.follow = piece.own * hold;
        piece.mode = piece.own * (e.bend * e.at - e.slope);
        precision = precision + hold - hold * piece.follow;
        weight = weight + hold * piece.mode;
        fit.pieces.push_back(piece);
    }
    fit.spread = inverse(precision);
    fit.mode = fit.spread * weight;
    for (PieceFit& piece : fit.pieces) {
        piece.mode = piece.mode + piece.follow * fit.mode;
        piece.whole = piece.own + piece.follow * fit.spread * transposed(piece.follow);
    }
    return fit;
}

}  // namespace cinder::cook
