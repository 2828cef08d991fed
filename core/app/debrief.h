#pragma once

/// The day looked back upon: planned against actual, and what it teaches for the next event made
/// from this one. Finished values.

#include <cstdint>
#include <string>
#include <vector>

#include "learn/lessons.h"

namespace cinder::app {

/// So many past events are looked at, the latest first. Our choice: two seasons.
inline constexpr std::size_t kPastEvents = 30;

struct TaskReview {
    learn::Actual actual;
    bool isInterrupted = false;
    friend bool operator==(const TaskReview&, const TaskReview&) = default;
};

struct LessonCard {
    enum class Kind : std::uint8_t {
        Length,  ///< of a step; values in milliseconds
        Take,    ///< of a dish; values in percent of the guests
    };
    enum class Answer : std::uint8_t { None, Accepted, Ignored };
    std::string figure;
    Kind kind = Kind::Length;
    LocalText name;
    std::int64_t planned = 0;
    std::int64_t learned = 0;
    /// Edges between which the mean lies four times of five.
    std::int64_t low = 0;
    std::int64_t high = 0;
    std::int32_t events = 0;       ///< that support it
    std::int32_t interrupted = 0;  ///< that were left out
    Answer answer = Answer::None;
    friend bool operator==(const LessonCard&, const LessonCard&) = default;
};

/// The pans of one dish, planned and begun.
struct PanUse {
    LocalText dish;
    std::int32_t planned = 0;
    std::int32_t used = 0;
    friend bool operator==(const PanUse&, const PanUse&) = default;
};

struct Debrief {
    std::vector<TaskReview> tasks;  ///< by actual start
    std::vector<LessonCard> lessons;
    std::vector<PanUse> pans;
    /// Past events that taught something, this one among them.
    std::int32_t events = 0;
    /// A rehearsal is looked back upon, and teaches nothing.
    bool isRehearsal = false;
    friend bool operator==(const Debrief&, const Debrief&) = default;
};

}  // namespace cinder::app
