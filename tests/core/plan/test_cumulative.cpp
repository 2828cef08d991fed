#include <catch2/catch.hpp>

#include <algorithm>
#include <array>

#include "base/rng.h"
#include "plan/search/cumulative.h"

namespace cinder::plan::search {

namespace {

constexpr std::int32_t kUses = 5;
constexpr Slot kDay = 9;
constexpr Lanes kLanes{1, 8, 0x8080808080808080ULL};

using Packing = std::array<Slot, kUses>;

std::uint64_t inLanes(std::uint32_t one, std::uint32_t two) {
    return one | std::uint64_t{two} << kLanes.bits;
}

/// Two capacities that differ from slot to slot, and stretches that want of them.
struct Kitchen {
    Row<std::uint64_t> free;
    std::vector<Use> uses;
};

Kitchen invented(Rng& rng) {
    Kitchen kitchen;
    for (Slot t = 0; t < kDay; ++t)
        kitchen.free.add(inLanes(1 + rng.below(3), 1 + rng.below(3)));
    for (Side start = 0; start < 2 * kUses; start += 2)
        kitchen.uses.push_back({start, static_cast<Slot>(rng.below(2)),
                                static_cast<Slot>(1 + rng.below(3)),
                                inLanes(rng.below(3), 1 + rng.below(2))});
    return kitchen;
}

Slot latestStart(const Use& use) {
    return kDay - use.offset - use.length;
}

bool isPacked(const Kitchen& kitchen, const Packing& packing) {
    Row<std::uint64_t> left = kitchen.free;
    for (std::int32_t k = 0; k < kUses; ++k) {
        const Use& use = kitchen.uses[static_cast<std::size_t>(k)];
        const Slot from = packing[static_cast<std::size_t>(k)] + use.offset;
        for (Slot t = from; t < from + use.length; ++t) {
            if (!kLanes.suffices(left[t], use.demand)) return false;
            left[t] -= use.demand;
        }
    }
    return true;
}

/// Every way there is, by trying all starts.
std::vector<Packing> allPackings(const Kitchen& kitchen) {
    std::vector<Packing> all;
    Packing packing{};
    for (;;) {
        if (isPacked(kitchen, packing)) all.push_back(packing);
        std::size_t k = 0;
        while (k < packing.size() && ++packing[k] > latestStart(kitchen.uses[k]))
            packing[k++] = 0;
        if (k == packing.size()) return all;
    }
}

bool keeps(const Packing& packing, Bound bound) {
    const Slot start = packing[static_cast<std::size_t>(bound.side >> 1)];
    return (bound.side & 1) == 0 ? start >= bound.value : -start >= bound.value;
}

bool isWithin(const Packing& packing, const BoundsStore& store) {
    for (Side side = 0; side < 2 * kUses; ++side)
        if (!keeps(packing, {side, store.least(side)})) return false;
    return true;
}

/// Whether a use finds room at `start` beside those that surely lie somewhere.
bool hasRoom(const Kitchen& kitchen, const BoundsStore& store, const Use& use, Slot start) {
    Row<std::uint64_t> left = kitchen.free;
    for (const Use& other : kitchen.uses) {
        if (other.start == use.start) continue;
        const Slot until = store.least(other.start) + other.offset + other.length;
        for (Slot t = store.most(other.start) + other.offset; t < until; ++t)
            left[t] -= other.demand;
    }
    for (Slot t = start + use.offset; t < start + use.offset + use.length; ++t)
        if (!kLanes.suffices(left[t], use.demand)) return false;
    return true;
}

/// Takes decisions and learns from contradictions until everything is fixed or refuted, and looks
/// after every step whether a packing was lost. Returns how many contradictions there were.
int walk(const Kitchen& kitchen, Rng& rng) {
    const std::vector<Packing> all = allPackings(kitchen);
    BoundsStore store;
    for (const Use& use : kitchen.uses)
        store.add(0, latestStart(use));
    Cumulative cumulative(kLanes, kitchen.free, kitchen.uses);
    std::vector<Bound> decisions;
    std::vector<Side> moved;
    const auto isLeft = [&](const Packing& packing) {
        return std::all_of(decisions.begin(), decisions.end(),
                           [&](Bound bound) { return keeps(packing, bound); });
    };
    const auto follow = [&] {
        for (bool isFirst = true;; isFirst = false) {
            moved.clear();
            if (!store.propagate(moved)) return false;
            if (moved.empty() && !isFirst) return true;
            if (!cumulative.propagate(store)) return false;
        }
    };
    for (int contradictions = 0;;) {
        if (!follow()) {
            ++contradictions;
            CHECK(std::none_of(all.begin(), all.end(), isLeft));
            if (!store.learn()) {
                CHECK(all.empty());
                return contradictions;
            }
            decisions.resize(static_cast<std::size_t>(store.depth()));
            continue;
        }
        CHECK(std::all_of(all.begin(), all.end(), [&](const Packing& packing) {
            return !isLeft(packing) || isWithin(packing, store);
        }));
        CHECK(std::all_of(kitchen.uses.begin(), kitchen.uses.end(), [&](const Use& use) {
            return hasRoom(kitchen, store, use, store.least(use.start)) &&
                   hasRoom(kitchen, store, use, store.most(use.start));
        }));
        std::vector<Side> open;
        for (Side side = 0; side < 2 * kUses; side += 2)
            if (!store.isFixed(side)) open.push_back(side);
        if (open.empty()) {
            Packing packing{};
            for (std::size_t k = 0; k < packing.size(); ++k)
                packing[k] = store.least(kitchen.uses[k].start);
            CHECK(isPacked(kitchen, packing));
            return contradictions;
        }
        const Side side = open[rng.below(static_cast<std::uint32_t>(open.size()))];
        const Slot low = store.least(side);
        const Slot split =
            low + static_cast<Slot>(rng.below(static_cast<std::uint32_t>(store.most(side) - low)));
        decisions.push_back(rng.below(2) == 0 ? Bound{side ^ 1, -split} : Bound{side, split + 1});
        store.decide(decisions.back());
    }
}

}  // namespace

TEST_CASE("capacities followed from decision to decision never lose a way to pack") {
    Rng rng(1);
    int contradictions = 0;
    for (int n = 0; n < 2000; ++n)
        contradictions += walk(invented(rng), rng);
    CHECK(contradictions > 100);  // else nothing was tried
}

}  // namespace cinder::plan::search
