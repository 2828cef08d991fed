#pragma once

/// Every word and figure a board shows is made here, in the language and units of this device.
/// QML only places them.

#include <QCoreApplication>
#include <QString>

#include "app/session.h"
#include "app/snapshot.h"

namespace cinder::face {

class Settings;

/// A countdown in the two sizes it is drawn in: "1:23" large and "45" small.
struct SplitTime {
    QString large;
    QString small;
    friend bool operator==(const SplitTime&, const SplitTime&) = default;
};

/// A countdown: "9:59", or "11" and "min", or "1:05" and "h".
struct TimeLeft {
    QString figure;
    QString unit;  ///< empty to the second
    [[nodiscard]] QString text() const;
};

class Words {
    Q_DECLARE_TR_FUNCTIONS(cinder::face::Words)

  public:
    /// `settings` must outlive this.
    explicit Words(const Settings& settings) : settings_(settings) {}

    /// Where the event's wall clock and bell are; set with every snapshot.
    void setPlace(UtcOffset offset, Instant bell) {
        offset_ = offset;
        bell_ = bell;
    }

    // --- figures ---
    /// "13:05", or "1:05 pm".
    [[nodiscard]] QString clock(Instant at) const;
    /// The same with seconds.
    [[nodiscard]] QString clockWithSeconds(Instant at) const;
    /// "T−1:05", "T+0:10".
    [[nodiscard]] QString fromBell(Instant at) const;
    /// Both: "11:55 · T−1:05".
    [[nodiscard]] QString clockAndBell(Instant at) const;
    /// "4:05", "1:04:05"; the size only, rounded so that it reaches 0:00 when it is due.
    [[nodiscard]] static QString countdown(Duration left);
    /// What is left until a moment, or "+4:10" since: to the second when it is near, in whole
    /// minutes from ten on, so that it is not read as a time of day.
    [[nodiscard]] static TimeLeft timeLeft(Duration left);
    /// Hours and minutes large, seconds small. Size only.
    [[nodiscard]] static SplitTime splitCountdown(Duration left);
    /// A number and its unit, to stay on one line.
    [[nodiscard]] static QString unbroken(QString text);
    /// "12 min", "1 h 05 min", "40 s"; size only.
    [[nodiscard]] static QString span(Duration length);
    /// The same of time there is to spare, which is never said to be more than it is: "4 min" of
    /// four and a half.
    [[nodiscard]] static QString spareSpan(Duration length);
    /// "4 min spare", "3 min late", "on the minute".
    [[nodiscard]] static QString spare(Duration lateness);
    [[nodiscard]] static QString slack(Duration slack);
    [[nodiscard]] QString temperature(Temperature t) const;
    /// "18 lb", "8 kg": pounds go with degrees Fahrenheit.
    [[nodiscard]] QString mass(Mass mass) const;
    /// "3.8 in", "96 mm": inches go with degrees Fahrenheit.
    [[nodiscard]] QString thickness(Length thickness) const;
    /// What a thermometer showed, in tenths where it is not whole: a limit is not reached by
    /// rounding.
    [[nodiscard]] QString measured(Temperature shown) const;
    /// "Published minimum 63 °C for 15 s", "Local minimum 71 °C": what a thermometer has to show.
    [[nodiscard]] QString minimum(Temperature least, Duration hold, bool isLocal) const;
    [[nodiscard]] QString date(Instant at, UtcOffset offset) const;

    [[nodiscard]] UtcOffset offset() const { return offset_; }
    [[nodiscard]] bool isFahrenheit() const;
    /// "en" or "es".
    [[nodiscard]] QString language() const;

    // --- names ---
    [[nodiscard]] QString name(const LocalText& text) const;
    /// "Lamb legs · cook · 2 of 3": the task, told apart from its brothers.
    [[nodiscard]] QString title(const app::TaskCard& card) const;
    [[nodiscard]] static QString batch(const app::TaskCard& card);

    // --- words ---
    [[nodiscard]] static QString state(const app::TaskCard& card);
    [[nodiscard]] static QString startVerb(plan::TaskKind kind);
    [[nodiscard]] static QString finishVerb(plan::TaskKind kind);
    [[nodiscard]] static QString turn(const app::TaskCard& card);
    /// "Turn now", "Pull now": what an alarm calls for.
    [[nodiscard]] static QString call(live::TimerKind kind);
    [[nodiscard]] QString undone(const app::UndoOffer& offer, const app::Snapshot& day) const;
    [[nodiscard]] QString notice(const app::Notice& notice, const app::Snapshot& day) const;
    /// What happened and the remedy.
    [[nodiscard]] static QString refusal(const app::Refusal& refusal);

  private:
    [[nodiscard]] static QString notSaved(const app::Refusal& refusal);

    const Settings& settings_;
    UtcOffset offset_{0};
    Instant bell_;
};

/// The drawn shape of a state, by the name the parts know it by.
[[nodiscard]] QString markOf(app::TaskState state);
[[nodiscard]] QString toText(const std::string& text);

}  // namespace cinder::face
