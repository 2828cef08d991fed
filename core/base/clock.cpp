#include "base/clock.h"

#include <ctime>

namespace cinder {

Instant SystemClock::wall() const {
    return std::chrono::floor<Duration>(std::chrono::system_clock::now());
}

Duration SystemClock::running() const {
#ifdef CLOCK_BOOTTIME
    // steady_clock stops while the device sleeps; this one does not (Linux, Android).
    timespec now{};
    clock_gettime(CLOCK_BOOTTIME, &now);
    return std::chrono::duration_cast<Duration>(std::chrono::seconds{now.tv_sec} +
                                                std::chrono::nanoseconds{now.tv_nsec});
#else
    return std::chrono::duration_cast<Duration>(
        std::chrono::steady_clock::now().time_since_epoch());
#endif
}

}  // namespace cinder
