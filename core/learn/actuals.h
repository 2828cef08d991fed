#pragma once

/// Planned against actual, task by task, out of the journal of one day.

#include <string>
#include <vector>

#include "live/day.h"

namespace cinder::learn {

struct Actual {
    TaskId task;
    /// The step the task was made of, the same at every event: "lamb/cook" for its second batch
    /// too.
    std::string step;
    LocalText name;
    std::optional<std::int32_t> batch;
    /// Relative to the bell as it stood at the end; negative is before.
    Duration plannedStart{0};
    Duration plannedLength{0};
    Duration actualStart{0};
    Duration actualLength{0};
    /// Far from what three-point estimates and experience allow; see `isSuspect`.
    bool isSuspect = false;
    friend bool operator==(const Actual&, const Actual&) = default;
};

/// Tasks that were begun and finished by somebody, by their actual start. None without a plan. A
/// task whose end lies before its start is left out, and so is one that ends by itself: nobody
/// measured it.
[[nodiscard]] std::vector<Actual> actualsOf(const live::Day& day);

/// "lamb/cook/2" -> "lamb/cook" when it is a batch.
[[nodiscard]] std::string stepOf(const plan::Task& task);

}  // namespace cinder::learn
