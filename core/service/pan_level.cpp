#include "service/pan_level.h"

#include <algorithm>
#include <cmath>

namespace cinder::service {

namespace {

/// The tenth on the early side. Source: normal distribution, from memory.
constexpr double kTenth = 1.2816;

/// Standard deviation of something that may lie anywhere in a span of one. Source: uniform
/// distribution, from memory.
constexpr double kAnywhere = 0.2887;

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
        std::erase_if(facts_.taps, [&](const LevelTap& tap) { return tap.at > now; });
        std::erase_if(facts_.changes, [&](Instant change) { return change > now; });
        pan_ = static_cast<std::int32_t>(facts_.changes.size()) + 1;
        anchor_.guests = facts_.changes.empty() ? 0 : pace_.guestsAt(facts_.changes.back());
        if (const LevelTap* tap = lastLook(pan_))
            anchor_ = {std::clamp(tap->left, 0.0, 1.0), pace_.guestsAt(tap->at), true};
    }

    [[nodiscard]] std::int32_t pan() const { return pan_; }
    [[nodiscard]] double portionsInPan() const { return plan_.portionsIn(pan_); }
    [[nodiscard]] const Anchor& anchor() const { return anchor_; }

    /// Portions a guest takes. What is gone from all pans until the anchor, over the guests until
    /// then; an eye's doubt, what became of the rest of a pan that was replaced, and chance among
    /// few guests count against it.
    [[nodiscard]] Belief perGuest() const {
        const Belief before{plan_.perGuest, std::max(1e-6, kTakeDoubt * plan_.perGuest)};
        const bool isSeen = anchor_.isTapped || pan_ > 1;
        if (!isSeen || anchor_.guests < 1) return before;
        double gone = (1 - anchor_.left) * portionsInPan();
        double doubt = kEyeDoubt * plan_.portionsPerPan;
        for (std::int32_t pan = 1; pan < pan_; ++pan) {
            const double rest = restOf(pan);
            gone += plan_.portionsIn(pan) - kTakenAway * rest;
            doubt = std::hypot(doubt, kAnywhere * rest);
        }
        const double chance = std::sqrt(std::max(gone, plan_.perGuest));
        return before.updated(gone / anchor_.guests, std::hypot(doubt, chance) / anchor_.guests);
    }

  private:
    [[nodiscard]] std::int32_t panOf(const LevelTap& tap) const {
        if (tap.pan) return *tap.pan;
        const auto after = std::upper_bound(facts_.changes.begin(), facts_.changes.end(), tap.at);
        return static_cast<std::int32_t>(after - facts_.changes.begin()) + 1;
    }
    [[nodiscard]] const LevelTap* lastLook(std::int32_t pan) const {
        const LevelTap* last = nullptr;
        for (const LevelTap& tap : facts_.taps)
            if (panOf(tap) == pan) last = &tap;
        return last;
    }
    /// Portions left in a pan when it was replaced; none when nobody looked into it.
    [[nodiscard]] double restOf(std::int32_t pan) const {
        const LevelTap* look = lastLook(pan);
        if (!look) return 0;
        const Instant replaced = facts_.changes[static_cast<std::size_t>(pan - 1)];
        return leftWhenReplaced(plan_, pan, *look, replaced, pace_) * plan_.portionsIn(pan);
    }

    const PanPlan& plan_;
    const Pace& pace_;
    PanFacts facts_;
    std::int32_t pan_ = 1;
    Anchor anchor_;
};

void tellEmpty(const PanPlan& plan, const Reading& reading, const Belief& take, const Pace& pace,
               Instant now, PanOutlook& out) {
    const double portions = reading.anchor().left * reading.portionsInPan();
    const double since = portions / take.mean;
    const double guests = reading.anchor().guests + since;
    // Since the anchor nobody looked, so that the doubt about the appetite does not melt away with
    // the guests who pass, nor that about the pace with the time in which nobody counts. Hungrier
    // guests empty the pan in proportion, and chance among them and the eye count as hunger.
    const double eye = reading.anchor().isTapped ? kEyeDoubt * reading.portionsInPan() : 0;
    const double greed = std::hypot(since * take.deviation, eye, std::sqrt(portions));
    const double hungry = portions > 0 ? since / (1 + kTenth * greed / portions) : 0;
    if (reading.anchor().guests + hungry >= pace.guests()) return;
    const Instant usual = pace.instantOf(guests);
    if (guests < pace.guests()) out.empty = std::max(now, usual);
    const double uncounted = std::max(0.0, guests - pace.lastCount().guests);
    const double slow = kTenth * static_cast<double>(pace.doubt(uncounted).count());
    const double sooner = static_cast<double>(pace.each().count()) * (since - hungry);
    const Duration edge{static_cast<Duration::rep>(std::hypot(slow, sooner))};
    out.emptyEarly = std::max(now, usual - edge);
    if (reading.pan() < plan.pans) out.startNextBy = *out.emptyEarly - plan.lead;
}

}  // namespace

Belief Belief::updated(double seen, double seenDeviation) const {
    const double own = 1 / (deviation * deviation);
    const double other = 1 / (seenDeviation * seenDeviation);
    return {(mean * own + seen * other) / (own + other), 1 / std::sqrt(own + other)};
}

double PanPlan::portionsIn(std::int32_t pan) const {
    return pan < pans ? portionsPerPan : lastPan.value_or(portionsPerPan);
}

double PanPlan::portionsAfter(std::int32_t pan) const {
    return pan < pans ? (pans - pan - 1) * portionsPerPan + portionsIn(pans) : 0;
}

double leftWhenReplaced(const PanPlan& plan, std::int32_t pan, const LevelTap& look,
                        Instant replaced, const Pace& pace) {
    const double portions = plan.portionsIn(pan);
    if (portions <= 0) return 0;
    const double guests = std::max(0.0, pace.guestsAt(replaced) - pace.guestsAt(look.at));
    return std::clamp(look.left - guests * plan.perGuest / portions, 0.0, 1.0);
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
    const double inPan = reading.portionsInPan();
    if (inPan > 0) out.left = std::clamp(reading.anchor().left - taken / inPan, 0.0, 1.0);
    out.portionsLeft = out.left * inPan + plan.portionsAfter(reading.pan());
    out.needed = pace.isOver() ? 0 : std::max(0.0, pace.guests() - through) * take.mean;
    if (out.needed > out.portionsLeft)
        out.portionPercent =
            5 * static_cast<std::int32_t>(std::floor(20 * out.portionsLeft / out.needed));
    // Thirds of pans add up to whole portions but for the last bit.
    out.seconds = static_cast<std::int32_t>(std::max(0.0, out.portionsLeft - out.needed) + 1e-6);
    if (!pace.isOver()) tellEmpty(plan, reading, take, pace, now, out);
    return out;
}

}  // namespace cinder::service
