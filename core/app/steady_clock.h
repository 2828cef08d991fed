#pragma once

/// The wall clock as it was when the app started, carried on evenly.
///
/// A person, a network or a flat button cell can set a device's wall clock in the middle of a day.
/// Timers are instants, so following such a jump would move every one of them against the meat.
/// This clock does not follow: it goes on from the reading it was made with, by the running time.
/// Small corrections, as a time service makes them, are followed. After a restart only the wall
/// clock and what is written exist: the wall clock is taken as it is unless it lies before the last
/// thing written. A clock that lost its battery must not turn a discard into something yet to come.

#include "base/clock.h"

namespace cinder::app {

class SteadyClock final : public Clock {
  public:
    /// `device` must outlive this clock.
    explicit SteadyClock(const Clock& device);

    [[nodiscard]] Instant wall() const override;
    [[nodiscard]] Duration running() const override { return device_.running(); }
    /// What it shows for an event of which nothing is written yet.
    [[nodiscard]] Instant wallOfNewEvent() const;

    /// Never shows less than `written`, the last thing known to have happened, and goes on evenly
    /// from there. Returns how far that is ahead; at least `ahead`, what it was found to be before.
    Duration goOnFrom(Instant written, Duration ahead);
    /// Compares the two readings; call it regularly. Follows a drift, takes note of a jump.
    void compare();
    /// How far the wall clock was set ahead (or back) since this clock was made, or shows less than
    /// what was written before.
    [[nodiscard]] Duration jump() const;
    /// From here on shows what the wall clock shows.
    void followWall();

  private:
    const Clock& device_;
    Instant base_;       ///< what this clock shows at running time zero
    Duration jump_{0};   ///< the wall clock shows this much more
    Duration ahead_{0};  ///< this clock shows this much more, lest it run back over what is written
};

}  // namespace cinder::app
