#include "learn/actuals.h"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "learn/suggestions.h"

namespace cinder::learn {

namespace {

/// Work that may be split is paused for other work. How long it was is not known better than
/// between all the planned pauses and none.
Duration workOf(const plan::Task& task, const plan::PlannedTask& planned, Duration took) {
    const Duration usual = task.duration.usual;
    if (!task.shortestPiece) return took;
    const Duration pauses = std::max(Duration{0}, Duration{planned.finish - planned.start} - usual);
    return std::clamp(usual, std::max(Duration{0}, took - pauses), took);
}

}  // namespace

std::string stepOf(const plan::Task& task) {
    const std::string& text = task.id.text();
    const auto number = text.rfind('/');
    // An id has no slash in it: dish, step and batch have two.
    const bool isNumbered = task.batch || (task.dish && text.find('/') < number);
    return isNumbered && number != std::string::npos ? text.substr(0, number) : text;
}

StepKey keyOf(const std::string& step, const LocalText& name, const LocalText& dish) {
    const auto slash = step.find('/');
    return {slash == std::string::npos ? step : step.substr(slash + 1), name, dish};
}

LocalText dishNameOf(const plan::Task& task, const std::optional<event::Event>& event) {
    if (event && task.dish)
        for (const event::Dish& dish : event->menu)
            if (dish.id == *task.dish) return dish.name;
    return {};
}

std::vector<Actual> actualsOf(const live::Day& day) {
    std::vector<Actual> actuals;
    if (!day.sheet) return actuals;
    const auto& tasks = day.sheet->problem.tasks;
    const Instant bell = day.serve.value_or(day.sheet->bell);
    for (std::size_t i = 0; i < tasks.size(); ++i) {
        const plan::Task& task = tasks[i];
        const auto facts = day.tasks.find(task.id);
        if (facts == day.tasks.end() || task.endsByItself) continue;
        const auto& [started, finished] = std::tie(facts->second.started, facts->second.finished);
        if (!started || !finished || *finished < *started) continue;
        Actual actual;
        actual.task = task.id;
        actual.step = stepOf(task);
        actual.name = task.name;
        actual.dish = dishNameOf(task, day.event);
        actual.batch = task.batch;
        actual.plannedStart = day.sheet->schedule.tasks[i].start;
        actual.plannedLength = task.duration.usual;
        actual.actualStart = *started - bell;
        actual.actualLength = workOf(task, day.sheet->schedule.tasks[i], *finished - *started);
        actual.isSuspect = isSuspect(kDurationPrior, logRatio(actual));
        actuals.push_back(std::move(actual));
    }
    std::stable_sort(actuals.begin(), actuals.end(), [](const Actual& a, const Actual& b) {
        return std::tie(a.actualStart, a.task) < std::tie(b.actualStart, b.task);
    });
    return actuals;
}

}  // namespace cinder::learn
