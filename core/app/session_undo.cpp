#include <algorithm>
#include <set>

#include "app/session_state.h"

namespace cinder::app {

namespace {

/// In real time, however fast a rehearsal runs. Source: our design, section 9.
constexpr std::chrono::seconds kUndoOffered{15};

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
    Offer operator()(const journal::PlanPublished&) const { return about(What::Plan); }
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
    Offer operator()(const journal::ClockFollowed&) const { return {}; }
    Offer operator()(const journal::Unknown&) const { return {}; }
};

using Operations = std::vector<const journal::Operation*>;

template <class Kind>
bool is(const journal::Operation* op) {
    return std::holds_alternative<Kind>(op->body);
}

bool isTakingBack(const Operations& touch) {
    return std::all_of(touch.begin(), touch.end(), is<journal::Undone>);
}

/// What is offered for a touch; nothing for one that is not taken back on the boards: an edit is
/// taken back in the editor, and so is the plan for what was described with it.
std::optional<UndoOffer> offerFor(const Operations& touch) {
    if (std::any_of(touch.begin(), touch.end(), is<journal::EventDescribed>)) return std::nullopt;
    return std::visit(OfferMaker{}, touch.back()->body);
}

std::vector<journal::OperationId> namesOf(const Operations& touch) {
    std::vector<journal::OperationId> names;
    names.reserve(touch.size());
    for (const journal::Operation* op : touch)
        names.push_back(op->id);
    return names;
}

/// What others take back, by name.
std::set<journal::OperationId> takenBack(const std::vector<journal::Operation>& operations) {
    std::set<journal::OperationId> wanted;
    std::set<journal::OperationId> gone;
    for (auto op = operations.rbegin(); op != operations.rend(); ++op) {
        if (wanted.erase(op->id) > 0)
            gone.insert(op->id);
        else if (const auto* undo = std::get_if<journal::Undone>(&op->body))
            wanted.insert(undo->operation);
    }
    return gone;
}

}  // namespace

void Session::State::noteTouch(std::uint64_t first, std::uint64_t last) {
    const Duration now = clock.running();
    std::erase_if(touches, [&](const OwnTouch& touch) { return now - touch.at >= kUndoOffered; });
    touches.push_back({first, last, now});
}

std::vector<Session::State::RecentTouch> Session::State::recentTouches() const {
    std::vector<RecentTouch> recent;
    const OwnTouch* noted = nullptr;
    for (auto op = operations.rbegin(); op != operations.rend(); ++op) {
        if (op->id.device != store.device()) continue;
        const auto known = std::find_if(touches.begin(), touches.end(), [&](const OwnTouch& touch) {
            return touch.first <= op->id.sequence && op->id.sequence <= touch.last;
        });
        const OwnTouch* touch = known == touches.end() ? nullptr : &*known;
        // Stamps stand still after a clock was set back; what was done since the start needs none.
        const Duration age =
            touch != nullptr ? clock.running() - touch->at : clock.wall() - op->stamp.wall;
        if (age < Duration{0} || age >= kUndoOffered) break;
        const bool isSameTouch =
            !recent.empty() && touch == noted &&
            (touch != nullptr || op->stamp.wall == recent.back().operations.back()->stamp.wall);
        if (!isSameTouch) recent.push_back({{}, kUndoOffered - age});
        recent.back().operations.push_back(&*op);
        noted = touch;
    }
    for (RecentTouch& touch : recent)
        std::reverse(touch.operations.begin(), touch.operations.end());
    return recent;
}

std::optional<Session::State::Reversible> Session::State::reversible() const {
    const std::vector<RecentTouch> recent = recentTouches();
    if (recent.empty()) return std::nullopt;
    const auto gone = takenBack(operations);
    const auto offered = [&](const RecentTouch& touch, UndoOffer offer) {
        offer.until = now() + touch.left * speed();
        return Reversible{namesOf(touch.operations), std::move(offer)};
    };
    for (const RecentTouch& touch : recent) {
        const journal::Operation* last = touch.operations.back();
        if (gone.contains(last->id) || isTakingBack(touch.operations)) continue;
        if (is<journal::ClockFollowed>(last)) continue;
        auto offer = offerFor(touch.operations);
        if (!offer) break;
        return offered(touch, *std::move(offer));
    }
    // Nothing is left to take back but that itself.
    const RecentTouch& last = recent.front();
    const auto* undo = std::get_if<journal::Undone>(&last.operations.back()->body);
    const bool isOfEdit =
        undo != nullptr && std::any_of(operations.begin(), operations.end(), [&](const auto& op) {
            return op.id == undo->operation && is<journal::EventDrafted>(&op);
        });
    if (undo == nullptr || isOfEdit) return std::nullopt;
    return offered(last, OfferMaker::about(UndoOffer::What::Undo).value());
}

Result<void, Refusal> Session::undo() {
    if (auto no = state_->objection()) return fail(std::move(*no));
    const auto last = state_->reversible();
    if (!last) return refuse(Refusal::Why::NotNow, "nothing can be taken back any more");
    std::vector<journal::Body> undoing;
    undoing.reserve(last->operations.size());
    for (const journal::OperationId& operation : last->operations)
        undoing.emplace_back(journal::Undone{operation});
    return state_->recordAll(*state_->event, std::move(undoing));
}

}  // namespace cinder::app
