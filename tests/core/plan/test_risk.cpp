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
