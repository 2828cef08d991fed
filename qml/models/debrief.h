#pragma once

/// The day looked back upon: planned against actual as a picture, what was learnt with the events
/// that support it, and the touches that take or leave each figure. Finished words and shares.

#include <QtQml/qqmlregistration.h>
#include <QObject>

#include "door.h"
#include "row_list.h"
#include "words.h"

namespace cinder::face {

/// One task, planned and actual, on the common axis of the day: 0 is its left edge, 1 its right.
struct ReviewRow {
    QString key;
    QString name;
    QString planned;     ///< "11:05, 10 min"
    QString actual;      ///< "11:09, 14 min"
    QString difference;  ///< "4 min longer"
    double plannedAt = 0, plannedShare = 0;
    double actualAt = 0, actualShare = 0;
    bool isInterrupted = false;
    QString remark;  ///< that it does not count, or that it is far off
    QString verb;    ///< what a touch says
    static const std::vector<Role<ReviewRow>>& roles();
    friend bool operator==(const ReviewRow&, const ReviewRow&) = default;
};

/// A line across the picture.
struct HourRow {
    QString key;
    QString label;
    double at = 0;
    bool isBell = false;
    static const std::vector<Role<HourRow>>& roles();
    friend bool operator==(const HourRow&, const HourRow&) = default;
};

/// One figure that was learnt.
struct LessonRow {
    QString key;
    QString name;
    QString text;
    QString support;
    QString answer;
    bool isAccepted = false;
    bool isIgnored = false;
    static const std::vector<Role<LessonRow>>& roles();
    friend bool operator==(const LessonRow&, const LessonRow&) = default;
};

class Debrief : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Given by the face")
    /// "23 tasks with both times"; what is missing when there is none.
    Q_PROPERTY(QString summary READ summary NOTIFY changed)
    /// From how many events the figures come, and what was believed before.
    Q_PROPERTY(QString basis READ basis NOTIFY changed)
    Q_PROPERTY(QString pans READ pans NOTIFY changed)
    Q_PROPERTY(bool canAnswer READ canAnswer NOTIFY changed)
    Q_PROPERTY(QString refusal READ refusal NOTIFY changed)
    Q_PROPERTY(cinder::face::RowList* tasks READ tasks CONSTANT)
    Q_PROPERTY(cinder::face::RowList* axis READ axis CONSTANT)
    Q_PROPERTY(cinder::face::RowList* lessons READ lessons CONSTANT)

  public:
    /// Both must outlive this.
    Debrief(Door& door, Settings& settings, QObject* parent = nullptr);

    [[nodiscard]] QString summary() const { return summary_; }
    [[nodiscard]] QString basis() const { return basis_; }
    [[nodiscard]] QString pans() const { return pans_; }
    [[nodiscard]] bool canAnswer() const { return canAnswer_; }
    [[nodiscard]] QString refusal() const { return refusal_; }
    [[nodiscard]] RowList* tasks() { return &tasks_; }
    [[nodiscard]] RowList* axis() { return &axis_; }
    [[nodiscard]] RowList* lessons() { return &lessons_; }

    /// Reads the day and the past events; when the page is opened, and after every touch on it.
    Q_INVOKABLE void look();
    /// Something came between, or nothing did after all.
    Q_INVOKABLE void mark(const QString& task);
    Q_INVOKABLE void accept(const QString& figure);
    Q_INVOKABLE void ignore(const QString& figure);

  Q_SIGNALS:
    void changed();
    /// Something is on record; look again.
    void noted();

  private:
    void take(const Taken& taken);
    void tell(const app::Debrief& debrief, const app::Snapshot& day);
    [[nodiscard]] static LessonRow lesson(const app::LessonCard& card, const Words& words);

    Door& door_;
    Words words_;
    QString summary_, basis_, pans_, refusal_;
    bool canAnswer_ = false;
    ListOf<ReviewRow> tasks_;
    ListOf<HourRow> axis_;
    ListOf<LessonRow> lessons_;
};

}  // namespace cinder::face
