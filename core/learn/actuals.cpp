#include "learn/actuals.h"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "learn/suggestions.h"

namespace cinder::learn {

std::string stepOf(const plan::Task& task) {
    const std::string& text = task.id.text();
    return task.batch ? text.substr(0, text.rfind('/')) : text;
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
        actual.batch = task.batch;
        actual.plannedStart = day.sheet->schedule.tasks[i].start;
        actual.plannedLength = task.duration.usual;
        actual.actualStart = *started - bell;
        actual.actualLength = *finished - *started;
        actual.isSuspect = isSuspect(kDurationPrior, logRatio(actual));
        actuals.push_back(std::move(actual));
    }
    std::stable_sort(actuals.begin(), actuals.end(), [](const Actual& a, const Actual& b) {
        return std::tie(a.actualStart, a.task) < std::tie(b.actualStart, b.task);
    });
    return actuals;
}

}  // namespace cinder::learn
