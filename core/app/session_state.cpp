#include "app/session_state.h"

#include <algorithm>
#include <set>

namespace cinder::app {

namespace {

/// In real time, however fast a rehearsal runs. Source: our design, section 9.
constexpr std::chrono::seconds kUndoOffered{15};

/// A plan that was made for a touch is recorded with it; no other touch follows one so soon.
constexpr std::chrono::milliseconds kOneBreath{100};

/// What a touch was, for the words of its undo; nothing for what is no touch.
struct OfferMaker {
    using What = UndoOffer::What;
    using Offer = std::optional<UndoOffer>;

    static Offer about(What what, std::optional<TaskId> task = {},
                       std::optional<std::int32_t> number = {}) {
        return UndoOffer{what, std::move(task), number, {}};
    }
    Offer operator()(const journal::TaskStarted& o) const { return about(What::Start, o.task); }
    Offer operator()(const journal::TaskFinished& o) const { return about(What::Finish, o.task); }
    Offer operator()(const journal::TaskSkipped& o) const { return about(What::Skip, o.task); }
    Offer operator()(const journal::DishLeftOut& o) const {
        return about(What::LeaveOut, o.tasks.empty() ? std::nullopt : std::optional(o.tasks[0]));
    }
    Offer operator()(const journal::CrewChanged&) const { return about(What::Crew); }
    Offer operator()(const journal::LineTicked& o) const {
        return about(What::Tick, o.task, o.line + 1);
    }
    Offer operator()(const journal::Turned& o) const { return about(What::Turn, o.task, o.turn); }
    Offer operator()(const journal::TemperatureRead& o) const {
        return about(What::Reading, o.task);
    }
    static Offer aboutPieces(What what, const TaskId& task,
                             const std::vector<std::int32_t>& pieces) {
        const auto count = static_cast<std::int32_t>(pieces.size());
        return about(what, task, count == 1 ? pieces.front() : count);
    }
    Offer operator()(const journal::PiecesLaid& o) const { return about(What::Lay, o.task); }
    Offer operator()(const journal::HandHeld&) const { return about(What::FireTest); }
    Offer operator()(const journal::GrateRead&) const { return about(What::FireTest); }
    Offer operator()(const journal::CoalAdded&) const { return about(What::Coal); }
    Offer operator()(const journal::PieceRead& o) const {
        return about(What::PieceRead, o.task, o.piece);
    }
    Offer operator()(const journal::PieceJudged& o) const {
        return about(What::Judge, o.task, o.piece);
    }
    Offer operator()(const journal::PiecesPulled& o) const {
        return aboutPieces(What::Pull, o.task, o.pieces);
    }
    Offer operator()(const journal::PiecesMoved& o) const {
        return aboutPieces(What::Move, o.task, o.pieces);
    }
    Offer operator()(const journal::ServeTimeMoved&) const { return about(What::ServeTime); }
    Offer operator()(const journal::AlarmAcknowledged& o) const {
        return about(What::Acknowledge, live::taskOfTimer(o.alarm));
    }
    Offer operator()(const journal::Undone&) const { return about(What::Undo); }
    Offer operator()(const journal::EventDescribed&) const { return {}; }
    /// Edits are taken back in the editor, without an end to it: Session::undoEdit.
    Offer operator()(const journal::EventDrafted&) const { return {}; }
    Offer operator()(const journal::PlanPublished&) const { return {}; }
    Offer operator()(const journal::RehearsalSet&) const { return {}; }
    Offer operator()(const journal::GuestsPassed& o) const {
        return about(What::Passed, {}, o.guests);
    }
    Offer operator()(const journal::LastGuestPassed&) const { return about(What::LastGuest); }
    Offer operator()(const journal::PanLevelTapped& o) const {
        return about(What::PanLevel, {}, o.percent);
    }
    Offer operator()(const journal::NextPanSet& o) const { return about(What::NextPan, {}, o.pan); }
    Offer operator()(const safety::Fact&) const { return about(What::Record); }
    Offer operator()(const journal::FigureSet&) const { return about(What::Figure); }
    Offer operator()(const journal::GuestsSet&) const { return about(What::Guests); }
    Offer operator()(const journal::LineOrdered&) const { return about(What::LineOrder); }
    Offer operator()(const journal::Packed& o) const {
        return about(o.where == journal::Packed::Where::Line ? What::Placed : What::Packed);
    }
    Offer operator()(const journal::TaskInterrupted& o) const {
        return about(What::Interrupted, o.task);
    }
    Offer operator()(const journal::LessonAnswered&) const { return about(What::Lesson); }
    Offer operator()(const journal::Unknown&) const { return {}; }
};

/// An edit that was taken back is brought back in the editor, not on the boards.
bool isEditTakenBack(const std::vector<journal::Operation>& operations,
                     const journal::Operation& last) {
    const auto* undone = std::get_if<journal::Undone>(&last.body);
    return undone &&
           std::any_of(operations.begin(), operations.end(), [&](const journal::Operation& op) {
               return op.id == undone->operation &&
                      std::holds_alternative<journal::EventDrafted>(op.body);
           });
}

}  // namespace

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
        known = clock.goOnFrom(stamps.last().wall, known);
    }
    if (event != id) lastOwn.reset();
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
    if (event == id) lastOwn = LastOwn{batch.back().id, clock.running()};
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
    if (store.access() != journal::Access::Full)
        return Refusal{Refusal::Why::ReadOnly, "the store", {}, {}, {}};
    if (open->day.event && open->day.event->isReadOnly())
        return Refusal{Refusal::Why::ReadOnly, "the event was made by a newer version", {}, {}, {}};
    return std::nullopt;
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

std::optional<Session::State::Reversible> Session::State::reversible() const {
    const journal::Operation* last = nullptr;
    for (const journal::Operation& op : operations)
        if (op.id.device == store.device() && (!last || last->id < op.id)) last = &op;
    if (!last || isEditTakenBack(operations, *last)) return std::nullopt;
    auto offer = std::visit(OfferMaker{}, last->body);
    // Stamps stand still after a clock was set back; what was done since the start needs none.
    const bool isSinceStart = lastOwn && lastOwn->operation == last->id;
    const Duration passed =
        isSinceStart ? clock.running() - lastOwn->at : clock.wall() - last->stamp.wall;
    const Duration left = kUndoOffered - passed;
    if (!offer || left <= Duration{0} || left > kUndoOffered) return std::nullopt;
    offer->until = now() + left * speed();
    const auto isBefore = [&](const journal::Operation& op, const journal::Operation& after) {
        return op.id.device == after.id.device && op.id.sequence + 1 == after.id.sequence &&
               last->stamp.wall - op.stamp.wall <= kOneBreath;
    };
    std::vector<journal::OperationId> together;
    if (std::holds_alternative<journal::GuestsSet>(last->body) ||
        std::holds_alternative<journal::DishLeftOut>(last->body) ||
        std::holds_alternative<journal::CrewChanged>(last->body))
        for (const journal::Operation& op : operations)
            if (isBefore(op, *last) && std::holds_alternative<journal::PlanPublished>(op.body))
                together.push_back(op.id);
    // Several that were taken back in one touch come back in one. One that they take back is of a
    // touch before.
    std::set<journal::OperationId> targets;
    const journal::Operation* earliest = last;
    for (auto op = operations.rbegin(); op != operations.rend(); ++op) {
        const auto* later = std::get_if<journal::Undone>(&earliest->body);
        if (!later) break;
        targets.insert(later->operation);
        if (targets.contains(op->id)) break;
        if (!isBefore(*op, *earliest)) continue;
        if (!std::holds_alternative<journal::Undone>(op->body)) break;
        together.push_back(op->id);
        earliest = &*op;
    }
    together.push_back(last->id);
    return Reversible{std::move(together), std::move(*offer)};
}

}  // namespace cinder::app
