#pragma once

/// Pieces that are not slabs: heat also comes in through the edges.
///
/// In one environment the temperature of a brick is the product of three plane walls (Carslaw &
/// Jaeger, section 1.15; Incropera et al., section 5.8). A piece with a fire below and air above is
/// not in one environment, so the product is used only as a ratio: how much sooner the brick is
/// done than the slab of its thickness, both in the mean environment of fire and air, which is
/// exactly what quick turning makes of the two. The piece is then solved as a slab that is thinner
/// by that ratio.

#include "cook/slab.h"

namespace cinder::cook {

struct PieceSize {
    Length thickness;
    Length width;
    Length length;
};

/// The mean environment of two sides turned quickly: film (a+b)/2 and surroundings weighted by
/// film. A radiant part counts as warmer surroundings. Errors: `NotPositive` when neither has a
/// film.
[[nodiscard]] Result<Side, CookError> meanSide(const Side& fire, const Side& air);

/// The thickness of the slab whose centre goes from `start` to `target` in the same time as the
/// middle of the piece. Never more than the piece's own thickness. Errors: `NotPositive` for a
/// size; `NeverReached` when the mean environment is not beyond the target.
[[nodiscard]] Result<Length, CookError> equivalentThickness(const PieceSize& piece,
                                                            const Side& fire, const Side& air,
                                                            const ThermalProperties& food,
                                                            Temperature start, Temperature target);

}  // namespace cinder::cook
