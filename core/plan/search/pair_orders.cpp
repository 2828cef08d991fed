#include "plan/search/pair_orders.h"

#include <algorithm>

namespace cinder::plan::search {

void PairOrders::add(const Pair& pair) {
    auto& mine = ofNumber_[static_cast<std::size_t>(pair.a >> 1)];
    if (std::find(mine.begin(), mine.end(), pair) != mine.end()) return;
    mine.push_back(pair);
    ofNumber_[static_cast<std::size_t>(pair.b >> 1)].push_back(
        {pair.b, pair.a, pair.baLag, pair.abLag});
}

bool PairOrders::propagate(BoundsStore& store, std::int32_t number) const {
    for (const Pair& pair : ofNumber_[static_cast<std::size_t>(number)]) {
        const bool canABeFirst = store.least(pair.a) + pair.abLag <= store.most(pair.b);
        const bool canBBeFirst = store.least(pair.b) + pair.baLag <= store.most(pair.a);
        if (canABeFirst && canBBeFirst) continue;
        if (!(canABeFirst ? order(store, pair.a, pair.b, pair.abLag, pair.baLag)
                          : order(store, pair.b, pair.a, pair.baLag, pair.abLag)))
            return false;
    }
    return true;
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
