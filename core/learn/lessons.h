#pragma once

/// Figures that were learnt, by name, and the event with those in it that a person accepted.
///
/// A figure is "length/lamb/cook" (a step's usual length, in milliseconds) or "take/slaw" (how many
/// of a hundred guests take a dish).

#include <map>
#include <string>
#include <vector>

#include "event/event.h"
#include "learn/appetites.h"
#include "learn/suggestions.h"
#include "live/debrief_day.h"

namespace cinder::learn {

[[nodiscard]] std::string lengthFigure(const std::string& step);
[[nodiscard]] std::string takeFigure(const DishId& dish);

/// How many of a hundred take the dish, as planned and as learnt.
struct TakeSuggestion {
    DishId dish;
    LocalText name;
    std::int32_t planned = 100;
    std::int32_t learned = 100;
    /// Edges between which the mean lies four times of five.
    std::int32_t low = 100;
    std::int32_t high = 100;
    std::int32_t events = 0;
    friend bool operator==(const TakeSuggestion&, const TakeSuggestion&) = default;
};

/// For each dish of `event` whose learnt take differs by `kLeastChange` or more. What was scraped
/// out counts only when more was taken than is planned now: it says "at least so much". `past`: the
/// dishes of one day each; a dish is known by its name.
[[nodiscard]] std::vector<TakeSuggestion> takesFor(const event::Event& event,
                                                   const std::vector<std::vector<Appetite>>& past);

/// `event` with the accepted figures: the usual length as it was learnt, shortest and longest drawn
/// along; the take rate. A figure of a step or dish that is not there, or that would contradict the
/// rest of the event, is left out.
[[nodiscard]] event::Event applied(event::Event event,
                                   const std::map<std::string, live::Lesson>& lessons);

}  // namespace cinder::learn
