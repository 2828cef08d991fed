#pragma once

/// How long one guest takes, and how much that differs from guest to guest. A small sampler of its
/// own on base/rng.h, so that the same seed gives the same service on every device.

#include "base/rng.h"
#include "base/time.h"

namespace cinder::service {

class Spread {
  public:
    constexpr Spread() = default;
    /// Always the same.
    static constexpr Spread exactly(Duration length) { return {Shape::Exact, length, length, {}}; }
    /// Memoryless with this mean; the textbook's M.
    static constexpr Spread exponential(Duration mean) {
        return {Shape::Exponential, mean, mean, {}};
    }
    /// Triangular between the shortest and the longest, with its peak at the usual. Values out of
    /// order are taken as the nearest that are in order.
    static constexpr Spread between(Duration low, Duration usual, Duration high) {
        if (usual < low) usual = low;
        if (high < usual) high = usual;
        return {Shape::Triangle, low, usual, high};
    }

    /// Triangle: (low + usual + high) / 3. Source: any handbook of distributions, from memory.
    [[nodiscard]] Duration mean() const;
    /// By inversion of the distribution function: one number of `rng` for one length.
    [[nodiscard]] Duration draw(Rng& rng) const;
    /// The same for a slower or quicker crowd: every length times `factor`, which is not negative.
    [[nodiscard]] Spread times(double factor) const;

    friend bool operator==(const Spread&, const Spread&) = default;

  private:
    enum class Shape : std::uint8_t { Exact, Exponential, Triangle };
    constexpr Spread(Shape shape, Duration low, Duration usual, Duration high)
        : shape_(shape), low_(low), usual_(usual), high_(high) {}

    Shape shape_ = Shape::Exact;
    Duration low_{0};
    Duration usual_{0};
    Duration high_{0};
};

}  // namespace cinder::service
