#include "learn/suggestions.h"

#include <algorithm>
#include <cmath>

namespace cinder::learn {

namespace {

/// The tenth on either side. Source: normal distribution, from memory.
constexpr double kTenth = 1.2816;

/// What the batches of one day took in the mean; nothing when all that counted were left out.
struct OneDay {
    double sum = 0;  ///< of the logarithms of their lengths
    std::int32_t batches = 0;
    bool isInterrupted = false;
};

std::map<std::string, std::vector<OneDay>> daysOf(const std::vector<PastDay>& past) {
    std::map<std::string, std::vector<OneDay>> steps;
    for (const PastDay& day : past) {
        std::map<std::string, OneDay> today;
        for (const Actual& actual : day.actuals) {
            OneDay& step = today[actual.step];
            if (day.interrupted.count(actual.task) > 0) {
                step.isInterrupted = true;
            } else if (actual.actualLength > Duration{0}) {
                step.sum += std::log(static_cast<double>(actual.actualLength.count()));
                ++step.batches;
            }
        }
        for (const auto& [name, step] : today)
            if (step.batches > 0 || step.isInterrupted) steps[name].push_back(step);
    }
    return steps;
}

/// Against the plan as it is now. Against the plan of its own day, what was accepted since then
/// would be learnt a second time.
std::vector<Observed> against(Duration planned, const std::vector<OneDay>& days) {
    const double now = std::log(static_cast<double>(planned.count()));
    std::vector<Observed> seen;
    seen.reserve(days.size());
    for (const OneDay& day : days)
        seen.push_back(day.batches > 0 ? Observed{day.sum / day.batches - now, false}
                                       : Observed{0, true});
    return seen;
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
    const auto steps = daysOf(past);
    std::map<std::string, Suggestion> found;
    for (const plan::Task& task : now) {
        const std::string step = stepOf(task);
        const auto seen = steps.find(step);
        const Duration planned = task.duration.usual;
        if (seen == steps.end() || found.count(step) > 0 || planned <= Duration{0}) continue;
        const Learned learned = learn(kDurationPrior, against(planned, seen->second));
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
