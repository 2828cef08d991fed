#include "print/blocks.h"

#include <algorithm>

namespace cinder::platform {

namespace {

QString words(const std::string& text) {
    return QString::fromStdString(text);
}

/// Starts a page unless `height` fits on this one.
void makeRoom(Pages& pages, double height) {
    if (!pages.hasRoom(height) && !pages.isAtTop()) pages.newPage();
}

double writeWhole(Pages& pages, const QString& text, const QFont& font, double indent = 0) {
    const double width = pages.width() - indent;
    const double height = pages.heightOf(text, font, width);
    pages.write(QRectF(pages.left() + indent, pages.y(), width, height), text, font);
    pages.skip(height);
    return height;
}

void setHeading(Pages& pages, const report::Heading& heading) {
    const int size = heading.level == 1 ? ink::kHeading : ink::kText + 1;
    const QFont font = pages.strong(size);
    // Never alone at the foot of a page.
    makeRoom(pages, pages.heightOf(words(heading.text), font, pages.width()) + 60);
    if (!pages.isAtTop()) pages.skip(ink::kGap * 2);
    writeWhole(pages, words(heading.text), font);
    pages.skip(ink::kGap / 2);
}

void setNote(Pages& pages, const report::Note& note) {
    const QFont font = note.isCaution ? pages.strong(ink::kSmall + 1) : pages.text(ink::kText);
    const double inset = note.isCaution ? ink::kGap : 0;
    const double height =
        pages.heightOf(words(note.text), font, pages.width() - 2 * inset) + 2 * inset;
    makeRoom(pages, height + ink::kGap);
    const QRectF frame(pages.left(), pages.y(), pages.width(), height);
    if (note.isCaution) pages.box(frame, 1.5);
    pages.write(frame.adjusted(inset, inset, -inset, 0), words(note.text), font);
    pages.skip(height + ink::kGap);
}

void setBlank(Pages& pages, const report::Blank& blank) {
    constexpr double kRoomToWrite = 150;
    const QFont font = pages.text(ink::kText);
    const double labelWidth = pages.width() - kRoomToWrite;
    const double height = std::max(24.0, pages.heightOf(words(blank.label), font, labelWidth) + 6);
    makeRoom(pages, height);
    pages.write(QRectF(pages.left(), pages.y(), labelWidth, height), words(blank.label), font,
                Qt::AlignBottom);
    const double foot = pages.y() + height;
    pages.box(QRectF(pages.left() + labelWidth + 10, foot, kRoomToWrite - 10, 0.01), ink::kLine);
    pages.skip(height);
}

/// As large as it goes, upright or along the box; else the first word, which is its number.
void setLabel(Pages& pages, const QRectF& inside, const QString& label) {
    for (const int size : {10, 8, 7}) {
        const QFont font = pages.text(size);
        if (pages.fits(label, font, inside.size()))
            return pages.write(inside, label, font, Qt::AlignCenter);
        if (pages.fits(label, font, inside.size().transposed()))
            return pages.writeUp(inside, label, font);
    }
    pages.write(inside, label.section(QLatin1Char(' '), 0, 0), pages.strong(7), Qt::AlignCenter);
}

void setDrawing(Pages& pages, const report::Drawing& drawing) {
    const double millimetres = std::max(1.0, drawing.width.millimetres());
    const double scale =
        std::min(pages.width() / millimetres,
                 pages.pageHeight() * 0.5 / std::max(1.0, drawing.height.millimetres()));
    const double height = drawing.height.millimetres() * scale;
    makeRoom(pages, height + ink::kGap);
    const auto place = [&](const report::Drawing::Box& box) {
        return QRectF(pages.left() + box.x.millimetres() * scale,
                      pages.y() + box.y.millimetres() * scale, box.width.millimetres() * scale,
                      box.height.millimetres() * scale);
    };
    for (const auto& box : drawing.boxes) {
        const QRectF where = place(box);
        if (box.isHollow) {
            pages.box(where, 1.5);
            continue;
        }
        pages.fill(where);
        pages.box(where, ink::kLine);
        const QRectF inside = where.adjusted(2, 2, -2, -2);
        setLabel(pages, inside, words(box.label));
    }
    pages.skip(height + ink::kGap);
}

/// Two to a page: cut apart, folded to stand.
void setCard(Pages& pages, const report::StandingCard& card) {
    const double height = pages.pageHeight() / 2 - ink::kGap;
    makeRoom(pages, height);
    const QRectF frame(pages.left(), pages.y(), pages.width(), height);
    pages.box(frame, ink::kLine);
    const QRectF inside = frame.adjusted(24, 24, -24, -24);
    int size = 38;
    while (size > 16 && !pages.fits(words(card.title), pages.strong(size),
                                    {inside.width(), inside.height() * 0.5}))
        size -= 2;
    const QFont title = pages.strong(size);
    double y = inside.top();
    const double titleHeight = pages.heightOf(words(card.title), title, inside.width());
    pages.write(QRectF(inside.left(), y, inside.width(), titleHeight), words(card.title), title,
                Qt::AlignHCenter);
    y += titleHeight + 3 * ink::kGap;
    for (const std::string& line : card.lines) {
        const QFont font = pages.text(18);
        const double lineHeight = pages.heightOf(words(line), font, inside.width());
        pages.write(QRectF(inside.left(), y, inside.width(), lineHeight), words(line), font,
                    Qt::AlignHCenter);
        y += lineHeight + ink::kGap;
    }
    pages.skip(height + ink::kGap);
}

}  // namespace

void setTitle(Pages& pages, const report::Document& document) {
    // Cards are cut out: the footer is title enough.
    if (!document.blocks.empty() &&
        std::holds_alternative<report::StandingCard>(document.blocks.front()))
        return;
    writeWhole(pages, words(document.title), pages.strong(ink::kTitle));
    if (!document.subtitle.empty())
        writeWhole(pages, words(document.subtitle), pages.text(ink::kText));
    pages.skip(ink::kGap);
    pages.rule(pages.y(), 1.5);
    pages.skip(ink::kGap * 1.5);
}

void setBlock(Pages& pages, const report::Block& block) {
    if (const auto* heading = std::get_if<report::Heading>(&block)) setHeading(pages, *heading);
    if (const auto* note = std::get_if<report::Note>(&block)) setNote(pages, *note);
    if (const auto* table = std::get_if<report::Table>(&block)) setTable(pages, *table);
    if (const auto* blank = std::get_if<report::Blank>(&block)) setBlank(pages, *blank);
    if (const auto* drawing = std::get_if<report::Drawing>(&block)) setDrawing(pages, *drawing);
    if (const auto* card = std::get_if<report::StandingCard>(&block)) setCard(pages, *card);
    if (std::holds_alternative<report::PageBreak>(block)) pages.newPage();
}

}  // namespace cinder::platform
