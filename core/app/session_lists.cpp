// What a person decides about quantities, line and van (session.h).

#include <algorithm>
#include <cmath>

#include "app/session.h"
#include "app/session_state.h"
#include "event/limits.h"
#include "live/revise_event.h"

namespace cinder::app {

namespace {

using Why = Refusal::Why;
using Taken = Result<void, Refusal>;
using event::Fault;

/// A row is counted by hand; more of one thing is a slip of the finger.
constexpr std::int32_t kMostCountedRow = 100'000;

Refusal outOfRange(std::string path, std::string found, std::string allowed) {
    Refusal refusal{Why::BadEvent, path + " is " + found, {}, {}, {}};
    refusal.faults.push_back(
        {Fault::What::OutOfRange, std::move(path), std::move(found), std::move(allowed), {}});
    return refusal;
}

/// Guests come in whole persons, and somebody has to.
std::optional<Refusal> objectionToGuests(std::int32_t adults, std::int32_t children) {
    const auto most = event::kGuestRange.high;
    const std::string allowed = "1.." + std::to_string(most);
    if (children < 0 || children > most)
        return outOfRange("/guests/children", std::to_string(children),
                          "0.." + std::to_string(most));
    if (adults < 0 || adults > most || adults + children < 1 || adults + children > most)
        return outOfRange("/guests/adults", std::to_string(adults), allowed);
    return std::nullopt;
}

bool isCounted(quantity::Unit unit) {
    switch (unit) {
        case quantity::Unit::Grams:
        case quantity::Unit::Millilitres:
        case quantity::Unit::Millimetres:
        case quantity::Unit::Minutes:
        case quantity::Unit::Percent:
        case quantity::Unit::Ratio:
        case quantity::Unit::GramsPerLitre:
            return false;
        default:
            return true;
    }
}

std::string numberText(double value) {
    std::string text = std::to_string(value);
    text.erase(text.find_last_not_of('0') + 1);
    if (!text.empty() && text.back() == '.') text.pop_back();
    return text;
}

const PackCard* findRow(const Lists& lists, const std::string& row) {
    const auto found = std::find_if(lists.pack.begin(), lists.pack.end(),
                                    [&](const PackCard& card) { return card.key == row; });
    return found == lists.pack.end() ? nullptr : &*found;
}

bool hasStand(const Lists& lists, const std::string& key) {
    return std::any_of(lists.line.begin(), lists.line.end(),
                       [&](const StandCard& card) { return card.key == key; });
}

/// Why nothing can be said about the lists of the open day, if so.
std::optional<Refusal> objectionTo(const Session::State& state) {
    if (auto no = state.objection()) return no;
    if (!state.open->day.event) return Refusal{Why::NoEvent, "it is not described", {}, {}, {}};
    return std::nullopt;
}

/// The event of the open day with other guests.
event::Event withOtherGuests(const live::Day& day, std::int32_t adults, std::int32_t children) {
    event::Event event = eventAsItStands(day);
    // Cannot fail: the counts were checked before.
    (void)live::revise(event, journal::GuestsSet{adults, children, {}}, day.describedGuests);
    return event;
}

}  // namespace

std::shared_ptr<const Reckoned> Session::State::reckon() {
    if (!open || !open->day.event) return nullptr;
    reckoned = reckonFor(eventAsItStands(open->day), open->day, reckoned);
    return reckoned;
}

std::shared_ptr<const Lists> Session::lists() {
    if (state_->listed) return state_->listed;
    if (const auto reckoned = state_->reckon())
        state_->listed = makeLists(*reckoned, state_->open->day.packed);
    return state_->listed;
}

Result<std::shared_ptr<const Lists>, Refusal> Session::listsFor(std::int32_t adults,
                                                                std::int32_t children) {
    if (!state_->open || !state_->open->day.event) return refuse(Why::NoEvent);
    if (auto no = objectionToGuests(adults, children)) return fail(std::move(*no));
    const live::Day& day = state_->open->day;
    const auto other = reckonFor(withOtherGuests(day, adults, children), day, nullptr);
    return makeLists(*other, day.packed);
}

Taken Session::setFigure(const std::string& figure, double value,
                         const std::optional<std::string>& note) {
    if (auto no = objectionTo(*state_)) return fail(std::move(*no));
    const auto reckoned = state_->reckon();
    const quantity::Figure* there =
        reckoned && !figure.empty() ? quantity::findFigure(reckoned->all, figure) : nullptr;
    if (there == nullptr) return refuse(Why::UnknownTask, "no figure " + figure);
    if (!(value >= event::kFigure.low && value <= event::kFigure.high))
        return fail(outOfRange("/value", numberText(value), "0..1000000000"));
    if (isCounted(there->amount.unit) && value != std::floor(value))
        return fail(outOfRange("/value", numberText(value), "whole numbers"));
    if (note && note->size() > event::kNoteLetters.high)
        return fail(outOfRange("/note", std::to_string(note->size()), "1..2000"));
    if (there->isOverridden() && there->amount.value == value && there->note == note)
        return refuse(Why::NotNow, "it is that already");
    return state_->record(journal::FigureSet{figure, value, note, state_->now()});
}

Taken Session::clearFigure(const std::string& figure) {
    if (auto no = objectionTo(*state_)) return fail(std::move(*no));
    const event::Event& event = *state_->open->day.event;
    const bool isOwn =
        event.quantities &&
        std::any_of(event.quantities->overrides.begin(), event.quantities->overrides.end(),
                    [&](const auto& one) { return one.figure == figure; });
    if (!isOwn) return refuse(Why::NotNow, figure + " has no own value");
    return state_->record(journal::FigureSet{figure, {}, {}, state_->now()});
}

Result<Planning, Refusal> Session::askToSetGuests(std::int32_t adults,
                                                  std::int32_t children) const {
    if (auto no = objectionTo(*state_)) return fail(std::move(*no));
    if (auto no = objectionToGuests(adults, children)) return fail(std::move(*no));
    const live::Day& day = state_->open->day;
    const event::Guests& now = day.event->guests;
    if (now.adults == adults && now.children == children)
        return refuse(Why::NotNow, "so many are expected already");
    Planning planning = state_->planning(*state_->event);
    const bool countsPieces = std::any_of(
        day.event->menu.begin(), day.event->menu.end(),
        [](const event::Dish& dish) { return dish.pieces && dish.pieces->perHundredGuests; });
    if (countsPieces && day.tasks.empty()) {
        planning.wanted = withOtherGuests(day, adults, children);
        planning.bodies.emplace_back(journal::PlanPublished{});
    }
    // Last, because the last word is what can be taken back.
    planning.bodies.emplace_back(journal::GuestsSet{adults, children, state_->now()});
    return planning;
}

Taken Session::orderLine(const std::vector<DishId>& dishes) {
    if (auto no = objectionTo(*state_)) return fail(std::move(*no));
    const event::Event& event = *state_->open->day.event;
    for (const DishId& dish : dishes)
        if (std::none_of(event.menu.begin(), event.menu.end(),
                         [&](const event::Dish& one) { return one.id == dish; }))
            return refuse(Why::UnknownTask, "no dish " + dish.text());
    if (event.quantities && event.quantities->lineOrder == dishes)
        return refuse(Why::NotNow, "it stands so already");
    return state_->record(journal::LineOrdered{dishes, state_->now()});
}

Taken Session::pack(const std::string& row, journal::Packed::Where where, std::int32_t count) {
    if (auto no = objectionTo(*state_)) return fail(std::move(*no));
    const auto seen = lists();
    const bool isLine = where == journal::Packed::Where::Line;
    const PackCard* card = isLine ? nullptr : findRow(*seen, row);
    if (isLine ? !hasStand(*seen, row) : card == nullptr)
        return refuse(Why::UnknownTask, "no row " + row);
    if (count < 0 || count > kMostCountedRow)
        return fail(outOfRange("/count", std::to_string(count), "0..100000"));
    if (where == journal::Packed::Where::Home && !card->comesBack)
        return refuse(Why::NotNow, "it does not come back");
    return state_->record(journal::Packed{row, count, where, state_->now()});
}

}  // namespace cinder::app
