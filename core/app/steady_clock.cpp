#include "app/steady_clock.h"

#include <algorithm>

namespace cinder::app {

namespace {

/// More than this between two comparisons is a jump; time services slew by far less. Our choice.
constexpr std::chrono::milliseconds kDrift{1000};

}  // namespace

SteadyClock::SteadyClock(const Clock& device)
    : device_(device), base_(device.wall() - device.running()) {}

Instant SteadyClock::wall() const {
    return wallOfNewEvent() + ahead_;
}

Instant SteadyClock::wallOfNewEvent() const {
    return base_ + device_.running();
}

Duration SteadyClock::goOnFrom(Instant written, Duration ahead) {
    ahead_ = std::max(ahead, written - wallOfNewEvent());
    return ahead_;
}

/// Two clocks of one device never agree to the millisecond: being ahead by a drift is no news.
Duration SteadyClock::jump() const {
    return ahead_ > kDrift ? jump_ - ahead_ : jump_;
}

void SteadyClock::compare() {
    const Duration away = device_.wall() - jump_ - wallOfNewEvent();
    if (abs(away) <= kDrift)
        base_ += away;
    else
        jump_ += away;
}

void SteadyClock::followWall() {
    base_ = device_.wall() - device_.running();
    jump_ = Duration{0};
    ahead_ = Duration{0};
}

}  // namespace cinder::app
