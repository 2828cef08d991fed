#pragma once

/// One piece on the grate: the faces change places at every turn, until it is pulled and rests.
///
/// The first face down is z = 0 of the slab. Time runs from the moment the piece is laid.

#include <functional>

#include "cook/slab.h"

namespace cinder::cook {

/// When a piece is turned: the turns that were made, then one every `every` after the last of them
/// (or after laying). Without `every` it is not turned again.
struct Turning {
    std::vector<Duration> made{};  ///< ascending, after laying
    std::optional<Duration> every{};
    /// When the piece changes its place on the grate without being turned; ascending.
    std::vector<Duration> moves{};

    /// The first turn later than `after`; nothing when there is none.
    [[nodiscard]] std::optional<Duration> next(Duration after) const;
    /// The first move later than `after`, if it comes before `until`.
    [[nodiscard]] Duration moveBefore(Duration after, Duration until) const;
};

/// What the face towards the fire sees between two instants of the run: fires change.
using FireOver = std::function<Side(Duration from, Duration to)>;
/// A fire that does not change.
[[nodiscard]] FireOver steadyFire(Side side);

class GrillRun {
  public:
    GrillRun(Slab slab, FireOver fire, Side air, Turning turning);

    /// Lets time pass up to `until` after laying; nothing happens if that is already past.
    void advanceTo(Duration until);
    /// Lets time pass until the coldest place reaches `target`, to the millisecond. False when
    /// `latest` comes first.
    [[nodiscard]] bool advanceUntil(Temperature target, Duration latest);

    [[nodiscard]] Duration elapsed() const { return elapsed_; }
    [[nodiscard]] const Slab& slab() const { return slab_; }
    [[nodiscard]] Temperature hottestFace() const;
    [[nodiscard]] int turns() const { return turns_; }
    /// Whether the face that was laid down first is towards the fire now.
    [[nodiscard]] bool firstFaceDown() const { return turns_ % 2 == 0; }
    /// Called after every step with the time since laying in seconds and the slab.
    void onStep(std::function<void(double, const Slab&)> watch) { watch_ = std::move(watch); }

  private:
    bool pass(Duration until, std::optional<double> target);

    Slab slab_;
    FireOver fire_;
    Side air_;
    Turning turning_;
    Duration elapsed_{0};
    int turns_ = 0;
    double hottestFace_;
    std::function<void(double, const Slab&)> watch_;
};

/// The highest middle temperature of a piece at rest.
struct RestPeak {
    Temperature middle;
    Duration afterPull{0};
};

/// Rests `slab` between two equal sides for `lasting`. When the middle is still rising at the end,
/// the peak is the end. `watch` as in GrillRun::onStep, with seconds since the pull.
[[nodiscard]] RestPeak restPiece(Slab& slab, const Side& both, Duration lasting,
                                 const std::function<void(double, const Slab&)>& watch = {});

}  // namespace cinder::cook
