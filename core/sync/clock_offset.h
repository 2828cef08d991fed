#pragma once

/// How far the clock of another device is ahead of ours.

#include <array>
#include <cstddef>
#include <optional>

#include "base/time.h"

namespace cinder::sync {

/// Question and answer: when it left here and came there, when the answer left there and came here;
/// each by the clock of the device it names.
struct ClockExchange {
    Instant asked;     ///< here
    Instant received;  ///< there
    Instant answered;  ///< there
    Instant heard;     ///< here
};

struct ClockOffset {
    Duration ahead{0};      ///< theirs shows so much more than ours
    Duration roundTrip{0};  ///< the offset is right to within half of it
    friend bool operator==(const ClockOffset&, const ClockOffset&) = default;
};

/// Source: RFC 5905 (Network Time Protocol version 4), section 8: theta and delta.
[[nodiscard]] ClockOffset offsetOf(const ClockExchange& exchange);

/// Of several measurements the one with the shortest way counts (RFC 5905, section 10, the clock
/// filter). Keeps the last eight, as there. A measurement that an earlier one rules out shows that
/// a clock was set since: what was measured before is forgotten. One on whose way a clock was set
/// back says nothing and is passed over.
class ClockFilter {
  public:
    void add(const ClockOffset& measured);
    [[nodiscard]] std::optional<ClockOffset> best() const;

  private:
    static constexpr std::size_t kKept = 8;
    std::array<ClockOffset, kKept> kept_{};
    std::size_t count_ = 0;
};

}  // namespace cinder::sync
