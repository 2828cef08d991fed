#include "plan/search/cumulative.h"

#include <algorithm>

namespace cinder::plan::search {

Cumulative::Cumulative(std::int64_t capacity, std::vector<Use> uses, std::vector<FixedLoad> loads)
    : capacity_(capacity), uses_(std::move(uses)), loads_(std::move(loads)) {
    // The largest first, so that few are enough to blame.
    std::stable_sort(uses_.begin(), uses_.end(),
                     [](const Use& a, const Use& b) { return a.units > b.units; });
    seen_.resize(uses_.size());
}

/// Takes note of the bounds of all uses. True when the profile is not what it was.
bool Cumulative::look(const BoundsStore& store) {
    bool isOther = false;
    for (std::size_t k = 0; k < uses_.size(); ++k) {
        const Use& use = uses_[k];
        const Slot from = surelyFrom(store, use);
        const Slot until = surelyUntil(store, use);
        Part& seen = seen_[k];
        if (from == seen.from && until == seen.until) continue;
        isOther = isOther || from < until || seen.from < seen.until;
        seen = {from, until, true};
    }
    return isOther;
}

void Cumulative::makeProfile() {
    changes_.clear();
    for (const FixedLoad& load : loads_) {
        changes_.push_back({load.begin, load.units});
        changes_.push_back({load.end, -load.units});
    }
    for (std::size_t k = 0; k < uses_.size(); ++k) {
        if (seen_[k].from >= seen_[k].until) continue;
        changes_.push_back({seen_[k].from, uses_[k].units});
        changes_.push_back({seen_[k].until, -uses_[k].units});
    }
    std::sort(changes_.begin(), changes_.end(),
              [](const Change& a, const Change& b) { return a.at < b.at; });
    profile_.clear();
    most_ = 0;
    std::int64_t height = 0;
    for (std::size_t k = 0; k < changes_.size();) {
        const Slot at = changes_[k].at;
        while (k < changes_.size() && changes_[k].at == at)
            height += changes_[k++].units;
        if (k == changes_.size() || height == 0) continue;
        profile_.push_back({at, changes_[k].at, height});
        most_ = std::max(most_, height);
    }
}

std::int64_t Cumulative::loadAt(Slot moment) const {
    std::int64_t units = 0;
    for (const FixedLoad& load : loads_)
        if (load.begin <= moment && moment < load.end) units += load.units;
    return units;
}

/// Names stretches at `moment` that together take more than `excess`.
void Cumulative::blame(BoundsStore& store, Slot moment, std::int64_t excess, const Use* except) {
    excess -= loadAt(moment);
    chosen_.clear();
    for (std::size_t k = 0; k < uses_.size() && excess >= 0; ++k) {
        const Use& use = uses_[k];
        if (&use == except || surelyFrom(store, use) > moment || surelyUntil(store, use) <= moment)
            continue;
        chosen_.push_back(k);
        excess -= use.units;
    }
    for (const std::size_t k : chosen_) {
        const Use& use = uses_[k];
        if (excess + use.units < 0) {  // enough without it
            excess += use.units;
            continue;
        }
        store.because({use.start, moment - use.offset - use.length + 1});
        store.because({use.start ^ 1, -(moment - use.offset)});
    }
}

bool Cumulative::pushLater(BoundsStore& store, const Use& use) {
    const Slot own = surelyFrom(store, use);
    const Slot first = store.least(use.start) + use.offset;
    auto step = std::partition_point(profile_.begin(), profile_.end(),
                                     [&](const Step& other) { return other.end <= first; });
    for (; step != profile_.end(); ++step) {
        const Slot begin = store.least(use.start) + use.offset;
        if (step->end <= begin) continue;
        if (step->begin >= begin + use.length || step->begin >= own) break;
        if (step->height + use.units <= capacity_) continue;
        // In stretches no longer than the use itself, so that each conclusion is a simple one.
        const Slot end = std::min(step->end, own);
        for (Slot from = begin; from < end;) {
            const Slot moment = std::min(end, from + use.length) - 1;
            blame(store, moment, capacity_ - use.units, &use);
            store.because({use.start, moment - use.offset - use.length + 1});
            if (!store.raise({use.start, moment - use.offset + 1})) return false;
            from = store.least(use.start) + use.offset;
        }
    }
    return true;
}

bool Cumulative::pushEarlier(BoundsStore& store, const Use& use) {
    const Slot own = surelyUntil(store, use);
    const Slot last = store.most(use.start) + use.offset + use.length;
    auto step = std::make_reverse_iterator(std::partition_point(
        profile_.begin(), profile_.end(), [&](const Step& other) { return other.begin < last; }));
    for (; step != profile_.rend(); ++step) {
        const Slot end = store.most(use.start) + use.offset + use.length;
        if (step->begin >= end) continue;
        if (step->end <= end - use.length || step->end <= own) break;
        if (step->height + use.units <= capacity_) continue;
        const Slot begin = std::max(step->begin, own);
        for (Slot until = end; until > begin;) {
            const Slot moment = std::max(begin, until - use.length);
            blame(store, moment, capacity_ - use.units, &use);
            store.because({use.start ^ 1, -(moment - use.offset)});
            if (!store.raise({use.start ^ 1, -(moment - use.offset - use.length)})) return false;
            until = store.most(use.start) + use.offset + use.length;
        }
    }
    return true;
}

bool Cumulative::propagate(BoundsStore& store) {
    const bool isOther = look(store) || !isKnown_;
    if (isOther) makeProfile();
    const bool isAllToDo = isOther || !isSettled_;
    isKnown_ = true;
    isSettled_ = false;
    for (const Step& step : profile_)
        if (step.height > capacity_) {
            blame(store, step.begin + (step.end - step.begin) / 2, capacity_, nullptr);
            return store.contradict();
        }
    for (std::size_t k = 0; k < uses_.size(); ++k) {
        const Use& use = uses_[k];
        if (most_ + use.units <= capacity_) break;  // the others are smaller still
        if (!isAllToDo && !seen_[k].hasMoved) continue;
        if (store.isFixed(use.start)) continue;
        if (!pushLater(store, use) || !pushEarlier(store, use)) return false;
    }
    for (Part& part : seen_)
        part.hasMoved = false;
    isSettled_ = true;
    return true;
}

}  // namespace cinder::plan::search
