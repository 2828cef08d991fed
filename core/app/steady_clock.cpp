#include "app/steady_clock.h"

namespace cinder::app {

namespace {

/// More than this between two comparisons is a jump; time services slew by far less. Our choice.
constexpr std::chrono::milliseconds kDrift{1000};

}  // namespace

SteadyClock::SteadyClock(const Clock& device)
    : device_(device), base_(device.wall() - device.running()) {}

Instant SteadyClock::wall() const {
    return base_ + device_.running();
}

void SteadyClock::compare() {
    const Duration away = device_.wall() - jump_ - wall();
    if (abs(away) <= kDrift)
        base_ += away;
    else
        jump_ += away;
}

void SteadyClock::followWall() {
    base_ = device_.wall() - device_.running();
    jump_ = Duration{0};
}

}  // namespace cinder::app
