#pragma once

/// The state of the day: what the journal says has happened, and nothing else. `Day` is a pure
/// fold; what follows from it at a given moment (projections, timers, who does what next) is
/// computed by `lookAt` from the day and an instant.

#include <map>
#include <optional>
#include <set>
#include <span>
#include <vector>

#include "base/units.h"
#include "event/event.h"
#include "journal/operation.h"
#include "live/alarm.h"
#include "live/debrief_day.h"
#include "live/piece_facts.h"
#include "live/read_documents.h"
#include "live/run_sheet.h"
#include "live/service_day.h"
#include "safety/facts.h"

namespace cinder::live {

/// What is known of one task from the journal.
struct TaskFacts {
    std::optional<Instant> started;
    std::optional<Instant> finished;
    std::optional<Instant> skipped;
    std::map<std::int32_t, Instant> ticks;  ///< checklist line -> when
    std::map<std::int32_t, Instant> turns;  ///< turn number, from 1 -> when
    std::optional<PersonId> startedBy;
    std::vector<journal::OperationId> skips;  ///< every word that says `skipped`
    friend bool operator==(const TaskFacts&, const TaskFacts&) = default;
};

/// What was counted of one row of a list.
struct PackFacts {
    std::int32_t out = 0;
    std::int32_t home = 0;
    std::int32_t line = 0;
    friend bool operator==(const PackFacts&, const PackFacts&) = default;
};

struct Day {
    /// As described, with the guests, own values and line order that were said since.
    std::optional<event::Event> event;
    /// As described, with what was said since of who is there.
    std::vector<journal::CrewChanged::Member> crew;
    /// As they were described, before anybody said other numbers.
    event::Guests describedGuests;
    /// The event as it is being written since it was last described; absent when nobody is.
    std::optional<event::Event> draft;
    std::optional<RunSheet> sheet;
    /// The serve time as it now stands, after any move by the client.
    std::optional<Instant> serve;
    std::map<TaskId, TaskFacts> tasks;
    /// Dishes that are left out whole -> every word that says so.
    std::map<DishId, std::vector<journal::OperationId>> leftOut;
    std::map<TaskId, BatchFacts> batches;
    std::map<ResourceId, GrateFacts> grates;
    ServiceDay service;
    DebriefDay debrief;
    std::map<std::string, Instant> acknowledged;  ///< alarm name -> when, for the last time
    std::optional<RehearsalClock::Anchor> rehearsal;
    /// Row of a list -> how many of it are in the van, came home, stand on the line.
    std::map<std::string, PackFacts> packed;
    /// The food-safety record, in clock order. What was undone stays in it: within a minute as a
    /// slip that is shown and does not count, later as if nobody had undone it.
    std::vector<safety::Entry> record;
    /// Operations that could not be understood or no longer fit the plan; kept, shown, not used.
    std::vector<journal::OperationId> setAside;
    friend bool operator==(const Day&, const Day&) = default;
};

/// How many turns a task on the grate has by the plan.
[[nodiscard]] std::int32_t turnCount(const plan::Task& task);
/// A slow batch is turned oftener than planned; more than so many are a slip.
inline constexpr std::int32_t kMostTurnsBeyondPlan = 40;

/// The operations that were not undone, undos themselves left out, in the order of the fold. An
/// undo only reaches back: it counts when it comes after what it names, which rules out circles,
/// and when it was not undone itself.
[[nodiscard]] std::vector<const journal::Operation*> whatCounts(
    std::span<const journal::Operation> operations);

/// The day these operations tell of. Any order, any repetition: same result.
///
/// Of facts (a start, a turn, a reading) the first word counts, of wishes (the serve time, the
/// plan) the last. An undo takes back what lies before it in clock order, itself included when it
/// is undone in turn.
[[nodiscard]] Day fold(std::span<const journal::Operation> operations);
/// The same day, without reading a document again that was read before.
[[nodiscard]] Day fold(std::span<const journal::Operation> operations, ReadDocuments& documents);

}  // namespace cinder::live
