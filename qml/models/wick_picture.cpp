#include "wick_picture.h"

#include <algorithm>

#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>

namespace cinder::face {

WickPicture::WickPicture(QQuickItem* parent) : QQuickPaintedItem(parent) {
    setAntialiasing(true);
    connect(this, &WickPicture::changed, this, [this] { update(); });
}

void WickPicture::setWick(Wick* wick) {
    if (wick_ == wick) return;
    if (wick_) disconnect(wick_, nullptr, this, nullptr);
    wick_ = wick;
    if (wick_) connect(wick_, &Wick::changed, this, [this] { update(); });
    Q_EMIT changed();
}

double WickPicture::nowX() const {
    return std::max(cord_ * 9, width() * 0.075);
}
double WickPicture::bellX() const {
    return width() - cord_ * 6;
}
double WickPicture::cordY() const {
    return height() * 0.46;
}

double WickPicture::across(double place) const {
    return place < 0 ? nowX() + place * nowX() : nowX() + place * (bellX() - nowX());
}

void WickPicture::paint(QPainter* painter) {
    if (!wick_) return;
    QPainter& p = *painter;
    p.setRenderHint(QPainter::Antialiasing);
    paintHours(p);
    paintCord(p);
    paintMarks(p);
    paintFlame(p);
    paintBell(p);
}

void WickPicture::paintCord(QPainter& p) const {
    const double y = cordY();
    // Burnt: crumbs of ash that thin out to the left.
    p.setPen(Qt::NoPen);
    p.setBrush(ash_);
    for (double x = nowX() - cord_ * 1.6, size = cord_ * 0.8; x > 0; x -= cord_ * 1.7) {
        p.setOpacity(std::clamp(x / nowX(), 0.2, 0.8));
        p.drawEllipse(QPointF(x, y), size / 2, size / 2);
        size = std::max(cord_ * 0.3, size - cord_ * 0.07);
    }
    p.setOpacity(1);
    // Still whole: a cord of two strands.
    const double end = wick_->isBellAhead() ? bellX() - cord_ * 2.4 : bellX();
    p.setPen(QPen(ink_, cord_, Qt::SolidLine, Qt::RoundCap));
    p.drawLine(QPointF(nowX(), y), QPointF(end, y));
    p.setPen(QPen(ground_, std::max(1.0, cord_ * 0.24)));
    for (double x = nowX() + cord_ * 3; x < end; x += cord_ * 1.5)
        p.drawLine(QPointF(x - cord_ * 0.42, y + cord_ * 0.36),
                   QPointF(x + cord_ * 0.42, y - cord_ * 0.36));
    // The glow behind the flame.
    p.setPen(QPen(ember_, cord_, Qt::SolidLine, Qt::RoundCap));
    p.drawLine(QPointF(nowX(), y), QPointF(nowX() + cord_ * 2.2, y));
}

void WickPicture::paintMarks(QPainter& p) const {
    const double thick = std::max(2.0, cord_ * 0.72);
    const double step = thick * 1.8;
    for (const auto& mark : wick_->marks()) {
        const int row = mark.lane / 2;
        const double side = mark.lane % 2 == 0 ? -1 : 1;
        const double y = cordY() + side * (cord_ * 1.9 + row * step);
        const double from = std::max(0.0, across(mark.from));
        const double to = std::min(bellX(), std::max(across(mark.to), from + thick));
        const bool isOver =
            mark.state == app::TaskState::Done || mark.state == app::TaskState::Skipped;
        const bool isGoing =
            mark.state == app::TaskState::Running || mark.state == app::TaskState::Over;
        if (to <= 0 || (isOver && across(mark.to) > nowX())) continue;
        QColor colour = isOver ? ash_ : mark.isLate ? ember_ : isGoing ? water_ : ink_;
        p.setOpacity(isOver ? 0.5 : 1);
        p.setPen(QPen(colour, isGoing || mark.isLate ? thick : std::max(1.0, thick * 0.34)));
        p.drawLine(QPointF(from, y), QPointF(to, y));
        // The start is a stud, so that two tasks in a row are two.
        p.setPen(Qt::NoPen);
        p.setBrush(colour);
        p.drawRect(QRectF(from, y - thick * 0.75, thick * 0.6, thick * 1.5));
    }
    p.setOpacity(1);
}

void WickPicture::paintHours(QPainter& p) const {
    p.setFont(font_);
    const QFontMetricsF metrics(font_);
    QFont strong = font_;
    strong.setPixelSize(font_.pixelSize() * 5 / 4);
    strong.setWeight(QFont::ExtraBold);
    const double clockWide = QFontMetricsF(strong).horizontalAdvance(wick_->clock());
    const double clockLeft = std::max(cord_, nowX() - clockWide / 2);
    std::vector<QRectF> taken{
        {0, 0, std::max(clockLeft + clockWide, nowX() + cord_ * 5) + cord_ * 2.5, height()},
        {bellX() - cord_ * 10, 0, cord_ * 30, height()}};
    const double base = height() - metrics.descent();
    p.setFont(strong);
    p.setPen(ink_);
    p.drawText(QPointF(clockLeft, base), wick_->clock());
    p.setFont(font_);
    for (const auto& hour : wick_->hours()) {
        const double wide = metrics.horizontalAdvance(hour.text);
        const QRectF box(across(hour.at) - wide / 2 - cord_ * 2.5, 0, wide + cord_ * 5, height());
        if (box.right() > width() || std::any_of(taken.begin(), taken.end(), [&](const QRectF& t) {
                return t.intersects(box);
            }))
            continue;
        taken.push_back(box);
        p.setPen(QPen(ash_, std::max(1.0, cord_ * 0.2)));
        p.setOpacity(0.55);
        p.drawLine(QPointF(across(hour.at), cordY() + cord_),
                   QPointF(across(hour.at), base - metrics.ascent()));
        p.setOpacity(1);
        p.setPen(ash_);
        p.drawText(QPointF(across(hour.at) - wide / 2, base), hour.text);
    }
}

void WickPicture::paintFlame(QPainter& p) const {
    const double s = cord_ * 5.4;
    QPainterPath flame;
    flame.moveTo(0, 0.12);
    flame.cubicTo(-0.42, 0.1, -0.5, -0.34, -0.2, -0.62);
    flame.cubicTo(-0.14, -0.46, -0.06, -0.42, 0, -0.42);
    flame.cubicTo(-0.06, -0.72, 0.04, -1.0, 0.16, -1.16);
    flame.cubicTo(0.2, -0.84, 0.5, -0.62, 0.42, -0.24);
    flame.cubicTo(0.38, 0.0, 0.22, 0.12, 0, 0.12);
    p.save();
    p.translate(nowX(), cordY() + cord_ * 0.4);
    p.scale(s, s);
    p.setPen(QPen(ground_, 0.16));
    p.setBrush(ember_);
    p.drawPath(flame);
    p.setPen(Qt::NoPen);
    p.fillPath(flame, ember_);
    p.setBrush(ground_);
    p.drawEllipse(QPointF(0.03, -0.1), 0.12, 0.16);
    p.restore();
}

void WickPicture::paintBell(QPainter& p) const {
    if (!wick_->isBellAhead()) return;
    const double s = cord_ * 3.1;
    QPainterPath bell;
    bell.moveTo(-0.14, -1.0);
    bell.lineTo(0.14, -1.0);
    bell.lineTo(0.14, -0.7);
    bell.cubicTo(0.6, -0.6, 0.62, -0.1, 0.68, 0.36);
    bell.lineTo(0.96, 0.66);
    bell.lineTo(-0.96, 0.66);
    bell.lineTo(-0.68, 0.36);
    bell.cubicTo(-0.62, -0.1, -0.6, -0.6, -0.14, -0.7);
    bell.closeSubpath();
    bell.addEllipse(QPointF(0, 0.86), 0.24, 0.2);
    bell.setFillRule(Qt::WindingFill);
    p.save();
    p.translate(bellX(), cordY());
    p.scale(s, s);
    p.fillPath(bell, ink_);
    p.restore();
}

}  // namespace cinder::face
