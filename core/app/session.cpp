#include "app/session.h"

#include <algorithm>
#include <set>

#include "app/make_fire_cards.h"
#include "app/make_snapshot.h"
#include "app/session_state.h"
#include "event/json.h"

namespace cinder::app {

namespace {

using Why = Refusal::Why;
using Taken = Result<void, Refusal>;

/// What says how an event is called and when it serves.
constexpr std::string_view kHeading[] = {"described", "serve-moved", "rehearsal", "undone"};

/// Something was done on the day, or the day itself was changed.
bool isOfTheDay(const journal::Body& body) {
    const auto isDone = [](const auto& said) {
        return requires {
            said.task;
        }
        || requires {
            said.grate;
        };
    };
    return std::visit(isDone, body) || std::holds_alternative<journal::ServeTimeMoved>(body) ||
           std::holds_alternative<journal::DishLeftOut>(body) ||
           std::holds_alternative<journal::CrewChanged>(body);
}

/// The plan with which a day began: the last one that counts before the first touch.
const journal::PlanPublished* firstPlan(const std::vector<journal::Operation>& operations) {
    const journal::PlanPublished* plan = nullptr;
    for (const journal::Operation* op : live::whatCounts(operations)) {
        if (const auto* published = std::get_if<journal::PlanPublished>(&op->body))
            plan = published;
        else if (plan && isOfTheDay(op->body))
            break;
    }
    return plan;
}

/// An event that was never planned is called as its last draft that counts and can be read says.
Result<void, journal::StoreError> addDraft(const journal::Store& store, const EventId& id,
                                           std::vector<journal::Operation> known,
                                           live::ReadDocuments& headings, live::Day& day) {
    std::set<journal::OperationId> tried;
    while (!day.draft) {
        auto draft = store.readLast(id, "drafted", tried);
        if (!draft) return fail(draft.error());
        if (!*draft) return {};
        tried.insert((*draft)->id);
        known.push_back(*std::move(*draft));
        day = live::fold(known, headings);
        known.pop_back();
    }
    return {};
}

/// How an event is called; nothing when its heading cannot be understood.
Result<std::optional<EventEntry>, journal::StoreError> entryOf(const journal::Store& store,
                                                               const EventId& id) {
    const auto operations = store.readKinds(id, kHeading);
    if (!operations) return fail(operations.error());
    live::ReadDocuments headings(live::ReadDocuments::Depth::Heading);
    live::Day day = live::fold(*operations, headings);
    if (!day.event)
        if (auto added = addDraft(store, id, *operations, headings, day); !added)
            return fail(added.error());
    const auto& event = day.event ? day.event : day.draft;
    if (!event) return std::optional<EventEntry>();
    return EventEntry{id,
                      event->name,
                      day.serve.value_or(event->serve.at),
                      event->serve.offset,
                      day.rehearsal.has_value(),
                      /*isDraft=*/!day.event};
}

std::optional<Instant> firstDue(const std::vector<live::Timer>& timers, Instant after) {
    for (const live::Timer& timer : timers)
        if (timer.due > after) return timer.due;
    return std::nullopt;
}

}  // namespace

Session::Session(journal::Store& store, const Clock& clock)
    : state_(std::make_unique<State>(store, clock)) {}

Session::~Session() = default;

// --- events --------------------------------------------------------------------------------------

Result<std::vector<EventEntry>, Refusal> Session::events() const {
    auto ids = state_->store.events();
    if (!ids) return fail(refusalFor(ids.error()));
    std::vector<EventEntry> entries;
    for (const EventId& id : *ids) {
        auto entry = entryOf(state_->store, id);
        if (entry) {
            if (*entry) entries.push_back(**std::move(entry));
            continue;
        }
        if (!isItsOwn(entry.error())) return fail(refusalFor(entry.error()));
        EventEntry unreadable;
        unreadable.id = id;
        unreadable.isUnreadable = true;
        entries.push_back(std::move(unreadable));
    }
    return entries;
}

std::optional<Refusal> Session::whyReadOnly() const {
    return state_->objectionOfStore();
}

Taken Session::open(const EventId& event) {
    return state_->load(event);
}

Result<EventId, Refusal> Session::rehearse(int speed, Duration lead) {
    if (auto no = state_->objection()) return fail(std::move(*no));
    const live::Day& day = state_->open->day;
    const journal::PlanPublished* plan = firstPlan(state_->operations);
    if (!day.sheet || !day.event || !plan) return refuse(Why::NoPlan);
    auto ids = state_->store.events();
    if (!ids) return fail(refusalFor(ids.error()));
    // A little of the device's name, so that no other device of the crew makes the same.
    constexpr std::size_t kDevice = 6;
    const std::string stem = day.event->id.text() + ".rehearsal-" +
                             state_->store.device().text().substr(0, kDevice) + "-";
    int number = 1;
    while (std::find(ids->begin(), ids->end(), EventId(stem + std::to_string(number))) !=
           ids->end())
        ++number;
    const EventId copy(stem + std::to_string(number));

    const auto sheet = live::readRunSheet(plan->document);
    if (!sheet) return refuse(Why::NoPlan, sheet.error().detail);
    const Instant begin = sheet->bell + plan::firstStart(sheet->schedule) - lead;
    std::vector<journal::Body> bodies;
    bodies.emplace_back(journal::EventDescribed{event::write(*day.event)});
    bodies.emplace_back(*plan);
    bodies.emplace_back(journal::RehearsalSet{{state_->clock.wallOfNewEvent(), begin, speed}});
    if (auto stored = state_->recordAll(copy, std::move(bodies)); !stored)
        return fail(std::move(stored.error()));
    if (auto opened = open(copy); !opened) return fail(std::move(opened.error()));
    return copy;
}

Taken Session::setRehearsalSpeed(int speed) {
    if (auto no = state_->objection()) return fail(std::move(*no));
    if (!state_->open->day.rehearsal) return refuse(Why::NotNow, "not a rehearsal");
    if (speed < 0) return refuse(Why::NotNow, "time does not run backwards");
    return state_->record(journal::RehearsalSet{{state_->clock.wall(), state_->now(), speed}});
}

const event::Event* Session::described() const {
    return state_->open && state_->open->day.event ? &*state_->open->day.event : nullptr;
}

const live::RunSheet* Session::sheet() const {
    return state_->open && state_->open->day.sheet ? &*state_->open->day.sheet : nullptr;
}

// --- the day -------------------------------------------------------------------------------------

Taken Session::start(const TaskId& task) {
    const auto found = state_->find(task);
    if (!found) return fail(found.error());
    const auto state = state_->outlook().tasks[*found].state;
    if (state != live::TaskState::Waiting && state != live::TaskState::Ready)
        return refuse(Why::NotNow, "it has begun");
    if (auto no = state_->objectionToFire(*found)) return fail(std::move(*no));
    return state_->record(journal::TaskStarted{task, state_->now()});
}

Taken Session::finish(const TaskId& task) {
    if (auto no = state_->objectionToEnd(task)) return fail(std::move(*no));
    if (auto no = state_->objectionToFire(*state_->find(task))) return fail(std::move(*no));
    return state_->record(journal::TaskFinished{task, state_->now()});
}

Taken Session::skip(const TaskId& task) {
    if (auto no = state_->objectionToEnd(task)) return fail(std::move(*no));
    return state_->record(journal::TaskSkipped{task, state_->now()});
}

Taken Session::tick(const TaskId& task, std::int32_t line) {
    const auto found = state_->find(task);
    if (!found) return fail(found.error());
    const live::Day& day = state_->open->day;
    const auto lines = day.sheet->problem.tasks[*found].checklist.size();
    if (line < 0 || static_cast<std::size_t>(line) >= lines)
        return refuse(Why::UnknownTask, task.text() + " line " + std::to_string(line));
    if (const auto facts = day.tasks.find(task); facts != day.tasks.end()) {
        if (facts->second.ticks.count(line) > 0) return refuse(Why::NotNow, "it is ticked");
        if (facts->second.skipped) return refuse(Why::NotNow, "it is skipped");
    }
    // The first line begins a task and the last one finishes it.
    if (auto no = state_->objectionToFire(*found)) return fail(std::move(*no));
    return state_->record(journal::LineTicked{task, line, state_->now()});
}

Taken Session::turn(const TaskId& task) {
    const auto found = state_->find(task);
    if (!found) return fail(found.error());
    const live::TaskOutlook seen = state_->outlook().tasks[*found];
    const bool isOn = seen.state == live::TaskState::Running || seen.state == live::TaskState::Over;
    if (!isOn || seen.turnsDone >= seen.turnCount)
        return refuse(Why::NotNow, "there is no turn to do");
    return state_->record(journal::Turned{task, seen.turnsDone + 1, state_->now()});
}

Taken Session::moveServe(Instant serve) {
    if (auto no = state_->objection()) return fail(std::move(*no));
    if (state_->open->day.serve == serve) return refuse(Why::NotNow, "it is the serve time");
    return state_->record(journal::ServeTimeMoved{serve, state_->now()});
}

Taken Session::acknowledge(const std::string& alarm) {
    if (auto no = state_->objection()) return fail(std::move(*no));
    if (!state_->open->day.sheet) return refuse(Why::NoPlan);
    const auto timers = look()->timers;
    const auto found = std::find_if(timers.begin(), timers.end(),
                                    [&](const live::Timer& t) { return t.name == alarm; });
    if (found == timers.end()) return refuse(Why::NotNow, "no such alarm: " + alarm);
    if (found->acknowledged) return refuse(Why::NotNow, "it is silent already");
    return state_->record(journal::AlarmAcknowledged{alarm, state_->now()});
}

void Session::setPerson(std::optional<PersonId> person) {
    state_->person = std::move(person);
}

// --- looking -------------------------------------------------------------------------------------

std::shared_ptr<const Snapshot> Session::look() {
    State& s = *state_;
    s.clock.compare();
    if (!s.open || !s.open->day.sheet) return nullptr;
    const Instant now = s.now();
    if (s.seen && now >= s.seen->now &&
        std::chrono::floor<std::chrono::seconds>(now) ==
            std::chrono::floor<std::chrono::seconds>(s.seen->now)) {
        const auto due = firstDue(s.seen->timers, s.seen->now);
        if (!due || *due > now) return s.seen;
    }
    const live::Outlook outlook = live::lookAt(s.open->day, *s.open->dispatch, now, &s.open->fire);
    Snapshot snapshot = makeSnapshot(s.open->day, outlook, now);
    snapshot.fire = makeFireCards(s.open->day, outlook, s.open->fire, now);
    snapshot.food = makeFoodCards(s.open->day, outlook, now);
    if (const auto reckoned = s.reckon()) snapshot.line = standCards(*reckoned, s.open->day.packed);
    std::erase_if(snapshot.line,
                  [&](const StandCard& card) { return s.open->day.leftOut.contains(card.dish); });
    addFoodTimers(s.open->day, snapshot);
    if (const auto& plan = s.service())
        snapshot.service = makeServiceCards(s.open->day, *plan, now);
    addServiceTimers(s.open->day, snapshot);
    addChance(s.open->day, s.chance(now), snapshot);
    snapshot.event = *s.event;
    snapshot.isRehearsal = s.open->day.rehearsal.has_value();
    snapshot.speed = s.speed();
    if (const auto last = s.reversible()) snapshot.undo = last->offer;
    const bool isNewer = s.store.access() == journal::Access::Newer ||
                         (s.open->day.event && s.open->day.event->isReadOnly());
    snapshot.isReadOnly = isNewer || s.store.access() != journal::Access::Full;
    if (isNewer) snapshot.notices.push_back({Notice::What::NewerVersion, {}, {}});
    if (s.store.access() == journal::Access::ReadOnlyFile)
        snapshot.notices.push_back({Notice::What::ReadOnly, {}, {}});
    if (s.isDiskFull) snapshot.notices.push_back({Notice::What::DiskFull, {}, {}});
    if (s.clock.jump() != Duration{0})
        snapshot.notices.push_back({Notice::What::ClockJumped, {}, s.clock.jump()});
    s.seen = std::make_shared<const Snapshot>(std::move(snapshot));
    return s.seen;
}

Instant Session::deviceTime() {
    state_->clock.compare();
    return state_->clock.wallOfNewEvent();
}

Instant Session::now() {
    state_->clock.compare();
    return state_->now();
}

void Session::followWallClock() {
    State& s = *state_;
    s.clock.compare();
    const bool isNews = s.clock.jump() != Duration{0};
    s.clock.followWall();
    s.isWallRight = true;
    s.seen.reset();
    // Written down, so that it counts after a restart. Where it cannot be, it counts until then.
    if (isNews && !s.objection()) (void)s.record(journal::ClockFollowed{s.clock.wall()});
}

}  // namespace cinder::app
