// What waits for a plan: asked for, searched, published (planning.h).

#include <algorithm>
#include <iterator>
#include <set>

#include "app/planning.h"
#include "app/session.h"
#include "app/session_state.h"
#include "event/json.h"
#include "event/limits.h"
#include "live/crew.h"
#include "live/ways_out.h"
#include "plan/build/build.h"

namespace cinder::app {

namespace {

using Why = Refusal::Why;
using Taken = Result<void, Refusal>;

Found planWhole(const event::Event& event, const std::atomic<bool>* stop) {
    auto problem = plan::build(event);
    if (!problem) return fail(faulty(std::move(problem.error())));
    plan::Search search;
    search.stop = stop;
    // The search of a day this large is far from its end when its schedules are spent.
    constexpr std::size_t kLargeDay = 100;
    search.usesSecondThread = problem->tasks.size() > kLargeDay;
    auto found = plan::makePlan(*problem, search);
    if (!found && problem->arrival) {
        auto inTime = *problem;
        inTime.arrival.reset();
        if (auto open = plan::makePlan(inTime, search)) found = std::move(open);
    }
    if (!found) return fail(Refusal{Why::NoPlan, {}, {}, std::move(found.error()), {}});
    return live::RunSheet{std::move(*problem), std::move(found->schedule), event.serve.at};
}

Found planRest(const live::Remaining& remaining, const std::atomic<bool>* stop) {
    plan::Search search;
    search.stop = stop;
    auto sheet = live::planRest(remaining, search);
    if (!sheet) return fail(Refusal{Why::NoPlan, {}, {}, std::move(sheet.error()), {}});
    return *std::move(sheet);
}

Basis basisIn(const OpenDay* open) {
    if (open == nullptr) return {};
    const live::Day& day = open->day;
    return {day.event, day.draft, day.serve, !day.tasks.empty()};
}

Result<bool, Refusal> isKnown(const journal::Store& store, const EventId& event) {
    const auto ids = store.events();
    if (!ids) return fail(refusalFor(ids.error()));
    return std::find(ids->begin(), ids->end(), event) != ids->end();
}

/// The event is described as in `document`, and has a plan.
void wantWhole(Planning& planning, event::Event event, std::string document) {
    planning.wanted = std::move(event);
    planning.bodies.emplace_back(journal::EventDescribed{std::move(document)});
    planning.bodies.emplace_back(journal::PlanPublished{});
}

/// What is wrong with what was said of the crew `before`.
event::Faults faultsIn(const journal::CrewChanged& changed, const std::vector<CrewMember>& before) {
    using What = event::Fault::What;
    event::Faults faults;
    std::set<PersonId> there;
    const auto count = [&](const CrewMember& member) {
        there.erase(member.person);
        if (member.isHere) there.insert(member.person);
    };
    std::for_each(before.begin(), before.end(), count);
    std::for_each(changed.members.begin(), changed.members.end(), count);
    for (std::size_t i = 0; i < changed.members.size(); ++i) {
        const std::size_t letters = changed.members[i].name.size();
        if (letters >= event::kNameLetters.low && letters <= event::kNameLetters.high) continue;
        const std::string path = "/members/" + std::to_string(i) + "/name";
        faults.push_back({What::OutOfRange, path, std::to_string(letters), "1..200", {}});
    }
    if (there.size() > event::kCrewEntries.high)
        faults.push_back({What::OutOfRange, "/members", std::to_string(there.size()), "1..8", {}});
    return faults;
}

Refusal nobodyCan(const std::vector<SkillId>& wanting) {
    Refusal refusal{Why::NobodyCan, {}, {}, {}, {}};
    for (const SkillId& skill : wanting) {
        refusal.faults.push_back({event::Fault::What::Nobody, "/members", skill.text(), {}, {}});
        refusal.detail += (refusal.detail.empty() ? "" : ", ") + skill.text();
    }
    return refusal;
}

/// All parts, one after the other.
Taken carryOut(Session& session, const Result<Planning, Refusal>& planning) {
    if (!planning) return fail(planning.error());
    return session.publish(*planning, searchPlan(*planning));
}

}  // namespace

Found searchPlan(const Planning& planning, const std::atomic<bool>* stop) {
    if (const auto* event = std::get_if<event::Event>(&planning.wanted))
        return planWhole(*event, stop);
    if (const auto* rest = std::get_if<live::Remaining>(&planning.wanted))
        return planRest(*rest, stop);
    return std::nullopt;
}

Planning Session::State::planning(const EventId& planned) const {
    Planning planning;
    planning.event = planned;
    planning.open = event;
    planning.basis = basisIn(open.get());
    return planning;
}

Planning Session::State::restPlanning(std::vector<journal::Body> said) {
    Planning planning = this->planning(*event);
    planning.wanted = live::remainingAt(dayWith(said), now(), &open->fire);
    // The plan first: undo goes by what was said last.
    planning.bodies.emplace_back(journal::PlanPublished{});
    std::move(said.begin(), said.end(), std::back_inserter(planning.bodies));
    return planning;
}

std::optional<Refusal> Session::State::nameNewcomers(journal::CrewChanged& changed) const {
    const auto next = store.nextId(*event);
    if (!next) return refusalFor(next.error());
    std::size_t number = 0;
    for (auto& member : changed.members)
        if (member.person.empty())
            member.person =
                PersonId("came." + next->device.text() + "." + std::to_string(next->sequence) +
                         "." + std::to_string(++number));
    return std::nullopt;
}

live::Day Session::State::dayWith(const std::vector<journal::Body>& bodies) {
    std::vector<journal::Operation> all;
    journal::HybridClock later = stamps;
    std::uint64_t sequence = 0;
    for (const journal::Operation& op : operations)
        if (op.id.device == store.device()) sequence = std::max(sequence, op.id.sequence);
    for (const journal::Body& body : bodies) {
        if (std::holds_alternative<journal::PlanPublished>(body)) continue;
        if (all.empty()) all = operations;
        all.push_back(
            {*event, {store.device(), ++sequence}, later.tick(clock.wall()), {}, 1, body});
    }
    return all.empty() ? open->day : live::fold(all, documents);
}

bool Session::State::stillHolds(const Planning& planning) {
    const auto* rest = std::get_if<live::Remaining>(&planning.wanted);
    if (rest == nullptr) return basisIn(open.get()) == planning.basis;
    if (!open || !open->day.sheet) return false;
    return live::remainingAt(dayWith(planning.bodies), rest->now).tellsTheSameAs(*rest);
}

Result<Planning, Refusal> Session::askToImport(const std::string& document) const {
    auto event = event::parse(document);
    if (!event) return fail(faulty(std::move(event.error())));
    const auto known = isKnown(state_->store, event->id);
    if (!known) return fail(known.error());
    Planning planning = state_->planning(event->id);
    // All that was done in it stays as it is; it is only opened.
    if (*known) return planning;
    if (state_->store.access() != journal::Access::Full) return refuse(Why::ReadOnly, "the store");
    wantWhole(planning, *std::move(event), document);
    return planning;
}

Result<Planning, Refusal> Session::askToRedescribe(const std::string& document) const {
    if (auto no = objectionToEdit()) return fail(std::move(*no));
    auto event = event::parse(document);
    if (!event) return fail(faulty(std::move(event.error())));
    if (event->id != *state_->event) return refuse(Why::NotNow, "this is another event");
    Planning planning = state_->planning(event->id);
    wantWhole(planning, *std::move(event), document);
    return planning;
}

Result<Planning, Refusal> Session::askToPlanDraft() const {
    if (auto no = objectionToEdit()) return fail(std::move(*no));
    const event::Event* written = draft();
    if (!written) return refuse(Why::NoEvent);
    auto whole = event::parse(event::write(*written));
    if (!whole) return fail(faulty(std::move(whole.error())));
    Planning planning = state_->planning(whole->id);
    std::string document = event::write(*whole);
    wantWhole(planning, *std::move(whole), std::move(document));
    return planning;
}

Result<Planning, Refusal> Session::askToReplan() const {
    if (auto no = state_->objection()) return fail(std::move(*no));
    if (!state_->open->day.sheet) return refuse(Why::NoPlan);
    return state_->restPlanning({});
}

Result<Planning, Refusal> Session::askToLeaveOut(const DishId& dish) const {
    auto now = askToReplan();
    if (!now) return now;
    const auto& rest = std::get<live::Remaining>(now->wanted);
    journal::DishLeftOut left{dish, {}, rest.now};
    for (const std::size_t i : live::restFor(rest, dish))
        left.tasks.push_back(rest.sheet.problem.tasks[i].id);
    if (left.tasks.empty())
        return refuse(Why::NotNow, "nothing of it can be left out: " + dish.text());
    return state_->restPlanning({std::move(left)});
}

Result<Planning, Refusal> Session::askToBringBack(const TaskId& task) const {
    const auto found = state_->find(task);
    if (!found) return fail(found.error());
    const live::Day& day = state_->open->day;
    const auto facts = day.tasks.find(task);
    if (facts == day.tasks.end() || facts->second.skips.empty())
        return refuse(Why::NotNow, "nobody left it out");
    std::set<journal::OperationId> said(facts->second.skips.begin(), facts->second.skips.end());
    if (const auto dish = day.sheet->problem.tasks[*found].dish)
        if (const auto left = day.leftOut.find(*dish); left != day.leftOut.end())
            said.insert(left->second.begin(), left->second.end());
    std::vector<journal::Body> undoing;
    undoing.reserve(said.size());
    for (const journal::OperationId& word : said)
        undoing.emplace_back(journal::Undone{word});
    return state_->restPlanning(std::move(undoing));
}

Result<Planning, Refusal> Session::askToChangeCrew(const std::vector<CrewMember>& members) const {
    auto now = askToReplan();
    if (!now) return now;
    journal::CrewChanged changed{members, state_->now()};
    if (auto no = state_->nameNewcomers(changed)) return fail(std::move(*no));
    auto crew = state_->open->day.crew;
    if (auto faults = faultsIn(changed, crew); !faults.empty())
        return fail(faulty(std::move(faults)));
    if (!live::changeCrew(crew, changed))
        return refuse(Why::NotNow, "as many have come and gone as a sheet can hold");
    if (crew == state_->open->day.crew) return refuse(Why::NotNow, "it is as it was said");
    live::Day after = state_->open->day;
    after.crew = std::move(crew);
    const live::Situation then = live::situationAt(after, changed.at, &state_->open->fire);
    const auto wanting = live::skillsWanting(then, live::sheetOfThoseThere(then));
    if (!wanting.empty()) return fail(nobodyCan(wanting));
    Planning planning = state_->restPlanning({std::move(changed)});
    planning.countsWithoutPlan = true;
    return planning;
}

Taken Session::publish(const Planning& planning, const Found& found) {
    if (state_->event != planning.open) return refuse(Why::NoEvent, "another event is open");
    if (!state_->stillHolds(planning)) return refuse(Why::Overtaken);
    const bool hasPlan = found.has_value();
    if (!hasPlan && !(planning.countsWithoutPlan && found.error().why == Why::NoPlan))
        return fail(found.error());
    if (planning.bodies.empty()) return open(planning.event);
    const bool isDescribed =
        std::holds_alternative<journal::EventDescribed>(planning.bodies.front());
    if (planning.event != planning.open) {
        const auto known = isKnown(state_->store, planning.event);
        if (!known) return fail(known.error());
        if (*known) return refuse(Why::Overtaken, "it came from elsewhere meanwhile");
    }
    auto bodies = planning.bodies;
    if (!hasPlan)
        std::erase_if(bodies, [](const journal::Body& body) {
            return std::holds_alternative<journal::PlanPublished>(body);
        });
    for (journal::Body& body : bodies)
        if (auto* plan = std::get_if<journal::PlanPublished>(&body))
            plan->document = live::writeRunSheet(found->value());
    if (auto stored = state_->recordAll(planning.event, std::move(bodies)); !stored)
        return fail(std::move(stored.error()));
    return isDescribed ? open(planning.event) : Taken();
}

// --- in one go -----------------------------------------------------------------------------------

Result<EventId, Refusal> Session::importEvent(const std::string& document) {
    const auto planning = askToImport(document);
    if (auto taken = carryOut(*this, planning); !taken) return fail(std::move(taken.error()));
    return planning->event;
}

Taken Session::redescribe(const std::string& document) {
    return carryOut(*this, askToRedescribe(document));
}

Taken Session::planDraft() {
    return carryOut(*this, askToPlanDraft());
}

Taken Session::setGuests(std::int32_t adults, std::int32_t children) {
    return carryOut(*this, askToSetGuests(adults, children));
}

Taken Session::replan() {
    return carryOut(*this, askToReplan());
}

Taken Session::leaveOut(const DishId& dish) {
    return carryOut(*this, askToLeaveOut(dish));
}

Taken Session::changeCrew(const std::vector<CrewMember>& members) {
    return carryOut(*this, askToChangeCrew(members));
}

std::vector<CrewMember> Session::crew() const {
    return state_->open ? state_->open->day.crew : std::vector<CrewMember>();
}

Taken Session::bringBack(const TaskId& task) {
    return carryOut(*this, askToBringBack(task));
}

}  // namespace cinder::app
