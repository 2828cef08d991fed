#include "app/service_plan.h"

#include <algorithm>
#include <cmath>

#include "quantity/build/reckon.h"

namespace cinder::app {

namespace {

std::int32_t peopleOf(const event::Hands& hands) {
    if (const auto* whole = std::get_if<event::HandsWhole>(&hands)) return whole->workers.people;
    return 1;
}

service::Staffing staffingOf(const event::Event& event) {
    service::Staffing staffing;
    for (const event::Step& step : event.work)
        if (step.kind == event::StepKind::Serve)
            staffing.servers = std::max(staffing.servers, peopleOf(step.hands));
    return staffing;
}

/// Mean portions, of an adult's size, that a guest takes when passing for the first time.
double perGuest(const event::Event& event, const event::Serving& serving) {
    const double adults = event.guests.adults;
    const double children = event.guests.children;
    const double child = serving.childPercent.value_or(100) / 100.0;
    const double take = serving.takePercent.value_or(100) / 100.0;
    return adults + children > 0 ? take * (adults + child * children) / (adults + children) : 0;
}

std::optional<ServicePlan::Pan> panOf(const event::Event& event, const event::Dish& dish,
                                      const quantity::DishFigures& figures) {
    if (!dish.serving || !figures.portions || !figures.vessels) return std::nullopt;
    // A board is filled again and again: how full it is tells neither when to fill it nor how much
    // is gone.
    if (dish.serving->vessel == event::Vessel::Board) return std::nullopt;
    const double vessels = figures.vessels->amount.value;
    const double atOnce = figures.onLine ? std::max(1.0, figures.onLine->amount.value) : 1.0;
    if (vessels < 1) return std::nullopt;
    ServicePlan::Pan pan{dish.id, dish.name, {}};
    pan.plan.perGuest = perGuest(event, *dish.serving);
    // Those that stand on the line together are emptied together and count as one.
    const double portions = figures.portions->amount.value;
    pan.plan.portionsPerPan = portions / vessels * std::min(atOnce, vessels);
    pan.plan.pans = std::max(1, static_cast<std::int32_t>(std::ceil(vessels / atOnce)));
    // Of the last ones there may be fewer than places.
    pan.plan.lastPan = portions - (pan.plan.pans - 1) * pan.plan.portionsPerPan;
    pan.plan.seconds = dish.serving->secondsPercent.value_or(0) / 100.0;
    pan.plan.lead = dish.serving->vessel == event::Vessel::Chafer ? kChaferLead : kBowlLead;
    return pan;
}

Duration meanAt(const service::Stop& stop) {
    if (stop.options.empty()) return stop.everybody.mean();
    double sum = 0, shares = 0;
    for (const service::Option& option : stop.options) {
        const double room = std::max(0.0, 1 - shares);
        const double first = std::min(room, option.share);
        sum += first * static_cast<double>(option.time.mean().count());
        sum += (option.share - first) * static_cast<double>(stop.further.mean().count());
        shares += option.share;
    }
    sum += std::max(0.0, 1 - shares) * static_cast<double>(stop.past.count());
    return Duration{static_cast<Duration::rep>(sum)};
}

}  // namespace

ServicePlan planService(const event::Event& event, std::int32_t services) {
    ServicePlan plan;
    plan.guests = event::headCount(event.guests);
    plan.staffing = staffingOf(event);
    const auto order = quantity::servingOrder(event);
    const quantity::Reckoning reckoning = quantity::reckon(event);
    std::vector<DishId> dishes;
    for (const std::size_t index : order) {
        dishes.push_back(event.menu[index].id);
        for (const quantity::DishFigures& figures : reckoning.dishes)
            if (figures.dish == event.menu[index].id)
                if (auto pan = panOf(event, event.menu[index], figures))
                    plan.pans.push_back(std::move(*pan));
    }
    plan.buffet = service::buffetOf(event, dishes, plan.staffing);
    plan.flow = service::flowOf(plan.buffet, {plan.guests, {}}, 1, services);
    for (const service::Stop& stop : plan.buffet.stops)
        plan.through += meanAt(stop);
    plan.through = std::min(plan.through, plan.flow.usual);
    plan.each = (plan.flow.usual - plan.through) / std::max(1, plan.guests);
    return plan;
}

std::vector<service::Gain> serviceGains(const ServicePlan& plan, std::int32_t services) {
    const service::Crowd crowd{plan.guests, {}};
    const service::Flow now = service::flowOf(plan.buffet, crowd, 1, services);
    return service::whatHelps(plan.buffet, crowd, now, 1, services);
}

service::Flow flowByTable(const ServicePlan& plan, std::int32_t services) {
    return service::flowOf(plan.buffet, {plan.guests, kTableByTable}, 1, services);
}

std::vector<LocalText> dishesAt(const ServicePlan& plan, const event::Event& event,
                                std::size_t stop) {
    std::vector<LocalText> names;
    for (const service::Option& option : plan.buffet.stops.at(stop).options)
        for (const event::Dish& dish : event.menu)
            if (dish.id == option.dish) names.push_back(dish.name);
    return names;
}

}  // namespace cinder::app
