#pragma once

/// The cautions the face shows where a task can hurt somebody: the brief form of those of
/// cook/cautions.h and safety/cautions.h, where each has its published source. Wherever one is
/// shown, `deference()` is within reach.

#include <string_view>

#include <QString>

#include "plan/problem.h"

namespace cinder::face {

/// By its id, in the language ("es", else English); empty for an id nobody has.
[[nodiscard]] QString briefCaution(std::string_view id, const QString& language);
/// Empty for kinds of work with no caution of their own.
[[nodiscard]] QString cautionFor(plan::TaskKind kind, const QString& language);
/// "Local fire and health codes and licensed practice decide."
[[nodiscard]] QString deference();

}  // namespace cinder::face
