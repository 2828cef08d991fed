#pragma once

/// Paints a `ChartFace`: the band and its middle, readings as dots, hand tests as bars, levels that
/// matter with their words, now as a dotted line.

#include <QColor>
#include <QFont>
#include <QQuickPaintedItem>

#include "time_chart.h"

namespace cinder::face {

class ChartPicture : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(cinder::face::ChartFace chart MEMBER chart_ NOTIFY changed REQUIRED)
    Q_PROPERTY(QColor ink MEMBER ink_ NOTIFY changed REQUIRED)
    Q_PROPERTY(QColor ash MEMBER ash_ NOTIFY changed REQUIRED)
    Q_PROPERTY(QColor hairline MEMBER hairline_ NOTIFY changed REQUIRED)
    Q_PROPERTY(QColor plate MEMBER plate_ NOTIFY changed REQUIRED)
    Q_PROPERTY(QColor ember MEMBER ember_ NOTIFY changed REQUIRED)
    Q_PROPERTY(QColor water MEMBER water_ NOTIFY changed REQUIRED)
    Q_PROPERTY(QColor waterWash MEMBER waterWash_ NOTIFY changed REQUIRED)
    Q_PROPERTY(QFont font MEMBER font_ NOTIFY changed REQUIRED)
    /// Thickness of the curve; everything else follows from it.
    Q_PROPERTY(double line MEMBER line_ NOTIFY changed REQUIRED)

  public:
    explicit ChartPicture(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;

  Q_SIGNALS:
    void changed();

  private:
    void paintGround(QPainter& p, const QRectF& field) const;
    void paintCurve(QPainter& p, const QRectF& field) const;
    void paintLevels(QPainter& p, const QRectF& field) const;
    void paintMarks(QPainter& p, const QRectF& field) const;

    ChartFace chart_;
    QColor ink_, ash_, hairline_, plate_, ember_, water_, waterWash_;
    QFont font_;
    double line_ = 2;
};

}  // namespace cinder::face
