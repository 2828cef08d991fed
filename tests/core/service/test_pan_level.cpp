#include <catch2/catch.hpp>
#include <cmath>

#include "base/rng.h"
#include "service/pan_level.h"

using namespace cinder;
using namespace cinder::service;
using namespace std::chrono_literals;

namespace {

constexpr Instant kBell{1'821'000'000'000ms};
const PacePlan kLine{100, kBell, 10s, 0s};
const PanPlan kBeans{0.5, 30, 2, 4min};

Pace counted(std::int32_t guests, Instant at) {
    return Pace(kLine, {{0, kBell}, {guests, at}});
}

}  // namespace

// Source: normal mean with known variance. Worked by hand: prior 0.5 +- 0.1, seen 0.7 +- 0.1: the
// middle, and the deviation over the square root of two; seen 0.8 +- 0.2 weighs a quarter.
TEST_CASE("A belief moves towards what is seen, by its weight") {
    const Belief even = Belief{0.5, 0.1}.updated(0.7, 0.1);
    CHECK(even.mean == Approx(0.6));
    CHECK(even.deviation == Approx(0.1 / std::sqrt(2.0)));
    const Belief doubtful = Belief{0.5, 0.1}.updated(0.8, 0.2);
    CHECK(doubtful.mean == Approx(0.56));
    CHECK(doubtful.deviation == Approx(std::sqrt(1 / 125.0)));
}

TEST_CASE("Without a look into the pan the plan tells when it is empty") {
    const Pace pace(kLine, {});
    const PanOutlook at = lookAtPan(kBeans, {}, pace, kBell);
    CHECK(at.pan == 1);
    CHECK(at.left == 1);
    // 30 portions, half a portion a guest: 60 guests of 10 s.
    REQUIRE(at.empty);
    CHECK(*at.empty == kBell + 10min);
    // Once in ten, by hand: the pace, worth 20 guests, is 1.2816 x 10 s x sqrt(60 + 60^2 / 20) =
    // 198.5 s in doubt. An appetite within a quarter and the chance of 30 portions are together
    // 0.3096 of what is taken: 60 / (1 + 1.2816 x 0.3096) = 42.96 guests, 170.4 s sooner. Both:
    // 261.6 s.
    CHECK(std::chrono::abs(*at.emptyEarly - (kBell + 338'400ms)) < 1s);
    CHECK(*at.startNextBy == *at.emptyEarly - 4min);
    CHECK(lookAtPan(kBeans, {}, pace, kBell + 5min).left == Approx(0.5));
    CHECK(at.needed == Approx(50));
    CHECK(at.portionsLeft == Approx(60));
    CHECK(at.seconds == 10);
    CHECK(at.portionPercent == 100);
}

TEST_CASE("A tap on the level puts it right and tells how hungry they are") {
    const Pace pace = counted(30, kBell + 5min);
    const Instant now = kBell + 5min;
    const PanOutlook hungry = lookAtPan(kBeans, {{{0.25, now}}, {}}, pace, now);
    CHECK(hungry.isTapped);
    CHECK(hungry.left == Approx(0.25));
    // 22.5 portions to 30 guests is three quarters each; the belief lies between.
    CHECK(hungry.perGuest > 0.55);  // 0.586 by hand
    CHECK(hungry.perGuest < 0.75);
    CHECK(*hungry.empty < *lookAtPan(kBeans, {}, pace, now).empty);
    CHECK(hungry.portionPercent == 90);
    CHECK(hungry.seconds == 0);

    const PanOutlook shy = lookAtPan(kBeans, {{{0.85, now}}, {}}, pace, now);
    CHECK(shy.perGuest < 0.4);
    CHECK_FALSE(shy.empty);
    CHECK(shy.seconds > 20);
    // In the mean it lasts, and oftener than once in ten it does not.
    REQUIRE(shy.startNextBy);
    CHECK(*shy.startNextBy > *lookAtPan(kBeans, {}, pace, now).startNextBy);
    const PanOutlook fasting = lookAtPan(kBeans, {{{0.97, now}}, {}}, pace, now);
    CHECK_FALSE(fasting.emptyEarly);
    CHECK_FALSE(fasting.startNextBy);
}

TEST_CASE("The last tap counts, whatever order they arrive in, and a later one is not yet known") {
    const Pace pace = counted(30, kBell + 5min);
    const std::vector<LevelTap> taps{{0.5, kBell + 5min}, {0.9, kBell + 1min}};
    CHECK(lookAtPan(kBeans, {taps, {}}, pace, kBell + 5min).left == Approx(0.5));
    CHECK(lookAtPan(kBeans, {taps, {}}, pace, kBell + 2min).left < 0.9);
    CHECK(lookAtPan(kBeans, {taps, {}}, pace, kBell + 2min).left > 0.7);
}

TEST_CASE("The next pan begins full, and when it is the last there is none to start") {
    const Pace pace = counted(60, kBell + 10min);
    const Instant now = kBell + 10min;
    const PanOutlook second = lookAtPan(kBeans, {{{0.1, kBell + 9min}}, {now}}, pace, now);
    CHECK(second.pan == 2);
    CHECK(second.left == 1);
    CHECK_FALSE(second.isTapped);
    CHECK_FALSE(second.startNextBy);
    CHECK(second.portionsLeft == Approx(30));
}

TEST_CASE("A dish nobody takes, or a pan of unknown size, promises nothing") {
    const Pace pace(kLine, {});
    CHECK_FALSE(lookAtPan({0, 30, 2, 0s}, {}, pace, kBell).empty);
    CHECK_FALSE(lookAtPan({0.5, 0, 2, 0s}, {}, pace, kBell).empty);
    CHECK(lookAtPan({0.5, 0, 2, 0s}, {}, pace, kBell).portionPercent == 100);
}

TEST_CASE("When the last guest has passed the rest is for seconds") {
    const Pace over(kLine, {{0, kBell}, {100, kBell + 17min}}, kBell + 18min);
    const PanOutlook rest =
        lookAtPan(kBeans, {{{0.4, kBell + 19min}}, {kBell + 11min}}, over, kBell + 20min);
    CHECK(rest.seconds == 12);
    CHECK(rest.needed == 0);
    CHECK_FALSE(rest.empty);
}

TEST_CASE("The last pan may be a part of one, and every level is read of its own pan") {
    // Three chafers on two places, 89 portions: 59.3 on the line, 29.7 after them.
    PanPlan plan{0.55, 89.0 * 2 / 3, 2, 5min};
    plan.lastPan = 89.0 / 3;
    const PanOutlook opening = lookAtPan(plan, {}, Pace(kLine, {}), kBell);
    CHECK(opening.portionsLeft == Approx(89));
    CHECK(opening.seconds == 34);
    const Instant now = kBell + 15min;
    const Pace pace = counted(90, now);
    const PanOutlook third = lookAtPan(plan, {{}, {now}}, pace, now);
    CHECK(third.portionsLeft == Approx(89.0 / 3));
    CHECK(lookAtPan(plan, {{{0.5, now, 2}}, {now}}, pace, now).portionsLeft == Approx(89.0 / 6));
    // 29.7 portions for guests of half a portion: 54 more guests, were there so many.
    const PacePlan longLine{300, kBell, 10s, 0s};
    const PanOutlook more =
        lookAtPan(plan, {{}, {now}}, Pace(longLine, {{0, kBell}, {90, now}}), now);
    REQUIRE(more.empty);
    CHECK(*more.empty < now + 10min);
    // A pan more than was planned is like the last one.
    const PanOutlook found = lookAtPan(plan, {{}, {kBell + 10min, now}}, pace, now);
    CHECK(found.pan == 3);
    CHECK(found.portionsLeft == Approx(89.0 / 3));
    CHECK_FALSE(found.startNextBy);
}

// By hand: 15 % of 30 portions are 4.5 when the next pan comes; 30 - 2.25 are taken to be eaten by
// 60 guests: 0.4625 each, within hypot(0.07 x 30, 4.5 / sqrt(12), sqrt(27.75)) / 60 = 0.0970.
// Before it was 0.5 within 0.125: the mean by weight is 0.4766.
TEST_CASE("What was left in a pan that was replaced is half believed to be taken away") {
    const Instant now = kBell + 10min;
    const Pace pace = counted(60, now);
    CHECK(lookAtPan(kBeans, {{{0.15, now, 1}}, {now}}, pace, now).perGuest ==
          Approx(0.4766).margin(0.0005));
    // Nobody looked, or it was scraped out.
    CHECK(lookAtPan(kBeans, {{}, {now}}, pace, now).perGuest == Approx(0.5));
    CHECK(lookAtPan(kBeans, {{{0, now, 1}}, {now}}, pace, now).perGuest == Approx(0.5));
    // A look at half of it, as many guests before the change as eat the other half, is old news.
    CHECK(lookAtPan(kBeans, {{{0.5, kBell + 5min, 1}}, {now}}, pace, now).perGuest == Approx(0.5));
    CHECK(leftWhenReplaced(kBeans, 1, {0.5, kBell + 5min}, kBell + 7min, pace) ==
          Approx(0.5 - 12 * 0.5 / 30));
}

TEST_CASE("Nobody looks and nobody counts: the call for the next pan does not move") {
    const PanPlan bowl{0.5, 30, 2, 2min};
    const Pace pace(kLine, {});
    const Instant due = *lookAtPan(bowl, {}, pace, kBell).startNextBy;
    for (Instant now = kBell; now <= due; now += 10s) {
        CAPTURE((now - kBell).count());
        CHECK(*lookAtPan(bowl, {}, pace, now).startNextBy == due);
    }
}

// Counting takes the doubt about the pace away, never that about the appetite: 600 s less the 170.4
// s by which hungrier guests empty the bowl sooner (above) less the lead leave 310 s.
TEST_CASE("Counted exactly as planned the call comes while the appetite is still in doubt") {
    const PanPlan bowl{0.5, 30, 2, 2min};
    std::optional<Instant> rings;
    std::vector<Count> counts{{0, kBell}};
    for (Instant now = kBell; !rings && now < kBell + 10min; now += 10s) {
        const auto through = static_cast<std::int32_t>((now - kBell) / 10s);
        if (through > 0 && through % 10 == 0) counts.push_back({through, now});
        const PanOutlook seen = lookAtPan(bowl, {}, Pace(kLine, counts), now);
        REQUIRE(seen.startNextBy);
        if (*seen.startNextBy <= now) rings = now;
    }
    REQUIRE(rings);
    CHECK(*rings <= kBell + 310s);
    CHECK(*rings > kBell + 180s);
}

namespace {

double normal(Rng& rng) {
    double sum = -6;
    for (int i = 0; i < 12; ++i)
        sum += rng.unit();
    return sum;
}

/// One service as the forecast believes it may be: how hungry, how quick, and chance with each
/// guest. Whether the bowl was empty before the next one could stand there, when somebody follows
/// the call; nothing when it lasted.
std::optional<bool> wasLate(std::uint64_t seed, bool isTapped) {
    Rng rng(seed, 5);
    const PanPlan bowl{0.5, 30, 2, 2min};
    const double appetite = std::clamp(0.5 * (1 + kTakeDoubt * normal(rng)), 0.05, 1.0);
    double rate = 0;  // gamma with weight 20
    for (int i = 0; i < 20; ++i)
        rate -= std::log(1 - rng.unit()) / 200'000;
    std::vector<Count> counts{{0, kBell}};
    std::vector<LevelTap> taps;
    std::optional<Instant> called;
    Duration at{0};
    double gone = 0;
    for (std::int32_t guest = 1; guest <= 100 && gone < 30; ++guest) {
        const Duration next = at + Duration{std::llround(-std::log(1 - rng.unit()) / rate)};
        // Somebody glances at the board every five seconds.
        for (; !called && at < next; at += 5s) {
            const PanOutlook seen = lookAtPan(bowl, {taps, {}}, Pace(kLine, counts), kBell + at);
            if (seen.startNextBy && *seen.startNextBy <= kBell + at) called = kBell + at;
        }
        at = next;
        gone += rng.unit() < appetite ? 1 : 0;
        if (guest % 10 == 0) counts.push_back({guest, kBell + at});
        if (isTapped && guest % 15 == 0)
            taps.push_back(
                {std::clamp(1 - gone / 30 + kEyeDoubt * normal(rng), 0.0, 1.0), kBell + at});
    }
    if (gone < 30) return std::nullopt;
    return !called || *called + bowl.lead > kBell + at;
}

}  // namespace

TEST_CASE("Who follows the call stands with an empty bowl about once in ten, tapped or not") {
    for (const bool isTapped : {false, true}) {
        int emptied = 0, late = 0;
        const int services = 1500;
        for (std::uint64_t seed = 1; seed <= services; ++seed)
            if (const auto was = wasLate(seed, isTapped)) {
                ++emptied;
                late += *was ? 1 : 0;
            }
        CAPTURE(isTapped, emptied, late);
        CHECK(emptied > services / 2);
        // Of all services, those in which the bowl lasted among them.
        CHECK(late < services * 11 / 100);
        // Nor is it called for long before it is needed.
        CHECK(late > services * 3 / 100);
    }
}
