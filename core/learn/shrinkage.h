#pragma once

/// What a few events are worth. One event says little, so its figure is drawn towards what was
/// believed before ("shrinkage"), less with every event that supports it. The belief before is
/// stated, never hidden in the arithmetic.

#include <cstdint>
#include <span>

namespace cinder::learn {

/// Normal belief about a mean, and how far a single event lies from that mean.
struct Prior {
    double mean = 0;
    double deviation = 1;  ///< of the belief
    double spread = 1;     ///< of one event around the mean, taken as known
    friend bool operator==(const Prior&, const Prior&) = default;
};

/// What one event showed.
struct Observed {
    double value = 0;
    /// Somebody marked it: rain, a phone call, a fallen tent. It does not count.
    bool isInterrupted = false;
    friend bool operator==(const Observed&, const Observed&) = default;
};

struct Learned {
    double mean = 0;
    double deviation = 0;
    std::int32_t events = 0;       ///< that support it
    std::int32_t interrupted = 0;  ///< that were left out
    friend bool operator==(const Learned&, const Learned&) = default;
};

/// Precision-weighted: 1/d'^2 = 1/d^2 + n/s^2, mean' = (mean/d^2 + sum/s^2) d'^2. Deviation and
/// spread must be positive. Any order of events gives the same.
/// Source: normal mean with known variance; e.g. W. M. Bolstad, Introduction to Bayesian
/// Statistics, chapter 11, from memory.
[[nodiscard]] Learned learn(const Prior& prior, std::span<const Observed> events);

/// Whether `value` lies so far from what was known that something may have come between: more than
/// three deviations of a single event. A person decides; nothing is left out by itself.
[[nodiscard]] bool isSuspect(const Prior& prior, double value);

}  // namespace cinder::learn
