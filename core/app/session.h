#pragma once

/// The one door to the core: open the store, apply what a person did, look at the day. View models
/// and the command line go through here and nowhere else. Single-threaded; what waits for a
/// plan can be asked for, searched elsewhere and published (app/planning.h).

#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "app/debrief.h"
#include "app/list_cards.h"
#include "app/paper.h"
#include "app/planning.h"
#include "app/refusal.h"
#include "app/snapshot.h"
#include "base/clock.h"
#include "base/result.h"
#include "event/edit.h"
#include "event/event.h"
#include "journal/operation.h"
#include "journal/store.h"
#include "learn/methods.h"
#include "live/day.h"
#include "report/style.h"

namespace cinder::app {

/// One line of the list of events.
struct EventEntry {
    EventId id;
    LocalText name;
    Instant serve;
    UtcOffset offset{0};
    bool isRehearsal = false;
    bool isDraft = false;       ///< never planned yet
    bool isUnreadable = false;  ///< its part of the store is damaged; nothing but `id` is known
    friend bool operator==(const EventEntry&, const EventEntry&) = default;
};

/// So many pieces of one thickness.
struct LaidPieces {
    Length thickness;  ///< over 2 and under 300 mm
    std::int32_t pieces = 0;
};

/// What a new event begins with.
struct NewEvent {
    std::string document;  ///< a template or a past event
    LocalText name;        ///< empty: the document's own
    ZonedInstant serve;
    std::string timeZone;  ///< IANA name; empty: the document's own
    /// The event it is made from, whose stricter local limits it takes over.
    std::optional<EventId> from{};
};

/// What a copy had that this device had not.
struct Restored {
    std::int32_t events = 0;
    std::int32_t operations = 0;
    /// Went another way on this device since the copy was made; left as they are here.
    std::vector<EventId> differing;
    /// Were changed in the copy, or cannot be read there; not taken.
    std::vector<EventId> broken;
};

using CrewMember = journal::CrewChanged::Member;

/// One touch of the editor: the draft as it then is, or the faults that stop it (event/edit.h).
using Edit = std::function<event::Edited(event::Event)>;

class Session {
  public:
    struct State;
    /// `store` and `clock` must outlive the session.
    Session(journal::Store& store, const Clock& clock);
    ~Session();

    // --- events ---
    /// An event that cannot be read hides no other.
    [[nodiscard]] Result<std::vector<EventEntry>, Refusal> events() const;
    /// Takes an event document into the store, plans it and opens it. An event that is in the store
    /// is opened with all that was done in it, and stays as it is described there.
    [[nodiscard]] Result<EventId, Refusal> importEvent(const std::string& document);
    [[nodiscard]] Result<void, Refusal> open(const EventId& event);
    /// The open event is now as `document` says: stored, planned anew and shown. Only while nothing
    /// has been done yet; NotNow for another event's document.
    [[nodiscard]] Result<void, Refusal> redescribe(const std::string& document);

    /// Why nothing at all can be noted on this device, if so: everything can still be looked at.
    [[nodiscard]] std::optional<Refusal> whyReadOnly() const;

    // --- all events in one file (session_copies.cpp) ---
    /// Everything on this device into `file`, compared before it counts; says where the record
    /// itself is not as it was written, if so. NotSaved when it cannot be written, or would replace
    /// what is no copy of this (journal::Store::copyTo).
    [[nodiscard]] Result<std::optional<journal::BrokenChain>, Refusal> backUp(
        const std::filesystem::path& file) const;
    /// Takes from a copy what is not on this device; nothing here is lost or changed by it, and
    /// doing it twice does nothing more. BadCopy when nothing in it is sound, or NotSaved with what
    /// came before kept.
    [[nodiscard]] Result<Restored, Refusal> restore(const std::filesystem::path& file);

    // --- the other devices of the crew (session_exchange.cpp) ---
    /// These are in the store now, noted by other devices: the open event, when they are of it, is
    /// shown with them from here on.
    [[nodiscard]] Result<void, Refusal> takeNote(const std::vector<journal::Entry>& entries);
    /// Called whenever something was noted on this device, with its event; null: nobody is.
    void tellWhenNoted(std::function<void(const EventId&)> noted);

    // --- an event being written (session_draft.cpp); every edit is in the journal when it shows
    // ---
    /// A new event, opened; it stands in the list of events from now on.
    [[nodiscard]] Result<EventId, Refusal> newDraft(const NewEvent& wanted);
    /// The document of another event of this store, to begin a new one with: with the figures that
    /// were accepted in its debrief.
    [[nodiscard]] Result<std::string, Refusal> documentOf(const EventId& event) const;
    /// The open event as it is being written, or as described when nobody is writing; null while
    /// none is open.
    [[nodiscard]] const event::Event* draft() const;
    /// Why the open event cannot be changed now: HasBegun once the day has begun, IsRehearsal, or
    /// what stops every touch; nothing when it can.
    [[nodiscard]] std::optional<Refusal> objectionToEdit() const;
    /// Changes the draft. BadEvent, with the faults by field, when the edit is stopped, or the
    /// objection to any edit. `field` is the JSON Pointer of what is changed.
    [[nodiscard]] Result<void, Refusal> edit(const Edit& edit, const std::string& field);
    /// Takes the last edit of this device back, and the one before when called again, as far as the
    /// beginning of the draft.
    [[nodiscard]] Result<void, Refusal> undoEdit();
    [[nodiscard]] bool canUndoEdit() const;
    /// The draft becomes the event: checked, planned and published. BadEvent with every fault, or
    /// NoPlan; the draft stays as it is then.
    [[nodiscard]] Result<void, Refusal> planDraft();

    /// A copy of the open event on a simulated clock that starts `lead` before its first task.
    [[nodiscard]] Result<EventId, Refusal> rehearse(int speed, Duration lead);
    [[nodiscard]] Result<void, Refusal> setRehearsalSpeed(int speed);
    /// The open event as described; null while none is open.
    [[nodiscard]] const event::Event* described() const;
    /// The run sheet everybody follows; null while there is none.
    [[nodiscard]] const live::RunSheet* sheet() const;

    // --- the day; each is durable when it returns a value ---
    [[nodiscard]] Result<void, Refusal> start(const TaskId& task);
    [[nodiscard]] Result<void, Refusal> finish(const TaskId& task);
    [[nodiscard]] Result<void, Refusal> skip(const TaskId& task);
    [[nodiscard]] Result<void, Refusal> tick(const TaskId& task, std::int32_t line);
    /// Records the next turn of a batch, whichever number it is.
    [[nodiscard]] Result<void, Refusal> turn(const TaskId& task);
    [[nodiscard]] Result<void, Refusal> moveServe(Instant serve);
    [[nodiscard]] Result<void, Refusal> acknowledge(const std::string& alarm);
    [[nodiscard]] Result<void, Refusal> undo();

    // --- at the fire (session_fire.cpp); a piece is called by its number on the grate map ---
    /// A batch is on the grate. `start` is the temperature in the middle of the meat; `kinds` says
    /// how thick the pieces really are, empty: as the event describes them. Begins the task unless
    /// it has begun.
    [[nodiscard]] Result<void, Refusal> layPieces(const TaskId& task, Temperature start,
                                                  const std::vector<LaidPieces>& kinds = {});
    /// So long a palm bore the heat at the height of the grate, 1 to 14 s.
    [[nodiscard]] Result<void, Refusal> testByHand(const ResourceId& grate, Duration held);
    [[nodiscard]] Result<void, Refusal> readGrate(const ResourceId& grate, Temperature shown);
    [[nodiscard]] Result<void, Refusal> addCoal(const ResourceId& grate, Mass mass);
    /// A probe in one piece; `depth` of its tip below the upper face, absent: the middle.
    [[nodiscard]] Result<void, Refusal> readPiece(const TaskId& task, std::int32_t piece,
                                                  Temperature shown,
                                                  std::optional<Length> depth = std::nullopt);
    /// What touch or look says of one piece; moves the forecast a little, never says safe.
    [[nodiscard]] Result<void, Refusal> judgePiece(const TaskId& task, std::int32_t piece,
                                                   bool isDone);
    /// One or several at once; the last piece of a batch finishes its task.
    [[nodiscard]] Result<void, Refusal> pullPieces(const TaskId& task,
                                                   const std::vector<std::int32_t>& pieces,
                                                   std::int32_t pan);
    [[nodiscard]] Result<void, Refusal> movePieces(const TaskId& task,
                                                   const std::vector<std::int32_t>& pieces,
                                                   bool isToCoolSide);

    // --- the food-safety record (session_food.cpp); pan 0 is the dish as a whole. Nothing in it is
    // written over; `undo` takes an entry back only within a minute, and it stays to be seen.
    // `from`: the number of the pan a new pan was filled out of, whose record goes on in it. ---
    [[nodiscard]] Result<void, Refusal> measureFood(const safety::Pan& pan, safety::Purpose purpose,
                                                    safety::Reading reading,
                                                    const safety::ThermometerId& thermometer,
                                                    std::optional<Duration> held = std::nullopt,
                                                    std::optional<std::int32_t> from = {});
    /// A new entry beside the old one; it cannot make the food better than the old one did.
    [[nodiscard]] Result<void, Refusal> correctFood(const safety::EntryId& entry,
                                                    safety::Reading reading,
                                                    const std::string& reason);
    /// One of the actions the standard allows for an open reading (FoodPanCard::standing.open).
    [[nodiscard]] Result<void, Refusal> takeAction(const safety::EntryId& entry,
                                                   safety::Action action);
    /// Starts the clock of time control, once.
    [[nodiscard]] Result<void, Refusal> leaveControl(const safety::Pan& pan, safety::TimeRule rule,
                                                     safety::Reading reading,
                                                     const safety::ThermometerId& thermometer,
                                                     std::optional<std::int32_t> from = {});
    [[nodiscard]] Result<void, Refusal> beginCooling(const safety::Pan& pan,
                                                     safety::CoolingRoute route);
    [[nodiscard]] Result<void, Refusal> discardFood(const safety::Pan& pan);
    /// Refused unless the record lets the pan be kept.
    [[nodiscard]] Result<void, Refusal> keepFood(const safety::Pan& pan);
    [[nodiscard]] Result<void, Refusal> testThermometer(const safety::ThermometerId& thermometer,
                                                        safety::Reading inIceWater);
    /// Extinguisher, clearance, open air: there, or passed over and why. Before all three are
    /// answered no task that lights a fire can be begun or finished (AskFirst).
    [[nodiscard]] Result<void, Refusal> readyBeforeFire(safety::FireItem item);
    [[nodiscard]] Result<void, Refusal> skipBeforeFire(safety::FireItem item,
                                                       const std::string& reason);
    /// Refused, with the field in `detail`, when one of them is looser than the published limit.
    [[nodiscard]] Result<void, Refusal> nameLocalRules(const safety::LocalRules& rules);
    /// The limits in force for the open event, also while it is a draft; the published ones while
    /// none is open.
    [[nodiscard]] safety::Limits limits() const;
    /// Walks every chain of the store; nothing means that the record is as it was written.
    [[nodiscard]] Result<std::optional<journal::BrokenChain>, Refusal> verify() const;
    /// Refused while a reading out of limit has no action or a lost pan is not discarded.
    [[nodiscard]] Result<void, Refusal> signRecord(const std::string& name,
                                                   const std::string& certificate);

    // --- the day looked back upon (session_debrief.cpp) ---
    /// Planned against actual, and what past events and this one teach. NoEvent without a plan.
    [[nodiscard]] Result<Debrief, Refusal> debrief() const;
    /// Whether something came between, so that the task's time does not count.
    [[nodiscard]] Result<void, Refusal> markInterrupted(const TaskId& task, bool isInterrupted);
    /// An accepted figure goes into the next event made from this one (documentOf).
    [[nodiscard]] Result<void, Refusal> answerLesson(const std::string& figure, bool isAccepted);

    /// What has become of the methods of the dishes, out of the events of this store that were
    /// planned (learn/methods.h); the newest `kPastEvents` of them.
    [[nodiscard]] Result<std::vector<learn::MethodHistory>, Refusal> methods() const;

    // --- quantities, line and van (session_lists.cpp) ---
    /// Everything the event comes to; null while none is open. The same pointer until something is
    /// recorded, and reckoned anew only when something that goes into it has changed.
    [[nodiscard]] std::shared_ptr<const Lists> lists();
    /// The same for other guests; nothing is recorded.
    [[nodiscard]] Result<std::shared_ptr<const Lists>, Refusal> listsFor(std::int32_t adults,
                                                                         std::int32_t children);
    /// An own value for one figure, in its unit, whole where it counts things; or the app's own
    /// again. `Refusal::faults` names "/value" when it is not one the figure may have.
    [[nodiscard]] Result<void, Refusal> setFigure(const std::string& figure, double value,
                                                  const std::optional<std::string>& note = {});
    [[nodiscard]] Result<void, Refusal> clearFigure(const std::string& figure);
    /// Other guests than were described. Before the first touch of the day the batches on the grate
    /// are planned for them too; afterwards the plan stays, and only what is reckoned follows.
    [[nodiscard]] Result<void, Refusal> setGuests(std::int32_t adults, std::int32_t children);
    /// The dishes from the plates on; each must be on the menu.
    [[nodiscard]] Result<void, Refusal> orderLine(const std::vector<DishId>& dishes);
    /// So many of a row (PackCard::key or StandCard::key) are there now.
    [[nodiscard]] Result<void, Refusal> pack(const std::string& row, journal::Packed::Where where,
                                             std::int32_t count);
    /// A sheet of the open event as it now stands (session_paper.cpp); NoPlan when it needs one.
    [[nodiscard]] Result<Paper, Refusal> paper(Sheet sheet, const report::Style& style);
    // --- the line (session_service.cpp) ---
    /// So many guests are through, all together; 0 is the first one stepping up. Refused when as
    /// many are counted already.
    [[nodiscard]] Result<void, Refusal> countGuests(std::int32_t guests);
    [[nodiscard]] Result<void, Refusal> lastGuest();
    /// So much is left in the pan on the line, 0 to 100 percent.
    [[nodiscard]] Result<void, Refusal> tapPan(const DishId& dish, std::int32_t percent);
    /// The next pan is on the line in the place of the one before it.
    [[nodiscard]] Result<void, Refusal> setNextPan(const DishId& dish);

    /// Searches for a new plan from now on, done and running tasks fixed, near to the one in force,
    /// and publishes it.
    [[nodiscard]] Result<void, Refusal> replan();
    /// The same, with nothing more done for a dish. Refused while something is being done for it,
    /// and when nothing is left to do. One undo takes back both.
    [[nodiscard]] Result<void, Refusal> leaveOut(const DishId& dish);

    /// Searches for a new plan in which a task that was skipped, or left out with its dish, is to
    /// be done after all; a dish that was left out comes back whole. Refused when nobody left it
    /// out.
    [[nodiscard]] Result<void, Refusal> bringBack(const TaskId& task);

    /// Everybody, as described, with what was said since of who is there.
    [[nodiscard]] std::vector<CrewMember> crew() const;
    /// Searches for a new plan for those who are there from now on: `members` are somebody new
    /// (without an id), who can do other things, or who has gone. Where none is found, what was
    /// said counts all the same, and the boards say that the plan does not know of it
    /// (Notice::What::OtherCrew). One undo takes back both. Refused with the skills in `faults`
    /// when nobody would be left who can do what is still to be done (NobodyCan); with BadEvent for
    /// a name that is missing or too long ("/members/0/name") and for more than eight people
    /// ("/members").
    [[nodiscard]] Result<void, Refusal> changeCrew(const std::vector<CrewMember>& members);

    // --- what waits for a plan, in parts (planning.h, session_planning.cpp). Each of the first
    // eight is the beginning of the touch of that name, and refuses what that would. ---
    [[nodiscard]] Result<Planning, Refusal> askToImport(const std::string& document) const;
    [[nodiscard]] Result<Planning, Refusal> askToRedescribe(const std::string& document) const;
    [[nodiscard]] Result<Planning, Refusal> askToPlanDraft() const;
    [[nodiscard]] Result<Planning, Refusal> askToSetGuests(std::int32_t adults,
                                                           std::int32_t children) const;
    [[nodiscard]] Result<Planning, Refusal> askToReplan() const;
    [[nodiscard]] Result<Planning, Refusal> askToLeaveOut(const DishId& dish) const;
    [[nodiscard]] Result<Planning, Refusal> askToBringBack(const TaskId& task) const;
    [[nodiscard]] Result<Planning, Refusal> askToChangeCrew(
        const std::vector<CrewMember>& members) const;
    /// Records what was found, or says why nothing was (but for what counts without a plan).
    /// Overtaken when something was noted since that the plan does not know of; NoEvent when
    /// another event is open. Nothing is recorded then.
    [[nodiscard]] Result<void, Refusal> publish(const Planning& planning, const Found& found);

    /// Who holds the device; goes into every operation from here on.
    void setPerson(std::optional<PersonId> person);

    /// The day at this instant; null while no event is open. Cheap when nothing was applied, no
    /// second has passed and no alarm fell due.
    [[nodiscard]] std::shared_ptr<const Snapshot> look();
    /// The event's time now: the device's, or the rehearsal's. Not moved by setting the wall clock.
    [[nodiscard]] Instant now();
    /// The device's, whatever is rehearsed or written under a wrong clock: for what is no event.
    [[nodiscard]] Instant deviceTime();
    /// A person says that the wall clock, which jumped, is now right: from here on it is followed.
    void followWallClock();

  private:
    std::unique_ptr<State> state_;
};

}  // namespace cinder::app
