#include <algorithm>
#include <cmath>

#include "app/service_cards.h"

namespace cinder::app {

namespace {

service::PanFacts factsOf(const live::ServiceDay& day, const DishId& dish) {
    service::PanFacts facts;
    const auto found = day.pans.find(dish);
    if (found == day.pans.end()) return facts;
    for (const auto& [pan, levels] : found->second.levels)
        for (const auto& [at, percent] : levels)
            facts.taps.push_back({percent / 100.0, at, pan});
    for (const auto& [pan, at] : found->second.set)
        facts.changes.push_back(at);
    return facts;
}

/// The model's queue at the moment when the model has as many guests through.
std::int32_t waitingNow(const ServicePlan& plan, const service::Pace& pace, Instant now) {
    if (plan.flow.queue.empty() || pace.isOver() || now < pace.opened()) return 0;
    const double through = pace.guestsAt(now);
    const double since = static_cast<double>((now - pace.opened()).count());
    const double model = through < 1 ? std::min(since, static_cast<double>(plan.through.count()))
                                     : static_cast<double>(plan.through.count()) +
                                           through * static_cast<double>(plan.each.count());
    const auto point =
        static_cast<std::size_t>(model / static_cast<double>(service::kQueueEvery.count()));
    if (point >= plan.flow.queue.size()) return 0;
    return static_cast<std::int32_t>(std::lround(plan.flow.queue[point]));
}

}  // namespace

ServiceCards makeServiceCards(const live::Day& day, const ServicePlan& plan, Instant now) {
    ServiceCards cards;
    std::vector<service::Count> counts;
    for (const auto& [guests, at] : day.service.counts)
        counts.push_back({guests, at});
    cards.isOpen = !counts.empty() || day.service.last;
    const service::PacePlan pacePlan{plan.guests, day.serve.value_or(now), plan.each, plan.through};
    const service::Pace pace(pacePlan, std::move(counts), day.service.last);
    cards.guests = pace.guests();
    cards.counted = pace.lastCount().guests;
    cards.passed = static_cast<std::int32_t>(pace.guestsAt(now));
    cards.waiting = waitingNow(plan, pace, now);
    cards.isOver = pace.isOver();
    cards.opened = pace.opened();
    cards.each = pace.each();
    cards.end = pace.end();
    cards.planned = plan.flow.usual;
    if (plan.flow.bottleneck && day.event)
        cards.bottleneck = dishesAt(plan, *day.event, *plan.flow.bottleneck);
    for (const ServicePlan::Pan& planned : plan.pans) {
        if (day.leftOut.contains(planned.dish)) continue;
        service::PanFacts facts = factsOf(day.service, planned.dish);
        // Somebody may have found a pan more than was reckoned with.
        const auto begun = static_cast<std::int32_t>(facts.changes.size()) + 1;
        LinePanCard card{planned.dish, planned.name, std::max(planned.plan.pans, begun), {}, false};
        card.outlook = service::lookAtPan(planned.plan, std::move(facts), pace, now);
        card.isDue = card.outlook.startNextBy && *card.outlook.startNextBy <= now;
        cards.pans.push_back(std::move(card));
    }
    return cards;
}

}  // namespace cinder::app
