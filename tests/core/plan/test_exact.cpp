#include <catch2/catch.hpp>

#include "orchard.h"
#include "plan/search/exact.h"

namespace cinder::plan::search {

namespace {

/// Four trays that take the oven for ten minutes each, two at a time.
Arena twoByTwo() {
    Problem problem = test::emptyKitchen(0);
    problem.resources = {{ResourceId("oven"), LocalText("Oven"), 2, {}}};
    Division division;
    for (int i = 0; i < 4; ++i) {
        problem.tasks.push_back(test::standing(std::to_string(i), test::minutes(10)));
        problem.tasks.back().uses = {{0, 1}};
    }
    division.isMember.assign(problem.tasks.size(), true);
    division.fixed.tasks.resize(problem.tasks.size());
    auto arena = makeArena(problem, division);
    REQUIRE(arena.has_value());
    return std::move(*arena);
}

constexpr Slot kShortest = 40;  // half-minutes: one pair after the other

}  // namespace

TEST_CASE("the exact arm finds the shortest schedule and proves it so") {
    const Arena arena = twoByTwo();
    const ExactResult result = solveExactly(arena.backward, {});
    CHECK(result.isComplete);
    CHECK(result.least == kShortest);
    CHECK(result.bound == kShortest);
}

TEST_CASE("a refutation that fails ends at the first schedule and claims nothing") {
    const Arena arena = twoByTwo();
    ExactLimits limits;
    limits.wantsRefutation = true;
    limits.upper = 2 * kShortest;
    const ExactResult possible = solveExactly(arena.backward, limits);
    CHECK_FALSE(possible.isComplete);
    CHECK(possible.start.size() == arena.backward.size());
    CHECK(possible.bound <= kShortest);
    limits.upper = kShortest;
    const ExactResult impossible = solveExactly(arena.backward, limits);
    CHECK(impossible.isComplete);
    CHECK(impossible.start.size() == 0);
}

}  // namespace cinder::plan::search
