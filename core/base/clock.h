#pragma once

/// The one way to learn what time it is.
///
/// Pure code is handed an `Instant`; only `app/` asks a `Clock`. Two readings are offered because
/// they answer different questions: the wall clock can be set by a person or a network, while the
/// running time counts evenly from some fixed moment, sleep included, and can tell a wall clock
/// that jumped from a device that slept.

#include "base/time.h"

namespace cinder {

class Clock {
  public:
    Clock() = default;
    Clock(const Clock&) = delete;
    Clock& operator=(const Clock&) = delete;
    virtual ~Clock() = default;

    /// What the wall clock shows.
    [[nodiscard]] virtual Instant wall() const = 0;
    /// Time since some fixed moment of this boot. Goes on during sleep, never back.
    [[nodiscard]] virtual Duration running() const = 0;
};

/// The device's clocks. The only place in the core that reads them.
class SystemClock final : public Clock {
  public:
    [[nodiscard]] Instant wall() const override;
    [[nodiscard]] Duration running() const override;
};

/// A clock that moves when told to: tests, and the deterministic part of a rehearsal.
class SimulatedClock final : public Clock {
  public:
    explicit SimulatedClock(Instant start) : wall_(start) {}

    [[nodiscard]] Instant wall() const override { return wall_; }
    [[nodiscard]] Duration running() const override { return running_; }

    /// Both readings move on together, as when time simply passes.
    void advance(Duration by) {
        wall_ += by;
        running_ += by;
    }
    /// Only the wall clock moves, as when somebody sets it.
    void setWall(Instant wall) { wall_ = wall; }

  private:
    Instant wall_;
    Duration running_{0};
};

/// A clock that plays an event faster or slower than the real one: at `anchor.real` it shows
/// `anchor.shown`, and from there `speed` milliseconds pass for each real one. It holds no state
/// of its own, so a rehearsal that was killed goes on where the real time says it should be.
class RehearsalClock final : public Clock {
  public:
    struct Anchor {
        Instant real;
        Instant shown;
        /// 1 is real time; 120 plays two hours in a minute; 0 stands still.
        int speed = 1;
        friend bool operator==(const Anchor&, const Anchor&) = default;
    };

    /// `real` must outlive this clock.
    RehearsalClock(const Clock& real, Anchor anchor) : real_(real), anchor_(anchor) {}

    [[nodiscard]] Instant wall() const override {
        return anchor_.shown + (real_.wall() - anchor_.real) * anchor_.speed;
    }
    /// A rehearsal has no sleep to tell from a jump, so its running time is its wall time.
    [[nodiscard]] Duration running() const override { return wall().time_since_epoch(); }
    [[nodiscard]] const Anchor& anchor() const { return anchor_; }

  private:
    const Clock& real_;
    Anchor anchor_;
};

}  // namespace cinder
