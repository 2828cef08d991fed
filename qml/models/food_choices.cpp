// What the entry sheet lets a person choose from (food_entry.h).

#include <algorithm>

#include "food_entry.h"
#include "safety/standing.h"

namespace cinder::face {

namespace {

using safety::Control;
using safety::Purpose;
using safety::TimeRule;

/// How many probes a crew carries at most. Our choice.
constexpr int kProbes = 6;

constexpr Purpose kPurposes[] = {Purpose::HoldHot, Purpose::HoldCold,    Purpose::Cook,
                                 Purpose::Reheat,  Purpose::ArriveHot,   Purpose::ArriveCold,
                                 Purpose::Cooling, Purpose::ReheatPacked};
}  // namespace

std::vector<ChoiceRow> FoodEntry::rows() const {
    std::vector<ChoiceRow> rows;
    if (!day_) return rows;
    switch (step_) {
        case Step::Pans:
            return panRows();
        case Step::Origins:
            return originRows();
        case Step::Purposes:
            return purposeRows();
        case Step::Deeds:
            return deedRows();
        case Step::Thermometers:
            for (int probe = 1; probe <= kProbes; ++probe) {
                const safety::ThermometerId id("probe-" + std::to_string(probe));
                rows.push_back({toText(id.text()), FoodWords::thermometer(id),
                                words_.tested(id, *day_), id == thermometer_, false});
            }
            return rows;
        case Step::Scale:
            return scaleRows();
        case Step::Held:
            return heldRows();
        case Step::Reasons:
            if (mode_ == Mode::Rule) {
                for (const QString& whose :
                     {tr("City health department"), tr("County health department"),
                      tr("State health department"), tr("Our own house rule")})
                    rows.push_back({whose, whose, {}, false, false});
                return rows;
            }
            for (const QString& why :
                 {tr("Typed wrong"), tr("Thermometer misread"), tr("Tip was not in the middle")})
                rows.push_back({why, why, {}, false, false});
            return rows;
        case Step::Act:
            if (const auto* reading = open())
                for (const safety::Action action : reading->allowed)
                    // Lost food is not made good any more, whatever the standard allowed once.
                    if (!card()->standing.lost || action == safety::Action::Discard)
                        rows.push_back({QString::number(static_cast<int>(action)),
                                        action == safety::Action::Discard
                                            ? tr("Hold to discard")
                                            : FoodWords::action(action),
                                        {},
                                        false,
                                        action == safety::Action::Discard});
            return rows;
        default:
            return rows;
    }
}

std::vector<ChoiceRow> FoodEntry::panRows() const {
    std::vector<ChoiceRow> rows;
    std::int32_t last = 0;
    for (const app::FoodPanCard& card : day_->food.pans) {
        if (card.pan.dish != pan_.dish) continue;
        last = std::max(last, card.pan.number);
        rows.push_back({keyOf(card.pan), FoodWords::panNumber(card.pan.number),
                        words_.standing(card.standing), card.pan == pan_, false});
    }
    const safety::Pan next{pan_.dish, last + 1};
    rows.push_back({keyOf(next),
                    tr("%1, new").arg(FoodWords::panNumber(next.number)),
                    {},
                    next == pan_,
                    false});
    return rows;
}

std::vector<ChoiceRow> FoodEntry::purposeRows() const {
    std::vector<ChoiceRow> rows;
    const safety::Limits& limits = day_->food.limits;
    if (mode_ == Mode::Leave) {
        auto rules = rulesToLeaveBy();
        if (rules.empty()) rules.push_back(rule_);
        for (const TimeRule rule : rules)
            rows.push_back({QString::number(static_cast<int>(rule)), FoodWords::rule(rule, limits),
                            words_.limit(safety::startOf(rule), limits), rule == rule_, false});
        return rows;
    }
    const app::FoodPanCard* card = this->card();
    const bool isCooling = card && card->standing.control == Control::Cooling;
    for (const Purpose purpose : kPurposes) {
        if (purpose == Purpose::Cooling && !isCooling) continue;
        const bool isPack = purpose == Purpose::ReheatPacked;
        if (isPack && card && !card->mayHeatPacked) continue;
        const auto degree = safety::limitOf(purpose, card ? card->food : event::Food::Plant,
                                            card && card->standing.isRoast);
        rows.push_back({QString::number(static_cast<int>(purpose)), FoodWords::purpose(purpose),
                        degree ? words_.limit(*degree, limits) : QString(), purpose == purpose_,
                        false});
    }
    return rows;
}

/// The time controls that fit the pan as it stands; the first is the usual one.
std::vector<TimeRule> FoodEntry::rulesToLeaveBy() const {
    std::vector<TimeRule> rules;
    const app::FoodPanCard* card = this->card();
    for (const TimeRule rule : {TimeRule::Hot, TimeRule::Cold, TimeRule::Fresh, TimeRule::ColdLong})
        if (card && safety::mayLeaveUnder(rule, card->standing, card->food)) rules.push_back(rule);
    return rules;
}

std::vector<ChoiceRow> FoodEntry::deedRows() const {
    std::vector<ChoiceRow> rows;
    const app::FoodPanCard* card = this->card();
    if (!card || card->standing.control == Control::Discarded) return rows;
    const safety::Standing& standing = card->standing;
    const auto add = [&](const char* key, const QString& text, const QString& note = {}) {
        rows.push_back({QLatin1String(key), text, note, false, false});
    };
    if (!standing.lost) {
        const auto degree = safety::limitOf(card->nextPurpose, card->food, standing.isRoast);
        add("measure", tr("Measure"),
            FoodWords::purpose(card->nextPurpose) +
                (degree ? QStringLiteral(" · ") + words_.limit(*degree, day_->food.limits)
                        : QString()));
        if (!rulesToLeaveBy().empty())
            add("leave", tr("No longer kept hot or cold"), tr("a time limit starts, then discard"));
        if (standing.leftover == safety::Leftover::Cool && !standing.cooling)
            add("cool", tr("Begin to cool it"), words_.coolingSteps(day_->food.limits));
        if (standing.leftover == safety::Leftover::Keep)
            add("keep", tr("Keep it cold"), tr("its record has no gap"));
    }
    rows.push_back({QStringLiteral("discard"), tr("Hold to discard"), {}, false, true});
    return rows;
}

void FoodEntry::doDeed(const QString& deed) {
    if (deed == QLatin1String("measure")) {
        purpose_ = card()->nextPurpose;
        return begin(Mode::Measure);
    }
    if (deed == QLatin1String("leave")) {
        const auto rules = rulesToLeaveBy();
        if (rules.empty()) return;
        rule_ = rules.front();
        return begin(Mode::Leave);
    }
    if (deed == QLatin1String("cool")) return take(door_.beginCooling(pan_));
    if (deed == QLatin1String("keep")) return take(door_.keep(pan_));
    if (deed == QLatin1String("discard")) return take(door_.discard(pan_));
}

/// The pan still to read that can wait the least; the whole dish while it has none.
safety::Pan FoodEntry::panToRead(const safety::PlannedCheck& check) const {
    const auto isThere = [&](const safety::Pan& pan) {
        return std::any_of(day_->food.pans.begin(), day_->food.pans.end(),
                           [&](const app::FoodPanCard& card) { return card.pan == pan; });
    };
    for (const safety::Pan& pan : check.missing)
        if (isThere(pan)) return pan;
    for (const app::FoodPanCard& card : day_->food.pans)
        if (card.pan.dish == check.dish && card.standing.control != Control::Discarded &&
            !card.standing.lost)
            return card.pan;
    return {check.dish, 0};
}

void FoodEntry::choosePan(const safety::Pan& pan) {
    const app::FoodPanCard* old = card();
    const bool wasMended = old && !old->standing.open.empty();
    pan_ = pan;
    from_.reset();
    dropWhatDoesNotFit();
    // What one pan has to show to be put right is not asked of another.
    if (wasMended && mode_ == Mode::Measure && card()) purpose_ = card()->nextPurpose;
    // Nothing is known of a new pan: its food came out of another, or by itself.
    const auto others = origins();
    if (others.empty()) return go(Step::Keys);
    from_ = others.front()->pan.number;
    go(Step::Origins);
}

/// Another pan was chosen: only what cools is read as cooling, and each time control has its food.
void FoodEntry::dropWhatDoesNotFit() {
    const app::FoodPanCard* card = this->card();
    const bool isCooling = card && card->standing.control == Control::Cooling;
    if (mode_ == Mode::Measure && purpose_ == Purpose::Cooling && !isCooling)
        purpose_ = card ? card->nextPurpose : Purpose::HoldHot;
    if (mode_ == Mode::Measure && card && !card->standing.open.empty())
        purpose_ = card->nextPurpose;
    const auto rules = rulesToLeaveBy();
    if (mode_ == Mode::Leave && !rules.empty() &&
        std::find(rules.begin(), rules.end(), rule_) == rules.end())
        rule_ = rules.front();
}

}  // namespace cinder::face
