#include <catch2/catch.hpp>

#include "sync/clock_offset.h"

using namespace cinder;
using namespace cinder::sync;
using namespace std::chrono_literals;

namespace {

Instant noonAnd(Duration later) {
    return Instant{std::chrono::seconds{1'821'009'600}} + later;
}

}  // namespace

TEST_CASE("the offset and the way are those of RFC 5905, section 8") {
    // theta = ((T2 - T1) + (T3 - T4)) / 2, delta = (T4 - T1) - (T3 - T2). Worked by hand: their
    // clock is 1000 ms ahead, the question takes 30 ms, the answer leaves 5 ms later and takes 10:
    //     T1 = 0, T2 = 0 + 30 + 1000 = 1030, T3 = 1035, T4 = 30 + 5 + 10 = 45
    //     theta = ((1030 - 0) + (1035 - 45)) / 2 = (1030 + 990) / 2 = 1010
    //     delta = (45 - 0) - (1035 - 1030) = 40
    // so the offset is wrong by 10, which is within half of 40.
    const ClockOffset offset =
        offsetOf({noonAnd(0ms), noonAnd(1030ms), noonAnd(1035ms), noonAnd(45ms)});

    CHECK(offset == ClockOffset{1010ms, 40ms});
}

TEST_CASE("a clock behind ours shows as less than nothing") {
    // The same way with their clock an hour behind: T2 = 30 - 3600000, T3 = 35 - 3600000.
    const ClockOffset offset =
        offsetOf({noonAnd(0ms), noonAnd(30ms - 1h), noonAnd(35ms - 1h), noonAnd(65ms)});

    CHECK(offset == ClockOffset{-1h, 60ms});
}

TEST_CASE("instants at the end of what a message can say do not run over") {
    const Duration most{std::int64_t{1} << 53U};

    const ClockOffset offset =
        offsetOf({Instant{-most}, Instant{most}, Instant{most}, Instant{-most}});

    CHECK(offset.ahead == 2 * most);
}

TEST_CASE("before anything was measured there is no best") {
    CHECK_FALSE(ClockFilter{}.best());
}

TEST_CASE("the measurement with the shortest way counts, of equal ones the last") {
    ClockFilter filter;
    filter.add({20ms, 40ms});
    filter.add({12ms, 8ms});
    filter.add({30ms, 60ms});
    CHECK(filter.best() == ClockOffset{12ms, 8ms});

    filter.add({13ms, 8ms});
    CHECK(filter.best() == ClockOffset{13ms, 8ms});
}

TEST_CASE("a measurement counts for eight, and is then forgotten") {
    ClockFilter filter;
    filter.add({10ms, 2ms});
    for (int i = 0; i < 7; ++i)
        filter.add({15ms, 30ms});
    CHECK(filter.best() == ClockOffset{10ms, 2ms});

    filter.add({15ms, 30ms});
    CHECK(filter.best() == ClockOffset{15ms, 30ms});
}

TEST_CASE("when a clock was set, what was measured before counts no more") {
    ClockFilter filter;
    for (int i = 0; i < 8; ++i)
        filter.add({1h, 2ms});

    filter.add({10ms, 300ms});

    CHECK(filter.best() == ClockOffset{10ms, 300ms});
}

TEST_CASE("a slow answer that may well agree does not set aside a quick one") {
    ClockFilter filter;
    filter.add({0ms, 0ms});

    // Asked, and the device slept for an hour before it heard the answer.
    filter.add({-30min, 1h});

    CHECK(filter.best() == ClockOffset{0ms, 0ms});
}

TEST_CASE("a clock that was set back while the answer was on its way proves nothing") {
    ClockFilter filter;
    filter.add({5ms, 10ms});

    filter.add({30min, -1h});

    CHECK(filter.best() == ClockOffset{5ms, 10ms});
}

TEST_CASE("a way that rounding makes less than nothing counts as none") {
    ClockFilter filter;
    filter.add({5ms, -1ms});

    CHECK(filter.best() == ClockOffset{5ms, 0ms});
}
