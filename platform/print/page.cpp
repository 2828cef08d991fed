#include "print/page.h"

#include <QFontMetricsF>

namespace cinder::platform {

namespace {

/// Dots to a point: fine enough that letters keep their distances.
constexpr int kDotsAPoint = 10;
constexpr int kWrap = static_cast<int>(Qt::TextWordWrap);

/// Text comes out on paper up to so much wider than measured for a screen: a line that just fits
/// when measured would be broken when drawn, and run into the next row.
constexpr double kMeasured = 0.97;

/// A word that is wider than its room, the id of an entry say, may be broken anywhere.
QString breakable(const QString& words, const QFont& font, double width) {
    constexpr QChar kMayBreak(0x200B);
    const QFontMetricsF metrics(font);
    QStringList all = words.split(u' ');
    for (QString& word : all) {
        if (metrics.horizontalAdvance(word) <= width * kMeasured) continue;
        for (qsizetype at = word.size() - 1; at > 0; --at)
            word.insert(at, kMayBreak);
    }
    return all.join(u' ');
}

QFont face(const QString& family, int size) {
    QFont font(family);
    font.setPixelSize(size);
    font.setHintingPreference(QFont::PreferNoHinting);
    // Any letter spacing keeps the font from joining letters, so that a sheet can be searched.
    font.setLetterSpacing(QFont::AbsoluteSpacing, 0.02);
    return font;
}

}  // namespace

Pages::Pages(QSizeF sheet, const Faces& faces, QString footer, QPdfWriter* writer, int all)
    : sheet_(sheet), faces_(faces), footer_(std::move(footer)), writer_(writer), all_(all) {
    if (writer_ == nullptr) return;
    writer_->setResolution(72 * kDotsAPoint);
    painter_.begin(writer_);
    painter_.scale(kDotsAPoint, kDotsAPoint);
    writeFooter();
}

Pages::~Pages() {
    if (painter_.isActive()) painter_.end();
}

double Pages::width() const {
    return sheet_.width() - 2 * ink::kMargin;
}
double Pages::left() const {
    return ink::kMargin;
}
double Pages::pageHeight() const {
    return sheet_.height() - 2 * ink::kMargin - ink::kFooter;
}
bool Pages::isAtTop() const {
    return y_ <= ink::kMargin;
}
bool Pages::hasRoom(double height) const {
    return y_ + height <= ink::kMargin + pageHeight();
}

void Pages::newPage() {
    ++count_;
    y_ = ink::kMargin;
    if (writer_ == nullptr) return;
    writer_->newPage();
    writeFooter();
}

QFont Pages::text(int size) const {
    return face(faces_.text, size);
}
QFont Pages::strong(int size) const {
    return face(faces_.strong, size);
}

double Pages::heightOf(const QString& words, const QFont& font, double width) const {
    const QFontMetricsF metrics(font);
    if (words.isEmpty()) return metrics.height();
    return metrics
        .boundingRect(QRectF(0, 0, width * kMeasured, 1e6), kWrap, breakable(words, font, width))
        .height();
}

bool Pages::fits(const QString& words, const QFont& font, QSizeF room) const {
    const QRectF bounds =
        QFontMetricsF(font).boundingRect(QRectF(0, 0, room.width() * kMeasured, 1e6),
                                         kWrap | static_cast<int>(Qt::AlignLeft), words);
    return bounds.width() <= room.width() && bounds.height() <= room.height();
}

void Pages::write(const QRectF& where, const QString& words, const QFont& font,
                  Qt::Alignment align) const {
    if (!painter_.isActive()) return;
    painter_.setFont(font);
    painter_.drawText(where, kWrap | static_cast<int>(align),
                      breakable(words, font, where.width()));
}

void Pages::rule(double y, double thickness) const {
    if (!painter_.isActive()) return;
    painter_.setPen(QPen(Qt::black, thickness));
    painter_.drawLine(QPointF(left(), y), QPointF(left() + width(), y));
}

void Pages::box(const QRectF& where, double thickness) const {
    if (!painter_.isActive()) return;
    painter_.setPen(QPen(Qt::black, thickness));
    painter_.setBrush(Qt::NoBrush);
    painter_.drawRect(where);
}

void Pages::fill(const QRectF& where) const {
    if (!painter_.isActive()) return;
    painter_.fillRect(where, QColor(238, 238, 238));
}

void Pages::writeUp(const QRectF& where, const QString& words, const QFont& font) const {
    if (!painter_.isActive()) return;
    painter_.save();
    painter_.setFont(font);
    painter_.translate(where.left(), where.bottom());
    painter_.rotate(-90);
    painter_.drawText(QRectF(0, 0, where.height(), where.width()),
                      kWrap | static_cast<int>(Qt::AlignCenter), words);
    painter_.restore();
}

void Pages::writeFooter() const {
    const double top = sheet_.height() - ink::kMargin - QFontMetricsF(text(ink::kSmall)).height();
    const QRectF line(left(), top, width(), ink::kFooter);
    painter_.setPen(QPen(Qt::black, ink::kLine));
    write(QRectF(line.left(), line.top(), line.width() - 60, line.height()), footer_,
          text(ink::kSmall));
    write(line, QStringLiteral("%1 / %2").arg(count_).arg(all_), text(ink::kSmall), Qt::AlignRight);
}

}  // namespace cinder::platform
