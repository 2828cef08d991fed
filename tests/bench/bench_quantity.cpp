/// How long it takes to reckon an event anew after every touch of the guest count.

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <fstream>
#include <sstream>
#include <vector>

#include "../core/quantity/invented_event.h"
#include "event/json.h"
#include "quantity/build/reckon.h"

namespace {

using namespace cinder;

std::vector<double> timesOf(const std::vector<event::Event>& events) {
    std::vector<double> times;
    for (const auto& event : events) {
        const auto start = std::chrono::steady_clock::now();
        const auto all = quantity::reckon(event);
        const std::chrono::duration<double, std::milli> took =
            std::chrono::steady_clock::now() - start;
        if (all.dishes.size() != event.menu.size()) std::abort();
        times.push_back(took.count());
    }
    std::sort(times.begin(), times.end());
    return times;
}

void print(const char* what, const std::vector<double>& times) {
    std::printf("%s: %zu events, median %.2f ms, 95th percentile %.2f ms, longest %.2f ms\n", what,
                times.size(), times[times.size() / 2], times[times.size() * 95 / 100],
                times.back());
}

}  // namespace

int main() {
    std::vector<event::Event> invented;
    for (std::uint64_t seed = 1; seed <= 500; ++seed)
        invented.push_back(test::inventedEvent(seed));
    print("invented", timesOf(invented));

    const std::ifstream file(CINDER_SOURCE "/demo-data/orchard-harvest-lunch.json");
    std::stringstream text;
    text << file.rdbuf();
    const auto orchard = event::parse(text.str());
    if (!orchard) return 1;
    print("orchard lunch", timesOf(std::vector<event::Event>(200, *orchard)));
    return 0;
}
