#include <catch2/catch.hpp>

#include "journal/hybrid_clock.h"
#include "samples.h"

using namespace samples;

TEST_CASE("stamps follow the wall clock as long as it moves on") {
    HybridClock clock;

    CHECK(clock.tick(at(1)) == Stamp{at(1), 0});
    CHECK(clock.tick(at(2)) == Stamp{at(2), 0});
}

TEST_CASE("stamps go on when the wall clock stands still or is set back") {
    HybridClock clock;
    const Stamp first = clock.tick(at(10));

    const Stamp same = clock.tick(at(10));
    const Stamp back = clock.tick(at(3));

    CHECK(first < same);
    CHECK(same < back);
    CHECK(back.wall == at(10));
}

TEST_CASE("an operation made after a stranger's was seen comes after it") {
    HybridClock clock;
    clock.witness({at(100), 5});

    CHECK(Stamp{at(100), 5} < clock.tick(at(1)));
}

TEST_CASE("operations of one instant are ordered by device, then by sequence") {
    Operation a = operation(2, Undone{}, "phone");
    Operation b = operation(1, Undone{}, "tablet");
    b.stamp = a.stamp;

    CHECK(comesBefore(a, b));
    CHECK_FALSE(comesBefore(b, a));
}
