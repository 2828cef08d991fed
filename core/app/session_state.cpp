#include "app/session_state.h"

#include <algorithm>
#include <set>

#include "app/last_written.h"

namespace cinder::app {

OpenDay::OpenDay(live::Day folded, const OpenDay* before)
    : day(std::move(folded)),
      fire(live::forecastFire(day, before ? &before->day : nullptr,
                              before ? &before->fire : nullptr)) {
    if (day.sheet)
        dispatch.emplace(day.sheet->problem, day.sheet->schedule, live::skippedIn(day, *day.sheet));
    if (before && before->day.event == day.event) service = before->service;
}

Refusal refusalFor(const journal::StoreError& error) {
    using Store = journal::StoreError::Why;
    Refusal refusal{Refusal::Why::NotSaved, error.detail, {}, {}, error.why};
    if (error.why == Store::ReadOnly) refusal.why = Refusal::Why::ReadOnly;
    return refusal;
}

bool isItsOwn(const journal::StoreError& error) {
    using Store = journal::StoreError::Why;
    return error.why == Store::Damaged || error.why == Store::Failed;
}

Instant Session::State::now() const {
    if (open && open->day.rehearsal) return RehearsalClock(clock, *open->day.rehearsal).wall();
    return clock.wall();
}

int Session::State::speed() const {
    return open && open->day.rehearsal ? open->day.rehearsal->speed : 1;
}

Result<void, Refusal> Session::State::load(const EventId& id) {
    auto read = store.read(id);
    if (!read) return fail(refusalFor(read.error()));
    if (read->empty()) return fail(Refusal{Refusal::Why::NoEvent, id.text(), {}, {}, {}});
    operations = std::move(*read);
    // Those of this event only: one that was written to under a wrong clock leaves the others
    // alone.
    stamps = {};
    for (const journal::Operation& op : operations)
        stamps.witness(op.stamp);
    if (!isWallRight) {
        Duration& known = ahead[id];
        known = clock.goOnFrom(lastWritten(operations, store.device()), known);
    }
    if (event != id) touches.clear();
    event = id;
    past.reset();
    refold();
    return {};
}

void Session::State::forgetOldDrafts() {
    std::set<journal::OperationId> undone;
    bool isKept = false;
    for (auto op = operations.rbegin(); op != operations.rend(); ++op) {
        const bool counts = undone.erase(op->id) == 0;
        if (const auto* undo = std::get_if<journal::Undone>(&op->body); undo && counts)
            undone.insert(undo->operation);
        // A description sets the drafts before it aside, as the fold does.
        if (const auto* described = std::get_if<journal::EventDescribed>(&op->body))
            isKept = isKept || (counts && documents.event(described->document) != nullptr);
        auto* drafted = std::get_if<journal::EventDrafted>(&op->body);
        if (!drafted) continue;
        if (counts && !isKept && documents.draft(drafted->document) != nullptr)
            isKept = true;
        else
            std::string().swap(drafted->document);
    }
}

void Session::State::refold() {
    forgetOldDrafts();
    open = std::make_unique<OpenDay>(live::fold(operations, documents), open.get());
    seen.reset();
    listed.reset();
}

Result<void, Refusal> Session::State::record(journal::Body body) {
    std::vector<journal::Body> bodies;
    bodies.push_back(std::move(body));
    return recordAll(*event, std::move(bodies));
}

Result<void, Refusal> Session::State::recordAll(const EventId& id,
                                                std::vector<journal::Body> bodies) {
    auto next = store.nextId(id);
    if (!next) return fail(refusalFor(next.error()));
    clock.compare();
    // What is written in one event, under a wrong clock perhaps, says nothing of another.
    journal::HybridClock anew;
    journal::HybridClock& ticking = event == id ? stamps : anew;
    const Instant wall = event == id ? clock.wall() : clock.wallOfNewEvent();
    std::vector<journal::Operation> batch;
    for (journal::Body& body : bodies) {
        journal::Operation op;
        op.event = id;
        op.id = *next;
        ++next->sequence;
        op.stamp = ticking.tick(wall);
        op.person = person;
        op.body = std::move(body);
        batch.push_back(std::move(op));
    }
    const auto stored = store.append(batch);
    isDiskFull = !stored && stored.error().why == journal::StoreError::Why::DiskFull;
    if (!stored) {
        seen.reset();
        return fail(refusalFor(stored.error()));
    }
    tellNoted(id);
    if (event == id) noteTouch(batch.front().id.sequence, batch.back().id.sequence);
    // What is taken back, or brought back, may be a draft whose words were let go.
    const bool isTakingBack = std::any_of(batch.begin(), batch.end(), [&](const auto& op) {
        return std::holds_alternative<journal::Undone>(op.body);
    });
    if (event == id && isTakingBack) return load(EventId(id));
    if (event == id) {
        operations.insert(operations.end(), batch.begin(), batch.end());
        refold();
    }
    return {};
}

std::optional<Refusal> Session::State::objection() const {
    if (!event || !open) return Refusal{Refusal::Why::NoEvent, {}, {}, {}, {}};
    if (auto no = objectionOfStore()) return no;
    if (open->day.event && open->day.event->isReadOnly())
        return Refusal{Refusal::Why::ReadOnly, "the event was made by a newer version", {}, {}, {}};
    return std::nullopt;
}

std::optional<Refusal> Session::State::objectionOfStore() const {
    Refusal refusal{Refusal::Why::ReadOnly, "the store", {}, {}, {}};
    switch (store.access()) {
        case journal::Access::Full:
            return std::nullopt;
        case journal::Access::ReadOnlyFile:
            refusal.storage = journal::StoreError::Why::ReadOnly;
            break;
        case journal::Access::Newer:
            break;
    }
    return refusal;
}

std::optional<Refusal> Session::State::objectionToEnd(const TaskId& task) const {
    const auto found = find(task);
    if (!found) return found.error();
    const auto state = outlook().tasks[*found].state;
    if (state == live::TaskState::Done || state == live::TaskState::Skipped)
        return Refusal{Refusal::Why::NotNow, "it is over", {}, {}, {}};
    return std::nullopt;
}

Result<std::size_t, Refusal> Session::State::find(const TaskId& task) const {
    if (auto no = objection()) return fail(std::move(*no));
    if (!open->day.sheet) return fail(Refusal{Refusal::Why::NoPlan, {}, {}, {}, {}});
    const auto& tasks = open->day.sheet->problem.tasks;
    const auto found =
        std::find_if(tasks.begin(), tasks.end(), [&](const plan::Task& t) { return t.id == task; });
    if (found == tasks.end())
        return fail(Refusal{Refusal::Why::UnknownTask, task.text(), {}, {}, {}});
    return static_cast<std::size_t>(found - tasks.begin());
}

live::Outlook Session::State::outlook() const {
    return live::lookAt(open->day, *open->dispatch, now(), &open->fire);
}

const live::Chance& Session::State::chance(Instant now) {
    const Duration lifetime = std::chrono::minutes{1} * std::max(1, speed());
    auto& known = open->chance;
    if (!known || now < known->at || now >= known->at + lifetime)
        known = live::chanceAt(open->day, *open->dispatch, now, &open->fire);
    return *known;
}

}  // namespace cinder::app
