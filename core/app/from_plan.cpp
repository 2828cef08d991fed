#include "app/from_plan.h"

#include <algorithm>
#include <map>

namespace cinder::app {

namespace {

struct Span {
    plan::FromBell first;
    plan::FromBell last;
};

}  // namespace

quantity::FromPlan fromPlan(const event::Event& event, const plan::Problem& problem,
                            const plan::Schedule& schedule) {
    quantity::FromPlan from;
    if (schedule.tasks.empty()) return from;
    from.arrival = event.serve.at + plan::firstStart(schedule);
    std::map<ResourceId, Span> spans;
    for (std::size_t i = 0; i < problem.tasks.size() && i < schedule.tasks.size(); ++i) {
        const plan::PlannedTask& planned = schedule.tasks[i];
        for (const plan::ResourceUse& use : problem.tasks[i].uses) {
            const ResourceId& id = problem.resources[static_cast<std::size_t>(use.resource)].id;
            const auto [there, isNew] = spans.emplace(id, Span{planned.start, planned.finish});
            if (isNew) continue;
            there->second.first = std::min(there->second.first, planned.start);
            there->second.last = std::max(there->second.last, planned.finish);
        }
    }
    for (const event::Grate& grate : event.kit.grates) {
        const auto span = spans.find(grate.id);
        if (span != spans.end())
            from.cooking.emplace(grate.id, span->second.last - span->second.first);
    }
    return from;
}

}  // namespace cinder::app
