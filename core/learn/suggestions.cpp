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
    std::int32_t guests = 0;
};

std::map<StepKey, std::vector<OneDay>> daysOf(const std::vector<PastDay>& past) {
    std::map<StepKey, std::vector<OneDay>> steps;
    for (const PastDay& day : past) {
        std::map<StepKey, OneDay> today;
        for (const Actual& actual : day.actuals) {
            OneDay& step = today[keyOf(actual.step, actual.name, actual.dish)];
            step.guests = day.guests;
            if (day.interrupted.count(actual.task) > 0) {
                step.isInterrupted = true;
            } else if (actual.actualLength > Duration{0}) {
                step.sum += std::log(static_cast<double>(actual.actualLength.count()));
                ++step.batches;
            }
        }
        for (const auto& [key, step] : today)
            if (step.batches > 0 || step.isInterrupted) steps[key].push_back(step);
    }
    return steps;
}

bool isLike(std::int32_t guests, std::int32_t then) {
    if (guests <= 0 || then <= 0) return true;
    return std::max(guests, then) <= kLikeGuests * std::min(guests, then);
}

bool isByTheBatch(const plan::Task& task) {
    return stepOf(task) != task.id.text();
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
                                       const std::vector<PastDay>& past,
                                       const std::optional<event::Event>& event) {
    const auto steps = daysOf(past);
    const std::int32_t guests = event ? event::headCount(event->guests) : 0;
    std::map<std::string, Suggestion> found;
    for (const plan::Task& task : now) {
        const std::string step = stepOf(task);
        const auto seen = steps.find(keyOf(step, task.name, dishNameOf(task, event)));
        const Duration planned = task.duration.usual;
        if (seen == steps.end() || found.count(step) > 0 || planned <= Duration{0}) continue;
        std::vector<OneDay> days = seen->second;
        if (!isByTheBatch(task))
            std::erase_if(days, [&](const OneDay& day) { return !isLike(guests, day.guests); });
        const Learned learned = learn(kDurationPrior, against(planned, days));
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
