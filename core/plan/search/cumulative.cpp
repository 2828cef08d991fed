#include "plan/search/cumulative.h"

#include <algorithm>

namespace cinder::plan::search {

Cumulative::Cumulative(const Lanes& lanes, Row<std::uint64_t> free, std::vector<Use> uses)
    : lanes_(lanes), uses_(std::move(uses)), most_(std::move(free)), free_(most_) {
    const std::int32_t perWord = 64 / lanes_.bits;
    byUnits_.resize(static_cast<std::size_t>(perWord));
    for (std::int32_t lane = 0; lane < perWord; ++lane) {
        auto& mine = byUnits_[static_cast<std::size_t>(lane)];
        for (std::size_t k = 0; k < uses_.size(); ++k)
            if (unitsOf(uses_[k].demand, lane) > 0) mine.push_back(k);
        // The largest first, so that few are enough to blame.
        std::stable_sort(mine.begin(), mine.end(), [&](std::size_t a, std::size_t b) {
            return unitsOf(uses_[a].demand, lane) > unitsOf(uses_[b].demand, lane);
        });
    }
    seen_.resize(uses_.size());
    fullerUntil_ = free_.size();
}

std::int64_t Cumulative::unitsOf(std::uint64_t word, std::int32_t lane) const {
    const std::uint64_t mask = (std::uint64_t{1} << (lanes_.bits - 1)) - 1;
    return static_cast<std::int64_t>(word >> (lane * lanes_.bits) & mask);
}

/// Takes note of the bounds of all uses: gives back where one does not surely lie any more, and
/// gathers those that surely lie where they did not.
void Cumulative::look(const BoundsStore& store) {
    grown_.clear();
    for (std::size_t k = 0; k < uses_.size(); ++k) {
        const Use& use = uses_[k];
        Part& seen = seen_[k];
        const Slot from = surelyFrom(store, use);
        const Slot until = surelyUntil(store, use);
        if (from == seen.from && until == seen.until) continue;
        seen.from = from;
        seen.until = until;
        seen.hasMoved = true;
        for (Slot t = seen.bookedFrom; t < std::min(seen.bookedUntil, from); ++t)
            free_[t] += use.demand;
        for (Slot t = std::max({seen.bookedFrom, from, until}); t < seen.bookedUntil; ++t)
            free_[t] += use.demand;
        seen.bookedFrom = std::max(seen.bookedFrom, from);
        seen.bookedUntil = std::min(seen.bookedUntil, until);
        if (seen.bookedFrom >= seen.bookedUntil) seen.bookedFrom = seen.bookedUntil = from;
        if (until > from && (seen.bookedFrom > from || seen.bookedUntil < until))
            grown_.push_back(k);
    }
}

Slot Cumulative::firstFull(std::uint64_t demand, Slot from, Slot until) const {
    while (from < until && fits(demand, from))
        ++from;
    return from;
}

/// Books what has come on top of a use. False, and nothing is booked, when it exceeds a capacity.
bool Cumulative::book(BoundsStore& store, const Use& use, Slot from, Slot until) {
    const Slot full = firstFull(use.demand, from, until);
    if (full < until) {
        Slot end = full + 1;
        while (end < until && !fits(use.demand, end))
            ++end;
        const Slot moment = full + (end - full) / 2;
        blame(store, moment, use);
        store.because({use.start, moment - use.offset - use.length + 1});
        store.because({use.start ^ 1, -(moment - use.offset)});
        return store.contradict();
    }
    for (Slot t = from; t < until; ++t)
        free_[t] -= use.demand;
    fullerFrom_ = std::min(fullerFrom_, from);
    fullerUntil_ = std::max(fullerUntil_, until);
    return true;
}

bool Cumulative::book(BoundsStore& store) {
    for (std::size_t g = 0; g < grown_.size(); ++g) {
        Part& seen = seen_[grown_[g]];
        const Use& use = uses_[grown_[g]];
        bool isFine = book(store, use, seen.from, seen.bookedFrom);
        if (isFine) seen.bookedFrom = seen.from;
        isFine = isFine && book(store, use, seen.bookedUntil, seen.until);
        if (isFine) seen.bookedUntil = seen.until;
        if (isFine) continue;
        for (; g < grown_.size(); ++g)
            seen_[grown_[g]].from = kNoSlot;  // to be looked at again
        return false;
    }
    return true;
}

/// Names stretches at `moment` that leave `use` no room there.
void Cumulative::blame(BoundsStore& store, Slot moment, const Use& use) {
    const std::int32_t perWord = 64 / lanes_.bits;
    fewest_.clear();
    bool isAny = false;
    for (std::int32_t lane = 0; lane < perWord; ++lane) {
        const std::int64_t own = unitsOf(use.demand, lane);
        if (own <= unitsOf(free_[moment], lane)) continue;
        std::int64_t room = unitsOf(most_[moment], lane) - own;
        chosen_.clear();
        for (const std::size_t k : byUnits_[static_cast<std::size_t>(lane)]) {
            if (room < 0) break;
            if (&uses_[k] == &use || seen_[k].bookedFrom > moment || seen_[k].bookedUntil <= moment)
                continue;
            chosen_.push_back(k);
            room -= unitsOf(uses_[k].demand, lane);
        }
        // Who is not needed once the others are there.
        std::erase_if(chosen_, [&](std::size_t k) {
            const std::int64_t units = unitsOf(uses_[k].demand, lane);
            if (room + units >= 0) return false;
            room += units;
            return true;
        });
        if (isAny && chosen_.size() >= fewest_.size()) continue;
        isAny = true;
        std::swap(fewest_, chosen_);
    }
    for (const std::size_t k : fewest_) {
        const Use& other = uses_[k];
        store.because({other.start, moment - other.offset - other.length + 1});
        store.because({other.start ^ 1, -(moment - other.offset)});
    }
}

bool Cumulative::pushLater(BoundsStore& store, const Use& use) {
    const Slot own = surelyFrom(store, use);
    for (;;) {
        const Slot begin = store.least(use.start) + use.offset;
        Slot moment = std::min(begin + use.length, own) - 1;
        while (moment >= begin && fits(use.demand, moment))
            --moment;
        if (moment < begin) return true;
        blame(store, moment, use);
        store.because({use.start, moment - use.offset - use.length + 1});
        if (!store.raise({use.start, moment - use.offset + 1})) return false;
    }
}

bool Cumulative::pushEarlier(BoundsStore& store, const Use& use) {
    const Slot own = surelyUntil(store, use);
    for (;;) {
        const Slot end = store.most(use.start) + use.offset + use.length;
        const Slot moment = firstFull(use.demand, std::max(end - use.length, own), end);
        if (moment >= end) return true;
        blame(store, moment, use);
        store.because({use.start ^ 1, -(moment - use.offset)});
        if (!store.raise({use.start ^ 1, -(moment - use.offset - use.length)})) return false;
    }
}

bool Cumulative::propagate(BoundsStore& store) {
    look(store);
    if (!book(store)) return false;
    for (std::size_t k = 0; k < uses_.size(); ++k) {
        const Use& use = uses_[k];
        if (store.isFixed(use.start)) continue;
        const bool isNear = store.least(use.start) + use.offset < fullerUntil_ &&
                            store.most(use.start) + use.offset + use.length > fullerFrom_;
        if (!isNear && !seen_[k].hasMoved) continue;
        if (!pushLater(store, use) || !pushEarlier(store, use)) return false;
    }
    for (Part& part : seen_)
        part.hasMoved = false;
    fullerFrom_ = free_.size();
    fullerUntil_ = 0;
    return true;
}

}  // namespace cinder::plan::search
