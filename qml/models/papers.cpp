#include "papers.h"

#include <algorithm>
#include <array>

#include "report/csv.h"
#include "settings.h"
#include "words.h"

namespace cinder::face {

namespace {

struct Named {
    const char* key;
    app::Sheet sheet;
    const char* words;
};

constexpr std::array kSheets{
    Named{"purchase", app::Sheet::Purchase,
          QT_TRANSLATE_NOOP("cinder::face::Papers", "Purchase list")},
    Named{"pack", app::Sheet::Pack, QT_TRANSLATE_NOOP("cinder::face::Papers", "Pack list")},
    Named{"kitchen", app::Sheet::Kitchen, QT_TRANSLATE_NOOP("cinder::face::Papers", "Kitchen")},
    Named{"run", app::Sheet::Run, QT_TRANSLATE_NOOP("cinder::face::Papers", "Run sheet")},
    Named{"buffet", app::Sheet::Buffet, QT_TRANSLATE_NOOP("cinder::face::Papers", "Buffet plan")},
    Named{"cards", app::Sheet::Cards, QT_TRANSLATE_NOOP("cinder::face::Papers", "Dish cards")},
    Named{"record", app::Sheet::Record,
          QT_TRANSLATE_NOOP("cinder::face::Papers", "Temperature record")}};

const Named& sheetOf(const QString& key) {
    const auto found = std::find_if(kSheets.begin(), kSheets.end(), [&](const Named& one) {
        return key == QLatin1String(one.key);
    });
    return found == kSheets.end() ? kSheets.front() : *found;
}

}  // namespace

Papers::Papers(ListsDoor& door, const Settings& settings, Printer* printer, QObject* parent)
    : QObject(parent),
      door_(door),
      settings_(settings),
      words_(settings),
      printer_(printer),
      language_(settings.language()) {}

void Papers::retell() {
    language_ = settings_.language();
    Q_EMIT changed();
}

QStringList Papers::sheets() const {
    QStringList keys;
    for (const Named& one : kSheets)
        keys << QString::fromLatin1(one.key);
    return keys;
}

QStringList Papers::names() const {
    QStringList names;
    for (const Named& one : kSheets)
        names << tr(one.words);
    return names;
}

void Papers::setSheet(const QString& sheet) {
    sheet_ = sheet;
    say({}, false);
}

void Papers::setSize(const QString& size) {
    isLetter_ = size != QLatin1String("a4");
    say({}, false);
}

void Papers::setLanguage(const QString& language) {
    language_ = language;
    say({}, false);
}

bool Papers::hasTable() const {
    return sheetOf(sheet_).sheet != app::Sheet::Cards;
}

Result<app::Paper, app::Refusal> Papers::made() const {
    report::Style style = words_.style();
    style.language = language_.toStdString();
    return door_.paper(sheetOf(sheet_).sheet, style);
}

void Papers::say(const QString& what, bool isWritten) {
    said_ = what;
    isWritten_ = isWritten;
    Q_EMIT changed();
}

void Papers::tell(const Printer::Written& written) {
    if (written.problem.isEmpty())
        say(tr("Written: %1").arg(written.path), true);
    else
        say(tr("Not written: %1. %2").arg(written.path, written.problem), false);
}

void Papers::writePdf() {
    const auto paper = made();
    if (!paper) return say(Words::refusal(paper.error()), false);
    if (!printer_) return say(tr("This device writes no files."), false);
    tell(printer_->writePdf(
        paper->document, isLetter_,
        QString::fromStdString(paper->stem) + QLatin1Char('-') + size() + QStringLiteral(".pdf")));
}

void Papers::writeCsv() {
    const auto paper = made();
    if (!paper) return say(Words::refusal(paper.error()), false);
    if (!printer_) return say(tr("This device writes no files."), false);
    Printer::Written last;
    for (std::size_t i = 0; i < paper->tables.size(); ++i) {
        QString name = QString::fromStdString(paper->stem);
        if (paper->tables.size() > 1)
            name += QLatin1Char('-') + QString::fromStdString(paper->tables[i].name);
        last = printer_->writeText(report::csv(paper->tables[i]), name + QStringLiteral(".csv"));
        if (!last.problem.isEmpty()) break;
    }
    tell(last);
}

}  // namespace cinder::face
