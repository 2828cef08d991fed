#pragma once

/// Makes what rings in the core heard and felt. Holds no alarm itself: it compares the day with
/// the devices and calls them.

#include <optional>
#include <set>
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
    /// How long until the next pattern is to be played; nothing while nothing calls. A beat that
    /// comes with the next second would be up to a second late.
    [[nodiscard]] std::optional<Duration> untilNext() const;

  private:
    void play(const live::Timer& timer, int loudness);

    Devices devices_;
    const Clock& clock_;
    std::set<std::string> calling_;  ///< all that called at the last beat, played or drowned
    std::string playing_;
    std::optional<Duration> playedAt_;
    Duration pause_{0};
    bool isHeld_ = false;
};

}  // namespace cinder::face
