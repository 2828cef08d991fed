#include "fields.h"

#include <cmath>

#include "roles.h"

namespace cinder::face {

const std::vector<Role<FieldRow>>& FieldRow::roles() {
    static const std::vector<Role<FieldRow>> all{
        CINDER_ROLE(FieldRow, key),        CINDER_ROLE(FieldRow, kind),
        CINDER_ROLE(FieldRow, name),       CINDER_ROLE(FieldRow, value),
        CINDER_ROLE(FieldRow, note),       CINDER_ROLE(FieldRow, problem),
        CINDER_ROLE(FieldRow, verb),       CINDER_ROLE(FieldRow, keys),
        CINDER_ROLE(FieldRow, words),      CINDER_ROLE(FieldRow, chosen),
        CINDER_ROLE(FieldRow, numberKind), CINDER_ROLE(FieldRow, number),
        CINDER_ROLE(FieldRow, least),      CINDER_ROLE(FieldRow, most),
        CINDER_ROLE(FieldRow, canLess),    CINDER_ROLE(FieldRow, canMore),
        CINDER_ROLE(FieldRow, isRemoval)};
    return all;
}

const std::vector<Role<PartRow>>& PartRow::roles() {
    static const std::vector<Role<PartRow>> all{
        CINDER_ROLE(PartRow, key), CINDER_ROLE(PartRow, name), CINDER_ROLE(PartRow, note),
        CINDER_ROLE(PartRow, isFaulty)};
    return all;
}
namespace {

constexpr double kInch = 25.4;  // exact: NIST SP 811 (2008), appendix B.8
constexpr double kPound = 453.59237;

QString shortNumber(double value, int places) {
    QString text = QString::number(value, 'f', places);
    while (text.contains(u'.') && (text.endsWith(u'0') || text.endsWith(u'.')))
        text.chop(1);
    return text;
}

/// How far one touch of a stepper goes, in the base unit.
double stepOf(NumberEntry::Kind kind, bool isCustomary, bool isFahrenheit) {
    switch (kind) {
        case NumberEntry::Kind::Length:
            return isCustomary ? kInch : 10;
        case NumberEntry::Kind::Mass:
            return isCustomary ? kPound / 4 : 50;
        case NumberEntry::Kind::Percent:
            return 5;
        case NumberEntry::Kind::Temperature:
            return isFahrenheit ? 5 / 1.8 : 2;
        default:
            return 1;
    }
}

}  // namespace

QString FieldList::measure(Kind kind, double value) const {
    switch (kind) {
        case Kind::Length:
            return isCustomary ? tr("%1 in").arg(shortNumber(value / kInch, 1))
                               : tr("%1 cm").arg(shortNumber(value / 10, 1));
        case Kind::Mass:
            if (isCustomary) return tr("%1 lb").arg(shortNumber(value / kPound, 2));
            return value < 1000 ? tr("%1 g").arg(shortNumber(value, 0))
                                : tr("%1 kg").arg(shortNumber(value / 1000, 2));
        case Kind::Volume:
            return isCustomary ? tr("%1 qt").arg(shortNumber(value / 946.352946, 1))
                               : tr("%1 l").arg(shortNumber(value / 1000, 2));
        case Kind::Minutes:
            return tr("%1 min").arg(shortNumber(value, 1));
        case Kind::Percent:
            return QStringLiteral("%1 %").arg(shortNumber(value, 0));
        case Kind::Temperature:
            return words.temperature(Temperature::fromCelsius(value));
        default:
            return shortNumber(value, 0);
    }
}

QString FieldList::sizeText(const FieldList& list, Length length, Length width) {
    return list.measure(Kind::Length, length.millimetres()) + QStringLiteral(" × ") +
           list.measure(Kind::Length, width.millimetres());
}

void FieldList::heading(const QString& text) {
    Field field;
    field.row.key = QStringLiteral("heading:") + text;
    field.row.kind = QStringLiteral("heading");
    field.row.name = text;
    fields.push_back(std::move(field));
}

void FieldList::note(const QString& key, const QString& text, const std::string& path) {
    Field field;
    field.row.key = QStringLiteral("note:") + key;
    field.row.kind = QStringLiteral("note");
    field.row.name = text;
    field.path = path;
    fields.push_back(std::move(field));
}

Field& FieldList::number(const std::string& path, const QString& name, Kind kind, double value,
                         double least, double most, std::function<app::Edit(double)> set) {
    Field field;
    field.path = path;
    field.row.key = toText(path);
    field.row.kind = QStringLiteral("number");
    field.row.name = name;
    field.row.value = measure(kind, value);
    field.row.numberKind = static_cast<int>(kind);
    field.row.number = value;
    field.row.least = least;
    field.row.most = most;
    field.row.canLess = value > least;
    field.row.canMore = value < most;
    field.stepBy = stepOf(kind, isCustomary, words.isFahrenheit());
    field.number = std::move(set);
    return fields.emplace_back(std::move(field));
}

Field& FieldList::text(const std::string& path, const QString& name, const QString& value,
                       std::function<app::Edit(const std::string&)> set) {
    Field field;
    field.path = path;
    field.row.key = toText(path);
    field.row.kind = QStringLiteral("text");
    field.row.name = name;
    field.row.value = value;
    field.text = std::move(set);
    return fields.emplace_back(std::move(field));
}

Field& FieldList::choice(const std::string& path, const QString& name, bool isMany,
                         std::function<app::Edit(const std::string&)> set) {
    Field field;
    field.path = path;
    field.row.key = toText(path);
    field.row.kind = isMany ? QStringLiteral("many") : QStringLiteral("choice");
    field.row.name = name;
    field.text = std::move(set);
    return fields.emplace_back(std::move(field));
}

void FieldList::option(Field& field, std::string_view key, const QString& word, bool isChosen) {
    const QString text = QString::fromUtf8(key.data(), static_cast<qsizetype>(key.size()));
    field.row.keys << text;
    field.row.words << word;
    if (isChosen) field.row.chosen << text;
}

Field& FieldList::go(const QString& target, const QString& name, const QString& value,
                     const std::string& path) {
    Field field;
    field.path = path;
    field.target = target;
    field.row.key = QStringLiteral("go:") + target;
    field.row.kind = QStringLiteral("go");
    field.row.name = name;
    field.row.value = value;
    return fields.emplace_back(std::move(field));
}

Field& FieldList::act(const QString& key, const QString& name, const QString& verb,
                      app::Edit edit) {
    Field field;
    field.row.key = QStringLiteral("act:") + key;
    field.row.kind = QStringLiteral("act");
    field.row.name = name;
    field.row.verb = verb;
    field.act = std::move(edit);
    return fields.emplace_back(std::move(field));
}

Field& FieldList::takeOut(const QString& key, const QString& name, app::Edit edit) {
    Field& field = act(key, name, tr("Take out"), std::move(edit));
    field.row.isRemoval = true;
    return field;
}

Field& FieldList::removal(const QString& name, app::Edit edit, const QString& backTo) {
    Field& field = act(QStringLiteral("remove"), {}, name, std::move(edit));
    field.row.isRemoval = true;
    field.target = backTo;
    return field;
}

}  // namespace cinder::face
