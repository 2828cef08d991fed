#include "drawing.h"

#include <QPainter>

namespace cinder::face {

QPainterPath readOutline(const QString& path) {
    QPainterPath outline;
    outline.setFillRule(Qt::OddEvenFill);
    QString spaced;
    for (const QChar c : path)
        spaced += c.isLetter() ? QLatin1Char(' ') + QString(c) + QLatin1Char(' ') : QString(c);
    const QStringList words = spaced.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    qsizetype at = 0;
    bool isSound = true;
    const auto number = [&] {
        bool isNumber = false;
        const double value = at < words.size() ? words[at].toDouble(&isNumber) : 0;
        isSound = isSound && isNumber;
        ++at;
        return value;
    };
    const auto point = [&] {
        const double x = number();
        return QPointF(x, number());
    };
    while (isSound && at < words.size()) {
        const QString command = words[at++];
        if (command == QLatin1String("M")) {
            outline.moveTo(point());
        } else if (command == QLatin1String("L")) {
            outline.lineTo(point());
        } else if (command == QLatin1String("C")) {
            const QPointF first = point();
            const QPointF second = point();
            outline.cubicTo(first, second, point());
        } else if (command == QLatin1String("Z")) {
            outline.closeSubpath();
        } else {
            isSound = false;
        }
    }
    return isSound ? outline : QPainterPath();
}

Drawing::Drawing(QQuickItem* parent) : QQuickPaintedItem(parent) {
    setAntialiasing(true);
    connect(this, &Drawing::changed, this, [this] { update(); });
}

void Drawing::setPath(const QString& path) {
    if (path == path_) return;
    path_ = path;
    outline_ = readOutline(path);
    Q_EMIT changed();
}

void Drawing::setColor(const QColor& color) {
    if (color == color_) return;
    color_ = color;
    Q_EMIT changed();
}

void Drawing::paint(QPainter* painter) {
    constexpr double kGrid = 24;
    painter->setRenderHint(QPainter::Antialiasing);
    painter->scale(width() / kGrid, height() / kGrid);
    painter->fillPath(outline_, color_);
}

}  // namespace cinder::face
