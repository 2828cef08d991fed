#include <catch2/catch.hpp>

#include "learn/appetites.h"

using namespace cinder;
using namespace std::chrono_literals;
using learn::appetiteOf;

namespace {

const DishId kSlaw{"slaw"};

Instant at(int minute) {
    return Instant{} + std::chrono::minutes{minute};
}

/// Planned: a portion for everybody, 40 portions in a pan.
constexpr service::PanPlan kPlan{1.0, 40, 3, 5min};

/// The second pan was on the line at the end, with so much left in it.
live::ServiceDay twoPans(std::int32_t percentLeft) {
    live::ServiceDay day;
    day.counts = {{0, at(0)}, {80, at(14)}};
    day.last = at(15);
    day.pans[kSlaw].set[2] = at(8);
    day.pans[kSlaw].levels[1][at(7)] = 5;
    day.pans[kSlaw].levels[2] = {{at(10), 80}, {at(16), percentLeft}};
    return day;
}

}  // namespace

TEST_CASE("what the guests took is what is gone from the pans, by the last look") {
    // 1.5 pans of 40 portions for 80 guests.
    const auto seen = appetiteOf(kSlaw, kPlan, twoPans(50), 80);
    REQUIRE(seen);
    CHECK(seen->planned == 1.0);
    CHECK(seen->taken == Approx(0.75));
    CHECK(seen->pansUsed == 2);
    CHECK_FALSE(seen->isAtLeast);
}

TEST_CASE("the last pan scraped out says that they took at least so much") {
    service::PanPlan plan = kPlan;
    plan.pans = 2;
    CHECK(appetiteOf(kSlaw, plan, twoPans(0), 80)->isAtLeast);
    // There was a third pan, and nobody needed it.
    CHECK_FALSE(appetiteOf(kSlaw, kPlan, twoPans(0), 80)->isAtLeast);
}

TEST_CASE(
    "nothing is said before the last guest, without a look into the last pan, or of no plan") {
    auto open = twoPans(50);
    open.last.reset();
    CHECK_FALSE(appetiteOf(kSlaw, kPlan, open, 80));
    auto unseen = twoPans(50);
    unseen.pans[kSlaw].levels.erase(2);
    CHECK_FALSE(appetiteOf(kSlaw, kPlan, unseen, 80));
    CHECK_FALSE(appetiteOf(DishId{"bread"}, kPlan, twoPans(50), 80));
    CHECK_FALSE(appetiteOf(kSlaw, kPlan, twoPans(50), 0));
    CHECK_FALSE(appetiteOf(kSlaw, {0, 40, 3, 5min}, twoPans(50), 80));
}

TEST_CASE("the last pan may be a part of one") {
    service::PanPlan plan = kPlan;
    plan.pans = 2;
    plan.lastPan = 20;
    CHECK(appetiteOf(kSlaw, plan, twoPans(50), 80)->taken == Approx((40 + 10) / 80.0));
    CHECK(appetiteOf(kSlaw, plan, twoPans(0), 80)->taken == Approx((40 + 20) / 80.0));
}

TEST_CASE("what was left in a pan that was replaced is half believed to be taken away") {
    auto day = twoPans(50);
    day.pans[kSlaw].levels[1][at(8)] = 15;
    CHECK(appetiteOf(kSlaw, kPlan, day, 80)->taken == Approx((40 - 3 + 20) / 80.0));
    // The look a minute before is followed by 80 / 14 guests, who eat more than the rest of it.
    day.pans[kSlaw].levels[1].erase(at(8));
    CHECK(appetiteOf(kSlaw, kPlan, day, 80)->taken == Approx((40 + 20) / 80.0));
}

TEST_CASE("seconds are planned where they could be taken, and nowhere else") {
    service::PanPlan plan = kPlan;
    plan.seconds = 0.25;
    const auto after = appetiteOf(kSlaw, plan, twoPans(50), 80);
    CHECK(after->planned == Approx(1.25));
    CHECK(after->percentTaken() == Approx(100 * 0.75 / 1.25));
    // Nobody looked after the last guest: the first pass alone, of the guests until then.
    auto during = twoPans(50);
    during.pans[kSlaw].levels[2] = {{at(12), 40}};
    const double through = 80 * 12 / 14.0;
    const auto first = appetiteOf(kSlaw, plan, during, 80);
    REQUIRE(first);
    CHECK(first->planned == 1.0);
    CHECK(first->taken == Approx((40 + 24) / through));
}

TEST_CASE("a look while most guests still stand in line says nothing of all of them") {
    live::ServiceDay day;
    day.counts = {{0, at(0)}, {80, at(14)}};
    day.last = at(15);
    day.pans[kSlaw].levels[1][at(3)] = 60;
    CHECK_FALSE(appetiteOf(kSlaw, kPlan, day, 80));
    day.pans[kSlaw].levels[1][at(7)] = 10;
    REQUIRE(appetiteOf(kSlaw, kPlan, day, 80));
    CHECK(appetiteOf(kSlaw, kPlan, day, 80)->taken == Approx(36 / 40.0));
}
