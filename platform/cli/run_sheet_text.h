#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "cli/planned_day.h"

namespace cinder::cli {

/// What it cost to find the plan; not part of the run sheet, and not the same twice.
struct Cost {
    Duration searched{0};
    std::optional<std::int64_t> peakKibibytes;
};

/// The run sheet for people: one line per task with wall clock and T-minus side by side.
[[nodiscard]] std::string runSheetText(const PlannedDay& day, std::string_view language, Cost cost);

/// The same as one JSON object, for scripts.
[[nodiscard]] std::string runSheetJson(const PlannedDay& day, std::string_view language, Cost cost);

/// The checker's verdict in one line, or one line for each broken rule.
[[nodiscard]] std::string verdict(const PlannedDay& day);

}  // namespace cinder::cli
