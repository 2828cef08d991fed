#pragma once

/// The run sheet as a chart: a lane for each person or station, time across. Left edge and width
/// in minutes; QML multiplies by the millimetres a minute has.

#include <QtQml/qqmlregistration.h>
#include <QObject>

#include "rows.h"
#include "words.h"

namespace cinder::face {

class RunSheet : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Part of the day")
    Q_PROPERTY(cinder::face::RowList* byPerson READ byPerson CONSTANT)
    Q_PROPERTY(cinder::face::RowList* byStation READ byStation CONSTANT)
    Q_PROPERTY(cinder::face::RowList* axis READ axis CONSTANT)
    /// Rows of blocks in all lanes together.
    Q_PROPERTY(int personLevels READ personLevels NOTIFY changed)
    Q_PROPERTY(int stationLevels READ stationLevels NOTIFY changed)
    Q_PROPERTY(double span READ span NOTIFY changed)
    Q_PROPERTY(double bell READ bell NOTIFY changed)
    Q_PROPERTY(double now READ now NOTIFY nowChanged)

  public:
    using QObject::QObject;
    void show(const app::Snapshot& day, const Words& words);

    [[nodiscard]] RowList* byPerson() { return &byPerson_; }
    [[nodiscard]] RowList* byStation() { return &byStation_; }
    [[nodiscard]] RowList* axis() { return &axis_; }
    [[nodiscard]] int personLevels() const { return personLevels_; }
    [[nodiscard]] int stationLevels() const { return stationLevels_; }
    [[nodiscard]] double span() const { return span_; }
    [[nodiscard]] double bell() const { return bell_; }
    [[nodiscard]] double now() const { return now_; }

  Q_SIGNALS:
    void changed();
    void nowChanged();

  private:
    void showAxis(const app::Snapshot& day, const Words& words, Instant edge, Instant end);

    ListOf<LaneRow> byPerson_;
    ListOf<LaneRow> byStation_;
    ListOf<AxisRow> axis_;
    int personLevels_ = 1;
    int stationLevels_ = 1;
    double span_ = 1;
    double bell_ = 0;
    double now_ = 0;
};

}  // namespace cinder::face
