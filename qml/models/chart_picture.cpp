#include "chart_picture.h"

#include <algorithm>

#include <QFontMetricsF>
#include <QPainter>

namespace cinder::face {

namespace {

QPointF placed(QPointF share, const QRectF& field) {
    return {field.left() + share.x() * field.width(), field.top() + share.y() * field.height()};
}

QPolygonF placed(const QPolygonF& shares, const QRectF& field) {
    QPolygonF points;
    for (const QPointF& share : shares)
        points << placed(share, field);
    return points;
}

}  // namespace

ChartPicture::ChartPicture(QQuickItem* parent) : QQuickPaintedItem(parent) {
    setAntialiasing(true);
    connect(this, &ChartPicture::changed, this, [this] { update(); });
}

void ChartPicture::paint(QPainter* painter) {
    if (chart_.isEmpty()) return;
    QPainter& p = *painter;
    p.setRenderHint(QPainter::Antialiasing);
    p.setFont(font_);
    const QFontMetricsF letters(font_);
    double margin = 0;
    for (const auto& tick : chart_.degrees)
        margin = std::max(margin, letters.horizontalAdvance(tick.word));
    const QRectF field(margin + 2 * line_, letters.height() / 2, width() - margin - 3 * line_,
                       height() - letters.height() * 1.5 - 2 * line_);
    paintGround(p, field);
    paintCurve(p, field);
    paintMarks(p, field);
    paintLevels(p, field);
}

void ChartPicture::paintGround(QPainter& p, const QRectF& field) const {
    const QFontMetricsF letters(font_);
    p.fillRect(field, plate_);
    for (const auto& tick : chart_.degrees) {
        const double y = placed({0, tick.at}, field).y();
        p.setPen(QPen(hairline_, std::max(1.0, line_ * 0.4)));
        p.drawLine(QPointF(field.left(), y), QPointF(field.right(), y));
        p.setPen(ash_);
        p.drawText(QPointF(field.left() - 2 * line_ - letters.horizontalAdvance(tick.word),
                           y + letters.capHeight() / 2),
                   tick.word);
    }
    for (const auto& tick : chart_.hours) {
        const double x = placed({tick.at, 0}, field).x();
        p.setPen(QPen(hairline_, std::max(1.0, line_ * 0.4)));
        p.drawLine(QPointF(x, field.top()), QPointF(x, field.bottom()));
        const double wide = letters.horizontalAdvance(tick.word);
        p.setPen(ash_);
        p.drawText(QPointF(std::clamp(x - wide / 2, 0.0, std::max(0.0, width() - wide)),
                           height() - letters.descent()),
                   tick.word);
    }
}

void ChartPicture::paintCurve(QPainter& p, const QRectF& field) const {
    p.setPen(QPen(water_, std::max(1.0, line_ * 0.4)));
    p.setBrush(waterWash_);
    p.drawPolygon(placed(chart_.band, field));
    p.setBrush(Qt::NoBrush);
    p.setPen(QPen(water_, line_ * 1.4, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin));
    p.drawPolyline(placed(chart_.likely, field));
}

void ChartPicture::paintLevels(QPainter& p, const QRectF& field) const {
    const QFontMetricsF letters(font_);
    for (const auto& level : chart_.levels) {
        const double y = placed({0, level.at}, field).y();
        p.setPen(QPen(level.isMinimum ? ember_ : ink_, line_,
                      level.isMinimum ? Qt::SolidLine : Qt::DashLine, Qt::FlatCap));
        p.drawLine(QPointF(field.left(), y), QPointF(field.right(), y));
    }
    for (const auto& level : chart_.levels) {
        // The higher of two has its word above it and the lower below, so that they never meet.
        const bool isLower = std::any_of(chart_.levels.begin(), chart_.levels.end(),
                                         [&](const auto& other) { return other.at < level.at; });
        const double y = placed({0, level.at}, field).y();
        const double above = y - line_ - letters.descent();
        const double below = y + line_ + letters.ascent();
        double base = isLower ? below : above;
        if (base - letters.ascent() < 0) base = below;
        const QPointF at(field.left() + 2 * line_, base);
        // On its own ground: the curve may pass behind.
        p.fillRect(QRectF(at.x() - line_ / 2, at.y() - letters.ascent(),
                          letters.horizontalAdvance(level.word) + line_, letters.height()),
                   plate_);
        p.setPen(level.isMinimum ? ember_ : ink_);
        p.drawText(at, level.word);
    }
    p.setBrush(Qt::NoBrush);
    p.setPen(QPen(ink_, std::max(1.0, line_ * 0.5)));
    p.drawRect(field);
}

void ChartPicture::paintMarks(QPainter& p, const QRectF& field) const {
    if (chart_.now) {
        const double x = placed({*chart_.now, 0}, field).x();
        p.setPen(QPen(ink_, line_, Qt::DotLine));
        p.drawLine(QPointF(x, field.top()), QPointF(x, field.bottom()));
    }
    const double reach = line_ * 2.5;
    for (const auto& span : chart_.spans) {
        const QPointF top = placed({span.along, span.top}, field);
        const QPointF bottom = placed({span.along, span.bottom}, field);
        p.setPen(QPen(water_, line_ * 2, Qt::SolidLine, Qt::FlatCap));
        p.drawLine(top, bottom);
        p.drawLine(top - QPointF(reach, 0), top + QPointF(reach, 0));
        p.drawLine(bottom - QPointF(reach, 0), bottom + QPointF(reach, 0));
    }
    p.setPen(QPen(plate_, line_ * 0.6));
    p.setBrush(ink_);
    for (const QPointF& reading : placed(chart_.readings, field))
        p.drawEllipse(reading, line_ * 2.2, line_ * 2.2);
}

}  // namespace cinder::face
