#include <algorithm>

#include "app/food_cards.h"

namespace cinder::app {

namespace {

/// What shows that the action said to be taken has worked.
std::optional<safety::Purpose> purposeOfAction(const safety::Standing& standing) {
    using safety::Action;
    using safety::Purpose;
    for (const safety::OpenReading& open : standing.open) {
        if (open.taken == Action::CookOn) return Purpose::Cook;
        if (open.taken == Action::Chill) return Purpose::HoldCold;
        if (open.taken == Action::Reheat)
            return open.purpose == Purpose::ReheatPacked ? open.purpose : Purpose::Reheat;
    }
    return std::nullopt;
}

safety::Purpose nextPurpose(const safety::FoodPlan& plan, const safety::Standing& standing) {
    using safety::Control;
    using safety::Purpose;
    switch (standing.control) {
        case Control::None:
            if (plan.isFresh) return plan.rule.isCookedHere ? Purpose::Cook : Purpose::Reheat;
            return plan.arrivesHot ? Purpose::ArriveHot : Purpose::ArriveCold;
        case Control::Cold:
            if (plan.rule.isCookedHere && !standing.isCooked) return Purpose::Cook;
            return plan.cooked && !standing.cooling ? Purpose::Reheat : Purpose::HoldCold;
        case Control::Cooling:
            return Purpose::Cooling;
        default:
            return plan.isServedHot ? Purpose::HoldHot : Purpose::HoldCold;
    }
}

/// As long as nothing was put on the heat, cold food is still held cold.
safety::Purpose purposeAt(const safety::FoodPlan& plan, const safety::Standing& standing,
                          Instant now) {
    if (const auto answer = purposeOfAction(standing)) return *answer;
    const safety::Purpose purpose = nextPurpose(plan, standing);
    const bool isHeating = purpose == safety::Purpose::Cook || purpose == safety::Purpose::Reheat;
    const bool isDue = plan.cooked && now >= *plan.cooked - safety::kCheckAhead;
    return isHeating && !isDue && !plan.isFresh ? safety::Purpose::HoldCold : purpose;
}

}  // namespace

FoodCards makeFoodCards(const live::Day& day, const live::Outlook& outlook, Instant now) {
    FoodCards cards;
    cards.limits = safety::limitsIn(day.record, now);
    cards.beforeFire = safety::fireAnswers(day.record, now);
    cards.thermometers = safety::thermometersIn(day.record, now);
    cards.signature = safety::signatureOf(day.record);
    cards.entries = day.record;
    const auto plans = live::foodPlans(day, outlook);
    for (const safety::FoodPlan& plan : plans) {
        LocalText name;
        for (const event::Dish& dish : day.event->menu)
            if (dish.id == plan.dish) name = dish.name;
        bool isGone = true;
        for (const safety::Pan& pan : safety::pansOf(plan.dish, day.record)) {
            FoodPanCard card{pan, name, plan.rule.food, {}, {}, {}};
            card.standing = safety::standingOf(pan, plan.rule, cards.limits, day.record, now);
            card.nextPurpose = purposeAt(plan, card.standing, now);
            card.mayHeatPacked = safety::mayHeatPacked(card.standing, plan.rule);
            card.nextLimit =
                safety::limitOf(card.nextPurpose, plan.rule.food, card.standing.isRoast);
            cards.withoutAction += static_cast<std::int32_t>(card.standing.withoutAction.size());
            const bool isDiscarded = card.standing.control == safety::Control::Discarded;
            if (card.standing.lost && !isDiscarded) ++cards.toDiscard;
            isGone = isGone && (card.standing.lost || isDiscarded);
            cards.pans.push_back(std::move(card));
        }
        // No reading saves what must be discarded: asking for one would only delay it.
        for (safety::PlannedCheck& check : safety::checksOf(plan, cards.limits, day.record, now))
            if (check.isDone || !isGone) cards.checks.push_back(std::move(check));
    }
    std::stable_sort(
        cards.checks.begin(), cards.checks.end(),
        [](const safety::PlannedCheck& a, const safety::PlannedCheck& b) { return a.due < b.due; });
    cards.warnings = live::holdingWarnings(day, plans, cards.limits, now);
    return cards;
}

std::optional<safety::FoodRule> foodRule(const live::Day& day, const live::Outlook& outlook,
                                         const DishId& dish) {
    for (const safety::FoodPlan& plan : live::foodPlans(day, outlook))
        if (plan.dish == dish) return plan.rule;
    return std::nullopt;
}

}  // namespace cinder::app
