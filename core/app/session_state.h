#pragma once

/// What a session holds while an event is open; internal to core/app.

#include <map>
#include <vector>

#include "app/debrief.h"
#include "app/make_list_cards.h"
#include "app/service_plan.h"
#include "app/session.h"
#include "app/steady_clock.h"
#include "journal/hybrid_clock.h"

namespace cinder::app {

/// Pans of one dish are numbered up to here. Our choice.
inline constexpr std::int32_t kMostPans = 99;

inline Refusal faulty(event::Faults faults) {
    return {Refusal::Why::BadEvent, {}, std::move(faults), {}, {}};
}

inline tl::unexpected<Refusal> refuse(Refusal::Why why, std::string detail = {}) {
    return fail(Refusal{why, std::move(detail), {}, {}, {}});
}

/// What one past event has to teach.
struct PastEvent {
    learn::PastDay day;
    std::vector<learn::Appetite> appetites;
};

/// A day with the dispatch made for its sheet. Stays where it was made: the dispatch points into
/// the day.
struct OpenDay {
    /// `before`, when given, is the same event's day until now: what its forecast knows is kept.
    explicit OpenDay(live::Day folded, const OpenDay* before = nullptr);
    OpenDay(const OpenDay&) = delete;
    OpenDay& operator=(const OpenDay&) = delete;

    live::Day day;
    std::optional<plan::Dispatch> dispatch;
    live::FireForecast fire;
    std::optional<live::Chance> chance;          ///< of the last minute
    std::shared_ptr<const ServicePlan> service;  ///< of this event; made when it is asked for
};

struct Session::State {
    State(journal::Store& opened, const Clock& device) : store(opened), clock(device) {}

    journal::Store& store;
    SteadyClock clock;
    journal::HybridClock stamps;
    /// How far the clock was put ahead for an event that was open, so that it does not run back
    /// when the event is opened again.
    std::map<EventId, Duration> ahead;
    bool isWallRight = false;  ///< a person said so: it counts more than what is written
    std::optional<PersonId> person;
    std::optional<EventId> event;
    std::vector<journal::Operation> operations;
    live::ReadDocuments documents;
    std::unique_ptr<OpenDay> open;
    bool isDiskFull = false;
    /// What one touch on this device wrote, by its places in the device's chain.
    struct OwnTouch {
        std::uint64_t first = 0;
        std::uint64_t last = 0;
        Duration at;  ///< running time
    };
    std::vector<OwnTouch> touches;         ///< of late, since the start, in the open event
    std::shared_ptr<const Snapshot> seen;  ///< the last snapshot, handed out again while it holds
    std::shared_ptr<const Lists> listed;   ///< handed out again until something is recorded
    std::shared_ptr<const Reckoned> reckoned;  ///< the last reckoning, while nothing in it changed

    std::optional<std::vector<PastEvent>> past;  ///< of the open event; read when asked for
    [[nodiscard]] Result<std::vector<PastEvent>, Refusal> pastEvents(
        std::vector<EventEntry> entries);

    /// The event's time: real, or the rehearsal's.
    [[nodiscard]] Instant now() const;
    [[nodiscard]] int speed() const;

    /// Reads an event from the store and makes it the open one. Time goes on from what was last
    /// written in it when the wall clock shows less.
    [[nodiscard]] Result<void, Refusal> load(const EventId& id);
    /// Appends to the open event, durably, and folds again. Nothing changes when it fails.
    [[nodiscard]] Result<void, Refusal> record(journal::Body body);
    [[nodiscard]] Result<void, Refusal> recordAll(const EventId& id,
                                                  std::vector<journal::Body> bodies);
    /// These came into the store from another device. (session_exchange.cpp)
    [[nodiscard]] Result<void, Refusal> takeNote(const std::vector<journal::Entry>& entries);
    std::function<void(const EventId&)> whenNoted;  ///< something was, on this device
    void tellNoted(const EventId& id) const {
        if (whenNoted) whenNoted(id);
    }
    void refold();
    /// Lets go of what older drafts said: there is one for every touch of the editor, each the
    /// whole event, and only the last that counts is ever shown.
    void forgetOldDrafts();

    /// A plan for `planned` that rests on the day as it stands; what is wanted is not said yet.
    /// (session_planning.cpp)
    [[nodiscard]] Planning planning(const EventId& planned) const;

    /// A plan for the rest of the open day, with `said` said in the same breath.
    [[nodiscard]] Planning restPlanning(std::vector<journal::Body> said);
    /// Gives an id to those who have none, one that no other device gives; why not, if so.
    [[nodiscard]] std::optional<Refusal> nameNewcomers(journal::CrewChanged& changed) const;
    /// The open day as it would be with these said too; a plan that is not made yet says nothing.
    [[nodiscard]] live::Day dayWith(const std::vector<journal::Body>& bodies);
    /// Whether a plan that was asked for is still one for the day.
    [[nodiscard]] bool stillHolds(const Planning& planning);

    /// What the open event comes to; null while none is open.
    [[nodiscard]] std::shared_ptr<const Reckoned> reckon();

    /// Why nothing may be recorded, if so.
    [[nodiscard]] std::optional<Refusal> objection() const;
    /// Why nothing may be recorded in any event, if so.
    [[nodiscard]] std::optional<Refusal> objectionOfStore() const;
    /// Why the task at this place of the sheet may not be begun or finished yet: it lights a fire,
    /// and what is asked before that is not answered.
    [[nodiscard]] std::optional<Refusal> objectionToFire(std::size_t task) const;
    /// Why `task` can neither be finished nor skipped, if so.
    [[nodiscard]] std::optional<Refusal> objectionToEnd(const TaskId& task) const;
    /// The task's place on the sheet.
    [[nodiscard]] Result<std::size_t, Refusal> find(const TaskId& task) const;
    [[nodiscard]] live::Outlook outlook() const;
    /// Reckoned anew when something was done and then once a minute on the device's clock.
    [[nodiscard]] const live::Chance& chance(Instant now);
    /// Null without an event. (session_service.cpp)
    [[nodiscard]] const std::shared_ptr<const ServicePlan>& service();
    /// (session_undo.cpp)
    void noteTouch(std::uint64_t first, std::uint64_t last);
    /// Touches on this device that can still be taken back by their age, the last one first.
    struct RecentTouch {
        std::vector<const journal::Operation*> operations;  ///< in the order written
        Duration left;                                      ///< of the time it is offered
    };
    [[nodiscard]] std::vector<RecentTouch> recentTouches() const;
    /// What one undo takes back: the last touch on this device that still stands, whole, or, when
    /// none is left, the taking back itself. So a slip that was followed by the touch that was
    /// meant goes with two undos.
    struct Reversible {
        std::vector<journal::OperationId> operations;
        UndoOffer offer;
    };
    [[nodiscard]] std::optional<Reversible> reversible() const;
};

[[nodiscard]] Refusal refusalFor(const journal::StoreError& error);
/// A fault of one part of the store, which says nothing of the others.
[[nodiscard]] bool isItsOwn(const journal::StoreError& error);

}  // namespace cinder::app
