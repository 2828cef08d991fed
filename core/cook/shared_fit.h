#pragma once

/// Bayesian fit of many pieces over one fire.
///
/// Each piece has two hidden numbers: the logarithm of its flux against the belief about the fire,
/// and the logarithm of its thermal thickness (thickness² / diffusivity) against the measured one.
/// Both are the sum of a part shared by the batch (the fire, the meat) and a part of its own (the
/// place on the grate, the tape measure). Only one direction is well determined by readings; tight
/// priors hold the other, so the two never run away along the valley between them.
///
/// The structure is an arrow matrix: given the shared part the pieces are independent, so a fit of
/// any number of pieces costs 2 x 2 algebra for each. Source of the method: A. Gelman et al.,
/// "Bayesian Data Analysis" (3rd ed.), chapters 4 and 5 (normal approximation at the mode,
/// hierarchical normal model).

#include <span>
#include <vector>

namespace cinder::cook {

struct Pair {
    double flux = 0;   ///< log factor
    double thick = 0;  ///< log factor
};

/// 2 x 2, rows first; covariances and precisions are symmetric ones.
struct Matrix2 {
    double a = 0, b = 0;
    double c = 0, d = 0;
};

[[nodiscard]] Matrix2 operator+(const Matrix2& m, const Matrix2& n);
[[nodiscard]] Matrix2 operator-(const Matrix2& m, const Matrix2& n);
[[nodiscard]] Matrix2 operator*(const Matrix2& m, const Matrix2& n);
[[nodiscard]] Pair operator*(const Matrix2& m, const Pair& v);
[[nodiscard]] Pair operator+(const Pair& v, const Pair& w);
[[nodiscard]] Pair operator-(const Pair& v, const Pair& w);
[[nodiscard]] double dot(const Pair& v, const Pair& w);
[[nodiscard]] Matrix2 transposed(const Matrix2& m);
[[nodiscard]] Matrix2 inverse(const Matrix2& m);
/// Lower triangular root of a covariance: root · rootᵀ = m.
[[nodiscard]] Matrix2 lowerRoot(const Matrix2& m);

/// What the readings of one piece say near `at`: minus log likelihood ≈ const + slope·d +
/// d·bend·d/2.
struct Evidence {
    Pair at;
    Pair slope;
    Matrix2 bend;
};

struct PieceFit {
    Pair mode;
    Matrix2 own;     ///< covariance when the shared part is known
    Matrix2 follow;  ///< change of the piece per change of the shared part
    Matrix2 whole;   ///< covariance with the shared part unknown
};

struct SharedFit {
    Pair mode;       ///< of the shared part
    Matrix2 spread;  ///< its covariance
    std::vector<PieceFit> pieces;
};

/// One Gauss-Newton step: the posterior if the evidence were exactly quadratic. `ownPrior` has one
/// covariance per piece, `evidence` too (zero bend where nothing was read). Prior mean is zero.
[[nodiscard]] SharedFit fitShared(const Matrix2& sharedPrior, std::span<const Matrix2> ownPrior,
                                  std::span<const Evidence> evidence);

}  // namespace cinder::cook
