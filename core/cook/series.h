#pragma once

/// Exact solutions of transient conduction with convection: plane wall, long cylinder and sphere,
/// uniform at the start and suddenly in surroundings of another temperature.
///
/// Source of the formulas: H. S. Carslaw, J. C. Jaeger, "Conduction of Heat in Solids" (1959),
/// sections 3.11, 7.7, 9.4; F. P. Incropera et al., "Fundamentals of Heat and Mass Transfer",
/// chapter 5. They judge the solver, turn plain problems into one formula, and give the shape
/// correction of `finite_body.h`. All numbers here are ratios and have no unit.

#include <vector>

namespace cinder::cook {

enum class Body { PlaneWall, Cylinder, Sphere };

struct SeriesTerm {
    double root;         ///< zeta, ascending
    double coefficient;  ///< C(zeta)
};

/// The first `count` terms for a Biot number (film · half thickness or radius / conductivity).
/// `biot` must be positive; infinity means a face held at the surroundings.
[[nodiscard]] std::vector<SeriesTerm> seriesTerms(Body body, double biot, int count);

/// What is left of the first difference to the surroundings, (T - surroundings) / (start -
/// surroundings), at `place` (0 centre, 1 face) after `fourier` = diffusivity · time / half size².
/// Good to 1e-9 for fourier >= 0.005; below that the series converges slowly.
[[nodiscard]] double seriesTheta(Body body, double biot, double fourier, double place);

/// The Fourier number at which the centre is at `theta`, in (0, 1).
[[nodiscard]] double seriesFourier(Body body, double biot, double theta);

}  // namespace cinder::cook
