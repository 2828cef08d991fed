#pragma once

/// The sheets a crew prints. Each is made from values alone and never fails: what is not known is
/// said on the sheet.

#include <vector>

#include "event/event.h"
#include "live/run_sheet.h"
#include "quantity/reckoning.h"
#include "report/document.h"
#include "report/style.h"

namespace cinder::report {

/// What to buy, with the need behind each pack and the dishes it is for; own values are emphasized.
[[nodiscard]] Document purchaseList(const event::Event& event, const quantity::Reckoning& all,
                                    const Style& style);

/// By where it rides, two boxes before each row: into the van, and out of the site again.
[[nodiscard]] Document packSheet(const event::Event& event, const quantity::Reckoning& all,
                                 const Style& style);

/// The same as one table with where each row rides, for CSV.
[[nodiscard]] Table packTable(const quantity::Reckoning& all, const Style& style);

/// What is cooked ahead, by when, with the published cooling limits and blanks for the thermometer.
[[nodiscard]] Document kitchenSheet(const event::Event& event, const quantity::Reckoning& all,
                                    const Style& style);

/// The line to scale, the vessels in order, and what weather asks for.
[[nodiscard]] Document buffetPlan(const event::Event& event, const quantity::Reckoning& all,
                                  const Style& style);

/// A standing card for each dish: what it contains and whom it suits.
[[nodiscard]] Document dishCards(const event::Event& event, const Style& style);

/// Portions, weight and pans of each dish, and what the line needs.
[[nodiscard]] Document quantitySheet(const event::Event& event, const quantity::Reckoning& all,
                                     const Style& style);

/// Every task by its start, wall clock and T-minus side by side, with people and a box. Those that
/// are left out (by place on the sheet; empty: none) say so.
[[nodiscard]] Document runSheet(const event::Event& event, const live::RunSheet& sheet,
                                const Style& style, const std::vector<bool>& isLeftOut = {});

}  // namespace cinder::report
