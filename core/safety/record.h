#pragma once

/// The record of the day: every entry that was made, in order, and what follows from all of them
/// together.

#include <optional>
#include <string>
#include <vector>

#include "safety/facts.h"
#include "safety/limits.h"

namespace cinder::safety {

/// An undo within this time of the entry takes it back as a slip of the finger. Later the entry
/// stands, and only a correction can be put beside it. Our choice: four times as long as undo is
/// offered.
inline constexpr Duration kSlip = std::chrono::minutes{1};

/// Where one thing asked before the fire stands.
struct FireAnswer {
    FireItem item = FireItem::Extinguisher;
    std::optional<Instant> ready;
    std::optional<Instant> skipped;  ///< passed over; what is made good later is `ready` too
    std::string reason;
    [[nodiscard]] bool isAnswered() const { return ready || skipped; }
    friend bool operator==(const FireAnswer&, const FireAnswer&) = default;
};

/// Extinguisher, clearance, open air, in this order.
[[nodiscard]] std::vector<FireAnswer> fireAnswers(const std::vector<Entry>& entries, Instant now);

/// The limits in force at `now`: the published ones with the last local rules that can be taken.
[[nodiscard]] Limits limitsIn(const std::vector<Entry>& entries, Instant now);

/// The last test at the ice point of each thermometer that was used or tested, by id.
struct ThermometerState {
    ThermometerId id;
    std::optional<ThermometerTested> lastTest;
    friend bool operator==(const ThermometerState&, const ThermometerState&) = default;
};
[[nodiscard]] std::vector<ThermometerState> thermometersIn(const std::vector<Entry>& entries,
                                                           Instant now);

/// The last signature, if nothing was written after it.
[[nodiscard]] std::optional<RecordSigned> signatureOf(const std::vector<Entry>& entries);

}  // namespace cinder::safety
