#pragma once

/// The grate to scale with every piece on it, painted: where it lies, its number, its class by
/// studs, its state by shape, fill and word, and how long it still needs. Where a piece is small,
/// what does not fit is left out, the number last.

#include <QtQml/qqmlregistration.h>
#include <QColor>
#include <QFont>
#include <QQuickPaintedItem>

#include "fire.h"

namespace cinder::face {

class GrateMap : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(cinder::face::Fire* fire READ fire WRITE setFire NOTIFY changed)
    /// Which grate, by its key.
    Q_PROPERTY(QString grate MEMBER grate_ NOTIFY changed)
    /// Its length lies down the screen instead of across.
    Q_PROPERTY(bool isTurned MEMBER isTurned_ NOTIFY changed)
    Q_PROPERTY(QString coolWord MEMBER coolWord_ NOTIFY changed)
    Q_PROPERTY(QColor ink MEMBER ink_ NOTIFY changed)
    Q_PROPERTY(QColor ash MEMBER ash_ NOTIFY changed)
    Q_PROPERTY(QColor hairline MEMBER hairline_ NOTIFY changed)
    Q_PROPERTY(QColor plate MEMBER plate_ NOTIFY changed)
    Q_PROPERTY(QColor ember MEMBER ember_ NOTIFY changed)
    Q_PROPERTY(QColor emberInk MEMBER emberInk_ NOTIFY changed)
    Q_PROPERTY(QColor emberWash MEMBER emberWash_ NOTIFY changed)
    Q_PROPERTY(QColor water MEMBER water_ NOTIFY changed)
    Q_PROPERTY(QColor waterWash MEMBER waterWash_ NOTIFY changed)
    /// Thickness of an edge.
    Q_PROPERTY(double line MEMBER line_ NOTIFY changed)
    /// The least size of words, in pixels of font height.
    Q_PROPERTY(int least MEMBER least_ NOTIFY changed)
    Q_PROPERTY(int most MEMBER most_ NOTIFY changed)
    Q_PROPERTY(QString family MEMBER family_ NOTIFY changed)

  public:
    explicit GrateMap(QQuickItem* parent = nullptr);
    [[nodiscard]] Fire* fire() const { return fire_; }
    void setFire(Fire* fire);
    void paint(QPainter* painter) override;

    /// The key of the piece that a touch at this point means: the nearest that is not pulled;
    /// empty when nothing lies there.
    Q_INVOKABLE QString pieceAt(double x, double y) const;

  Q_SIGNALS:
    void changed();

  private:
    [[nodiscard]] QPointF place(QPointF share) const;
    [[nodiscard]] QPolygonF place(const QPolygonF& shares) const;
    void paintGrate(QPainter& p, const GrateRow& grate) const;
    void paintPiece(QPainter& p, const PieceRow& piece) const;
    void paintWords(QPainter& p, const PieceRow& piece, const QRectF& room,
                    const QColor& colour) const;
    void paintMark(QPainter& p, app::PieceState state, const QRectF& box,
                   const QColor& colour) const;
    void paintStuds(QPainter& p, int studs, const QRectF& box, const QColor& colour) const;

    Fire* fire_ = nullptr;
    QString grate_, coolWord_, family_;
    bool isTurned_ = false;
    QColor ink_, ash_, hairline_, plate_, ember_, emberInk_, emberWash_, water_, waterWash_;
    double line_ = 2;
    int least_ = 10, most_ = 24;
};

}  // namespace cinder::face
