// Prints how fast guests pass the line in the model, what help buys for a line of eight stops, and
// how far the forecast of an empty pan is off over 500 simulated services.
// Asserts nothing.
//
//     bench_service [services]

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <string>

#include "service/pan_level.h"
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

/// Minutes off, from guests whose number, appetite and pace differ from the plan.
struct Misses {
    std::vector<double> minutes;
    void print(const char* words) {
        std::sort(minutes.begin(), minutes.end());
        double sum = 0;
        for (const double miss : minutes)
            sum += miss;
        std::printf("  %-46s median %4.1f  mean %4.1f  nine of ten within %4.1f min\n", words,
                    minutes[minutes.size() / 2], sum / static_cast<double>(minutes.size()),
                    minutes[minutes.size() * 9 / 10]);
    }
};

struct Tries {
    Misses plan, counter, tapped, twice;
    int inTime = 0;
    int all = 0;
};

double missed(Instant forecast, Instant truth) {
    return std::abs(static_cast<double>((forecast - truth).count())) / 60000;
}

/// One service: the pan of 40 portions is empty when the 40th portion is taken; what the forecast
/// says when half of the guests until then are through, knowing more and more.
void tryPan(std::uint64_t seed, Tries& tries) {
    Rng rng(seed, 77);
    const double appetite = 0.6 * (0.7 + 0.6 * rng.unit());
    const double tempo = 0.8 + 0.4 * rng.unit();
    Buffet buffet = eightStops(1, 1);
    for (Stop& stop : buffet.stops)
        stop.everybody = stop.everybody.times(tempo);
    const Service service = playService(buffet, {100, {}}, seed);
    const Instant bell{};
    std::vector<double> gone(service.guests.size());
    double sum = 0;
    std::size_t last = 0;
    for (std::size_t i = 0; i < gone.size(); ++i) {
        if (sum < 40) last = i;
        sum += rng.unit() < appetite ? 0.6 + 0.8 * rng.unit() : 0.0;
        gone[i] = sum;
    }
    if (sum < 40) return;
    const Instant truth = bell + service.guests[last].passed;
    const std::size_t half = last / 2;
    const Instant now = bell + service.guests[half].passed;
    std::vector<Count> counts{{0, bell}};
    for (std::size_t i = 9; i <= half; i += 10)
        counts.push_back({static_cast<std::int32_t>(i + 1), bell + service.guests[i].passed});
    const auto eye = [&](std::size_t guest) {
        return LevelTap{1 - gone[guest] / 40 + 0.1 * (rng.unit() - 0.5),
                        bell + service.guests[guest].passed};
    };
    const PacePlan line{100, bell, Duration{8400}, seconds{45}};
    const PanPlan pan{0.6, 40, 3, seconds{240}};
    const Pace plan(line, {}), counted(line, counts);
    const LevelTap early = eye(half / 2), late = eye(half);
    const auto note = [&](Misses& into, const PanOutlook& seen) {
        into.minutes.push_back(missed(seen.empty.value_or(counted.end().usual), truth));
    };
    note(tries.plan, lookAtPan(pan, {}, plan, now));
    note(tries.counter, lookAtPan(pan, {}, counted, now));
    note(tries.tapped, lookAtPan(pan, {{early}, {}}, counted, now));
    const PanOutlook best = lookAtPan(pan, {{early, late}, {}}, counted, now);
    note(tries.twice, best);
    ++tries.all;
    tries.inTime += best.startNextBy && *best.startNextBy + pan.lead <= truth ? 1 : 0;
}

void pans(std::uint64_t services) {
    Tries tries;
    for (std::uint64_t seed = 1; seed <= services; ++seed)
        tryPan(seed, tries);
    std::printf("pan-empty time at half of it, %d of %d services empty a pan\n", tries.all,
                static_cast<int>(services));
    tries.plan.print("plan alone");
    tries.counter.print("with the counter");
    tries.tapped.print("counter and a tap at a quarter");
    tries.twice.print("counter and taps at a quarter and at half");
    std::printf("  the next pan started when said stands there in time: %.1f %%\n",
                100.0 * tries.inTime / std::max(1, tries.all));
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
    pans(500);
    return 0;
}
