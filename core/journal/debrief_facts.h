#pragma once

/// What a person says after the day: which times do not count, and what is taken from it into the
/// next event.

#include <cstdint>
#include <string>

#include "base/id.h"
#include "base/time.h"

namespace cinder::journal {

/// Something came between (rain, a telephone call): the task's time says nothing about its work. Or
/// it does after all.
struct TaskInterrupted {
    TaskId task;
    bool isInterrupted = true;
    Instant at;
    friend bool operator==(const TaskInterrupted&, const TaskInterrupted&) = default;
};

/// A figure that was learnt is taken into the next event made from this one, or left. `figure` and
/// `value` as in learn/lessons.h.
struct LessonAnswered {
    std::string figure;
    bool isAccepted = false;
    std::int64_t value = 0;
    Instant at;
    friend bool operator==(const LessonAnswered&, const LessonAnswered&) = default;
};

}  // namespace cinder::journal
