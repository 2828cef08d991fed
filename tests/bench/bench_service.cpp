// Prints how fast guests pass the line in the model, and what help buys for a line of eight stops.
// Asserts nothing.
//
//     bench_service [services]

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <string>

#include "service/what_helps.h"

namespace {

using namespace cinder;
using namespace cinder::service;
using Clock = std::chrono::steady_clock;
using std::chrono::seconds;

double milliseconds(Clock::time_point since) {
    return std::chrono::duration<double, std::milli>(Clock::now() - since).count();
}

Buffet eightStops(std::int32_t sides, std::int32_t servers) {
    Buffet buffet;
    buffet.sides = sides;
    for (std::uint32_t i = 0; i < 8; ++i) {
        Stop stop;
        stop.draw = i + 1;
        stop.everybody = Spread::between(seconds{2}, seconds{5}, seconds{9});
        if (i > 0) stop.room = 1;
        if (i == 6) {
            stop.servers = servers;
            stop.everybody = Spread::between(seconds{5}, seconds{8}, seconds{12});
        }
        buffet.stops.push_back(stop);
    }
    return buffet;
}

void speed(const Buffet& buffet, std::int32_t guests, int services, const char* words) {
    const auto begun = Clock::now();
    Duration sum{0};
    for (int i = 0; i < services; ++i)
        sum += playService(buffet, {guests, {}}, static_cast<std::uint64_t>(i)).length;
    const double spent = milliseconds(begun);
    std::printf("%-28s %4d guests %8.1f us a service %10.0f guests/s   mean %5.1f min\n", words,
                guests, 1000 * spent / services, 1000.0 * services * guests / spent,
                static_cast<double>(sum.count()) / services / 60000);
}

}  // namespace

int main(int argc, char** argv) {
    const int services = argc > 1 ? std::max(1, std::atoi(argv[1])) : 2000;
    speed(eightStops(1, 1), 100, services, "one side, one server");
    speed(eightStops(1, 2), 100, services, "one side, two servers");
    speed(eightStops(2, 1), 100, services, "two sides, one server");
    speed(eightStops(2, 2), 100, services, "two sides, two servers");
    speed(eightStops(2, 2), 300, services, "two sides, two servers");
    const auto begun = Clock::now();
    const Buffet buffet = eightStops(1, 1);
    const Flow now = flowOf(buffet, {100, {}});
    const auto gains = whatHelps(buffet, {100, {}}, now);
    std::printf("flow and %zu changes, %d services each   %.1f ms\n", gains.size(), kServices,
                milliseconds(begun));
    for (const Gain& gain : gains)
        std::printf("  change %d at stop %zu saves %.1f min\n", static_cast<int>(gain.change.what),
                    gain.change.stop, static_cast<double>(gain.saved.count()) / 60000);
    return 0;
}
