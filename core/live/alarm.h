#pragma once

/// Timers and alarms as values. A timer is an instant and a name; whether it rings is a comparison
/// with now. Nothing counts down in memory, so killing the app, sleeping or restarting changes
/// nothing.

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/id.h"
#include "base/time.h"

namespace cinder::live {

enum class TimerKind : std::uint8_t {
    Turn,      ///< turn the batch
    Pull,      ///< take the batch off the grate
    RestOver,  ///< the rest is over, slicing may begin
    StartNow,  ///< a task must be begun now
    Check,     ///< measure a temperature
};

/// What a timer that has no task calls for; those of tasks are told by their kind.
enum class TimerOccasion : std::uint8_t {
    Work,         ///< it has a task
    CheckAtFire,  ///< measure what has just been cooked
    Check,        ///< measure what is held, served or cooled
    Discard,      ///< its time control is over
    NextPan,      ///< start the next pan, before the one on the line is empty
};

struct Timer {
    /// The same on every device: "turn:lamb/cook/1:3". Acknowledgements name it.
    std::string name;
    TimerKind kind = TimerKind::Turn;
    TimerOccasion occasion = TimerOccasion::Work;
    TaskId task;
    /// For a turn: which one, from 1; and how many there are.
    std::optional<std::int32_t> number;
    std::optional<std::int32_t> count;
    /// For the food-safety record, which has no task: the dish, and its pan from 1 when there is
    /// one to read; `count` says how many are due together.
    std::optional<DishId> dish;
    std::optional<std::int32_t> pan;
    Instant due;
    /// When somebody silenced it; the thing itself may still be to do.
    std::optional<Instant> acknowledged;

    [[nodiscard]] bool isRinging(Instant now) const { return !acknowledged && now >= due; }
    friend bool operator==(const Timer&, const Timer&) = default;
};

/// The task whose timer has this name; of a timer of the food-safety record, which has no task, a
/// word that no task has.
[[nodiscard]] TaskId taskOfTimer(std::string_view name);

/// How loud a timer is by now: 0 when it does not ring, 1 at once, growing to 5. Doubles its
/// insistence about every fifteen seconds, because a crew that did not hear the first call has its
/// hands full.
[[nodiscard]] int loudness(const Timer& timer, Instant now);

}  // namespace cinder::live
