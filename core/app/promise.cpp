#include "app/promise.h"

#include "event/json.h"
#include "plan/build/apply.h"
#include "plan/build/build.h"

namespace cinder::app {

using Why = Refusal::Why;

namespace {
/// Nobody moves a table to spare the guests less. Our choice.
constexpr Duration kWorthSaying = std::chrono::minutes{1};
}  // namespace

Result<Promise, Refusal> reckonPromise(const event::Event& event, const plan::Search& search) {
    auto problem = plan::build(event);
    if (!problem) return fail(Refusal{Why::BadEvent, {}, std::move(problem.error()), {}, {}});
    auto explanation = plan::explain(*problem, search);
    if (!explanation) return fail(Refusal{Why::NoPlan, {}, {}, std::move(explanation.error()), {}});
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
