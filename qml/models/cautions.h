#pragma once

/// The cautions the face shows where a task can hurt somebody, each with its published source in
/// `cautions.cpp`. Wherever one is shown, `deference()` is within reach.

#include <QString>

#include "plan/problem.h"

namespace cinder::face {

/// Empty for kinds of work with no caution of their own.
[[nodiscard]] QString cautionFor(plan::TaskKind kind);
/// "Local fire and health codes and licensed practice decide."
[[nodiscard]] QString deference();

}  // namespace cinder::face
