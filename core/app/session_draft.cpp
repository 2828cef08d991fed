// An event while it is being written.

#include <algorithm>
#include <set>

#include "app/session.h"
#include "app/session_state.h"
#include "event/draft.h"
#include "event/json.h"

namespace cinder::app {

namespace {

using Why = Refusal::Why;
using Taken = Result<void, Refusal>;

/// "2027-06-05-3fa2", and "2027-06-05-3fa2-2" when that is taken: a date people know, and a little
/// of the device's name so that two devices out of reach of each other do not choose the same.
EventId freeId(const std::vector<EventId>& taken, ZonedInstant serve, const DeviceId& device) {
    constexpr std::size_t kDate = 10;
    constexpr std::size_t kDevice = 6;
    const std::string stem =
        formatRfc3339(serve).substr(0, kDate) + "-" + device.text().substr(0, kDevice);
    EventId id(stem);
    for (int n = 2; std::find(taken.begin(), taken.end(), id) != taken.end(); ++n)
        id = EventId(stem + "-" + std::to_string(n));
    return id;
}

/// The newest edit of this device that still counts, of the draft that is being written; null when
/// only the beginning of the draft is left.
const journal::Operation* lastEdit(const std::vector<journal::Operation>& operations,
                                   const DeviceId& device) {
    std::set<journal::OperationId> undone;
    const journal::Operation* last = nullptr;
    const journal::Operation* first = nullptr;
    bool hasEvent = false;
    for (auto op = operations.rbegin(); op != operations.rend(); ++op) {
        if (undone.erase(op->id) > 0) continue;
        if (const auto* undo = std::get_if<journal::Undone>(&op->body))
            undone.insert(undo->operation);
        if (std::holds_alternative<journal::EventDescribed>(op->body)) {
            hasEvent = true;
            break;
        }
        if (!std::holds_alternative<journal::EventDrafted>(op->body)) continue;
        first = &*op;
        if (!last && op->id.device == device) last = &*op;
    }
    // Without a described event behind it, the first draft is what there is to write on.
    return last == first && !hasEvent ? nullptr : last;
}

/// What was said last of the local authority's limits on that event; they can only be stricter than
/// the published ones, so that taking them along is on the safe side wherever the next event is.
std::optional<safety::LocalRules> localRulesIn(const std::vector<journal::Operation>& operations,
                                               live::ReadDocuments& documents) {
    std::optional<safety::LocalRulesNamed> last;
    for (const safety::Entry& entry : live::fold(operations, documents).record)
        if (const auto* named = std::get_if<safety::LocalRulesNamed>(&entry.fact);
            named && !entry.isTakenBack && (!last || last->at <= named->at))
            last = *named;
    if (!last) return std::nullopt;
    return std::move(last->rules);
}

}  // namespace

Result<EventId, Refusal> Session::newDraft(const NewEvent& wanted) {
    if (state_->store.access() != journal::Access::Full) return refuse(Why::ReadOnly, "the store");
    auto past = event::parseDraft(wanted.document);
    if (!past) return fail(faulty(std::move(past.error())));
    if (past->isReadOnly()) return refuse(Why::ReadOnly, "the event was made by a newer version");
    auto taken = state_->store.events();
    if (!taken) return fail(refusalFor(taken.error()));
    const EventId id = freeId(*taken, wanted.serve, state_->store.device());
    event::Event draft = event::renewed(*past, id, wanted.serve);
    if (!wanted.name.empty()) draft.name = wanted.name;
    if (!wanted.timeZone.empty()) draft.timeZone = wanted.timeZone;
    std::string document = event::writeDraft(draft);
    if (auto sound = event::parseDraft(document); !sound)
        return fail(faulty(std::move(sound.error())));
    std::vector<journal::Body> bodies;
    if (wanted.from) {
        const auto operations = state_->store.read(*wanted.from);
        if (!operations) return fail(refusalFor(operations.error()));
        if (auto rules = localRulesIn(*operations, state_->documents))
            bodies.emplace_back(safety::Fact{
                safety::LocalRulesNamed{*std::move(rules), state_->clock.wallOfNewEvent()}});
    }
    bodies.emplace_back(journal::EventDrafted{std::move(document), {}});
    if (auto stored = state_->recordAll(id, std::move(bodies)); !stored)
        return fail(std::move(stored.error()));
    if (auto opened = open(id); !opened) return fail(std::move(opened.error()));
    return id;
}

Result<std::string, Refusal> Session::documentOf(const EventId& event) const {
    auto operations = state_->store.read(event);
    if (!operations) return fail(refusalFor(operations.error()));
    // What an event is described as needs no plan.
    std::erase_if(*operations, [](const journal::Operation& op) {
        return std::holds_alternative<journal::PlanPublished>(op.body);
    });
    const live::Day day = live::fold(*operations, state_->documents);
    const auto& known = day.draft ? day.draft : day.event;
    if (!known) return refuse(Why::NoEvent, event.text());
    return event::write(learn::applied(*known, day.debrief.lessons));
}

const event::Event* Session::draft() const {
    if (!state_->open) return nullptr;
    const live::Day& day = state_->open->day;
    if (day.draft) return &*day.draft;
    return day.event ? &*day.event : nullptr;
}

std::optional<Refusal> Session::objectionToEdit() const {
    if (auto no = state_->objection()) return no;
    const live::Day& day = state_->open->day;
    if (day.rehearsal) return Refusal{Why::IsRehearsal, {}, {}, {}, {}};
    if (!day.tasks.empty()) return Refusal{Why::HasBegun, {}, {}, {}, {}};
    return std::nullopt;
}

Taken Session::edit(const Edit& edit, const std::string& field) {
    if (auto no = objectionToEdit()) return fail(std::move(*no));
    const event::Event* before = draft();
    if (!before) return refuse(Why::NoEvent);
    auto after = edit(*before);
    if (!after) return fail(faulty(std::move(after.error())));
    if (after->id != before->id) return refuse(Why::NotNow, "this is another event");
    if (*after == *before) return {};
    return state_->record(journal::EventDrafted{event::writeDraft(*after), field});
}

bool Session::canUndoEdit() const {
    return !objectionToEdit() && lastEdit(state_->operations, state_->store.device()) != nullptr;
}

Taken Session::undoEdit() {
    if (auto no = objectionToEdit()) return fail(std::move(*no));
    const journal::Operation* last = lastEdit(state_->operations, state_->store.device());
    if (!last) return refuse(Why::NotNow, "nothing of this draft was changed");
    return state_->record(journal::Undone{last->id});
}

}  // namespace cinder::app
