#pragma once

/// Goes through the history of a pan, moment by moment; internal to core/safety.

#include "safety/history.h"
#include "safety/standing.h"

namespace cinder::safety {

class Walk {
  public:
    Walk(const FoodRule& rule, const Limits& limits, const History& history)
        : rule_(rule), limits_(limits), history_(history) {}

    /// How the pan stands at `now`, which no moment of the history lies behind.
    Standing run(Instant now);

    void operator()(const Measured& measured);
    void operator()(const TimeStart& start);
    void operator()(const CoolingBegun& begun);
    void operator()(const PanDiscarded& discarded);

  private:
    [[nodiscard]] bool isRaw() const { return rule_.isCookedHere && !standing_.isCooked; }
    [[nodiscard]] bool isOver() const {
        return standing_.lost || standing_.control == Control::Discarded;
    }
    [[nodiscard]] Duration length(Span span) const { return limits_.length(span); }
    [[nodiscard]] std::optional<Instant> measureBy() const;
    [[nodiscard]] bool meetsAll(Degree degree, const Measured& measured) const;
    [[nodiscard]] bool isGood(Purpose purpose, const Reading& reading,
                              std::optional<Duration> held) const;
    [[nodiscard]] bool isGood(Purpose purpose, const Measured& measured) const;
    [[nodiscard]] Purpose meant(const Measured& measured) const;
    [[nodiscard]] Degree hotHold() const {
        return standing_.isRoast ? Degree::HotHoldRoast : Degree::HotHold;
    }
    /// Where the cooling clock starts: a roast is lawfully held lower than other food.
    [[nodiscard]] Degree coolStart() const {
        const bool isLower = standing_.isRoast && !limits_.isLocal(Degree::CoolStart);
        return isLower ? Degree::HotHoldRoast : Degree::CoolStart;
    }
    /// How much longer food may be out of limit, all of it together.
    [[nodiscard]] Duration leftOut() const {
        return length(Span::TimeControl) - (isOut_ ? out_ : Duration{0});
    }
    [[nodiscard]] bool isOutOfHolding(Purpose purpose, const Reading& reading) const;
    [[nodiscard]] bool shows(Action action, Purpose good, const Measured& measured) const;
    [[nodiscard]] std::vector<Action> allowed(Purpose purpose, Instant at) const;
    [[nodiscard]] bool isGoodStart(const TimeStart& start) const;

    void lose(Lost::Why why, Instant at, std::optional<EntryId> entry = {});
    void runDownTo(Instant moment);
    void endCooling(Instant at);
    void cool(const Measured& measured);
    void takeBad(Purpose purpose, const EntryId& entry, Instant at, const Reading& reading,
                 std::vector<Action> actions);
    void takeInTime(const Measured& measured);
    void loseIfUnshown(Purpose purpose, const Measured& measured);
    void takeGood(Purpose purpose, const Measured& measured);
    /// Takes the actions written by now, and closes what a good reading has answered.
    void close(Instant now);
    void answer(Purpose purpose, const Measured& measured);
    void conclude(Instant now);

    const FoodRule& rule_;
    const Limits& limits_;
    const History& history_;
    Standing standing_;
    std::optional<Instant> seen_;  ///< first read, by whatever thermometer
    std::optional<Instant> lastGood_;
    Duration out_{0};     ///< the time out of limit that was put right, added up
    bool isOut_ = false;  ///< out of limit now, not only on the way to being hot
    /// The last reading at or above the start of the cooling clock.
    std::optional<Instant> lastHot_;
    bool hasFallen_ = false;  ///< below it
    /// Of the open readings: when an action was taken, and when a good reading answered.
    std::map<EntryId, Instant> acted_;
    std::map<EntryId, Instant> answered_;
};

}  // namespace cinder::safety
