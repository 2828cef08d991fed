#include "learn/lessons.h"

#include <algorithm>
#include <cmath>

#include "event/json.h"
#include "event/limits.h"

namespace cinder::learn {

namespace {

/// The tenth on either side. Source: normal distribution, from memory.
constexpr double kTenth = 1.2816;

std::int32_t scaledTake(std::int32_t planned, double logarithm) {
    const long percent = std::lround(planned * std::exp(logarithm));
    return static_cast<std::int32_t>(
        std::clamp<long>(percent, event::kPercentRange.low, event::kPercentRange.high));
}

Duration onGrid(double milliseconds) {
    const auto grid = static_cast<double>(kLeastTime.count());
    return kLeastTime * std::max<std::int64_t>(1, std::llround(milliseconds / grid));
}

event::Estimate drawnTo(event::Estimate estimate, Duration usual) {
    const double ratio =
        static_cast<double>(usual.count()) / static_cast<double>(estimate.usual.count());
    const auto along = [&](Duration edge) {
        return onGrid(static_cast<double>(edge.count()) * ratio);
    };
    estimate.low = std::min(along(estimate.low), usual);
    estimate.high = std::max(along(estimate.high), usual);
    estimate.usual = usual;
    return estimate;
}

event::Step* findStep(event::Event& event, const std::string& name) {
    const auto in = [&](std::vector<event::Step>& steps, const auto& nameOf) -> event::Step* {
        const auto found = std::find_if(steps.begin(), steps.end(), [&](const event::Step& step) {
            return nameOf(step) == name;
        });
        return found == steps.end() ? nullptr : &*found;
    };
    for (event::Dish& dish : event.menu)
        if (auto* step = in(dish.method, [&](const event::Step& one) {
                return event::fullName(dish.id, one.id).text();
            }))
            return step;
    return in(event.work, [](const event::Step& one) { return one.id.text(); });
}

/// What follows `prefix` in `figure`; nothing when it does not begin so.
std::optional<std::string> after(const std::string& figure, std::string_view prefix) {
    if (!figure.starts_with(prefix)) return std::nullopt;
    return figure.substr(prefix.size());
}

constexpr std::string_view kLength = "length/";
constexpr std::string_view kTake = "take/";

bool set(event::Event& event, const std::string& figure, std::int64_t value) {
    if (const auto step = after(figure, kLength)) {
        event::Step* found = findStep(event, *step);
        const auto minutes = static_cast<double>(value) / 60'000;
        if (!found || minutes < event::kStepMinutes.low || minutes > event::kStepMinutes.high)
            return false;
        found->duration = drawnTo(found->duration, onGrid(static_cast<double>(value)));
        return true;
    }
    const auto dish = after(figure, kTake);
    if (!dish || value < event::kPercentRange.low || value > event::kPercentRange.high)
        return false;
    for (event::Dish& one : event.menu) {
        if (one.id.text() != *dish || !one.serving) continue;
        one.serving->takePercent = static_cast<std::int32_t>(value);
        return true;
    }
    return false;
}

}  // namespace

std::string lengthFigure(const std::string& step) {
    return std::string(kLength) + step;
}

std::string takeFigure(const DishId& dish) {
    return std::string(kTake) + dish.text();
}

std::vector<TakeSuggestion> takesFor(const event::Event& event,
                                     const std::vector<std::vector<Appetite>>& past) {
    std::vector<TakeSuggestion> suggestions;
    for (const event::Dish& dish : event.menu) {
        if (!dish.serving) continue;
        const std::int32_t planned = dish.serving->takePercent.value_or(100);
        std::vector<Observed> seen;
        for (const auto& day : past)
            for (const Appetite& appetite : day) {
                if (appetite.name != dish.name) continue;
                // Against the plan as it is now: see suggestions.cpp.
                const double ratio = std::log(std::max(0.01, appetite.percentTaken() / planned));
                if (!appetite.isAtLeast || ratio >= 0) seen.push_back({ratio, false});
            }
        const Learned learned = learn(kAppetitePrior, seen);
        if (learned.events == 0 || std::abs(learned.mean) < kLeastChange) continue;
        TakeSuggestion suggestion{dish.id, dish.name};
        suggestion.planned = planned;
        suggestion.learned = scaledTake(suggestion.planned, learned.mean);
        suggestion.low = scaledTake(suggestion.planned, learned.mean - kTenth * learned.deviation);
        suggestion.high = scaledTake(suggestion.planned, learned.mean + kTenth * learned.deviation);
        suggestion.events = learned.events;
        if (suggestion.learned != suggestion.planned) suggestions.push_back(std::move(suggestion));
    }
    return suggestions;
}

event::Event applied(event::Event event, const std::map<std::string, live::Lesson>& lessons) {
    for (const auto& [figure, lesson] : lessons) {
        if (!lesson.isAccepted) continue;
        event::Event changed = event;
        if (!set(changed, figure, lesson.value)) continue;
        if (event::findFaults(changed).size() <= event::findFaults(event).size())
            event = std::move(changed);
    }
    return event;
}

}  // namespace cinder::learn
