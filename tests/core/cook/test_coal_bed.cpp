#include <catch2/catch.hpp>
#include <cmath>

#include "cook/coal_bed.h"

using namespace cinder;
using namespace cinder::cook;
using namespace std::chrono_literals;

namespace {

FireReading felt(Duration after, Duration held) {
    return {Instant{} + after, fireFromHandTest(held).value()};
}

/// Readings whose flux falls to a half in `halfLife`, told as fluxes.
std::vector<FireReading> dying(Duration halfLife, int count) {
    std::vector<FireReading> readings;
    for (int i = 0; i < count; ++i) {
        FireReading reading = felt(Duration(10min) * i, 3s);
        const double lives = std::chrono::duration<double>(Duration(10min) * i) /
                             std::chrono::duration<double>(halfLife);
        reading.belief.atHundred.wattsPerSquareMetre *= std::exp2(-lives);
        readings.push_back(reading);
    }
    return readings;
}

double minutesOf(Instant at) {
    return std::chrono::duration<double, std::ratio<60>>(at.time_since_epoch()).count();
}

}  // namespace

TEST_CASE("before any reading a bed is believed to last an hour, as cooks say") {
    const BedOutlook outlook = bedOutlook({Instant{}, {}, 30min}).value();
    CHECK(minutesOf(outlook.weak.likely) == Approx(60).margin(0.1));
    CHECK(outlook.weak.low < outlook.weak.likely);
    CHECK(outlook.weak.likely < outlook.weak.high);
    CHECK(outlook.topUpBy == outlook.weak.likely - 30min);
}

TEST_CASE("readings of a fire that dies faster or slower pull the outlook to the truth") {
    const auto weakOf = [](Duration halfLife, int count) {
        return bedOutlook({Instant{}, dying(halfLife, count), 30min}).value().weak;
    };
    CHECK(minutesOf(weakOf(30min, 4).likely) < 50);
    CHECK(minutesOf(weakOf(30min, 7).likely) == Approx(30).margin(6));
    CHECK(minutesOf(weakOf(100min, 7).likely) > 80);
    // More readings, a narrower band.
    const auto few = weakOf(45min, 2);
    const auto many = weakOf(45min, 7);
    CHECK(many.high - many.low < few.high - few.low);
}

TEST_CASE("one reading says how hot the fire is, not how fast it dies") {
    const auto none = bedOutlook({Instant{}, {}, 30min}).value();
    const auto one = bedOutlook({Instant{}, {felt(0min, 2s)}, 30min}).value();
    CHECK(minutesOf(one.weak.likely) == Approx(minutesOf(none.weak.likely)).margin(0.5));
}

TEST_CASE("what was felt before the bed was ready does not count") {
    CoalBed bed{Instant{} + 40min, {felt(0min, 9s), felt(41min, 3s)}, 30min};
    const auto with = bedOutlook(bed).value();
    bed.readings.erase(bed.readings.begin());
    CHECK(with.weak.likely == bedOutlook(bed).value().weak.likely);
    CHECK(bedOutlook({Instant{}, {}, 0min}).error().field == "burnIn");
}
