#pragma once

/// The food-safety record of a day on paper: every entry, also those that were corrected or taken
/// back, how each pan stands, and who signed.

#include "live/food_day.h"
#include "report/document.h"
#include "report/style.h"

namespace cinder::report {

/// `plans` as of live::foodPlans, for the same day.
[[nodiscard]] Document recordSheet(const live::Day& day, const std::vector<safety::FoodPlan>& plans,
                                   Instant now, const Style& style);

/// Every entry as one table, for CSV: instants as RFC 3339, temperatures in both scales.
[[nodiscard]] Table recordTable(const live::Day& day);

[[nodiscard]] std::string word(safety::Purpose purpose, const Style& style);
[[nodiscard]] std::string word(safety::Action action, const Style& style);
[[nodiscard]] std::string word(safety::Leftover leftover, const Style& style);
[[nodiscard]] std::string word(safety::Lost::Why why, const Style& style);
[[nodiscard]] std::string word(safety::FireItem item, const Style& style);

}  // namespace cinder::report
