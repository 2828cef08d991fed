#pragma once

/// The entries that bear on one pan, in the order they happened, corrections joined to what they
/// correct: how the record, and what is forecast from it, read the entries.

#include <map>
#include <span>
#include <variant>
#include <vector>

#include "safety/facts.h"

namespace cinder::safety {

/// A reading with everything it was corrected to. It speaks for food only when all of its values
/// do, and against it when one does: a correction cannot make food better.
struct Measured {
    EntryId entry;
    Instant at;
    Purpose purpose = Purpose::HoldHot;
    std::vector<Reading> values;
    std::optional<Duration> held;
    bool isTrusted = true;
};

struct TimeStart {
    EntryId entry;
    ControlLeft left;
    bool isTrusted = true;
};

using Step = std::variant<Measured, TimeStart, CoolingBegun, PanDiscarded>;

struct Moment {
    Instant at;
    EntryId entry;
    Step step;
};

/// The pan of the same dish a pan was filled out of, as its first entry says.
[[nodiscard]] std::optional<Pan> originOf(const Pan& pan, std::span<const Entry> entries,
                                          Instant now);

struct History {
    std::vector<Moment> moments;  ///< by instant, then entry
    std::multimap<EntryId, ActionTaken> actions;
};

/// With everything that happened to the food before it was in this pan: the moments of the pan it
/// came out of, and of the one before that. What was thrown away of that pan stayed in it.
[[nodiscard]] History historyOf(const Pan& pan, std::span<const Entry> entries, Instant now);

}  // namespace cinder::safety
