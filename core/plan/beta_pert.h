#pragma once

#include "base/rng.h"
#include "base/time.h"
#include "plan/problem.h"

namespace cinder::plan {

/// One duration drawn from the beta-PERT distribution over [low, high] with its peak at usual:
/// a beta distribution with shapes 1 + 4 (usual - low) / (high - low) and
/// 1 + 4 (high - usual) / (high - low), whose mean is (low + 4 usual + high) / 6. An usual value
/// outside the range is taken as the nearer end; an empty range gives the usual value.
/// Sources: D. G. Malcolm et al., Operations Research 7 (1959) for PERT; G. Marsaglia,
/// W. W. Tsang, ACM TOMS 26 (2000) for the gamma draws it is made from; from memory.
[[nodiscard]] Duration drawBetaPert(Rng& rng, const ThreePoint& estimate);

}  // namespace cinder::plan
