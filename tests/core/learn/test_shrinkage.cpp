#include <catch2/catch.hpp>
#include <vector>

#include "learn/shrinkage.h"

using namespace cinder::learn;

// Source: W. M. Bolstad, Introduction to Bayesian Statistics, chapter 11, the length of trout:
// prior normal(30, 4), twelve fish of known deviation 2 with the mean 32, posterior normal(31.96,
// 0.5714); from memory, and reckoned by hand: 1/16 + 12/4 = 3.0625.
TEST_CASE("A belief is updated as in the textbook") {
    const std::vector<Observed> fish(12, Observed{32, false});
    const Learned learned = learn({30, 4, 2}, fish);
    CHECK(learned.mean == Approx(31.96).margin(0.005));
    CHECK(learned.deviation == Approx(0.5714).margin(0.00005));
    CHECK(learned.events == 12);
}

TEST_CASE("Without events the belief stands, and with many the events do") {
    const Prior prior{10, 2, 3};
    CHECK(learn(prior, {}) == Learned{10, 2, 0, 0});
    const std::vector<Observed> many(10'000, Observed{14, false});
    CHECK(learn(prior, many).mean == Approx(14).margin(0.001));
    CHECK(learn(prior, many).deviation < 0.04);
}

TEST_CASE("One event at a time comes to the same as all at once, in any order") {
    const Prior prior{0, 0.25, 0.3};
    const std::vector<Observed> events{{0.2, false}, {-0.1, false}, {0.4, false}};
    Learned step{prior.mean, prior.deviation, 0, 0};
    for (const Observed& event : events)
        step = learn({step.mean, step.deviation, prior.spread}, std::vector<Observed>{event});
    const Learned once = learn(prior, events);
    CHECK(step.mean == Approx(once.mean));
    CHECK(step.deviation == Approx(once.deviation));
    CHECK(learn(prior, std::vector<Observed>{events[2], events[0], events[1]}) == once);
}

TEST_CASE("What was interrupted is counted but does not count") {
    const Prior prior{0, 0.25, 0.3};
    const std::vector<Observed> with{{0.2, false}, {2.0, true}};
    const std::vector<Observed> without{{0.2, false}};
    CHECK(learn(prior, with).mean == learn(prior, without).mean);
    CHECK(learn(prior, with).events == 1);
    CHECK(learn(prior, with).interrupted == 1);
}

TEST_CASE("Only what lies beyond three deviations is suspect") {
    const Prior prior{0, 3, 4};
    CHECK_FALSE(isSuspect(prior, 14.9));
    CHECK(isSuspect(prior, 15.1));
    CHECK(isSuspect(prior, -15.1));
}
