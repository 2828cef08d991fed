// What a person writes into the food-safety record (session.h).

#include <algorithm>

#include "app/session.h"
#include "app/session_state.h"

namespace cinder::app {

namespace {

using Why = Refusal::Why;
using Taken = Result<void, Refusal>;

/// Nobody has colder food; a slip of the finger.
constexpr double kColdestFood = -40;
/// What a thermometer in ice water may show however wrong it is.
constexpr double kHottestTest = 150;

Taken checkPan(const Session::State& state, const safety::Pan& pan) {
    if (auto no = state.objection()) return fail(std::move(*no));
    const auto& event = state.open->day.event;
    const bool isKnown =
        event && std::any_of(event->menu.begin(), event->menu.end(),
                             [&](const event::Dish& dish) { return dish.id == pan.dish; });
    if (!isKnown) return refuse(Why::UnknownTask, "no dish " + pan.dish.text());
    if (pan.number < 0 || pan.number > kMostPans)
        return refuse(Why::NotNow, "pans are numbered from 1 to 99");
    return {};
}

Taken checkReading(const safety::Reading& reading, const safety::ThermometerId& thermometer) {
    if (safety::isTooHotForFood(reading))
        return refuse(Why::NotNow,
                      "temperature: no food is above 105 degC (221 degF) in its middle; is that "
                      "Fahrenheit? Give it with its own scale");
    if (reading.value.celsius() < kColdestFood)
        return refuse(Why::NotNow,
                      "temperature: no food is below -40 degC (-40 degF); read it again");
    if (thermometer.empty()) return refuse(Why::NotNow, "say which thermometer it was");
    return {};
}

/// Only a pan nobody has written of comes out of another one of its dish that is on record.
Taken checkOrigin(const Session::State& state, const safety::Pan& pan,
                  std::optional<std::int32_t> from) {
    if (!from) return {};
    const auto pans = safety::pansOf(pan.dish, state.open->day.record);
    const auto isKnown = [&](const safety::Pan& one) {
        return std::find(pans.begin(), pans.end(), one) != pans.end();
    };
    if (pan.number <= 0 || isKnown(pan))
        return refuse(Why::NotNow,
                      "out of: only a new pan is filled out of another; number it anew");
    if (*from <= 0 || !isKnown({pan.dish, *from}))
        return refuse(Why::NotNow, "out of: no pan " + std::to_string(*from) +
                                       " of this dish is on record; name one that is");
    return {};
}

safety::FoodRule ruleOf(const Session::State& state, const DishId& dish) {
    const live::Day& day = state.open->day;
    if (!day.sheet) return {};
    return foodRule(day, state.outlook(), dish).value_or(safety::FoodRule{});
}

safety::Standing standing(const Session::State& state, const safety::Pan& pan) {
    const live::Day& day = state.open->day;
    const Instant now = state.now();
    return safety::standingOf(pan, ruleOf(state, pan.dish), safety::limitsIn(day.record, now),
                              day.record, now);
}

const safety::Entry* findEntry(const Session::State& state, const safety::EntryId& id) {
    for (const safety::Entry& entry : state.open->day.record)
        if (entry.id == id) return &entry;
    return nullptr;
}

}  // namespace

std::optional<Refusal> Session::State::objectionToFire(std::size_t task) const {
    if (open->day.sheet->problem.tasks[task].kind != plan::TaskKind::Fire) return std::nullopt;
    for (const safety::FireAnswer& answer : safety::fireAnswers(open->day.record, now()))
        if (!answer.isAnswered()) return Refusal{Why::AskFirst, {}, {}, {}, {}};
    return std::nullopt;
}

Taken Session::measureFood(const safety::Pan& pan, safety::Purpose purpose, safety::Reading reading,
                           const safety::ThermometerId& thermometer, std::optional<Duration> held,
                           std::optional<std::int32_t> from) {
    if (auto known = checkPan(*state_, pan); !known) return known;
    if (auto known = checkOrigin(*state_, pan, from); !known) return known;
    if (auto sane = checkReading(reading, thermometer); !sane) return sane;
    if (held && (*held < Duration{0} || *held > std::chrono::hours{24}))
        return refuse(Why::NotNow, "a temperature is kept for 0 s to 24 h");
    return state_->record(safety::Fact{safety::FoodMeasured{
        pan, purpose, reading, thermometer, held, {}, {}, state_->now(), from}});
}

Taken Session::correctFood(const safety::EntryId& id, safety::Reading reading,
                           const std::string& reason) {
    if (auto no = state_->objection()) return fail(std::move(*no));
    const safety::Entry* entry = findEntry(*state_, id);
    const auto* old = entry ? std::get_if<safety::FoodMeasured>(&entry->fact) : nullptr;
    if (!old || entry->isTakenBack) return refuse(Why::NotNow, "there is no such reading");
    if (auto sane = checkReading(reading, old->thermometer); !sane) return sane;
    if (reason.empty()) return refuse(Why::NotNow, "say why it is corrected");
    safety::FoodMeasured corrected = *old;
    corrected.reading = reading;
    corrected.corrects = id;
    corrected.reason = reason;
    corrected.at = state_->now();
    return state_->record(safety::Fact{std::move(corrected)});
}

Taken Session::takeAction(const safety::EntryId& id, safety::Action action) {
    if (auto no = state_->objection()) return fail(std::move(*no));
    const safety::Entry* entry = findEntry(*state_, id);
    if (!entry) return refuse(Why::NotNow, "there is no such reading");
    safety::Pan pan;
    if (const auto* measured = std::get_if<safety::FoodMeasured>(&entry->fact))
        pan = measured->pan;
    else if (const auto* left = std::get_if<safety::ControlLeft>(&entry->fact))
        pan = left->pan;
    // What was said of the dish, or of the pan its food came out of, may wait in any of its pans.
    std::vector<safety::Pan> pans = safety::pansOf(pan.dish, state_->open->day.record);
    pans.insert(pans.begin(), pan);
    for (const safety::Pan& one : pans)
        for (const safety::OpenReading& open : standing(*state_, one).open) {
            if (open.entry != id) continue;
            const bool isAllowed =
                std::find(open.allowed.begin(), open.allowed.end(), action) != open.allowed.end();
            if (!isAllowed) return refuse(Why::NotNow, "the standard does not allow this here");
            return state_->record(safety::Fact{safety::ActionTaken{id, action, state_->now()}});
        }
    return refuse(Why::NotNow, "this reading asks for nothing");
}

Taken Session::leaveControl(const safety::Pan& pan, safety::TimeRule rule, safety::Reading reading,
                            const safety::ThermometerId& thermometer,
                            std::optional<std::int32_t> from) {
    if (auto known = checkPan(*state_, pan); !known) return known;
    if (auto known = checkOrigin(*state_, pan, from); !known) return known;
    if (auto sane = checkReading(reading, thermometer); !sane) return sane;
    const safety::Standing now = standing(*state_, pan);
    if (now.time) return refuse(Why::NotNow, "its clock runs already and cannot be started again");
    const bool isFresh = rule == safety::TimeRule::Fresh;
    if (isFresh && !safety::mayLeaveUnder(rule, now, ruleOf(*state_, pan.dish).food))
        return refuse(Why::NotNow, "only food cut or opened just now leaves control as fresh");
    return state_->record(
        safety::Fact{safety::ControlLeft{pan, rule, reading, thermometer, state_->now(), from}});
}

Taken Session::beginCooling(const safety::Pan& pan, safety::CoolingRoute route) {
    if (auto known = checkPan(*state_, pan); !known) return known;
    const safety::Standing now = standing(*state_, pan);
    const bool isCooled = now.leftover == safety::Leftover::Cool && !now.cooling;
    const bool isNew = now.control == safety::Control::None && !now.lost;
    if (!isCooled && !isNew) return refuse(Why::NotNow, "the record does not let it be cooled");
    return state_->record(safety::Fact{safety::CoolingBegun{pan, route, state_->now()}});
}

Taken Session::discardFood(const safety::Pan& pan) {
    if (auto known = checkPan(*state_, pan); !known) return known;
    if (standing(*state_, pan).control == safety::Control::Discarded)
        return refuse(Why::NotNow, "it is discarded");
    return state_->record(safety::Fact{safety::PanDiscarded{pan, state_->now()}});
}

Taken Session::keepFood(const safety::Pan& pan) {
    if (auto known = checkPan(*state_, pan); !known) return known;
    if (standing(*state_, pan).leftover != safety::Leftover::Keep)
        return refuse(Why::NotNow, "the record does not let it be kept");
    return state_->record(safety::Fact{safety::PanKept{pan, state_->now()}});
}

Taken Session::testThermometer(const safety::ThermometerId& thermometer,
                               safety::Reading inIceWater) {
    if (auto no = state_->objection()) return fail(std::move(*no));
    if (thermometer.empty()) return refuse(Why::NotNow, "say which thermometer it was");
    const double celsius = inIceWater.value.celsius();
    if (celsius < kColdestFood || celsius > kHottestTest)
        return refuse(
            Why::NotNow,
            "temperature: a thermometer in ice water shows -40 to 150 degC; read it again");
    return state_->record(
        safety::Fact{safety::ThermometerTested{thermometer, inIceWater, state_->now()}});
}

Taken Session::readyBeforeFire(safety::FireItem item) {
    if (auto no = state_->objection()) return fail(std::move(*no));
    return state_->record(safety::Fact{safety::FireItemReady{item, state_->now()}});
}

Taken Session::skipBeforeFire(safety::FireItem item, const std::string& reason) {
    if (auto no = state_->objection()) return fail(std::move(*no));
    return state_->record(safety::Fact{safety::FireItemSkipped{item, reason, state_->now()}});
}

safety::Limits Session::limits() const {
    return state_->open ? safety::limitsIn(state_->open->day.record, state_->now())
                        : safety::Limits{};
}

Taken Session::nameLocalRules(const safety::LocalRules& rules) {
    if (auto no = state_->objection()) return fail(std::move(*no));
    if (auto made = safety::Limits::with(rules); !made)
        return refuse(Why::NotNow, safety::describe(made.error()));
    return state_->record(safety::Fact{safety::LocalRulesNamed{rules, state_->now()}});
}

Result<std::optional<journal::BrokenChain>, Refusal> Session::verify() const {
    auto broken = state_->store.verify();
    if (!broken) return fail(refusalFor(broken.error()));
    return *std::move(broken);
}

Taken Session::signRecord(const std::string& name, const std::string& certificate) {
    if (auto no = state_->objection()) return fail(std::move(*no));
    if (name.empty()) return refuse(Why::NotNow, "say who signs");
    if (!state_->open->day.sheet) return refuse(Why::NoPlan, {});
    const FoodCards cards = makeFoodCards(state_->open->day, state_->outlook(), state_->now());
    if (cards.withoutAction > 0)
        return refuse(Why::NotNow, std::to_string(cards.withoutAction) +
                                       " readings out of limit have no corrective action");
    if (cards.toDiscard > 0)
        return refuse(Why::NotNow,
                      std::to_string(cards.toDiscard) + " pans are to be discarded first");
    return state_->record(safety::Fact{safety::RecordSigned{name, certificate, state_->now()}});
}

}  // namespace cinder::app
