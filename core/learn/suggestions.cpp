#include "learn/suggestions.h"

#include <algorithm>
#include <cmath>

namespace cinder::learn {

namespace {

/// The tenth on either side. Source: normal distribution, from memory.
constexpr double kTenth = 1.2816;

/// Batches of one day that counted, and whether any was left out.
struct OneDay {
    double sum = 0;
    std::int32_t batches = 0;
    bool isInterrupted = false;
};

std::map<std::string, std::vector<Observed>> observedIn(const std::vector<PastDay>& past) {
    std::map<std::string, std::vector<Observed>> steps;
    for (const PastDay& day : past) {
        std::map<std::string, OneDay> today;
        for (const Actual& actual : day.actuals) {
            OneDay& step = today[actual.step];
            if (day.interrupted.count(actual.task) > 0) {
                step.isInterrupted = true;
                continue;
            }
            step.sum += logRatio(actual);
            ++step.batches;
        }
        for (const auto& [name, step] : today) {
            if (step.batches > 0)
                steps[name].push_back({step.sum / step.batches, false});
            else if (step.isInterrupted)
                steps[name].push_back({0, true});
        }
    }
    return steps;
}

/// To the half-minute, and never nothing.
Duration scaled(Duration length, double logarithm) {
    const auto grid = static_cast<double>(kLeastTime.count());
    const double ms = static_cast<double>(length.count()) * std::exp(logarithm);
    return kLeastTime * std::max<std::int64_t>(1, std::llround(ms / grid));
}

}  // namespace

double logRatio(const Actual& actual) {
    if (actual.actualLength <= Duration{0} || actual.plannedLength <= Duration{0}) return 0;
    return std::log(static_cast<double>(actual.actualLength.count()) /
                    static_cast<double>(actual.plannedLength.count()));
}

std::vector<Suggestion> suggestionsFor(const std::vector<plan::Task>& now,
                                       const std::vector<PastDay>& past) {
    const auto steps = observedIn(past);
    std::map<std::string, Suggestion> found;
    for (const plan::Task& task : now) {
        const std::string step = stepOf(task);
        const auto seen = steps.find(step);
        if (seen == steps.end() || found.count(step) > 0) continue;
        const Learned learned = learn(kDurationPrior, seen->second);
        const Duration planned = task.duration.usual;
        Suggestion suggestion{step, task.name, planned, scaled(planned, learned.mean)};
        suggestion.low = scaled(planned, learned.mean - kTenth * learned.deviation);
        suggestion.high = scaled(planned, learned.mean + kTenth * learned.deviation);
        suggestion.events = learned.events;
        suggestion.interrupted = learned.interrupted;
        const Duration change = std::chrono::abs(suggestion.learned - planned);
        if (learned.events == 0 || std::abs(learned.mean) < kLeastChange || change < kLeastTime)
            continue;
        found.emplace(step, std::move(suggestion));
    }
    std::vector<Suggestion> suggestions;
    suggestions.reserve(found.size());
    for (auto& [step, suggestion] : found)
        suggestions.push_back(std::move(suggestion));
    return suggestions;
}

}  // namespace cinder::learn
