// The model against the formulas of the textbooks.

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>

#include "service/flow.h"

using namespace cinder;
using namespace cinder::service;
using std::chrono::seconds;

namespace {

Stop everybodyTakes(Spread time) {
    Stop stop;
    stop.everybody = time;
    return stop;
}

double seconds_(Duration length) {
    return static_cast<double>(length.count()) / 1000.0;
}

/// Mean wait in the queue of a stop that guests reach one by one at random, after a warm-up.
double meanWait(Spread time, Duration gap, std::uint64_t seed, std::int32_t servers = 0) {
    Buffet buffet{{everybodyTakes(time)}, 1};
    buffet.stops[0].servers = servers;
    Crowd crowd;
    crowd.guests = 200'000;
    crowd.release.how = Release::How::OneByOne;
    crowd.release.every = gap;
    const Service service = playService(buffet, crowd, seed);
    double sum = 0;
    const std::size_t warm = 2'000;
    for (std::size_t i = warm; i < service.guests.size(); ++i)
        sum += seconds_(service.guests[i].started - service.guests[i].joined);
    return sum / static_cast<double>(service.guests.size() - warm);
}

}  // namespace

// Source: deterministic flow line, makespan = sum of the stage times + (n - 1) * the slowest stage.
// E.g. M. L. Pinedo, Scheduling: Theory, Algorithms, and Systems, proportionate flow shop; from
// memory.
TEST_CASE(
    "A line without chance takes the sum of its stops and the slowest for each further guest") {
    const std::vector<std::vector<int>> lines{
        {3, 5, 8, 4}, {8, 5, 3}, {5, 5, 5}, {7}, {1, 9, 2, 9}};
    for (const auto& times : lines)
        for (const std::int32_t guests : {1, 2, 17, 100})
            for (const bool isRoomShort : {false, true}) {
                Buffet buffet;
                int sum = 0;
                for (const int time : times) {
                    buffet.stops.push_back(everybodyTakes(Spread::exactly(seconds{time})));
                    if (isRoomShort) buffet.stops.back().room = 0;
                    sum += time;
                }
                const int slowest = *std::max_element(times.begin(), times.end());
                const Service service = playService(buffet, {guests, {}}, 1);
                CAPTURE(guests, isRoomShort, times.size());
                CHECK(service.length == seconds{sum + (guests - 1) * slowest});
                CHECK(service.guests.back().passed == service.length);
            }
}

// Source: M/M/1, mean wait in the queue Wq = rho / (mu - lambda). E.g. D. Gross, C. M. Harris,
// Fundamentals of Queueing Theory, chapter 2; from memory.
TEST_CASE("Guests who come at random to a stop of random length wait as M/M/1 says") {
    for (const double rho : {0.5, 0.7, 0.8}) {
        const double mean = 10;
        const double mu = 1 / mean;
        const double lambda = rho * mu;
        const Duration gap{static_cast<Duration::rep>(std::llround(1000 / lambda))};
        double wait = 0;
        for (std::uint64_t seed = 1; seed <= 5; ++seed)
            wait += meanWait(Spread::exponential(seconds{10}), gap, seed) / 5;
        CAPTURE(rho);
        CHECK(wait == Approx(rho / (mu - lambda)).epsilon(0.03));
    }
}

// Source: M/D/1, half the wait of M/M/1, by the formula of Pollaczek and Khinchine; from memory.
TEST_CASE("When every guest takes equally long they wait half as long, as M/D/1 says") {
    for (const double rho : {0.5, 0.8}) {
        const double mean = 10;
        const double mu = 1 / mean;
        const double lambda = rho * mu;
        const Duration gap{static_cast<Duration::rep>(std::llround(1000 / lambda))};
        double wait = 0;
        for (std::uint64_t seed = 1; seed <= 5; ++seed)
            wait += meanWait(Spread::exactly(seconds{10}), gap, seed) / 5;
        CAPTURE(rho);
        CHECK(wait == Approx(rho / (mu - lambda) / 2).epsilon(0.03));
    }
}

// Source: M/M/2, Wq = rho^2 / (mu (1 - rho^2)) with rho = lambda / (2 mu), from the Erlang C
// formula; from memory.
TEST_CASE("Two servers at one stop wait as M/M/2 says") {
    const double rho = 0.75;
    const double mu = 0.1;
    const Duration gap{static_cast<Duration::rep>(std::llround(1000 / (2 * mu * rho)))};
    double wait = 0;
    for (std::uint64_t seed = 1; seed <= 5; ++seed)
        wait += meanWait(Spread::exponential(seconds{10}), gap, seed, 2) / 5;
    CHECK(wait == Approx(rho * rho / (mu * (1 - rho * rho))).epsilon(0.03));
}

// Source: triangular distribution, mean (a + b + c) / 3, variance (a2 + b2 + c2 - ab - ac - bc) /
// 18, median of a right-leaning one b - sqrt((b - a)(b - c) / 2); from memory.
TEST_CASE("The sampler has the mean, the variance and the median of its distribution") {
    const Spread spread = Spread::between(seconds{2}, seconds{4}, seconds{12});
    CHECK(spread.mean() == seconds{6});
    Rng rng(7);
    const int count = 400'000;
    double sum = 0, squares = 0;
    std::vector<double> all;
    for (int i = 0; i < count; ++i) {
        const double x = seconds_(spread.draw(rng));
        REQUIRE(x >= 2);
        REQUIRE(x <= 12);
        sum += x;
        squares += x * x;
        all.push_back(x);
    }
    const double mean = sum / count;
    CHECK(mean == Approx(6).epsilon(0.003));
    CHECK(squares / count - mean * mean ==
          Approx((4 + 16 + 144 - 8 - 24 - 48) / 18.0).epsilon(0.01));
    std::nth_element(all.begin(), all.begin() + count / 2, all.end());
    CHECK(all[count / 2] == Approx(12 - std::sqrt(10.0 * 8 / 2)).epsilon(0.005));

    const Spread slow = spread.times(1.5);
    CHECK(slow.mean() == seconds{9});
    const Spread memoryless = Spread::exponential(seconds{10});
    double total = 0;
    for (int i = 0; i < count; ++i)
        total += seconds_(memoryless.draw(rng));
    CHECK(total / count == Approx(10).epsilon(0.01));
}
