#include <catch2/catch.hpp>

#include "orchard.h"
#include "pert_example.h"
#include "plan/beta_pert.h"
#include "plan/risk.h"

using namespace cinder;
using namespace cinder::plan;
using namespace cinder::plan::test;

TEST_CASE("drawn durations stay in range and have the mean of PERT") {
    Rng rng(3);
    const ThreePoint estimate{minutes(10), minutes(12), minutes(30)};
    double sum = 0;
    constexpr int kDraws = 20'000;
    for (int k = 0; k < kDraws; ++k) {
        const Duration drawn = drawBetaPert(rng, estimate);
        REQUIRE(drawn >= minutes(10));
        REQUIRE(drawn <= minutes(30));
        sum += static_cast<double>(drawn.count());
    }
    // (10 + 4 * 12 + 30) / 6 minutes.
    CHECK(sum / kDraws / 60'000.0 == Approx(88.0 / 6.0).margin(0.1));
    CHECK(drawBetaPert(rng, {minutes(5), minutes(5), minutes(5)}) == Duration{minutes(5)});
}

TEST_CASE("the textbook's chance is an upper figure because other paths also end late") {
    // Hillier & Lieberman, project chapter: Phi((47 - 44) / 3) = 0.8413 looks at the mean critical
    // path alone; from memory. The simulation looks at all of them.
    const PertExample example;
    const Dispatch dispatch(example.problem, example.schedule);
    RiskQuery query;
    query.bell = Duration{example.week * 47};
    query.draws = 4000;
    const Risk risk = assessRisk(example.problem, dispatch, query);
    WARN("on time within 47 weeks: simulated " << risk.onTime << ", normal approximation 0.8413");
    CHECK(risk.onTime < 0.8413);
    CHECK(risk.onTime > 0.70);
    CHECK(risk.criticality[0] == 1.0);
    CHECK(risk.criticality[2] > 0.9);
    CHECK(risk.criticality[3] < 0.3);
    CHECK(risk.ready80 > Duration{example.week * 44});
}

TEST_CASE("the chance of one task to be ready is the one that its distribution says") {
    // Beta-PERT over [30, 90] minutes with its peak in the middle is a beta distribution with
    // shapes 3 and 3 (plan/beta_pert.h), whose distribution function is the polynomial I_x(3, 3) =
    // x^3 (10 - 15 x + 6 x^2). Source: NIST Digital Library of Mathematical Functions, 8.17.5
    // (whole shapes, a binomial sum): 0.5 at the middle, 0.1035 after a quarter of the span, 0.8965
    // after three quarters, and 0.8 at x = 0.6734.
    Problem problem = emptyKitchen(1);
    problem.tasks = {standing("wait", minutes(60))};
    problem.tasks[0].duration = {minutes(30), minutes(60), minutes(90)};
    problem.tasks[0].latestFinish = FromBell{0};
    const Schedule schedule{{{minutes(-60), minutes(0), {}}}};
    const Dispatch dispatch(problem, schedule);
    RiskQuery query;
    query.draws = 20'000;
    // Four standard errors of a share over so many draws: 4 sqrt(0.25 / 20000) at most.
    constexpr double kWithin = 0.0142;
    const auto begunAt = [&](int fromBell) {
        query.now = std::chrono::minutes{fromBell};
        return assessRisk(problem, dispatch, query);
    };
    const auto closed = [](double x) { return x * x * x * (10 - 15 * x + 6 * x * x); };
    const Risk middle = begunAt(-60);
    CHECK(middle.onTime == Approx(0.5).margin(kWithin));
    CHECK(middle.onTimeQuarterHourEarlier == Approx(closed(0.75)).margin(kWithin));
    // 30 + 0.6734 * 60 minutes after its start, within four standard errors of a quantile.
    CHECK(std::chrono::duration<double, std::ratio<60>>(middle.ready80).count() ==
          Approx(-60 + 30 + 0.6734 * 60).margin(0.6));
    const Risk late = begunAt(-45);
    CHECK(late.onTime == Approx(0.1035).margin(kWithin));
    CHECK(late.onTimeQuarterHourEarlier == Approx(0.5).margin(kWithin));
}

TEST_CASE("an earlier quarter-hour makes a tight plan surer") {
    Problem problem = smallLunch();
    problem.tasks[1].duration = {minutes(16), minutes(20), minutes(40)};
    const Schedule schedule = smallLunchPlan();
    const Dispatch dispatch(problem, schedule);
    RiskQuery query;
    query.now = std::chrono::minutes{-60};
    const Risk risk = assessRisk(problem, dispatch, query);
    CHECK(risk.onTime > 0.3);
    CHECK(risk.onTime < 0.95);
    CHECK(risk.onTimeQuarterHourEarlier > risk.onTime);
    CHECK(assessRisk(problem, dispatch, query).onTime == risk.onTime);
}
