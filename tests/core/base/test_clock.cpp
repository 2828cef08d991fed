#include <catch2/catch.hpp>

#include "base/clock.h"

using namespace cinder;
using namespace std::chrono_literals;

TEST_CASE("a rehearsal clock shows its anchor's moment and runs at its speed") {
    SimulatedClock real(Instant{1000s});
    const RehearsalClock clock(real,
                               {.real = Instant{1000s}, .shown = Instant{50000s}, .speed = 60});

    real.advance(10s);

    CHECK(clock.wall() == Instant{50600s});
}

TEST_CASE("a rehearsal opened again later is where the real time says it should be") {
    SimulatedClock real(Instant{1000s});
    const RehearsalClock::Anchor anchor{Instant{1000s}, Instant{50000s}, 2};

    real.advance(1h);

    CHECK(RehearsalClock(real, anchor).wall() == Instant{50000s} + 2h);
}

TEST_CASE("setting the wall clock does not move the running time") {
    SimulatedClock clock(Instant{1000s});

    clock.setWall(Instant{5s});

    CHECK(clock.running() == 0ms);
}

TEST_CASE("the device's running time never goes back") {
    const SystemClock clock;
    const auto first = clock.running();

    CHECK(clock.running() >= first);
}
