#include "plan/risk.h"

#include <algorithm>

#include "plan/beta_pert.h"

namespace cinder::plan {

namespace {

/// A duration that fits what is known of the task: not over yet when it is still running.
Duration drawFor(Rng& rng, const ThreePoint& estimate, const Actual* actual, Duration now) {
    constexpr int kRedraws = 8;  // then it is so late that the projection's own floor holds
    Duration drawn = drawBetaPert(rng, estimate);
    if (actual == nullptr || !actual->start || actual->finish) return drawn;
    for (int k = 0; k < kRedraws && *actual->start + drawn < now; ++k)
        drawn = drawBetaPert(rng, estimate);
    return drawn;
}

}  // namespace

Risk assessRisk(const Problem& problem, const Dispatch& dispatch, const RiskQuery& query) {
    const std::size_t count = problem.tasks.size();
    const int draws = std::max(1, query.draws);
    Rng rng(query.seed);
    Risk risk;
    std::vector<int> critical(count, 0);
    std::vector<Duration> ready;
    std::vector<Duration> durations(count);
    int onTime = 0;
    int onTimeEarlier = 0;
    constexpr Duration kQuarterHour = std::chrono::minutes{15};
    for (int draw = 0; draw < draws; ++draw) {
        for (std::size_t i = 0; i < count; ++i)
            durations[i] =
                drawFor(rng, problem.tasks[i].duration,
                        i < query.actuals.size() ? &query.actuals[i] : nullptr, query.now);
        const auto day = dispatch.project(query.actuals, query.now, query.bell, durations);
        ready.push_back(dispatch.readyAt(day));
        onTime += ready.back() <= query.bell ? 1 : 0;
        for (std::size_t i = 0; i < count; ++i)
            critical[i] += day[i].isCritical ? 1 : 0;
        // The same draws with every plan time a quarter of an hour earlier.
        const auto earlier = dispatch.project(query.actuals, query.now - kQuarterHour,
                                              query.bell - kQuarterHour, durations);
        onTimeEarlier += dispatch.readyAt(earlier) <= query.bell ? 1 : 0;
    }
    const auto share = [draws](int days) { return static_cast<double>(days) / draws; };
    risk.onTime = share(onTime);
    risk.onTimeQuarterHourEarlier = share(onTimeEarlier);
    for (const int days : critical)
        risk.criticality.push_back(share(days));
    const auto rank = static_cast<std::ptrdiff_t>((ready.size() * 4 + 4) / 5 - 1);
    std::nth_element(ready.begin(), ready.begin() + rank, ready.end());
    risk.ready80 = ready[static_cast<std::size_t>(rank)];
    return risk;
}

}  // namespace cinder::plan
