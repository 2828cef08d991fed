#include "app/make_list_cards.h"

#include <algorithm>

#include "app/from_plan.h"

namespace cinder::app {

namespace {

live::PackFacts factsOf(const Counted& counted, const std::string& row) {
    const auto found = counted.find(row);
    return found == counted.end() ? live::PackFacts{} : found->second;
}

/// What is weighed or poured rides as one thing: nobody counts grams into a van.
std::int32_t wantedOf(const quantity::Amount& amount) {
    switch (amount.unit) {
        case quantity::Unit::Grams:
        case quantity::Unit::Millilitres:
        case quantity::Unit::Millimetres:
        case quantity::Unit::Minutes:
        case quantity::Unit::Percent:
        case quantity::Unit::Ratio:
        case quantity::Unit::GramsPerLitre:
            return 1;
        default:
            break;
    }
    constexpr std::int64_t kMost = 1'000'000;
    return static_cast<std::int32_t>(std::min(quantity::roundedUp(amount.value), kMost));
}

std::vector<PackCard> packCards(const std::vector<quantity::PackRow>& rows,
                                const Counted& counted) {
    std::vector<quantity::PackCount> out;
    std::vector<quantity::PackCount> home;
    for (const auto& [row, facts] : counted) {
        out.push_back({row, facts.out});
        home.push_back({row, facts.home});
    }
    const auto missing = quantity::missingOnTheWayHome(rows, out, home);
    std::vector<PackCard> cards;
    for (const quantity::PackRow& row : rows) {
        PackCard card;
        static_cast<quantity::PackRow&>(card) = row;
        const live::PackFacts facts = factsOf(counted, row.key);
        card.wanted = wantedOf(row.amount);
        card.out = facts.out;
        card.home = facts.home;
        for (const quantity::PackCount& one : missing)
            if (one.key == row.key) card.missing = static_cast<std::int32_t>(one.count);
        cards.push_back(std::move(card));
    }
    return cards;
}

}  // namespace

event::Event eventAsItStands(const live::Day& day) {
    event::Event event = *day.event;
    if (day.serve) event.serve.at = *day.serve;
    return event;
}

std::shared_ptr<const Reckoned> reckonFor(event::Event event, const live::Day& day,
                                          const std::shared_ptr<const Reckoned>& known) {
    quantity::FromPlan plan;
    if (day.sheet) plan = fromPlan(event, day.sheet->problem, day.sheet->schedule);
    const bool isSame = known && known->plan.arrival == plan.arrival &&
                        known->plan.cooking == plan.cooking && known->event == event;
    if (isSame) return known;
    auto all = quantity::reckon(event, plan);
    return std::make_shared<const Reckoned>(
        Reckoned{std::move(event), std::move(plan), std::move(all)});
}

std::vector<StandCard> standCards(const Reckoned& reckoned, const Counted& counted) {
    const auto& stands = reckoned.all.line.stands;
    std::vector<StandCard> cards;
    for (const quantity::Stand& stand : stands) {
        StandCard card;
        card.key = "line/" + stand.dish.text() + "/" + std::to_string(stand.number);
        card.dish = stand.dish;
        card.name = stand.name;
        card.vessel = stand.vessel;
        card.number = stand.number;
        card.count = static_cast<std::int32_t>(
            std::count_if(stands.begin(), stands.end(),
                          [&](const quantity::Stand& one) { return one.dish == stand.dish; }));
        card.table = static_cast<std::int32_t>(stand.table) + 1;
        card.isOnRiser = stand.isOnRiser;
        card.isPlaced = factsOf(counted, card.key).line > 0;
        cards.push_back(std::move(card));
    }
    return cards;
}

std::shared_ptr<const Lists> makeLists(const Reckoned& reckoned, const Counted& counted) {
    return std::make_shared<const Lists>(Lists{reckoned.event, reckoned.all,
                                               packCards(reckoned.all.pack, counted),
                                               standCards(reckoned, counted)});
}

}  // namespace cinder::app
