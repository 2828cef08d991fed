#include "learn/methods.h"

#include <algorithm>
#include <cmath>

#include "learn/lessons.h"

namespace cinder::learn {

namespace {

using Kind = MethodChange::Kind;

std::int64_t takeOf(const event::Dish& dish) {
    return dish.serving ? dish.serving->takePercent.value_or(100) : 100;
}

std::int64_t pullOf(const event::Dish& dish) {
    return dish.pullAt ? std::llround(dish.pullAt->celsius() * 1000) : 0;
}

std::vector<MethodChange> changesBetween(const event::Dish& before, const event::Dish& after) {
    std::vector<MethodChange> changes;
    const auto compare = [&](Kind kind, std::int64_t was, std::int64_t is, LocalText step = {}) {
        if (was != is) changes.push_back({kind, std::move(step), was, is});
    };
    compare(Kind::Steps, static_cast<std::int64_t>(before.method.size()),
            static_cast<std::int64_t>(after.method.size()));
    for (const event::Step& step : after.method) {
        const auto was = std::find_if(before.method.begin(), before.method.end(),
                                      [&](const event::Step& one) { return one.id == step.id; });
        if (was != before.method.end())
            compare(Kind::Length, was->duration.usual.count(), step.duration.usual.count(),
                    step.name);
    }
    compare(Kind::Take, takeOf(before), takeOf(after));
    compare(Kind::Pull, pullOf(before), pullOf(after));
    return changes;
}

/// The method alone, without what belongs to the event it was in.
event::Dish bare(event::Dish dish) {
    dish.id = DishId("dish");
    dish.order = 1;
    for (event::Step& step : dish.method) {
        step.after.clear();
        step.onGrates.clear();
        step.uses.clear();
    }
    return dish;
}

void add(MethodHistory& history, MethodVersion version) {
    if (!history.versions.empty()) {
        const event::Dish& before = history.versions.back().dish;
        if (bare(before) == bare(version.dish)) return;
        version.changes = changesBetween(before, version.dish);
    }
    history.versions.push_back(std::move(version));
}

}  // namespace

std::vector<MethodHistory> methodHistories(std::vector<DescribedEvent> events) {
    std::stable_sort(events.begin(), events.end(),
                     [](const DescribedEvent& a, const DescribedEvent& b) {
                         return a.event.serve.at < b.event.serve.at;
                     });
    std::vector<MethodHistory> histories;
    const auto historyOf = [&](const LocalText& name) -> MethodHistory& {
        const auto known = std::find_if(histories.begin(), histories.end(),
                                        [&](const MethodHistory& one) { return one.name == name; });
        if (known != histories.end()) return *known;
        MethodHistory fresh;
        fresh.name = name;
        return histories.emplace_back(std::move(fresh));
    };
    for (const DescribedEvent& one : events) {
        const event::Event learnt = applied(one.event, one.lessons);
        for (std::size_t i = 0; i < one.event.menu.size(); ++i) {
            MethodHistory& history = historyOf(one.event.menu[i].name);
            ++history.events;
            history.lastServe = one.event.serve;
            const auto version = [&](const event::Dish& dish, bool isLearnt) {
                return MethodVersion{one.event.id, one.event.name, one.event.serve,
                                     dish,         isLearnt,       {}};
            };
            add(history, version(one.event.menu[i], false));
            add(history, version(learnt.menu[i], true));
        }
    }
    for (MethodHistory& history : histories)
        std::reverse(history.versions.begin(), history.versions.end());
    std::stable_sort(histories.begin(), histories.end(),
                     [](const MethodHistory& a, const MethodHistory& b) {
                         return a.lastServe.at > b.lastServe.at;
                     });
    return histories;
}

}  // namespace cinder::learn
