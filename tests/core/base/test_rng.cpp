#include <catch2/catch.hpp>

#include "base/rng.h"

using cinder::Rng;

TEST_CASE("the generator gives the published stream") {
    // Source: the demonstration output of the PCG minimal C library for seed 42, stream 54, as in
    // its documentation at pcg-random.org (from memory).
    Rng rng(42, 54);

    CHECK(rng.next() == 0xa15c02b7U);
    CHECK(rng.next() == 0x7b47f409U);
    CHECK(rng.next() == 0xba1d3330U);
    CHECK(rng.next() == 0x83d2f293U);
}

TEST_CASE("a number below a bound is below it, and every one comes up") {
    Rng rng(7);
    int seen[6] = {};

    for (int i = 0; i < 6000; ++i)
        ++seen[rng.below(6)];

    for (const int count : seen)
        CHECK((count > 850 && count < 1150));
}
