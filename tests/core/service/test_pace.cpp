#include <catch2/catch.hpp>

#include "service/pace.h"

using namespace cinder;
using namespace cinder::service;
using namespace std::chrono_literals;

namespace {

constexpr Instant kBell{1'821'000'000'000ms};
const PacePlan kPlan{100, kBell, 9s, 60s};

}  // namespace

TEST_CASE("Before anybody counts the model's pace holds from the bell on") {
    const Pace pace(kPlan, {});
    CHECK_FALSE(pace.isCounted());
    CHECK(pace.each() == 9s);
    CHECK(pace.guestsAt(kBell) == 0);
    CHECK(pace.guestsAt(kBell + 60s) == 0);
    CHECK(pace.guestsAt(kBell + 150s) == Approx(10));
    CHECK(pace.guestsAt(kBell + 2h) == 100);
    CHECK(pace.end().usual == kBell + 60s + 900s);
    CHECK(pace.end().early < pace.end().usual);
}

// Source: gamma prior of a Poisson process: (20 * 9 s + 480 s) / (20 + 40) = 11 s. Reckoned by
// hand.
TEST_CASE("A count moves the pace by its weight") {
    const Pace pace(kPlan, {{0, kBell}, {20, kBell + 300s}, {40, kBell + 540s}});
    CHECK(pace.each() == 11s);
    CHECK(pace.lastCount().guests == 40);
    CHECK(pace.end().usual == kBell + 540s + 660s);
    CHECK(pace.guestsAt(kBell + 420s) == Approx(30));
    CHECK(pace.instantOf(30) == kBell + 420s);
    CHECK(pace.instantOf(50) == kBell + 650s);
}

TEST_CASE("The end becomes surer with every count") {
    std::vector<Count> counts{{0, kBell}};
    Duration before = Pace(kPlan, counts).end().late - Pace(kPlan, counts).end().early;
    for (int ten = 1; ten <= 9; ++ten) {
        counts.push_back({10 * ten, kBell + 60s + 90s * ten});
        const auto end = Pace(kPlan, counts).end();
        CHECK(end.late - end.early < before);
        CHECK(end.usual >= counts.back().at);
        before = end.late - end.early;
    }
}

TEST_CASE(
    "Without the first guest's tap the line opened at the bell, or later when the count is low") {
    CHECK(Pace(kPlan, {{10, kBell + 150s}}).opened() == kBell);
    CHECK(Pace(kPlan, {{10, kBell + 15min}}).opened() == kBell + 15min - 150s);
    // A first guest before the bell is believed.
    CHECK(Pace(kPlan, {{0, kBell - 5min}}).opened() == kBell - 5min);
    CHECK(Pace(kPlan, {{10, kBell - 1min}}).opened() == kBell - 1min);
}

TEST_CASE("Counts that do not rise are left out, and the order of hearing does not matter") {
    const Pace one(kPlan, {{20, kBell + 300s}, {0, kBell}, {10, kBell + 320s}, {20, kBell + 330s}});
    CHECK(one.lastCount() == Count{20, kBell + 300s});
    CHECK(one.end() == Pace(kPlan, {{0, kBell}, {20, kBell + 300s}}).end());
}

TEST_CASE("More guests than expected are counted, and the last guest ends it") {
    const Pace more(kPlan, {{0, kBell}, {110, kBell + 17min}});
    CHECK(more.guests() == 110);
    CHECK(more.end().usual == kBell + 17min);
    const Pace over(kPlan, {{0, kBell}, {80, kBell + 12min}}, kBell + 13min);
    CHECK(over.isOver());
    CHECK(over.guests() == 80);
    CHECK(over.end().late == kBell + 13min);
    CHECK(over.guestsAt(kBell + 14min) == 80);
}
