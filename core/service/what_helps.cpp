#include "service/what_helps.h"

#include <algorithm>

namespace cinder::service {

namespace {

using What = Change::What;

std::vector<Change> changesOf(const Buffet& buffet) {
    std::vector<Change> changes;
    const std::vector<std::size_t> pools = poolsOf(buffet);
    if (buffet.sides < 2) changes.push_back({What::SecondSide, 0});
    for (std::size_t stop = 0; stop < buffet.stops.size(); ++stop) {
        if (buffet.stops[stop].servers == 0) continue;
        const bool isOwnPool = pools[stop] == stop;
        if (isOwnPool) changes.push_back({What::SecondServer, stop});
        if (isOwnPool && buffet.sides < 2) changes.push_back({What::SideAndServer, stop});
        // The last stop is the cutlery, so the place before it is the end already.
        if (stop + 2 < buffet.stops.size()) changes.push_back({What::MoveToTheEnd, stop});
        if (buffet.stops[stop].room) changes.push_back({What::TableOfItsOwn, stop});
    }
    return changes;
}

void addServer(Buffet& buffet, std::size_t stop) {
    const std::vector<std::size_t> pools = poolsOf(buffet);
    for (std::size_t other = 0; other < pools.size(); ++other)
        if (pools[other] == pools[stop]) ++buffet.stops[other].servers;
}

}  // namespace

Buffet withChange(Buffet buffet, const Change& change) {
    auto& stops = buffet.stops;
    const auto at = static_cast<std::ptrdiff_t>(change.stop);
    switch (change.what) {
        case What::SecondServer:
            addServer(buffet, change.stop);
            break;
        case What::SecondSide:
            buffet.sides = 2;
            break;
        case What::SideAndServer:
            buffet.sides = 2;
            addServer(buffet, change.stop);
            break;
        case What::MoveToTheEnd:
            std::rotate(stops.begin() + at, stops.begin() + at + 1, stops.end() - 1);
            break;
        case What::TableOfItsOwn:
            stops[change.stop].room.reset();
            break;
    }
    return buffet;
}

std::vector<Gain> whatHelps(const Buffet& buffet, const Crowd& crowd, const Flow& now,
                            std::uint64_t seed, std::int32_t services) {
    std::vector<Gain> gains;
    if (crowd.guests <= 0) return gains;
    for (const Change& change : changesOf(buffet)) {
        Gain gain;
        gain.change = change;
        gain.flow = flowOf(withChange(buffet, change), crowd, seed, services);
        gain.saved = now.usual - gain.flow.usual;
        gain.waitSaved = now.longestWait - gain.flow.longestWait;
        gains.push_back(std::move(gain));
    }
    std::stable_sort(gains.begin(), gains.end(),
                     [](const Gain& a, const Gain& b) { return a.saved > b.saved; });
    return gains;
}

}  // namespace cinder::service
