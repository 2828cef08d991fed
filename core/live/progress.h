#pragma once

/// What is taken as fact about each task at one instant: what people said, and what follows from
/// it for tasks that nobody has hands on. Meat begins to rest when it comes off the grate, coals
/// begin to burn in when they are lit, and neither waits for somebody to say so.

#include <optional>
#include <vector>

#include "live/day.h"

namespace cinder::live {

struct Progress {
    std::optional<Instant> started;
    std::optional<Instant> finished;
    bool isSkipped = false;
    /// The highest turn that was done.
    std::int32_t turnsDone = 0;

    /// It is over, one way or the other.
    [[nodiscard]] bool isOut() const { return finished || isSkipped; }
    [[nodiscard]] bool isRunning() const { return started && !isOut(); }
    friend bool operator==(const Progress&, const Progress&) = default;
};

/// One per task of the sheet, in its order. Beyond what was said:
///   - a task without hands starts when everything it follows has happened;
///   - a task that ends by itself ends when its usual time is over;
///   - a task without hands has ended when a task that follows its finish has begun;
///   - a task without hands is skipped when all that it follows was skipped.
[[nodiscard]] std::vector<Progress> progressAt(const Day& day, const RunSheet& sheet, Instant now);

/// Per task of the sheet: whether it is skipped, by what was said or by what follows from it.
[[nodiscard]] std::vector<bool> skippedIn(const Day& day, const RunSheet& sheet);

/// When the usual time of a task that began at `started` is over: for a task on the grate the
/// moment to take it off, for any other its end.
[[nodiscard]] Instant usualEnd(const plan::Task& task, Instant started);

/// True when nobody has hands on it.
[[nodiscard]] inline bool isStanding(const plan::Task& task) {
    return task.hands.empty();
}

/// True when its end asks for a person who is not at it: coals to look at, a batch to take off.
[[nodiscard]] bool waitsForAWord(const plan::Task& task);

/// When what a link asks of `link.to` is given, by facts alone; nothing while it is not.
[[nodiscard]] std::optional<Instant> releasedAt(const plan::Link& link,
                                                const std::vector<Progress>& progress,
                                                const Day& day, const RunSheet& sheet);

}  // namespace cinder::live
