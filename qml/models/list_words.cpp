#include "list_words.h"

#include <array>

#include "event/menu.h"
#include "report/worked.h"
#include "settings.h"

namespace cinder::face {

namespace {

/// A field by the last word of its path, as a person calls it.
struct FieldWord {
    const char* member;
    const char* words;
};

constexpr std::array kFields{
    FieldWord{"serving", QT_TRANSLATE_NOOP("cinder::face::ListWords", "how it is served")},
    FieldWord{"takePercent",
              QT_TRANSLATE_NOOP("cinder::face::ListWords", "how many guests take it")},
    FieldWord{"ingredients", QT_TRANSLATE_NOOP("cinder::face::ListWords", "what it is made of")},
    FieldWord{"yields", QT_TRANSLATE_NOOP("cinder::face::ListWords", "the yield")},
    FieldWord{"yieldPercent", QT_TRANSLATE_NOOP("cinder::face::ListWords", "the yield")},
    FieldWord{"vessel", QT_TRANSLATE_NOOP("cinder::face::ListWords", "what it stands in")},
    FieldWord{"panSize", QT_TRANSLATE_NOOP("cinder::face::ListWords", "the size of its pan")},
    FieldWord{"panDepth", QT_TRANSLATE_NOOP("cinder::face::ListWords", "the depth of its pan")},
    FieldWord{"vesselLitres",
              QT_TRANSLATE_NOOP("cinder::face::ListWords", "what its vessel holds")},
    FieldWord{"vesselLengthMm",
              QT_TRANSLATE_NOOP("cinder::face::ListWords", "the length of its vessel")},
    FieldWord{"vesselWidthMm",
              QT_TRANSLATE_NOOP("cinder::face::ListWords", "the width of its vessel")},
    FieldWord{"gramsPerLitre",
              QT_TRANSLATE_NOOP("cinder::face::ListWords", "what a litre of it weighs")},
    FieldWord{"massGrams", QT_TRANSLATE_NOOP("cinder::face::ListWords", "what a piece weighs")},
    FieldWord{"pieces", QT_TRANSLATE_NOOP("cinder::face::ListWords", "its pieces")},
    FieldWord{"total", QT_TRANSLATE_NOOP("cinder::face::ListWords", "its pieces")},
    FieldWord{"perHundredGuests", QT_TRANSLATE_NOOP("cinder::face::ListWords", "its pieces")},
    FieldWord{"percent", QT_TRANSLATE_NOOP("cinder::face::ListWords", "its share of the dish")},
    FieldWord{"portionGrams", QT_TRANSLATE_NOOP("cinder::face::ListWords", "the portion")},
    FieldWord{"portionPieces", QT_TRANSLATE_NOOP("cinder::face::ListWords", "the portion")},
    FieldWord{"childPercent", QT_TRANSLATE_NOOP("cinder::face::ListWords", "a child's portion")},
    FieldWord{"secondsPercent", QT_TRANSLATE_NOOP("cinder::face::ListWords", "seconds")},
    FieldWord{"serviceMinutes",
              QT_TRANSLATE_NOOP("cinder::face::ListWords", "how long the line is open")},
    FieldWord{"bufferMinutes",
              QT_TRANSLATE_NOOP("cinder::face::ListWords", "time kept on the road")},
    FieldWord{"travelMinutes", QT_TRANSLATE_NOOP("cinder::face::ListWords", "the travel time")},
    FieldWord{"arrival", QT_TRANSLATE_NOOP("cinder::face::ListWords", "the arrival")},
    FieldWord{"count", QT_TRANSLATE_NOOP("cinder::face::ListWords", "how many there are")},
    FieldWord{"units", QT_TRANSLATE_NOOP("cinder::face::ListWords", "how many it is given")},
    FieldWord{"tables", QT_TRANSLATE_NOOP("cinder::face::ListWords", "the tables of the line")},
    FieldWord{"minutesBefore",
              QT_TRANSLATE_NOOP("cinder::face::ListWords", "when it is done in the kitchen")},
    FieldWord{"figure", QT_TRANSLATE_NOOP("cinder::face::ListWords", "your own figure")},
};

/// How the core writes it; said once, in the language of this device.
constexpr const char* kNoSource = "common practice - no source";

QString text(const std::string& utf8) {
    return QString::fromStdString(utf8);
}

}  // namespace

report::Style ListWords::style() const {
    report::Style style;
    style.language = settings_.language().toStdString();
    style.measures =
        settings_.isCustomary() ? report::Measures::Customary : report::Measures::Metric;
    style.hours = settings_.isTwelveHour() ? report::Hours::Twelve : report::Hours::TwentyFour;
    return style;
}

QString ListWords::name(const LocalText& words) const {
    return text(style().name(words));
}

QString ListWords::amount(const quantity::Amount& amount) const {
    return text(report::amountText(amount, style()));
}

QStringList ListWords::worked(const quantity::Figure& figure) const {
    QStringList lines;
    for (const std::string& line : report::workedLines(figure, style()))
        lines << text(line);
    return lines;
}

QString ListWords::placeOf(const std::string& path, const event::Event& event) const {
    const QStringList steps = text(path).split(QLatin1Char('/'), Qt::SkipEmptyParts);
    if (steps.value(0) == QLatin1String("menu")) {
        const auto dish = steps.value(1).toULongLong();
        if (dish < event.menu.size()) return name(event.menu[dish].name);
    }
    if (steps.value(0) == QLatin1String("kit")) return tr("Kit");
    if (steps.value(0) == QLatin1String("site")) return tr("Site");
    if (steps.value(0) == QLatin1String("guests")) return tr("Guests");
    return tr("The event");
}

QString ListWords::source(const quantity::Source& source, const event::Event& event) const {
    switch (source.origin) {
        case quantity::Origin::Field:
            return tr("stands in the event: %1").arg(placeOf(source.text, event));
        case quantity::Origin::Published:
            return text(source.text);
        case quantity::Origin::CommonPractice:
            return source.text.empty() || source.text == kNoSource
                       ? tr("common practice - no source")
                       : tr("common practice: %1").arg(text(source.text));
        case quantity::Origin::FromMemory:
            return source.text.empty() ? tr("from memory, not verified")
                                       : tr("from memory, not verified: %1").arg(text(source.text));
        case quantity::Origin::Reckoned:
            break;
    }
    return {};
}

QString ListWords::fault(const event::Fault& fault, const event::Event& event) const {
    const QStringList steps = text(fault.path).split(QLatin1Char('/'), Qt::SkipEmptyParts);
    QString field = tr("a value");
    for (const QString& step : steps)
        for (const FieldWord& known : kFields)
            if (step == QLatin1String(known.member)) field = tr(known.words);
    const QString where = placeOf(fault.path, event);
    switch (fault.what) {
        case event::Fault::What::Missing:
            return tr("%1: say %2").arg(where, field);
        case event::Fault::What::OutOfRange:
            return tr("%1: %2 is %3, right would be %4")
                .arg(where, field, text(fault.found),
                     text(fault.allowed).replace(QStringLiteral(".."), QChar(0x2013)));
        default:
            break;
    }
    return tr("%1: %2 does not fit the rest (%3)").arg(where, field, text(fault.found));
}

QString ListWords::guests(const event::Guests& guests) {
    const std::int32_t all = event::headCount(guests);
    if (all == 1) return tr("1 guest");
    if (guests.children == 0) return tr("%1 guests, no children").arg(all);
    if (guests.children == 1) return tr("%1 guests, 1 of them a child").arg(all);
    return tr("%1 guests, %2 of them children").arg(all).arg(guests.children);
}

}  // namespace cinder::face
