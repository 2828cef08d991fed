#pragma once

/// Planned against actual, task by task, out of the journal of one day.

#include <string>
#include <tuple>
#include <vector>

#include "event/event.h"
#include "live/day.h"

namespace cinder::learn {

struct Actual {
    TaskId task;
    /// The step the task was made of: "lamb/cook" for its second batch too.
    std::string step;
    LocalText name;
    /// Of the dish the step belongs to; empty for work that belongs to none.
    LocalText dish;
    std::optional<std::int32_t> batch;
    /// Relative to the bell as it stood at the end; negative is before.
    Duration plannedStart{0};
    Duration plannedLength{0};
    Duration actualStart{0};
    /// Of work that may be split, without its pauses, as near to the plan as they allow: when the
    /// pauses were, nobody says.
    Duration actualLength{0};
    /// Far from what three-point estimates and experience allow; see `isSuspect`.
    bool isSuspect = false;
    friend bool operator==(const Actual&, const Actual&) = default;
};

/// Tasks that were begun and finished by somebody, by their actual start. None without a plan. A
/// task whose end lies before its start is left out, and so is one that ends by itself: nobody
/// measured it.
[[nodiscard]] std::vector<Actual> actualsOf(const live::Day& day);

/// "lamb/cook/2" -> "lamb/cook". A step that is done in batches is numbered when it is only one,
/// too.
[[nodiscard]] std::string stepOf(const plan::Task& task);

/// What a step is known by from event to event. Ids of dishes are numbered anew when a dish is
/// copied, and unlike dishes have steps of like ids: so the names count as well.
struct StepKey {
    std::string step;  ///< its id within its dish
    LocalText name;
    LocalText dish;
    friend bool operator==(const StepKey&, const StepKey&) = default;
    friend bool operator<(const StepKey& a, const StepKey& b) {
        return std::tie(a.step, a.name.byLanguage(), a.dish.byLanguage()) <
               std::tie(b.step, b.name.byLanguage(), b.dish.byLanguage());
    }
};

[[nodiscard]] StepKey keyOf(const std::string& step, const LocalText& name, const LocalText& dish);

/// Empty for a task of no dish, or of one that `event` does not have.
[[nodiscard]] LocalText dishNameOf(const plan::Task& task,
                                   const std::optional<event::Event>& event);

}  // namespace cinder::learn
