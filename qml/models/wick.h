#pragma once

/// The wick: where every open task lies between now and the bell, near time stretched, far time
/// drawn together. Across, 0 is now and 1 the bell; what is burnt lies left of 0.

#include <vector>

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>

#include "app/snapshot.h"
#include "words.h"

namespace cinder::face {

class Wick : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Part of the day")
    Q_PROPERTY(QString summary READ summary NOTIFY changed)

  public:
    struct Mark {
        double from = 0;
        double to = 0;
        int lane = 0;  ///< station; 0 lies above the wick, 1 below it, 2 above that, ...
        app::TaskState state = app::TaskState::Waiting;
        bool isLate = false;
        friend bool operator==(const Mark&, const Mark&) = default;
    };
    struct Hour {
        double at = 0;
        QString text;
        friend bool operator==(const Hour&, const Hour&) = default;
    };

    using QObject::QObject;
    /// Changes only when something moved by more than a person can see.
    void show(const app::Snapshot& day, const Words& words);

    [[nodiscard]] const std::vector<Mark>& marks() const { return marks_; }
    /// Round times, nearest first; a painter leaves out those that would overlap.
    [[nodiscard]] const std::vector<Hour>& hours() const { return hours_; }
    /// The time of day, "11:42": stands under the flame.
    [[nodiscard]] const QString& clock() const { return clock_; }
    [[nodiscard]] bool isBellAhead() const { return isBellAhead_; }
    /// For the screen reader.
    [[nodiscard]] QString summary() const { return summary_; }

    /// Where `ahead` from now lies when `span` remains: logarithmic beyond about eight minutes,
    /// so the next minutes have room and the last hour still shows. Negative for the past.
    [[nodiscard]] static double place(Duration ahead, Duration span);

  Q_SIGNALS:
    void changed();

  private:
    std::vector<Mark> marks_;
    std::vector<Hour> hours_;
    QString clock_;
    bool isBellAhead_ = true;
    QString summary_;
};

}  // namespace cinder::face
