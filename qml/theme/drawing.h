#pragma once

/// One outline filled with one colour. Painted into its own picture and not a QtQuick Shape:
/// without a graphics chip, Qt 6.4 paints shapes over the edge of the list they scroll in.

#include <QtQml/qqmlregistration.h>
#include <QColor>
#include <QPainterPath>
#include <QQuickPaintedItem>

namespace cinder::face {

/// Reads absolute M, L, C and Z of SVG path syntax (W3C SVG 2, section 9.3), which is all our
/// drawings use; empty when there is anything else in it.
[[nodiscard]] QPainterPath readOutline(const QString& path);

class Drawing : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    /// On a grid of 24, scaled to the item.
    Q_PROPERTY(QString path READ path WRITE setPath NOTIFY changed REQUIRED)
    Q_PROPERTY(QColor color READ color WRITE setColor NOTIFY changed REQUIRED)

  public:
    explicit Drawing(QQuickItem* parent = nullptr);
    [[nodiscard]] QString path() const { return path_; }
    [[nodiscard]] QColor color() const { return color_; }
    void setPath(const QString& path);
    void setColor(const QColor& color);
    void paint(QPainter* painter) override;

  Q_SIGNALS:
    void changed();

  private:
    QString path_;
    QPainterPath outline_;
    QColor color_;
};

}  // namespace cinder::face
