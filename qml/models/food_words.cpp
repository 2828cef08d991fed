#include "food_words.h"

#include <cmath>

#include <QStringList>
#include <QVariant>

#include "safety/standing.h"
#include "safety/thermometer.h"
#include "settings.h"

namespace cinder::face {

namespace {

QString tenths(double value) {
    QString text = QString::number(value, 'f', 1);
    if (text.endsWith(QLatin1String(".0"))) text.chop(2);
    if (text == QLatin1String("-0")) text = QStringLiteral("0");
    return text.replace(QLatin1Char('-'), QChar(0x2212));
}

}  // namespace

safety::Scale FoodWords::scale() const {
    return settings_.isFahrenheit() ? safety::Scale::Fahrenheit : safety::Scale::Celsius;
}

QString FoodWords::reading(const safety::Reading& reading) {
    return reading.scale == safety::Scale::Fahrenheit
               ? tenths(reading.value.fahrenheit()) + QStringLiteral("\u00a0°F")
               : tenths(reading.value.celsius()) + QStringLiteral("\u00a0°C");
}

QString FoodWords::figure(safety::Degree degree, const safety::Limits& limits) const {
    return reading({limits.figure(degree, scale()), scale()});
}

QString FoodWords::limit(safety::Degree degree, const safety::Limits& limits) const {
    const QString figure = this->figure(degree, limits);
    const bool isLeast = safety::published(degree).sense == safety::Sense::AtLeast;
    const QString text = isLeast ? tr("%1 or above").arg(figure) : tr("%1 or below").arg(figure);
    return limits.isLocal(degree) ? tr("%1, local rule").arg(text) : text;
}

QString FoodWords::pan(const safety::Pan& pan, const app::Snapshot& day) const {
    QString name = toText(pan.dish.text());
    for (const app::FoodPanCard& card : day.food.pans)
        if (card.pan.dish == pan.dish) name = words_.name(card.dish);
    return pan.number > 0 ? tr("%1, pan %2").arg(name).arg(pan.number) : name;
}

QString FoodWords::pans(const safety::PlannedCheck& check, const app::Snapshot& day) const {
    if (check.missing.empty()) return pan({check.dish, 0}, day);
    if (check.missing.size() == 1) return pan(check.missing.front(), day);
    QStringList numbers;
    for (const safety::Pan& pan : check.missing)
        numbers << QString::number(pan.number);
    return tr("%1, pans %2").arg(pan({check.dish, 0}, day), numbers.join(QStringLiteral(", ")));
}

QString FoodWords::panNumber(std::int32_t number) {
    return number > 0 ? tr("Pan %1").arg(number) : tr("Whole dish");
}

QString FoodWords::thermometer(const safety::ThermometerId& id) {
    const QString text = toText(id.text());
    const QString stem = QStringLiteral("probe-");
    return text.startsWith(stem) ? tr("Probe %1").arg(text.mid(stem.size())) : text;
}

QString FoodWords::occasion(safety::Occasion occasion) {
    using safety::Occasion;
    switch (occasion) {
        case Occasion::Arrival:
            return tr("On arrival");
        case Occasion::Cooked:
            return tr("Off the heat");
        case Occasion::Hold:
            return tr("While held");
        case Occasion::BeforeService:
            return tr("Before service");
        case Occasion::DuringService:
            return tr("During service");
        case Occasion::Strike:
            return tr("At strike");
    }
    return {};
}

QString FoodWords::purpose(safety::Purpose purpose) {
    using safety::Purpose;
    switch (purpose) {
        case Purpose::ArriveCold:
            return tr("Arrived cold");
        case Purpose::ArriveHot:
            return tr("Arrived hot");
        case Purpose::Cook:
            return tr("Cooked through");
        case Purpose::Reheat:
            return tr("Reheated");
        case Purpose::ReheatPacked:
            return tr("Heated from a sealed pack");
        case Purpose::HoldHot:
            return tr("Held hot");
        case Purpose::HoldCold:
            return tr("Held cold");
        case Purpose::Cooling:
            return tr("Cooling");
    }
    return {};
}

QString FoodWords::action(safety::Action action) {
    using safety::Action;
    switch (action) {
        case Action::CookOn:
            return tr("Cook on, then measure again");
        case Action::Reheat:
            return tr("Reheat, then measure again");
        case Action::Chill:
            return tr("Chill, then measure again");
        case Action::Discard:
            return tr("Discard it");
    }
    return {};
}

QString FoodWords::rule(safety::TimeRule rule, const safety::Limits& limits) {
    using safety::TimeRule;
    const QString span = Words::span(limits.length(safety::spanOf(rule)));
    switch (rule) {
        case TimeRule::Hot:
            return tr("From hot holding, %1").arg(span);
        case TimeRule::Cold:
            return tr("From cold holding, %1").arg(span);
        case TimeRule::Fresh:
            return tr("Freshly cut or opened, %1").arg(span);
        case TimeRule::ColdLong:
            return tr("From cold holding, %1, measured all along").arg(span);
    }
    return {};
}

QString FoodWords::leftover(safety::Leftover leftover) {
    using safety::Leftover;
    switch (leftover) {
        case Leftover::Keep:
            return tr("Keep it cold");
        case Leftover::Cool:
            return tr("Cool it, then keep it");
        case Leftover::Discard:
            return tr("Discard it");
    }
    return {};
}

QString FoodWords::lost(safety::Lost::Why why) {
    using Why = safety::Lost::Why;
    switch (why) {
        case Why::Gap:
            return tr("not measured for too long");
        case Why::OutOfControl:
            return tr("out of limit for too long");
        case Why::TimeOver:
            return tr("its time is over");
        case Why::TooWarm:
            return tr("too warm for its time control");
        case Why::CoolingSlow:
            return tr("it did not cool in time");
        case Why::CookUnrecorded:
            return tr("nothing shows that it was cooked");
        case Why::CoolingUnrecorded:
            return tr("nothing shows how it cooled");
        case Why::ReheatUnrecorded:
            return tr("nothing shows how it was reheated");
    }
    return {};
}

QString FoodWords::fireItem(safety::FireItem item) {
    using safety::FireItem;
    switch (item) {
        case FireItem::Extinguisher:
            return tr("Extinguisher at hand, charged, and water for the coals");
        case FireItem::Clearance:
            return tr("Clear ground: 3 m (10 ft) from anything that burns");
        case FireItem::OpenAir:
            return tr("Open air: no tent, roof or vehicle around the fire");
    }
    return {};
}

QString FoodWords::standing(const safety::Standing& standing) const {
    using safety::Control;
    if (standing.control == Control::Discarded) return tr("Discarded");
    if (standing.lost)
        return tr("Discard: %1, since %2")
            .arg(lost(standing.lost->why), words_.clock(standing.lost->at));
    if (!standing.withoutAction.empty()) return tr("Out of limit: say what is done");
    if (!standing.open.empty()) {
        const safety::OpenReading& open = standing.open.front();
        return tr("%1 until %2")
            .arg(action(open.taken.value_or(safety::Action::Discard)), words_.clock(open.by));
    }
    switch (standing.control) {
        case Control::Time:
            return tr("Time control: discard at %1").arg(words_.clock(standing.time->discardAt));
        case Control::Cooling:
            return tr("Cooling: next reading by %1").arg(words_.clock(standing.cooling->by));
        case Control::Hot:
            return tr("Hot, in control");
        case Control::Cold:
            return tr("Cold, in control");
        default:
            return tr("Nothing on record yet");
    }
}

QString FoodWords::icePoint() const {
    const bool isFahrenheit = settings_.isFahrenheit();
    const TemperatureDelta off = safety::accuracyOn(scale());
    const QString most = isFahrenheit ? tenths(off.kelvin() * 1.8) + QStringLiteral("\u00a0°F")
                                      : tenths(off.kelvin()) + QStringLiteral("\u00a0°C");
    return tr("%1, at most %2 off").arg(reading({safety::kIcePoint, scale()}), most);
}

QString FoodWords::tested(const safety::ThermometerId& id, const app::Snapshot& day) const {
    for (const safety::ThermometerState& state : day.food.thermometers) {
        if (state.id != id || !state.lastTest) continue;
        const QString at = words_.clock(state.lastTest->at);
        return safety::isAccurate(*state.lastTest) ? tr("ice point passed at %1").arg(at)
                                                   : tr("ice point FAILED at %1").arg(at);
    }
    return tr("not tested today");
}

QString FoodWords::coolingSteps(const safety::Limits& limits) const {
    return tr("to %1 within %2, to %3 within %4")
        .arg(figure(safety::Degree::CoolMiddle, limits),
             Words::span(limits.length(safety::Span::CoolMiddleWithin)),
             figure(safety::Degree::CoolEnd, limits),
             Words::span(limits.length(safety::Span::CoolEndWithin)));
}

QString FoodWords::forecast(const live::HoldingWarning& warning, Instant now) const {
    const QString limit = words_.temperature(warning.limit);
    if (warning.fallsTo.likely <= now)
        return tr("has probably fallen to %1: measure now").arg(limit);
    return tr("reaches %1 in about %2, at the earliest %3: measure before")
        .arg(limit, Words::span(warning.fallsTo.likely - now), words_.clock(warning.fallsTo.low));
}

}  // namespace cinder::face
