#pragma once

/// What one row of the record page says, finished.

#include <QString>

#include "row_list.h"

namespace cinder::face {

/// A check to do, or done.
struct CheckRow {
    QString key;  ///< the check's name, "hold:stew:2"
    QString dish;
    QString what;  ///< "Before service · held hot"
    QString limit;
    QString due;        ///< "12:50 · T−0:10"
    QString countdown;  ///< to it, or "+4:10" since
    QString unit;       ///< of the countdown, when it is not to the second
    QString mark;
    QString missed;  ///< "2 missed before", empty when none was
    bool isDue = false;
    bool isAtFire = false;  ///< who can do it stands at the fire
    static const std::vector<Role<CheckRow>>& roles();
    friend bool operator==(const CheckRow&, const CheckRow&) = default;
};

/// One thing asked before the fire.
struct FireRow {
    QString key;  ///< its number
    QString text;
    bool isReady = false;
    bool isSkipped = false;
    static const std::vector<Role<FireRow>>& roles();
    friend bool operator==(const FireRow&, const FireRow&) = default;
};

/// One pan as it stands by its record.
struct PanRow {
    QString key;  ///< "stew#1"
    QString title;
    QString standing;
    QString leftover;   ///< what may become of it once the bell has rung
    QString last;       ///< "last 141 °F at 12:05", empty before the first reading
    QString countdown;  ///< of its clock; empty when none runs
    QString unit;
    QString clock;  ///< what the countdown ends in: "to discard"
    QString mark;
    bool isBad = false;    ///< must be acted on
    bool isOver = false;   ///< discarded: nothing more to do
    bool isClock = false;  ///< under time control: the countdown is large
    static const std::vector<Role<PanRow>>& roles();
    friend bool operator==(const PanRow&, const PanRow&) = default;
};

/// A forecast of a pan; never shown as if somebody had measured.
struct ForecastRow {
    QString key;
    QString title;
    QString text;
    static const std::vector<Role<ForecastRow>>& roles();
    friend bool operator==(const ForecastRow&, const ForecastRow&) = default;
};

/// One entry of the record.
struct EntryRow {
    QString key;  ///< "device#sequence"
    QString when;
    QString about;
    QString what;
    QString value;
    QString by;
    QString note;  ///< "taken back", "corrected"
    bool canCorrect = false;
    static const std::vector<Role<EntryRow>>& roles();
    friend bool operator==(const EntryRow&, const EntryRow&) = default;
};

/// One published limit, and what a local authority made of it.
struct LimitRow {
    QString key;  ///< its field, "hotHold"
    QString name;
    QString value;
    QString source;
    bool isLocal = false;
    /// It may be made stricter by a touch.
    bool canChange = false;
    static const std::vector<Role<LimitRow>>& roles();
    friend bool operator==(const LimitRow&, const LimitRow&) = default;
};

/// One thing to choose on the entry sheet.
struct ChoiceRow {
    QString key;
    QString text;
    QString note;
    bool isChosen = false;
    /// Hard to take back: held, not touched, and last.
    bool isGrave = false;
    static const std::vector<Role<ChoiceRow>>& roles();
    friend bool operator==(const ChoiceRow&, const ChoiceRow&) = default;
};

}  // namespace cinder::face
