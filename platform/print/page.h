#pragma once

/// A stack of pages that is written on from top to bottom, in points.

#include <QFont>
#include <QPainter>
#include <QPdfWriter>
#include <QRectF>

#include "print/pdf.h"

namespace cinder::platform {

/// Sizes of type and space in points. Our own choice: read at arm's length, with gloves, outdoors.
namespace ink {
inline constexpr int kTitle = 22;
inline constexpr int kHeading = 14;
inline constexpr int kText = 11;
inline constexpr int kSmall = 9;
inline constexpr double kGap = 6;
inline constexpr double kMargin = 42;  // 15 mm
inline constexpr double kFooter = 24;
inline constexpr double kBox = 11;
inline constexpr double kLine = 0.7;
}  // namespace ink

/// With no writer it only counts pages, so that each page can carry the number of all.
class Pages {
  public:
    Pages(QSizeF sheet, const Faces& faces, QString footer, QPdfWriter* writer, int all);
    ~Pages();
    Pages(const Pages&) = delete;
    Pages& operator=(const Pages&) = delete;
    Pages(Pages&&) = delete;
    Pages& operator=(Pages&&) = delete;

    [[nodiscard]] int count() const { return count_; }
    [[nodiscard]] double width() const;
    [[nodiscard]] double left() const;
    [[nodiscard]] double y() const { return y_; }
    /// Room for content from top to bottom of one page.
    [[nodiscard]] double pageHeight() const;
    [[nodiscard]] bool isAtTop() const;
    [[nodiscard]] bool hasRoom(double height) const;

    void newPage();
    void skip(double height) { y_ += height; }

    [[nodiscard]] QFont text(int size) const;
    [[nodiscard]] QFont strong(int size) const;
    /// Height of `words` set in `width`.
    [[nodiscard]] double heightOf(const QString& words, const QFont& font, double width) const;
    /// With no word cut, set in words' own lines.
    [[nodiscard]] bool fits(const QString& words, const QFont& font, QSizeF room) const;
    void write(const QRectF& where, const QString& words, const QFont& font,
               Qt::Alignment align = Qt::AlignLeft) const;
    void rule(double y, double thickness) const;
    void box(const QRectF& where, double thickness) const;
    void fill(const QRectF& where) const;
    /// Written from bottom to top, for things narrower than their name.
    void writeUp(const QRectF& where, const QString& words, const QFont& font) const;

  private:
    void writeFooter() const;

    QSizeF sheet_;
    Faces faces_;
    QString footer_;
    QPdfWriter* writer_;
    mutable QPainter painter_;
    int all_;
    int count_ = 1;
    double y_ = ink::kMargin;
};

}  // namespace cinder::platform
