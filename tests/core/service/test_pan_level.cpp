#include <catch2/catch.hpp>

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
    CHECK(*at.emptyEarly < *at.empty);
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
    CHECK_FALSE(shy.startNextBy);
    CHECK(shy.seconds > 20);
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
