#include "app/promise.h"

#include <algorithm>

#include "event/json.h"
#include "plan/build/apply.h"
#include "plan/build/build.h"

namespace cinder::app {

using Why = Refusal::Why;

namespace {
/// Nobody moves a table to spare the guests less. Our choice.
constexpr Duration kWorthSaying = std::chrono::minutes{1};

bool hangsOnArrival(const event::Step& step) {
    const auto isFromArrival = [](const std::optional<event::Moment>& moment) {
        return moment && moment->anchor == event::Moment::Anchor::Arrival;
    };
    return isFromArrival(step.earliestStart) || isFromArrival(step.latestFinish);
}

bool hangsOnArrival(const event::Event& event) {
    const auto any = [](const std::vector<event::Step>& steps) {
        return std::any_of(steps.begin(), steps.end(),
                           [](const event::Step& step) { return hangsOnArrival(step); });
    };
    return any(event.work) ||
           std::any_of(event.menu.begin(), event.menu.end(),
                       [&](const event::Dish& dish) { return any(dish.method); });
}

bool keepsPromise(const event::Event& event, const plan::Problem& problem,
                  const plan::Remedy& remedy, const plan::Search& search) {
    const auto changed = plan::applied(event, problem, remedy);
    if (!changed) return false;
    const auto built = plan::build(*changed);
    return built && plan::makePlan(*built, search);
}

/// A step that must be over so long after the arrival moves with it: more time helps only the
/// others, and whether that is enough is known when it is planned.
void planTimesAnew(const event::Event& event, const plan::Problem& problem,
                   const plan::Search& search, std::vector<plan::Remedy>& remedies) {
    using Kind = plan::Remedy::Kind;
    if (!hangsOnArrival(event)) return;
    for (plan::Remedy& remedy : remedies)
        if (remedy.kind == Kind::EarlierArrival || remedy.kind == Kind::LaterServe)
            remedy.isEnough = keepsPromise(event, problem, remedy, search);
    std::stable_partition(remedies.begin(), remedies.end(),
                          [](const plan::Remedy& remedy) { return remedy.isEnough; });
}
}  // namespace

Result<Promise, Refusal> reckonPromise(const event::Event& event, const plan::Search& search) {
    auto problem = plan::build(event);
    if (!problem) return fail(Refusal{Why::BadEvent, {}, std::move(problem.error()), {}, {}});
    auto explanation = plan::explain(*problem, search);
    if (!explanation) return fail(Refusal{Why::NoPlan, {}, {}, std::move(explanation.error()), {}});
    planTimesAnew(event, *problem, search, explanation->remedies);
    Promise promise{event, *std::move(problem), *std::move(explanation), planService(event), {},
                    {}};
    promise.byTable = flowByTable(promise.line);
    promise.shorter = serviceGains(promise.line);
    std::erase_if(promise.shorter,
                  [](const service::Gain& gain) { return gain.saved < kWorthSaying; });
    return promise;
}

Result<std::string, Refusal> accepted(const Promise& promise, std::size_t number) {
    const auto& remedies = promise.explanation.remedies;
    if (number >= remedies.size())
        return fail(Refusal{Why::NotNow, "there is no such remedy", {}, {}, {}});
    const auto changed = plan::applied(promise.event, promise.problem, remedies[number]);
    if (!changed) return fail(Refusal{Why::BadEvent, {}, changed.error(), {}, {}});
    return event::write(*changed);
}

}  // namespace cinder::app
