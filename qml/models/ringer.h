#pragma once

/// Makes what rings in the core heard and felt. Holds no alarm itself: it compares the day with
/// the devices and calls them.

#include <optional>
#include <string>

#include "app/snapshot.h"
#include "base/clock.h"
#include "face.h"

namespace cinder::face {

class Ringer {
  public:
    Ringer(Devices devices, const Clock& clock) : devices_(devices), clock_(clock) {}
    /// Called at every beat. Plays the next pattern when the last has had its time: every 4 s at
    /// first, every 1.5 s at its loudest; a new call is played at once.
    void attend(const app::Snapshot* day);

  private:
    Devices devices_;
    const Clock& clock_;
    std::string playing_;
    std::optional<Duration> playedAt_;
    bool isHeld_ = false;
};

}  // namespace cinder::face
