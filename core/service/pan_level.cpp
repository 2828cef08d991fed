#include "service/pan_level.h"

#include <algorithm>
#include <cmath>

namespace cinder::service {

namespace {

/// The tenth on the early side. Source: normal distribution, from memory.
constexpr double kTenth = 1.2816;

/// A level that is known: how much of the pan was left when so many guests were through.
struct Anchor {
    double left = 1;
    double guests = 0;
    bool isTapped = false;
};

/// What is known of the pan now on the line, and what the dish as a whole has told of the appetite.
class Reading {
  public:
    Reading(const PanPlan& plan, PanFacts facts, const Pace& pace, Instant now)
        : plan_(plan), pace_(pace), facts_(std::move(facts)) {
        std::sort(facts_.changes.begin(), facts_.changes.end());
        std::sort(facts_.taps.begin(), facts_.taps.end(),
                  [](const LevelTap& a, const LevelTap& b) { return a.at < b.at; });
        while (pan_ < plan_.pans && changed() < facts_.changes.size() &&
               facts_.changes[changed()] <= now)
            ++pan_;
        anchor_.guests = pan_ == 1 ? 0 : pace_.guestsAt(facts_.changes[changed() - 1]);
        for (const LevelTap& tap : facts_.taps)
            if (tap.at <= now && isOfThisPan(tap))
                anchor_ = {std::clamp(tap.left, 0.0, 1.0), pace_.guestsAt(tap.at), true};
    }

    [[nodiscard]] std::int32_t pan() const { return pan_; }
    [[nodiscard]] const Anchor& anchor() const { return anchor_; }

    /// Portions a guest takes. What is gone from all pans until the anchor, over the guests until
    /// then; an eye's doubt and chance among few guests count against it.
    [[nodiscard]] Belief perGuest() const {
        const Belief before{plan_.perGuest, std::max(1e-6, kTakeDoubt * plan_.perGuest)};
        const bool isSeen = anchor_.isTapped || pan_ > 1;
        if (!isSeen || anchor_.guests < 1) return before;
        const double gone = (pan_ - anchor_.left) * plan_.portionsPerPan;
        const double eye = kEyeDoubt * plan_.portionsPerPan;
        const double chance = std::sqrt(std::max(gone, plan_.perGuest));
        return before.updated(gone / anchor_.guests, std::hypot(eye, chance) / anchor_.guests);
    }

  private:
    [[nodiscard]] bool isOfThisPan(const LevelTap& tap) const {
        if (tap.pan) return *tap.pan == pan_;
        return pan_ == 1 || tap.at >= facts_.changes[changed() - 1];
    }
    [[nodiscard]] std::size_t changed() const { return static_cast<std::size_t>(pan_ - 1); }

    const PanPlan& plan_;
    const Pace& pace_;
    PanFacts facts_;
    std::int32_t pan_ = 1;
    Anchor anchor_;
};

void tellEmpty(const PanPlan& plan, const Reading& reading, const Belief& take, const Pace& pace,
               Instant now, PanOutlook& out) {
    const double portions = reading.anchor().left * plan.portionsPerPan;
    const double guests = reading.anchor().guests + portions / take.mean;
    if (guests >= pace.guests()) return;
    out.empty = std::max(now, pace.instantOf(guests));
    const double more = std::max(0.0, guests - pace.guestsAt(now));
    const double slow = static_cast<double>(pace.doubt(more).count());
    const double greed =
        static_cast<double>(pace.each().count()) * more * take.deviation / take.mean;
    const Duration edge{static_cast<Duration::rep>(kTenth * std::hypot(slow, greed))};
    out.emptyEarly = std::max(now, *out.empty - edge);
    if (reading.pan() < plan.pans) out.startNextBy = *out.emptyEarly - plan.lead;
}

}  // namespace

Belief Belief::updated(double seen, double seenDeviation) const {
    const double own = 1 / (deviation * deviation);
    const double other = 1 / (seenDeviation * seenDeviation);
    return {(mean * own + seen * other) / (own + other), 1 / std::sqrt(own + other)};
}

PanOutlook lookAtPan(const PanPlan& plan, PanFacts facts, const Pace& pace, Instant now) {
    const Reading reading(plan, std::move(facts), pace, now);
    const Belief take = reading.perGuest();
    PanOutlook out;
    out.pan = reading.pan();
    out.isTapped = reading.anchor().isTapped;
    out.perGuest = take.mean;
    if (take.mean <= 0 || plan.portionsPerPan <= 0) return out;
    const double through = pace.guestsAt(now);
    const double taken = std::max(0.0, through - reading.anchor().guests) * take.mean;
    out.left = std::clamp(reading.anchor().left - taken / plan.portionsPerPan, 0.0, 1.0);
    out.portionsLeft = (out.left + (plan.pans - reading.pan())) * plan.portionsPerPan;
    out.needed = pace.isOver() ? 0 : std::max(0.0, pace.guests() - through) * take.mean;
    if (out.needed > out.portionsLeft)
        out.portionPercent =
            5 * static_cast<std::int32_t>(std::floor(20 * out.portionsLeft / out.needed));
    out.seconds = static_cast<std::int32_t>(std::max(0.0, out.portionsLeft - out.needed));
    if (!pace.isOver()) tellEmpty(plan, reading, take, pace, now, out);
    return out;
}

}  // namespace cinder::service
