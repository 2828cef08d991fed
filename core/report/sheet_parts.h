#pragma once

/// What the sheets have in common.

#include "report/sheets.h"

namespace cinder::report {

/// Title, and below it the event, its guests and the bell.
[[nodiscard]] Document sheetFor(const event::Event& event, std::string title, const Style& style);

/// The faults of a reckoning as a caution, when there are any: a sheet with holes says so.
void addHoles(Document& document, const quantity::Reckoning& all, const Style& style);

/// Ends every sheet that deals with food.
void addFoodCode(Document& document, const Style& style);

/// "a, b, c", or `none` when empty.
template <class List>
[[nodiscard]] std::string joined(const List& list, const Style& style, std::string none) {
    std::string text;
    for (const auto& one : list)
        text += (text.empty() ? "" : ", ") + word(one, style);
    return text.empty() ? std::move(none) : text;
}

/// The name of a dish of the menu; its id when there is none.
[[nodiscard]] std::string dishName(const event::Event& event, const DishId& dish,
                                   const Style& style);

}  // namespace cinder::report
