#include "caution_list.h"

#include <string_view>

#include <QVariant>

#include "cautions.h"
#include "cook/cautions.h"
#include "safety/cautions.h"
#include "settings.h"

namespace cinder::face {

namespace {

QString toWords(std::string_view text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

}  // namespace

const std::vector<Role<CautionRow>>& CautionRow::roles() {
    static const std::vector<Role<CautionRow>> all{
        {"key", [](const CautionRow& r) { return QVariant(r.key); }},
        {"heading", [](const CautionRow& r) { return QVariant(r.heading); }},
        {"text", [](const CautionRow& r) { return QVariant(r.text); }},
        {"source", [](const CautionRow& r) { return QVariant(r.source); }}};
    return all;
}

CautionList::CautionList(const Settings& settings, QObject* parent)
    : QObject(parent), settings_(settings) {
    tell();
}

void CautionList::tell() {
    const bool isSpanish = settings_.language() == QLatin1String("es");
    std::vector<CautionRow> rows;
    QString part;
    const auto add = [&](const QString& heading, const auto& caution, bool isRead) {
        CautionRow row;
        row.key = toWords(caution.id);
        row.heading = heading == part ? QString() : heading;
        part = heading;
        row.text = toWords(isSpanish ? caution.spanish : caution.text);
        const bool isOwnWords = isSpanish && !caution.sourceSpanish.empty();
        row.source =
            tr("Source: %1").arg(toWords(isOwnWords ? caution.sourceSpanish : caution.source));
        if (!isRead) row.source += QStringLiteral(" · ") + tr("from memory");
        rows.push_back(std::move(row));
    };
    for (const cook::FireCaution& caution : cook::fireCautions())
        add(tr("Fire, coals and ash"), caution, caution.checked == cook::Checked::Read);
    for (const safety::Caution& caution : safety::cautions()) {
        const QString heading = caution.topic == safety::Topic::Weather ? tr("Weather")
                                : caution.topic == safety::Topic::Hands ? tr("Knives, steam, burns")
                                : caution.topic == safety::Topic::Food  ? tr("Food")
                                                                        : tr("Permits and people");
        add(heading, caution, caution.isRead);
    }
    rows_.show(std::move(rows));
    deference_ = face::deference();
    Q_EMIT told();
}

}  // namespace cinder::face
