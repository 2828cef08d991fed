#pragma once

/// How full the pan on the line is, when it will be empty, and by when the next one must be on its
/// way: a forecast from how many take the dish and how quickly guests pass, put right by every tap
/// on the level. A forecast never tells whether food is safe; that is the record's business.

#include <optional>
#include <vector>

#include "service/pace.h"

namespace cinder::service {

/// One dish, before the line opens.
struct PanPlan {
    /// Portions a guest takes in the mean when passing for the first time.
    double perGuest = 0;
    double portionsPerPan = 0;
    std::int32_t pans = 1;
    /// From "start the next pan" until it stands on the line.
    Duration lead{0};
    /// Portions in the last pan, which may be a part of one; absent: as many as in every other.
    std::optional<double> lastPan = std::nullopt;
    /// Planned for who comes a second time: 0.1 is a tenth of what goes the first time.
    double seconds = 0;

    /// One more than was planned is taken to be like the last one.
    [[nodiscard]] double portionsIn(std::int32_t pan) const;
    /// In the pans that come after `pan`.
    [[nodiscard]] double portionsAfter(std::int32_t pan) const;
    friend bool operator==(const PanPlan&, const PanPlan&) = default;
};

/// Somebody looked into the pan that was on the line: so much of it is left, 0 to 1.
struct LevelTap {
    double left = 1;
    Instant at;
    /// Which pan; absent: the one that was on the line at `at`.
    std::optional<std::int32_t> pan = std::nullopt;
    friend bool operator==(const LevelTap&, const LevelTap&) = default;
};

/// What was seen of one dish.
struct PanFacts {
    std::vector<LevelTap> taps;    ///< any order
    std::vector<Instant> changes;  ///< the second pan on the line, the third …; any order
    friend bool operator==(const PanFacts&, const PanFacts&) = default;
};

/// How far what guests take may be from the plan, in the mean from event to event; and how well an
/// eye judges a level. Our choice.
inline constexpr double kTakeDoubt = 0.25;
inline constexpr double kEyeDoubt = 0.07;

struct PanOutlook {
    std::int32_t pan = 1;   ///< on the line
    double left = 1;        ///< of it, now
    bool isTapped = false;  ///< somebody looked into this pan
    /// When it is empty; nothing when it lasts to the last guest. Early is the edge that comes true
    /// once in ten; it can be there when in the mean the pan just lasts.
    std::optional<Instant> empty;
    std::optional<Instant> emptyEarly;
    /// By then the next pan must be started; nothing when there is no need, or no pan.
    std::optional<Instant> startNextBy;
    /// For the guests who are still to come: portions needed, and left in all pans.
    double needed = 0;
    double portionsLeft = 0;
    /// How large a portion may be so that it lasts, in percent, in steps of 5 down; 100 is enough.
    std::int32_t portionPercent = 100;
    /// Portions left when the last guest has passed: for seconds.
    std::int32_t seconds = 0;
    double perGuest = 0;  ///< portions, as now believed
    friend bool operator==(const PanOutlook&, const PanOutlook&) = default;
};

/// Mean and standard deviation of a normal belief, and one more observation of the same kind.
/// Source: normal mean with known variance, precision-weighted; e.g. A. Gelman et al., Bayesian
/// Data Analysis, section 2.5, from memory.
struct Belief {
    double mean = 0;
    double deviation = 1;
    [[nodiscard]] Belief updated(double seen, double seenDeviation) const;
    friend bool operator==(const Belief&, const Belief&) = default;
};

/// How much of `pan` was left, 0 to 1, when the next one took its place: by the last look into it
/// and what the guests since then take as planned.
[[nodiscard]] double leftWhenReplaced(const PanPlan& plan, std::int32_t pan, const LevelTap& look,
                                      Instant replaced, const Pace& pace);

/// What is left in a pan that is replaced is put on top of the next one or taken away, and nobody
/// says which: the middle is believed.
inline constexpr double kTakenAway = 0.5;

[[nodiscard]] PanOutlook lookAtPan(const PanPlan& plan, PanFacts facts, const Pace& pace,
                                   Instant now);

}  // namespace cinder::service
