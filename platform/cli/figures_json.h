#pragma once

#include <string>

#include "quantity/reckoning.h"

namespace cinder::cli {

/// Everything an event comes to as one JSON object: each figure with its inputs down to the fields
/// and sources, the faults with their paths.
[[nodiscard]] std::string figuresJson(const event::Event& event, const quantity::Reckoning& all,
                                      std::string_view language);

}  // namespace cinder::cli
