#pragma once

/// What one row of a board says, finished. Built in `row_makers.cpp` from the snapshot.

#include <memory>

#include <QString>
#include <QStringList>

#include "row_list.h"

namespace cinder::face {

/// One line of a checklist.
struct LineRow {
    QString key;
    int line = 0;
    QString text;
    bool isTicked = false;
    static const std::vector<Role<LineRow>>& roles();
    friend bool operator==(const LineRow&, const LineRow&) = default;
};

/// One task, on whichever board.
struct TaskRow {
    QString key;
    QString name;
    QString title;  ///< with dish and batch
    QString batch;
    QString station;
    QString people;
    QString icon;  ///< by kind: "flame", "putOn", "rest", "table", ...
    QString mark;  ///< shape of the state, see `markOf`
    QString state;
    bool isLate = false;
    bool isCritical = false;
    QString slack;
    QString startText;  ///< "11:55 · T−1:05"
    QString finishText;
    /// With its word, as it stands now: "starts 11:55 · T−1:05", "ends 12:20 · T−0:40".
    QString whenText;
    QString latestText;  ///< latest start, the same way
    /// What is awaited, and how long: "turn 2 of 4", "3:05", or "11" with the unit "min".
    QString awaited;
    QString countdown;
    QString unit;
    bool isList = false;  ///< nothing but lines to tick, begun and done by them
    bool isDue = false;   ///< the countdown has run out
    double progress = 0;  ///< of its own time, 0 to 1
    int turnsDone = 0;
    int turnCount = 0;
    QString turnText;
    bool canStart = false;
    bool canFinish = false;
    bool canTurn = false;
    bool canSkip = false;
    bool canComeBack = false;
    QString startVerb;
    QString finishVerb;
    QString caution;
    QString detail;   ///< who, and how many lines are ticked: "Inés · 3 of 7"
    QString heading;  ///< over the first row of a part of the list; empty on the others
    std::shared_ptr<ListOf<LineRow>> lines;
    static const std::vector<Role<TaskRow>>& roles();
    friend bool operator==(const TaskRow&, const TaskRow&) = default;
};

struct PersonRow {
    QString key;
    QString name;
    QString now;
    QString awaited;  ///< what comes then: "to pull"
    QString countdown;
    QString unit;
    bool isDue = false;  ///< the countdown has run out
    QString mark;
    QString next;
    QString nextAt;  ///< "11:55 · T−1:05"
    bool isLate = false;
    static const std::vector<Role<PersonRow>>& roles();
    friend bool operator==(const PersonRow&, const PersonRow&) = default;
};

/// An alarm that rings.
struct AlarmRow {
    QString key;  ///< the timer's name
    QString task;
    QString call;  ///< "Turn now"
    QString title;
    QString icon;
    QString overdue;  ///< since when, "0:12"
    QString actVerb;  ///< the deed it calls for, "Turned"; empty when only hearing it helps
    QString act;      ///< "turn", "finish", "start"
    QString board;    ///< where its task is worked: "fire" or "buffet"
    QStringList people;
    static const std::vector<Role<AlarmRow>>& roles();
    friend bool operator==(const AlarmRow&, const AlarmRow&) = default;
};

struct NoticeRow {
    QString key;
    QString text;
    QString icon;
    QString verb;  ///< what may be done about it; empty when nothing
    static const std::vector<Role<NoticeRow>>& roles();
    friend bool operator==(const NoticeRow&, const NoticeRow&) = default;
};

/// One change that would keep the promise, or help.
struct OptionRow {
    QString key;  ///< its number
    QString text;
    QString note;  ///< what it gains
    bool isEnough = false;
    bool isBeingPlanned = false;  ///< it was touched, and its plan is searched
    bool isHeld = false;          ///< its touch is held: it is hard to take back
    static const std::vector<Role<OptionRow>>& roles();
    friend bool operator==(const OptionRow&, const OptionRow&) = default;
};

/// One of the crew, there or gone.
struct CrewRow {
    QString key;
    QString name;
    bool isHere = true;
    bool isNew = false;      ///< comes now
    bool isChanged = false;  ///< since the rest was last planned
    QStringList skills;      ///< all there are
    QStringList skillWords;  ///< their names
    QStringList chosen;      ///< those of this person
    static const std::vector<Role<CrewRow>>& roles();
    friend bool operator==(const CrewRow&, const CrewRow&) = default;
};

struct EventRow {
    QString key;
    QString name;
    QString when;
    bool isRehearsal = false;
    bool isDraft = false;
    QString beingPlanned;  ///< "open" or "rehearse" while that touch waits for a plan
    static const std::vector<Role<EventRow>>& roles();
    friend bool operator==(const EventRow&, const EventRow&) = default;
};

/// Another device of the crew.
struct DeviceRow {
    QString key;
    QString name;
    QString standing;  ///< where it stands, and what to do where something is wrong
    QString mark;      ///< by the names StateMark knows
    QString clock;     ///< how far its clock is off; empty when it is not known now
    QString parted;    ///< events whose record went two ways; empty when there are none
    static const std::vector<Role<DeviceRow>>& roles();
    friend bool operator==(const DeviceRow&, const DeviceRow&) = default;
};

/// One stretch of work on the chart. Across in minutes from the chart's left edge, down in levels.
struct BlockRow {
    QString key;
    double begin = 0;
    double length = 0;
    int level = 0;
    QString name;
    QString times;  ///< for the reader: "11:55 to 12:10"
    QString mark;
    bool isLate = false;
    bool isStanding = false;  ///< nobody's hands are on it
    bool isCritical = false;  ///< a link of the chain that holds up the bell
    double slack = 0;         ///< minutes it may end later without moving the bell
    double plannedLeft = 0;
    double plannedWidth = 0;
    bool isMoved = false;  ///< away from where it was planned
    static const std::vector<Role<BlockRow>>& roles();
    friend bool operator==(const BlockRow&, const BlockRow&) = default;
};

struct LaneRow {
    QString key;
    QString name;
    int levels = 1;
    std::shared_ptr<ListOf<BlockRow>> blocks;
    static const std::vector<Role<LaneRow>>& roles();
    friend bool operator==(const LaneRow&, const LaneRow&) = default;
};

struct AxisRow {
    QString key;
    double at = 0;  ///< minutes from the chart's left edge
    QString clock;
    QString fromBell;
    bool isHour = false;
    static const std::vector<Role<AxisRow>>& roles();
    friend bool operator==(const AxisRow&, const AxisRow&) = default;
};

}  // namespace cinder::face
