// The day looked back upon (session.h, debrief.h).

#include <algorithm>

#include "app/session.h"
#include "app/session_state.h"

namespace cinder::app {

namespace {

using Why = Refusal::Why;
using Taken = Result<void, Refusal>;

/// The counter goes by tens: within one step of all the guests, all are meant.
std::int32_t guestsOf(const ServicePlan& plan, const live::ServiceDay& day) {
    const std::int32_t counted = day.counts.empty() ? 0 : day.counts.rbegin()->first;
    const bool isAll = counted <= plan.guests && counted + kCountBy > plan.guests;
    return isAll ? plan.guests : counted;
}

std::vector<learn::Appetite> appetitesOf(const ServicePlan& plan, const live::Day& day) {
    std::vector<learn::Appetite> appetites;
    for (const ServicePlan::Pan& pan : plan.pans) {
        auto one = learn::appetiteOf(pan.dish, pan.plan, day.service, guestsOf(plan, day.service));
        if (!one) continue;
        one->name = pan.name;
        if (day.event)
            for (const event::Dish& dish : day.event->menu)
                if (dish.id == pan.dish && dish.serving)
                    one->takePercent = dish.serving->takePercent.value_or(100);
        appetites.push_back(std::move(*one));
    }
    return appetites;
}

PastEvent pastOf(const live::Day& day, const ServicePlan* plan) {
    PastEvent past;
    past.day.actuals = learn::actualsOf(day);
    past.day.interrupted = day.debrief.interrupted;
    if (day.event) past.day.guests = event::headCount(day.event->guests);
    if (plan) past.appetites = appetitesOf(*plan, day);
    return past;
}

LessonCard cardOf(const learn::Suggestion& one) {
    LessonCard card{learn::lengthFigure(one.step), LessonCard::Kind::Length, one.name};
    card.planned = one.planned.count();
    card.learned = one.learned.count();
    card.low = one.low.count();
    card.high = one.high.count();
    card.events = one.events;
    card.interrupted = one.interrupted;
    return card;
}

LessonCard cardOf(const learn::TakeSuggestion& one) {
    LessonCard card{learn::takeFigure(one.dish), LessonCard::Kind::Take, one.name};
    card.planned = one.planned;
    card.learned = one.learned;
    card.low = one.low;
    card.high = one.high;
    card.events = one.events;
    return card;
}

std::vector<LessonCard> lessonsFor(const live::Day& day, const std::vector<PastEvent>& past) {
    std::vector<learn::PastDay> days;
    std::vector<std::vector<learn::Appetite>> appetites;
    for (const PastEvent& one : past) {
        days.push_back(one.day);
        appetites.push_back(one.appetites);
    }
    std::vector<LessonCard> cards;
    for (const auto& one : learn::suggestionsFor(day.sheet->problem.tasks, days, day.event))
        cards.push_back(cardOf(one));
    if (day.event)
        for (const auto& one : learn::takesFor(*day.event, appetites))
            cards.push_back(cardOf(one));
    for (LessonCard& card : cards) {
        const auto answer = day.debrief.lessons.find(card.figure);
        if (answer == day.debrief.lessons.end()) continue;
        card.answer =
            answer->second.isAccepted ? LessonCard::Answer::Accepted : LessonCard::Answer::Ignored;
        // What was answered is what goes along, whatever later events say.
        if (answer->second.isAccepted) card.learned = answer->second.value;
    }
    return cards;
}

}  // namespace

/// The other events up to the serve time of the open one, each read once while it is open.
Result<std::vector<PastEvent>, Refusal> Session::State::pastEvents(
    std::vector<EventEntry> entries) {
    if (past) return *past;
    std::vector<PastEvent> found;
    std::erase_if(entries, [&](const EventEntry& entry) {
        return entry.isRehearsal || entry.isDraft || entry.isUnreadable || entry.id == *event ||
               entry.serve > open->day.serve.value_or(Instant::max());
    });
    std::sort(entries.begin(), entries.end(),
              [](const EventEntry& a, const EventEntry& b) { return a.serve > b.serve; });
    entries.resize(std::min(entries.size(), kPastEvents));
    for (const EventEntry& entry : entries) {
        const auto recorded = store.read(entry.id);
        // One that cannot be read teaches nothing; the others do.
        if (!recorded && isItsOwn(recorded.error())) continue;
        if (!recorded) return fail(refusalFor(recorded.error()));
        const live::Day day = live::fold(*recorded);
        if (day.tasks.empty() || !day.event) continue;
        const ServicePlan plan = planService(*day.event, 1);
        found.push_back(pastOf(day, &plan));
    }
    past = std::move(found);
    return *past;
}

Result<Debrief, Refusal> Session::debrief() const {
    State& s = *state_;
    if (!s.open || !s.open->day.sheet) return refuse(Why::NoEvent);
    const live::Day& day = s.open->day;
    auto entries = events();
    if (!entries) return fail(std::move(entries.error()));
    auto past = s.pastEvents(*std::move(entries));
    if (!past) return fail(std::move(past.error()));
    const auto& plan = s.service();
    PastEvent today = pastOf(day, plan.get());
    Debrief debrief;
    debrief.isRehearsal = day.rehearsal.has_value();
    for (const learn::Actual& actual : today.day.actuals)
        debrief.tasks.push_back({actual, day.debrief.interrupted.count(actual.task) > 0});
    for (const learn::Appetite& appetite : today.appetites)
        for (const ServicePlan::Pan& pan : plan->pans)
            if (pan.dish == appetite.dish)
                debrief.pans.push_back({pan.name, pan.plan.pans, appetite.pansUsed});
    if (!debrief.isRehearsal && !today.day.actuals.empty()) past->push_back(std::move(today));
    debrief.events = static_cast<std::int32_t>(past->size());
    debrief.lessons = lessonsFor(day, *past);
    return debrief;
}

Result<std::vector<learn::MethodHistory>, Refusal> Session::methods() const {
    static constexpr std::string_view kKinds[] = {"described", "serve-moved", "lesson", "undone"};
    auto entries = events();
    if (!entries) return fail(std::move(entries.error()));
    std::erase_if(*entries, [](const EventEntry& entry) {
        return entry.isRehearsal || entry.isDraft || entry.isUnreadable;
    });
    std::sort(entries->begin(), entries->end(),
              [](const EventEntry& a, const EventEntry& b) { return a.serve > b.serve; });
    entries->resize(std::min(entries->size(), kPastEvents));
    std::vector<learn::DescribedEvent> described;
    for (const EventEntry& entry : *entries) {
        const auto operations = state_->store.readKinds(entry.id, kKinds);
        if (!operations && isItsOwn(operations.error())) continue;
        if (!operations) return fail(refusalFor(operations.error()));
        live::Day day = live::fold(*operations, state_->documents);
        if (day.event) described.push_back({*std::move(day.event), std::move(day.debrief.lessons)});
    }
    return learn::methodHistories(std::move(described));
}

Taken Session::markInterrupted(const TaskId& task, bool isInterrupted) {
    const auto found = state_->find(task);
    if (!found) return fail(found.error());
    const bool isMarked = state_->open->day.debrief.interrupted.count(task) > 0;
    if (isMarked == isInterrupted) return refuse(Why::NotNow, "it is so already");
    return state_->record(journal::TaskInterrupted{task, isInterrupted, state_->now()});
}

Taken Session::answerLesson(const std::string& figure, bool isAccepted) {
    if (auto no = state_->objection()) return fail(std::move(*no));
    if (state_->open->day.rehearsal) return refuse(Why::NotNow, "a rehearsal teaches nothing");
    const auto seen = debrief();
    if (!seen) return fail(seen.error());
    const auto card = std::find_if(seen->lessons.begin(), seen->lessons.end(),
                                   [&](const LessonCard& one) { return one.figure == figure; });
    if (card == seen->lessons.end()) return refuse(Why::NotNow, "nothing was learnt of " + figure);
    return state_->record(
        journal::LessonAnswered{figure, isAccepted, card->learned, state_->now()});
}

}  // namespace cinder::app
