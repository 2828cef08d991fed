#include "live/food_day.h"

#include <algorithm>

namespace cinder::live {

namespace {

bool keepsAs(const event::Dish& dish, event::Keeping keeping) {
    return std::any_of(dish.ahead.begin(), dish.ahead.end(),
                       [&](const event::Ahead& ahead) { return ahead.then == keeping; });
}

/// Raw flesh and eggs need a record even when nothing is said of how they ride.
bool isRawAtFirst(event::Food food) {
    using event::Food;
    return food == Food::WholeMeat || food == Food::GroundMeat || food == Food::Poultry ||
           food == Food::Fish || food == Food::Egg;
}

/// Food does not become cooked because somebody leaves out the task that would cook it.
bool isToBeCooked(const event::Dish& dish, const RunSheet& sheet) {
    return std::any_of(
               dish.method.begin(), dish.method.end(),
               [](const event::Step& step) { return step.kind == event::StepKind::Cook; }) ||
           std::any_of(sheet.problem.tasks.begin(), sheet.problem.tasks.end(),
                       [&](const plan::Task& task) {
                           return task.dish == dish.id && task.kind == plan::TaskKind::Cook;
                       });
}

/// What the plan does with one dish.
struct Heating {
    std::optional<Instant> last;  ///< off the heat for the last time
    std::optional<Duration> every;
    std::optional<StationId> station;
};

Heating heatingOf(const DishId& dish, const RunSheet& sheet, const Outlook& outlook) {
    Heating heating;
    std::optional<Instant> latest;
    // What was on the heat is hot food to keep, also when its holding is left out with the dish.
    std::optional<Duration> everyWhenLeft;
    for (std::size_t i = 0; i < sheet.problem.tasks.size(); ++i) {
        const plan::Task& task = sheet.problem.tasks[i];
        if (task.dish != dish) continue;
        const auto tighten = [&](std::optional<Duration>& every) {
            if (task.checkEvery)
                every = std::min(every.value_or(*task.checkEvery), Duration{*task.checkEvery});
        };
        tighten(everyWhenLeft);
        if (outlook.tasks[i].state == TaskState::Skipped) continue;
        // A check that is due with the clock would never be due.
        const Instant finish = outlook.tasks[i].expectedFinish;
        if (!latest || *latest < finish) {
            latest = finish;
            heating.station = sheet.problem.stations[static_cast<std::size_t>(task.station)].id;
        }
        tighten(heating.every);
        if (task.kind != plan::TaskKind::Cook && task.kind != plan::TaskKind::Warm) continue;
        heating.last = std::max(heating.last.value_or(finish), finish);
    }
    if (heating.last) heating.every = everyWhenLeft;
    return heating;
}

/// From the bell until the guests have passed.
Instant serviceEnd(const Day& day, const Outlook& outlook, Instant serve) {
    Instant end = serve;
    const auto& tasks = day.sheet->problem.tasks;
    for (std::size_t i = 0; i < tasks.size(); ++i)
        if (tasks[i].kind == plan::TaskKind::Serve && outlook.tasks[i].state != TaskState::Skipped)
            end = std::max(end, outlook.tasks[i].expectedFinish);
    return end;
}

}  // namespace

std::vector<safety::FoodPlan> foodPlans(const Day& day, const Outlook& outlook) {
    std::vector<safety::FoodPlan> plans;
    if (!day.event || !day.sheet) return plans;
    const RunSheet& sheet = *day.sheet;
    const Instant serve = day.serve.value_or(sheet.bell);
    const Instant arrival =
        sheet.bell + sheet.problem.arrival.value_or(plan::firstStart(sheet.schedule));
    for (const event::Dish& dish : day.event->menu) {
        const Heating heating = heatingOf(dish.id, sheet, outlook);
        const bool isChilled = keepsAs(dish, event::Keeping::Chill);
        const bool ridesCold = isChilled || keepsAs(dish, event::Keeping::Cold);
        const bool ridesHot = keepsAs(dish, event::Keeping::HoldHot);
        const bool isKept = ridesCold || ridesHot || isRawAtFirst(dish.food);
        // Corn from the fire is held hot like everything else when its step asks for it.
        const bool isFresh = !isKept && heating.every && heating.last;
        if (!isKept && !isFresh) continue;
        const bool hasChafer =
            dish.serving && dish.serving->vessel && *dish.serving->vessel == event::Vessel::Chafer;
        safety::FoodPlan plan;
        plan.dish = dish.id;
        plan.rule.food = dish.food;
        plan.rule.isCookedHere = isToBeCooked(dish, sheet) && !isChilled && !ridesHot;
        if (!isFresh) plan.rule.since = arrival;
        plan.isFresh = isFresh;
        plan.arrivesHot = ridesHot && !ridesCold;
        plan.isServedHot = heating.last || hasChafer || plan.arrivesHot;
        plan.arrival = arrival;
        plan.cooked = heating.last;
        plan.serve = serve;
        plan.serviceEnd = serviceEnd(day, outlook, serve);
        plan.every = heating.every;
        plan.station = heating.station;
        plans.push_back(std::move(plan));
    }
    return plans;
}

}  // namespace cinder::live
