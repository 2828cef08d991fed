#pragma once

/// Small deterministic random numbers: the same seed gives the same stream on every device, which
/// the standard library's distributions do not promise. Not for secrets.

#include <cstdint>

namespace cinder {

/// PCG-XSH-RR 64/32. Source: M. E. O'Neill, "PCG: A Family of Simple Fast Space-Efficient
/// Statistically Good Algorithms for Random Number Generation", HMC-CS-2014-0905, section 6.3.1.
class Rng {
  public:
    explicit constexpr Rng(std::uint64_t seed, std::uint64_t stream = 0)
        : increment_((stream << 1U) | 1U) {
        next();
        state_ += seed;
        next();
    }

    constexpr std::uint32_t next() {
        const std::uint64_t old = state_;
        state_ = old * 6364136223846793005ULL + increment_;
        const auto shifted = static_cast<std::uint32_t>(((old >> 18U) ^ old) >> 27U);
        const auto turn = static_cast<std::uint32_t>(old >> 59U);
        return (shifted >> turn) | (shifted << ((32U - turn) & 31U));
    }
    /// Uniform in [0, bound). `bound` must be positive. Source of the method: D. Lemire, "Fast
    /// Random Integer Generation in an Interval", ACM TOMACS 29(1), 2019, without its rejection
    /// step: the bias is below bound / 2^32.
    constexpr std::uint32_t below(std::uint32_t bound) {
        return static_cast<std::uint32_t>((std::uint64_t{next()} * bound) >> 32U);
    }
    /// Uniform in [0, 1).
    constexpr double unit() { return static_cast<double>(next()) * 0x1p-32; }

  private:
    std::uint64_t state_ = 0;
    std::uint64_t increment_;
};

}  // namespace cinder
