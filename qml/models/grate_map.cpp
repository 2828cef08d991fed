#include "grate_map.h"

#include <algorithm>
#include <limits>

#include <QFontMetricsF>
#include <QPainter>

namespace cinder::face {

using app::PieceState;

GrateMap::GrateMap(QQuickItem* parent) : QQuickPaintedItem(parent) {
    setAntialiasing(true);
    connect(this, &GrateMap::changed, this, [this] { update(); });
}

void GrateMap::setFire(Fire* fire) {
    if (fire_ == fire) return;
    if (fire_ != nullptr) disconnect(fire_, nullptr, this, nullptr);
    fire_ = fire;
    if (fire_ != nullptr) connect(fire_, &Fire::mapChanged, this, [this] { update(); });
    Q_EMIT changed();
}

QPointF GrateMap::place(QPointF share) const {
    // A quarter turn, not a mirror: what lies left of a piece stays at its left.
    return isTurned_ ? QPointF((1 - share.y()) * width(), share.x() * height())
                     : QPointF(share.x() * width(), share.y() * height());
}

QPolygonF GrateMap::place(const QPolygonF& shares) const {
    QPolygonF placed;
    for (const QPointF& share : shares)
        placed << place(share);
    return placed;
}

QString GrateMap::pieceAt(double x, double y) const {
    const GrateRow* grate = fire_ != nullptr ? fire_->grate(grate_) : nullptr;
    if (grate == nullptr) return {};
    QString nearest;
    double least = std::numeric_limits<double>::max();
    for (const PieceRow& piece : grate->pieces->rows()) {
        const QPolygonF outline = place(piece.outline);
        const QRectF box = outline.boundingRect();
        const double dx = std::max({box.left() - x, x - box.right(), 0.0});
        const double dy = std::max({box.top() - y, y - box.bottom(), 0.0});
        const QPointF off = box.center() - QPointF(x, y);
        // Inside a box the nearer middle decides: tapered pieces lie in each other's boxes.
        double far = dx * dx + dy * dy + 1e-3 * QPointF::dotProduct(off, off);
        if (outline.containsPoint({x, y}, Qt::OddEvenFill)) far = -1;
        if (piece.state == PieceState::Pulled) far += 1e-2 * QPointF::dotProduct(off, off) + 4;
        if (far < least) {
            least = far;
            nearest = piece.key;
        }
    }
    return nearest;
}

void GrateMap::paint(QPainter* painter) {
    const GrateRow* grate = fire_ != nullptr ? fire_->grate(grate_) : nullptr;
    if (grate == nullptr) return;
    QPainter& p = *painter;
    p.setRenderHint(QPainter::Antialiasing);
    paintGrate(p, *grate);
    for (const PieceRow& piece : grate->pieces->rows())
        paintPiece(p, piece);
}

void GrateMap::paintGrate(QPainter& p, const GrateRow& grate) const {
    const QRectF all(line_ / 2, line_ / 2, width() - line_, height() - line_);
    p.setPen(Qt::NoPen);
    p.setBrush(plate_);
    p.drawRect(all);
    // Bars across the grate; decoration, so drawn faint.
    constexpr int kBars = 46;
    p.setPen(QPen(hairline_, std::max(1.0, line_ * 0.4)));
    for (int i = 1; i < kBars; ++i) {
        const double along = static_cast<double>(i) / kBars;
        p.drawLine(place({along, 0.0}), place({along, 1.0}));
    }
    if (grate.coolShare > 0) {
        const double from = 1 - grate.coolShare;
        const QRectF cool = QRectF(place({from, 0.0}), place({1.0, 1.0})).normalized();
        p.fillRect(cool, waterWash_);
        p.setPen(QPen(water_, line_, Qt::DashLine));
        p.drawLine(place({from, 0.0}), place({from, 1.0}));
        QFont font(family_);
        font.setPixelSize(least_);
        p.setFont(font);
        p.setPen(ink_);
        const QRectF room = cool.adjusted(line_ * 2, line_ * 2, -line_ * 2, -line_ * 2);
        const QRectF said = p.boundingRect(room, Qt::AlignLeft | Qt::AlignBottom, coolWord_);
        if (room.contains(said)) p.drawText(room, Qt::AlignLeft | Qt::AlignBottom, coolWord_);
    }
    p.setBrush(Qt::NoBrush);
    p.setPen(QPen(ink_, line_));
    p.drawRect(all);
}

void GrateMap::paintPiece(QPainter& p, const PieceRow& piece) const {
    const QPolygonF outline = place(piece.outline);
    QColor fill = plate_, edge = ink_, colour = ink_;
    double thick = line_;
    Qt::PenStyle style = Qt::SolidLine;
    switch (piece.state) {
        case PieceState::Due:
            fill = edge = ember_;
            colour = emberInk_;
            break;
        case PieceState::OnCoolSide:
            edge = water_;
            break;
        case PieceState::Pulled:
        case PieceState::ToCome:
            fill = Qt::transparent;
            edge = colour = ash_;
            style = Qt::DotLine;
            break;
        case PieceState::OverCoals:
            fill = emberWash_;
            break;
    }
    if (piece.isChosen) thick *= 2.2;
    p.setBrush(fill);
    p.setPen(QPen(edge, thick, style, Qt::SquareCap, Qt::RoundJoin));
    p.drawPolygon(outline);
    const QRectF box = outline.boundingRect();
    // Tapered ends leave the middle of the box to write in.
    const bool isLying = box.width() >= box.height();
    const double side = (isLying ? box.height() : box.width()) * 0.82;
    const double length = (isLying ? box.width() : box.height()) * 0.76;
    QRectF room(0, 0, isLying ? length : side, isLying ? side : length);
    room.moveCenter(box.center());
    paintWords(p, piece, room, colour);
}

void GrateMap::paintWords(QPainter& p, const PieceRow& piece, const QRectF& room,
                          const QColor& colour) const {
    const QString number = QString::number(piece.number);
    QFont font(family_);
    font.setWeight(QFont::ExtraBold);
    const bool hasTime = !piece.time.isEmpty();
    // Number and mark always; the time where it can be read; the studs beside or below.
    struct Layout {
        bool hasTime;
        bool isTimeBeside;
    };
    const Layout tries[] = {{true, false}, {true, true}, {false, false}};
    for (const Layout& layout : tries) {
        if (layout.hasTime && !hasTime) continue;
        const int rows =
            (layout.hasTime && !layout.isTimeBeside ? 2 : 1) + (piece.studs > 0 ? 1 : 0);
        const double studRow = piece.studs > 0 ? 0.5 : 0;
        const double lines = rows - (piece.studs > 0 ? 1 : 0) + studRow;
        const int size = std::min(most_, static_cast<int>(room.height() / (lines * 1.3)));
        if (size < 6) break;
        font.setPixelSize(size);
        const QFontMetricsF metrics(font);
        const double mark = size * 0.72;
        double first = mark + size * 0.3 + metrics.horizontalAdvance(number);
        if (layout.isTimeBeside) first += size * 0.5 + metrics.horizontalAdvance(piece.time);
        const double second =
            layout.hasTime && !layout.isTimeBeside ? metrics.horizontalAdvance(piece.time) : 0;
        const double fit = std::min(1.0, room.width() / std::max(first, second));
        const int fitted = static_cast<int>(size * fit);
        if (layout.hasTime && fitted < least_) continue;
        font.setPixelSize(std::max(6, fitted));
        const QFontMetricsF written(font);
        const double h = font.pixelSize() * 1.12;
        double y = room.center().y() - h * lines / 2;
        const double m = font.pixelSize() * 0.72;
        QString line = number;
        if (layout.isTimeBeside) line += QStringLiteral("  ") + piece.time;
        const double wide = m + font.pixelSize() * 0.3 + written.horizontalAdvance(line);
        const double x = room.center().x() - wide / 2;
        paintMark(p, piece.state, QRectF(x, y + (h - m) / 2, m, m), colour);
        p.setFont(font);
        p.setPen(colour);
        p.drawText(QPointF(x + m + font.pixelSize() * 0.3, y + written.ascent() * 0.96), line);
        y += h;
        if (layout.hasTime && !layout.isTimeBeside) {
            p.drawText(QPointF(room.center().x() - written.horizontalAdvance(piece.time) / 2,
                               y + written.ascent() * 0.96),
                       piece.time);
            y += h;
        }
        paintStuds(p, piece.studs, QRectF(room.left(), y, room.width(), font.pixelSize() * 0.42),
                   colour);
        return;
    }
}

void GrateMap::paintMark(QPainter& p, PieceState state, const QRectF& box,
                         const QColor& colour) const {
    // The shapes of StateMark: a ring with a core, a plate with a cut corner, a lozenge, a tick.
    const double s = box.width();
    p.setPen(Qt::NoPen);
    p.setBrush(colour);
    switch (state) {
        case PieceState::OverCoals: {
            const double cut = s * 0.4;
            p.drawPolygon(QPolygonF{box.topLeft(), box.topRight() - QPointF(cut, 0),
                                    box.topRight() + QPointF(0, cut), box.bottomRight(),
                                    box.bottomLeft()});
            return;
        }
        case PieceState::Due:
            p.drawPolygon(QPolygonF{{box.center().x(), box.top()},
                                    {box.right(), box.center().y()},
                                    {box.center().x(), box.bottom()},
                                    {box.left(), box.center().y()}});
            return;
        case PieceState::Pulled:
            p.setBrush(Qt::NoBrush);
            p.setPen(QPen(colour, std::max(1.5, s * 0.2), Qt::SolidLine, Qt::SquareCap));
            p.drawPolyline(QPolygonF{{box.left(), box.center().y()},
                                     {box.left() + s * 0.36, box.bottom() - s * 0.1},
                                     {box.right(), box.top() + s * 0.14}});
            return;
        case PieceState::OnCoolSide:
            p.drawEllipse(box.center(), s * 0.2, s * 0.2);
            [[fallthrough]];
        case PieceState::ToCome:
            p.setBrush(Qt::NoBrush);
            p.setPen(QPen(colour, std::max(1.0, s * 0.14)));
            p.drawEllipse(box.center(), s * 0.43, s * 0.43);
            return;
    }
}

void GrateMap::paintStuds(QPainter& p, int studs, const QRectF& box, const QColor& colour) const {
    if (studs <= 0) return;
    const double size = std::min(box.height(), box.width() / (1.6 * studs));
    p.setPen(Qt::NoPen);
    p.setBrush(colour);
    double x = box.center().x() - size * (1.6 * studs - 0.6) / 2;
    for (int i = 0; i < studs; ++i, x += size * 1.6)
        p.drawRect(QRectF(x, box.center().y() - size / 2, size, size));
}

}  // namespace cinder::face
