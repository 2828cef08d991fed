#include "quantity/kitchen.h"

#include <algorithm>

namespace cinder::quantity {

namespace {

using What = event::Fault::What;

std::string minutesText(Duration span) {
    return std::to_string(std::chrono::duration_cast<std::chrono::minutes>(span).count());
}

KitchenTask task(const event::Event& event, const event::Dish& dish, const event::Ahead& ahead,
                 const DishFigures& figures) {
    KitchenTask made;
    made.dish = dish.id;
    made.step = ahead.id;
    made.dishName = dish.name;
    made.name = ahead.name;
    made.finishBy = event.serve.at - ahead.beforeServe;
    if (ahead.duration) made.startBy = made.finishBy - *ahead.duration;
    made.then = ahead.then;
    made.weight = figures.weight;
    for (const KeepingLimit& limit : keepingLimits()) {
        if (limit.keeping != ahead.then) continue;
        std::optional<Instant> by;
        if (limit.within != Duration{0}) by = made.finishBy + limit.within;
        made.deadlines.push_back({by, limit.temperature, limit.isAtMost, limit.source});
    }
    return made;
}

/// When it may ride: finished, and as cold as its last limit asks.
Instant readyToRide(const KitchenTask& task) {
    Instant ready = task.finishBy;
    for (const Deadline& deadline : task.deadlines)
        if (deadline.by) ready = std::max(ready, *deadline.by);
    return ready;
}

}  // namespace

const std::vector<KeepingLimit>& keepingLimits() {
    using event::Keeping;
    using std::chrono::hours;
    static const std::vector<KeepingLimit> kLimits{
        {Keeping::Chill, Temperature::fromFahrenheit(70), true, hours{2},
         "FDA Food Code 2022, 3-501.14(A)(1)"},
        {Keeping::Chill, Temperature::fromFahrenheit(41), true, hours{6},
         "FDA Food Code 2022, 3-501.14(A)(2)"},
        {Keeping::Cold, Temperature::fromFahrenheit(41), true, hours{4},
         "FDA Food Code 2022, 3-501.14(B)"},
        {Keeping::HoldHot, Temperature::fromFahrenheit(135), false, hours{0},
         "FDA Food Code 2022, 3-501.16(A)(1)"}};
    return kLimits;
}

std::vector<KitchenTask> kitchenList(Tally& tally, const std::vector<DishFigures>& dishes,
                                     const std::optional<Departure>& departure) {
    const event::Event& event = tally.event();
    std::vector<KitchenTask> list;
    for (std::size_t i = 0; i < event.menu.size(); ++i) {
        for (std::size_t k = 0; k < event.menu[i].ahead.size(); ++k) {
            const event::Ahead& ahead = event.menu[i].ahead[k];
            list.push_back(task(event, event.menu[i], ahead, dishes[i]));
            if (!departure || readyToRide(list.back()) <= departure->leaveBy) continue;
            const Duration least = event.serve.at - departure->leaveBy + ahead.beforeServe +
                                   (readyToRide(list.back()) - event.serve.at);
            tally.blame(
                What::OutOfRange,
                "/menu/" + std::to_string(i) + "/ahead/" + std::to_string(k) + "/minutesBefore",
                minutesText(ahead.beforeServe), minutesText(least) + "..4320");
        }
    }
    std::stable_sort(list.begin(), list.end(), [](const KitchenTask& a, const KitchenTask& b) {
        return a.finishBy < b.finishBy;
    });
    return list;
}

}  // namespace cinder::quantity
