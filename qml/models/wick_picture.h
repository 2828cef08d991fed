#pragma once

/// Draws the wick. Painted rather than built of QML rectangles because it is redrawn whole, four
/// times a minute, and is forty small marks.

#include <QColor>
#include <QFont>
#include <QPointer>
#include <QQuickPaintedItem>

#include "wick.h"

namespace cinder::face {

class WickPicture : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(cinder::face::Wick* wick READ wick WRITE setWick NOTIFY changed REQUIRED)
    Q_PROPERTY(QColor ink MEMBER ink_ NOTIFY changed REQUIRED)
    Q_PROPERTY(QColor ash MEMBER ash_ NOTIFY changed REQUIRED)
    Q_PROPERTY(QColor ember MEMBER ember_ NOTIFY changed REQUIRED)
    Q_PROPERTY(QColor water MEMBER water_ NOTIFY changed REQUIRED)
    Q_PROPERTY(QColor ground MEMBER ground_ NOTIFY changed REQUIRED)
    Q_PROPERTY(QFont font MEMBER font_ NOTIFY changed REQUIRED)
    /// Thickness of the cord; everything else follows from it.
    Q_PROPERTY(double cord MEMBER cord_ NOTIFY changed REQUIRED)

  public:
    explicit WickPicture(QQuickItem* parent = nullptr);
    [[nodiscard]] Wick* wick() const { return wick_; }
    void setWick(Wick* wick);
    void paint(QPainter* painter) override;

  Q_SIGNALS:
    void changed();

  private:
    [[nodiscard]] double across(double place) const;
    [[nodiscard]] double nowX() const;
    [[nodiscard]] double bellX() const;
    [[nodiscard]] double cordY() const;
    void paintCord(QPainter& p) const;
    void paintMarks(QPainter& p) const;
    void paintHours(QPainter& p) const;
    void paintFlame(QPainter& p) const;
    void paintBell(QPainter& p) const;

    QPointer<Wick> wick_;
    QColor ink_, ash_, ember_, water_, ground_;
    QFont font_;
    double cord_ = 4;
};

}  // namespace cinder::face
