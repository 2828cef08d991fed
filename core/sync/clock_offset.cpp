#include "sync/clock_offset.h"

#include <algorithm>

namespace cinder::sync {

namespace {

/// Each of the four instants is cut to its millisecond.
constexpr Duration kCut{2};

/// Both are right to within half their way; where that cannot be, a clock was set in between.
bool contradict(const ClockOffset& a, const ClockOffset& b) {
    return std::chrono::abs(a.ahead - b.ahead) > (a.roundTrip + b.roundTrip) / 2 + kCut;
}

}  // namespace

ClockOffset offsetOf(const ClockExchange& exchange) {
    const Duration there = exchange.received - exchange.asked;
    const Duration back = exchange.answered - exchange.heard;
    return {(there + back) / 2,
            (exchange.heard - exchange.asked) - (exchange.answered - exchange.received)};
}

void ClockFilter::add(const ClockOffset& measured) {
    // Nothing comes back before it left: a clock was set on the way, and the offset is of neither.
    if (measured.roundTrip < -kCut) return;
    // RFC 5905, section 8: what is below nothing by rounding counts as the least there is.
    const ClockOffset taken{measured.ahead, std::max(measured.roundTrip, Duration{0})};
    const auto end = kept_.begin() + static_cast<std::ptrdiff_t>(std::min(count_, kKept));
    if (std::any_of(kept_.begin(), end, [&](const auto& k) { return contradict(k, taken); }))
        count_ = 0;
    kept_[count_ % kKept] = taken;
    ++count_;
}

std::optional<ClockOffset> ClockFilter::best() const {
    std::optional<ClockOffset> best;
    // From the newest back, so that of equals the newest counts: clocks drift.
    for (std::size_t back = 1; back <= std::min(count_, kKept); ++back) {
        const ClockOffset& kept = kept_[(count_ - back) % kKept];
        if (!best || kept.roundTrip < best->roundTrip) best = kept;
    }
    return best;
}

}  // namespace cinder::sync
