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
    // From the hour that is believed towards what is read, the further the more readings there are.
    for (const auto& [truth, side] : {std::pair{30.0, 1.0}, {100.0, -1.0}}) {
        const Duration halfLife = std::chrono::minutes(static_cast<int>(truth));
        const double few = minutesOf(weakOf(halfLife, 3).likely);
        const auto weak = weakOf(halfLife, 7);
        const double many = minutesOf(weak.likely);
        INFO(truth << ": " << few << ", " << many);
        CHECK(side * few < side * 60);
        CHECK(side * many < side * few);
        CHECK(std::abs(many - truth) < std::abs(60 - truth) / 2);
    }
    CHECK(minutesOf(weakOf(100min, 7).high) > 100);
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
    bed.hand.erase(bed.hand.begin());
    CHECK(with.weak.likely == bedOutlook(bed).value().weak.likely);
    CHECK(bedOutlook({Instant{}, {}, 0min}).error().field == "burnIn");
}

TEST_CASE("a bed that is felt to be weak is weak") {
    // Half of a fire of 3 s is one of 6.7 s by the flux of fire.h.
    const CoalBed fell{Instant{}, {felt(0min, 3s), felt(15min, 9s)}};
    const auto weak = bedOutlook(fell).value().weak;
    CHECK(weak.likely <= Instant{} + 15min);
    CHECK(weak.high <= Instant{} + 15min);
    // The fire that is wanted is one of 3 s, so that one test says it too.
    CHECK(bedOutlook({Instant{}, {felt(10min, 9s)}}).value().weak.likely <= Instant{} + 10min);
    CHECK(bedOutlook({Instant{}, {felt(0min, 3s), felt(15min, 6s)}}).value().weak.likely >
          Instant{} + 15min);
    // The newest test counts, not the weakest.
    CHECK(bedOutlook({Instant{}, {felt(10min, 9s), felt(20min, 3s)}}).value().weak.likely >
          Instant{} + 20min);
}

TEST_CASE("the fire that is wanted is not weak, however late it is felt first") {
    const BedOutlook outlook = bedOutlook({Instant{}, {felt(80min, 3s)}}).value();
    CHECK(outlook.weak.likely > Instant{} + 80min);
    CHECK(outlook.weak.low < outlook.weak.likely);
}

TEST_CASE("what is added counts by what it is of the bed, and only when it has burnt in") {
    const auto weakOf = [](std::vector<FireReading> hand, std::vector<AddedCoal> added) {
        return bedOutlook({Instant{}, std::move(hand), 30min, {}, std::move(added)}).value();
    };
    const auto none = weakOf({}, {});
    const auto handful = weakOf({}, {{Instant{} + 20min, 0.01}});
    const auto half = weakOf({}, {{Instant{} + 20min, 0.5}});
    const auto whole = weakOf({}, {{Instant{} + 20min, 1}});
    // A hundredth of a bed is worth a hundredth of a half-life or so.
    CHECK(handful.weak.likely > none.weak.likely);
    CHECK(handful.weak.likely < none.weak.likely + 3min);
    CHECK(half.weak.likely > handful.weak.likely + 20min);
    CHECK(whole.weak.likely > half.weak.likely);
    // By the exponential law, solved by hand: at 50 min 2^(-50/60) + 1 of the first heat.
    CHECK(minutesOf(whole.weak.likely) ==
          Approx(50 + 60 * std::log2((std::exp2(-50.0 / 60) + 1) / 0.5)).margin(0.1));

    // Readings from before it was added still count.
    const auto dying = weakOf({felt(0min, 2s), felt(20min, 4s)}, {{Instant{} + 21min, 0.01}});
    CHECK(dying.weak.likely < handful.weak.likely - 5min);
    // The heat that it gave is not taken for a bed that lasts.
    const auto fed = weakOf({felt(0min, 3s), felt(65min, 3s)}, {{Instant{} + 30min, 0.5}});
    const auto unfed = weakOf({felt(0min, 3s), felt(65min, 3s)}, {});
    CHECK(fed.weak.high - fed.weak.low < unfed.weak.high - unfed.weak.low);
}

TEST_CASE("fresh coal that burns in does not hide what the hand feels, nor is it asked for twice") {
    const auto outlook = [](double share, Duration at) {
        return bedOutlook({Instant{},
                           {felt(0min, 3s), felt(40min, 9s)},
                           30min,
                           {},
                           {{Instant{} + at, share}}})
            .value();
    };
    const auto handful = outlook(0.01, 30min);
    CHECK(handful.weak.likely <= Instant{} + 40min);
    CHECK(handful.topUpBy < Instant{} + 40min);
    const auto whole = outlook(1, 30min);
    CHECK(whole.weak.likely <= Instant{} + 40min);
    CHECK(whole.topUpBy > Instant{} + 60min);
    // Added after the hand felt it: the bed comes back, as far as is known.
    CHECK(outlook(1, 41min).weak.likely > Instant{} + 71min);
}

TEST_CASE("a hand and a thermometer on the grate are two series") {
    // One steady fire of 3 s whose grate shows 230 °C: much less by the flux of fire.h, and no
    // fall.
    const auto shown = [](Duration after, double celsius) {
        return FireReading{Instant{} + after,
                           fireFromGrateThermometer(Temperature::fromCelsius(celsius)).value()};
    };
    const auto hand = bedOutlook({Instant{}, {felt(0min, 3s), felt(30min, 3s)}}).value().weak;
    const auto both =
        bedOutlook({Instant{}, {felt(0min, 3s), felt(30min, 3s)}, 30min, {shown(31min, 230)}})
            .value()
            .weak;
    CHECK(std::abs(minutesOf(both.likely) - minutesOf(hand.likely)) < 1);
    // A thermometer that falls says so by itself.
    const auto falls = bedOutlook({Instant{}, {}, 30min, {shown(0min, 230), shown(20min, 180)}});
    CHECK(falls.value().weak.likely < Instant{} + 60min);
    const auto fell = bedOutlook({Instant{}, {}, 30min, {shown(0min, 230), shown(20min, 150)}});
    CHECK(fell.value().weak.likely <= Instant{} + 20min);
}
