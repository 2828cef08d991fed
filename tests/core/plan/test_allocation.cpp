#include <atomic>
#include <catch2/catch.hpp>
#include <cstdlib>
#include <new>

#include "crowded_kitchen.h"
#include "invented_day.h"
#include "orchard.h"
#include "plan/bell_side.h"
#include "plan/search/evolution.h"
#include "plan/search/window_search.h"

namespace {

std::atomic<long> allocations{0};

void* counted(std::size_t size) {
    ++allocations;
    if (void* memory = std::malloc(size == 0 ? 1 : size)) return memory;
    throw std::bad_alloc();
}

}  // namespace

// Replaces the program's allocation, as [new.delete.single] of the C++ standard permits.
void* operator new(std::size_t size) {
    return counted(size);
}
void* operator new[](std::size_t size) {
    return counted(size);
}
void* operator new(std::size_t size, const std::nothrow_t&) noexcept {
    ++allocations;
    return std::malloc(size == 0 ? 1 : size);
}
void* operator new[](std::size_t size, const std::nothrow_t&) noexcept {
    ++allocations;
    return std::malloc(size == 0 ? 1 : size);
}
void operator delete(void* memory) noexcept {
    std::free(memory);
}
void operator delete[](void* memory) noexcept {
    std::free(memory);
}
void operator delete(void* memory, std::size_t) noexcept {
    std::free(memory);
}
void operator delete[](void* memory, std::size_t) noexcept {
    std::free(memory);
}

using namespace cinder;
using namespace cinder::plan;
using namespace cinder::plan::test;

namespace {

std::unique_ptr<search::Arena> groundOf(const Problem& problem) {
    search::Division division;
    for (const BellSide side : bellSides(problem)) {
        division.isMember.push_back(side != BellSide::After);
        division.isAbsent.push_back(side == BellSide::After);
    }
    division.fixed.tasks.resize(problem.tasks.size());
    auto arena = search::makeArena(problem, division);
    REQUIRE(arena.has_value());
    return std::make_unique<search::Arena>(std::move(*arena));
}

/// Allocations of the search over two thousand schedules once it has warmed up.
long allocationsOf(const Problem& problem) {
    const auto arena = groundOf(problem);
    search::Evolution evolution(problem, *arena, 1);
    evolution.run({300, 0, {}});
    const long before = allocations;
    evolution.run({2300, 0, {}});
    return allocations - before;
}

/// Allocations of a walk through windows from its first step on.
long allocationsOfWindows(const Problem& problem) {
    const auto arena = groundOf(problem);
    REQUIRE(arena->backward.isPlain);
    search::Evolution evolution(problem, *arena, 1);
    evolution.run({30, 0, {}});
    REQUIRE(evolution.best() != nullptr);
    search::Draft draft = *evolution.best();
    search::WindowSearch windows(*arena, 1);
    const long before = allocations;
    windows.run({500, 0, {}}, draft);
    return allocations - before;
}

}  // namespace

TEST_CASE("the search takes no memory while it breeds") {
    const long before = allocations;
    const auto probe = std::make_unique<int>(1);
    REQUIRE(allocations > before);  // they are counted
    CHECK(allocationsOf(smallLunch()) == 0);
    for (std::uint64_t seed = 1; seed <= 5; ++seed)
        CHECK(allocationsOf(inventDay(seed, 30, 3)) == 0);
}

TEST_CASE("the search takes no memory while it walks through windows") {
    CHECK(allocationsOfWindows(crowdedKitchen(1)) == 0);
}
