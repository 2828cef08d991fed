#include "food_closing.h"

#include <algorithm>
#include <array>

namespace cinder::face {

namespace {

struct Named {
    std::string_view field;
    const char* words;
};

constexpr std::array kNames{
    Named{"coldHold", QT_TRANSLATE_NOOP("cinder::face::FoodClosing", "Cold holding")},
    Named{"hotHold", QT_TRANSLATE_NOOP("cinder::face::FoodClosing", "Hot holding")},
    Named{"hotHoldRoast",
          QT_TRANSLATE_NOOP("cinder::face::FoodClosing", "Hot holding of whole roasts")},
    Named{"shellEggAir", QT_TRANSLATE_NOOP("cinder::face::FoodClosing", "Air around shell eggs")},
    Named{"receiveCold", QT_TRANSLATE_NOOP("cinder::face::FoodClosing", "Cold food on arrival")},
    Named{"receiveHot", QT_TRANSLATE_NOOP("cinder::face::FoodClosing", "Hot food on arrival")},
    Named{"cookPoultry", QT_TRANSLATE_NOOP("cinder::face::FoodClosing", "Cooked poultry")},
    Named{"cookGround",
          QT_TRANSLATE_NOOP("cinder::face::FoodClosing", "Cooked ground meat, pooled eggs")},
    Named{"cookIntact",
          QT_TRANSLATE_NOOP("cinder::face::FoodClosing", "Cooked whole meat and fish")},
    Named{"cookPlant", QT_TRANSLATE_NOOP("cinder::face::FoodClosing", "Cooked plant food")},
    Named{"cookMicrowave",
          QT_TRANSLATE_NOOP("cinder::face::FoodClosing", "Cooked in a microwave oven")},
    Named{"reheat", QT_TRANSLATE_NOOP("cinder::face::FoodClosing", "Reheated for holding")},
    Named{"reheatPacked",
          QT_TRANSLATE_NOOP("cinder::face::FoodClosing", "Reheated from a sealed pack")},
    Named{"coolStart", QT_TRANSLATE_NOOP("cinder::face::FoodClosing", "Cooling starts")},
    Named{"coolMiddle", QT_TRANSLATE_NOOP("cinder::face::FoodClosing", "Cooling, first stage")},
    Named{"coolEnd", QT_TRANSLATE_NOOP("cinder::face::FoodClosing", "Cooling, end")},
    Named{"timeStartHot",
          QT_TRANSLATE_NOOP("cinder::face::FoodClosing", "Time control begins hot")},
    Named{"timeStartCold",
          QT_TRANSLATE_NOOP("cinder::face::FoodClosing", "Time control begins cold")},
    Named{"timeStartFresh",
          QT_TRANSLATE_NOOP("cinder::face::FoodClosing", "Time control of fresh produce")},
    Named{"timeWarmest",
          QT_TRANSLATE_NOOP("cinder::face::FoodClosing", "Warmest in the long time control")},
    Named{"cookIntactHold",
          QT_TRANSLATE_NOOP("cinder::face::FoodClosing", "Whole meat kept there")},
    Named{"cookGroundHold",
          QT_TRANSLATE_NOOP("cinder::face::FoodClosing", "Ground meat kept there")},
    Named{"microwaveStand",
          QT_TRANSLATE_NOOP("cinder::face::FoodClosing", "Standing after a microwave oven")},
    Named{"reheatHold", QT_TRANSLATE_NOOP("cinder::face::FoodClosing", "Reheated, kept there")},
    Named{"reheatWithin", QT_TRANSLATE_NOOP("cinder::face::FoodClosing", "Reheated within")},
    Named{"coolMiddleWithin",
          QT_TRANSLATE_NOOP("cinder::face::FoodClosing", "Cooling, first stage within")},
    Named{"coolEndWithin", QT_TRANSLATE_NOOP("cinder::face::FoodClosing", "Cooling, end within")},
    Named{"coolAmbientWithin",
          QT_TRANSLATE_NOOP("cinder::face::FoodClosing", "Cooling from room-warm things within")},
    Named{"timeControl", QT_TRANSLATE_NOOP("cinder::face::FoodClosing", "Time control")},
    Named{"timeControlLong", QT_TRANSLATE_NOOP("cinder::face::FoodClosing", "Long time control")},
    Named{"firstHeating",
          QT_TRANSLATE_NOOP("cinder::face::FoodClosing", "First heating of a cook in two steps")},
    Named{"handWash", QT_TRANSLATE_NOOP("cinder::face::FoodClosing", "Hand washing")},
    Named{"handRub", QT_TRANSLATE_NOOP("cinder::face::FoodClosing", "Of that, rubbing with soap")},
    Named{"chlorineContact",
          QT_TRANSLATE_NOOP("cinder::face::FoodClosing", "Chlorine sanitizer on a surface")},
    Named{"sanitizerContact",
          QT_TRANSLATE_NOOP("cinder::face::FoodClosing", "Other sanitizer on a surface")},
    Named{"holdEvery", QT_TRANSLATE_NOOP("cinder::face::FoodClosing", "Held food measured every")},
    Named{"holdGap",
          QT_TRANSLATE_NOOP("cinder::face::FoodClosing", "Longest time without a reading")},
};

QString toWords(std::string_view text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

QString sourceOf(const auto& limit) {
    const QString edition = toWords(limit.edition);
    return limit.section.empty() ? edition
                                 : edition + QStringLiteral(", ") + toWords(limit.section);
}

}  // namespace

QString nameOfLimit(std::string_view field) {
    const auto found = std::find_if(kNames.begin(), kNames.end(),
                                    [&](const Named& one) { return one.field == field; });
    return found == kNames.end() ? toWords(field) : FoodClosing::tr(found->words);
}

FoodClosing::FoodClosing(FoodDoor& door, const FoodWords& words, const Words& plain,
                         QObject* parent)
    : QObject(parent), door_(door), words_(words), plain_(plain) {}

void FoodClosing::show(const std::shared_ptr<const app::Snapshot>& day) {
    if (!day) return;
    limits_.show(limitRows(*day));
    const app::FoodCards& food = day->food;
    QString standing;
    if (food.signature)
        standing = tr("Signed by %1 at %2")
                       .arg(toText(food.signature->name), plain_.clock(food.signature->at));
    else if (food.withoutAction > 0)
        standing = tr("Not to be signed yet: readings out of limit without an action: %1")
                       .arg(food.withoutAction);
    else if (food.toDiscard > 0)
        standing = tr("Not to be signed yet: pans to discard first: %1").arg(food.toDiscard);
    else
        standing = tr("The record may be signed. What is written later needs a new signature.");
    QStringList people;
    for (const app::PersonCard& person : day->people)
        if (person.isHere) people << toText(person.name);
    const bool maySign =
        !food.signature && food.withoutAction == 0 && food.toDiscard == 0 && !day->isReadOnly;
    const QString authority = toText(food.limits.authority());
    if (standing == standing_ && people == people_ && maySign == maySign_ &&
        authority == authority_)
        return;
    standing_ = standing;
    people_ = people;
    maySign_ = maySign;
    authority_ = authority;
    isSigned_ = food.signature.has_value();
    Q_EMIT told();
}

std::vector<LimitRow> FoodClosing::limitRows(const app::Snapshot& day) const {
    std::vector<LimitRow> rows;
    const safety::Limits& limits = day.food.limits;
    for (const safety::DegreeLimit& limit : safety::publishedDegrees())
        rows.push_back({toWords(limit.field), nameOfLimit(limit.field),
                        words_.limit(limit.degree, limits), sourceOf(limit),
                        limits.isLocal(limit.degree),
                        !day.isReadOnly && safety::isJudged(limit.degree)});
    for (const safety::SpanLimit& limit : safety::publishedSpans()) {
        const QString length = Words::span(limits.length(limit.span));
        const bool isLeast = limit.sense == safety::Sense::AtLeast;
        rows.push_back({toWords(limit.field), nameOfLimit(limit.field),
                        isLeast ? tr("%1 or longer").arg(length) : tr("%1 or shorter").arg(length),
                        sourceOf(limit), limits.isLocal(limit.span),
                        !day.isReadOnly && !isLeast && safety::isJudged(limit.span)});
    }
    return rows;
}

void FoodClosing::sign(const QString& name) {
    const auto taken = door_.sign(name.toStdString());
    refusal_ = taken ? QString() : Words::refusal(taken.error());
    Q_EMIT noted();
    Q_EMIT told();
}

void FoodClosing::verify() {
    const auto broken = door_.verify();
    if (!broken) {
        verdict_ = Words::refusal(broken.error());
    } else if (!*broken) {
        verdict_ = tr("Every entry is as it was written.");
    } else {
        const journal::BrokenChain& chain = **broken;
        const QString entry = toText(chain.operation.device.text()) + QLatin1Char('-') +
                              QString::number(chain.operation.sequence);
        const bool isAltered = chain.what == journal::BrokenChain::What::Altered;
        const QString words =
            isAltered
                ? tr("Entry %1 is not the one that was written. Compare with another device's "
                     "copy.")
                : tr("Before entry %1 something is gone. Compare with another device's copy.");
        verdict_ = words.arg(entry);
    }
    isBroken_ = !broken || broken->has_value();
    Q_EMIT told();
}

}  // namespace cinder::face
