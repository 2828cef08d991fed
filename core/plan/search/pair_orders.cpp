#include "plan/search/pair_orders.h"

#include <algorithm>

namespace cinder::plan::search {

void PairOrders::add(Side a, Side b, Slot abLag, Slot baLag) {
    const auto most = static_cast<std::size_t>(std::max(a, b) >> 1);
    if (ofNumber_.size() <= most) ofNumber_.resize(most + 1);
    for (const Side side : {a, b})
        ofNumber_[static_cast<std::size_t>(side >> 1)].push_back(pairs_.size());
    pairs_.push_back({a, b, abLag, baLag});
}

bool PairOrders::propagate(BoundsStore& store, Side moved) const {
    const auto number = static_cast<std::size_t>(moved >> 1);
    if (number >= ofNumber_.size()) return true;
    return std::all_of(ofNumber_[number].begin(), ofNumber_[number].end(),
                       [&](std::size_t k) { return look(store, pairs_[k]); });
}

bool PairOrders::look(BoundsStore& store, const Pair& pair) {
    const bool canABeFirst = store.least(pair.a) + pair.abLag <= store.most(pair.b);
    const bool canBBeFirst = store.least(pair.b) + pair.baLag <= store.most(pair.a);
    if (canABeFirst && canBBeFirst) return true;
    return canABeFirst ? order(store, pair.a, pair.b, pair.abLag, pair.baLag)
                       : order(store, pair.b, pair.a, pair.baLag, pair.abLag);
}

bool PairOrders::order(BoundsStore& store, Side first, Side second, Slot lag, Slot lagBack) {
    const auto becauseOfOrder = [&] {
        const Slot least = store.least(second);
        store.because({second, least});
        store.because({first ^ 1, -(least + lagBack - 1)});
    };
    if (store.least(first) + lag > store.least(second)) {
        becauseOfOrder();
        store.because({first, store.least(first)});
        if (!store.raise({second, store.least(first) + lag})) return false;
    }
    if (store.most(second) - lag < store.most(first)) {
        becauseOfOrder();
        store.because({second ^ 1, -store.most(second)});
        if (!store.raise({first ^ 1, -(store.most(second) - lag)})) return false;
    }
    return true;
}

}  // namespace cinder::plan::search
