#include "cautions.h"

#include <QCoreApplication>

#include "cook/cautions.h"
#include "safety/cautions.h"

namespace cinder::face {

namespace {

QString toWords(std::string_view text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

template <class Cautions>
QString briefIn(const Cautions& cautions, std::string_view id, bool isSpanish) {
    for (const auto& caution : cautions)
        if (caution.id == id) return toWords(isSpanish ? caution.briefSpanish : caution.brief);
    return {};
}

}  // namespace

QString briefCaution(std::string_view id, const QString& language) {
    const bool isSpanish = language == QLatin1String("es");
    const QString ofTheFire = briefIn(cook::fireCautions(), id, isSpanish);
    return ofTheFire.isEmpty() ? briefIn(safety::cautions(), id, isSpanish) : ofTheFire;
}

QString cautionFor(plan::TaskKind kind, const QString& language) {
    switch (kind) {
        case plan::TaskKind::Fire:
            return briefCaution("carbon-monoxide", language) + QLatin1Char(' ') +
                   briefCaution("starter-fluid", language);
        case plan::TaskKind::Cook:
        case plan::TaskKind::Check:
            return briefCaution("thermometer", language);
        case plan::TaskKind::Warm:
            return briefCaution("burns", language);
        case plan::TaskKind::Slice:
            return briefCaution("knives", language);
        case plan::TaskKind::Hold:
        case plan::TaskKind::Load:
            return briefCaution("hot-and-cold", language);
        case plan::TaskKind::Strike:
            return briefCaution("hot-ash", language);
        default:
            return {};
    }
}

QString deference() {
    return QCoreApplication::translate("Cautions",
                                       "Local fire and health codes and licensed practice decide.");
}

}  // namespace cinder::face
