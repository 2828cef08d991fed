#pragma once

/// What the days before this one suggest for the next: for each step a usual length, with the
/// events that support it. Suggestions are taken or left by a person, one by one.

#include <map>
#include <set>
#include <string>
#include <vector>

#include "learn/actuals.h"
#include "learn/shrinkage.h"

namespace cinder::learn {

/// About the logarithm of actual over planned now, so that twice as long weighs like half as long:
/// before any event the plan is believed to be right to a quarter, and a single event to lie within
/// three tenths of its mean. Common practice - no source.
inline constexpr Prior kDurationPrior{0, 0.25, 0.3};

/// Smaller differences are no news: 5 %, or half a minute, which is the grid of the plan.
inline constexpr double kLeastChange = 0.05;
inline constexpr Duration kLeastTime = std::chrono::seconds{30};

struct Suggestion {
    std::string step;
    LocalText name;
    Duration planned{0};
    Duration learned{0};  ///< to the half-minute
    /// Edges between which the step's mean lies four times of five.
    Duration low{0};
    Duration high{0};
    std::int32_t events = 0;
    std::int32_t interrupted = 0;
    friend bool operator==(const Suggestion&, const Suggestion&) = default;
};

/// One day's tasks, and those of them that somebody marked as interrupted.
struct PastDay {
    std::vector<Actual> actuals;
    std::set<TaskId> interrupted;
    std::int32_t guests = 0;  ///< that were planned for; 0: not known
};

/// What took long for many guests says nothing of few: a day counts when it had at most so many
/// times as many guests as this one, or as few. A batch is as large as the grate, so that for work
/// in batches every day counts. Our choice.
inline constexpr double kLikeGuests = 1.3;

/// ln(actual / planned); 0 when either is nothing.
[[nodiscard]] double logRatio(const Actual& actual);

/// For each step of `now` that was seen before and whose learned length differs enough. What it
/// took is held against `now`, whatever was planned on its own day. Batches of one day count as one
/// event: their mean. `event` says what the dishes of `now` are called and how many guests come; a
/// step was seen before when it and its dish had the same names (`StepKey`). By id of the step.
[[nodiscard]] std::vector<Suggestion> suggestionsFor(const std::vector<plan::Task>& now,
                                                     const std::vector<PastDay>& past,
                                                     const std::optional<event::Event>& event = {});

}  // namespace cinder::learn
