#pragma once

/// A small lunch planned by hand: tables to lay, one batch turned twice, its rest, slicing.

#include "live/day.h"
#include "live/outlook.h"

namespace samples {

using namespace cinder;
using namespace std::chrono_literals;

inline constexpr Instant kBell{1'821'286'800'000ms};

inline Instant fromBell(Duration offset) {
    return kBell + offset;
}

inline plan::FromBell minutes(int count) {
    return plan::FromBell{2 * count};
}

inline plan::Task task(const char* id, plan::TaskKind kind, int length) {
    plan::Task task;
    task.id = TaskId{id};
    task.name = LocalText{std::string(id)};
    task.kind = kind;
    task.duration = {minutes(length), minutes(length), minutes(length)};
    task.latestFinish = minutes(0);
    return task;
}

inline void addHands(plan::Task& task, int offset, int length, plan::HandsOn::Act act) {
    task.hands.push_back({minutes(offset), minutes(length), 0, 1, act});
}

inline plan::PlannedTask planned(const plan::Task& task, int start, plan::PersonIndex person) {
    plan::PlannedTask planned{minutes(start), minutes(start) + task.duration.usual, {}};
    for (const plan::HandsOn& hands : task.hands)
        planned.pieces.push_back({minutes(start) + hands.offset, hands.length, {person}});
    return planned;
}

/// Nora cooks T-50 .. T-30, the meat rests until T-15 and is sliced until T-5; Ida lays the tables
/// from T-60 to T-50 and has until the bell.
inline live::RunSheet smallSheet() {
    using Act = plan::HandsOn::Act;
    live::RunSheet sheet;
    sheet.bell = kBell;
    plan::Problem& problem = sheet.problem;
    problem.stations = {{StationId{"fire"}, LocalText{std::string("Fire")}}};
    problem.walk = {{plan::HalfMinutes{0}}};
    problem.skills = {{SkillId{"any"}, LocalText{std::string("Any")}}};
    problem.crew = {{PersonId{"nora"}, "Nora", {0}}, {PersonId{"ida"}, "Ida", {0}}};

    plan::Task tables = task("tables", plan::TaskKind::SetUp, 10);
    addHands(tables, 0, 10, Act::Work);
    tables.checklist = {LocalText{std::string("Cloth")}, LocalText{std::string("Weights")}};
    plan::Task cook = task("lamb/cook", plan::TaskKind::Cook, 20);
    addHands(cook, 0, 2, Act::PutOn);
    addHands(cook, 6, 1, Act::Turn);
    addHands(cook, 12, 1, Act::Turn);
    addHands(cook, 18, 2, Act::TakeOff);
    cook.lean = plan::Lean::Late;
    cook.checkEvery = minutes(8);
    plan::Task rest = task("lamb/rest", plan::TaskKind::Rest, 15);
    rest.endsByItself = true;
    plan::Task slice = task("lamb/slice", plan::TaskKind::Slice, 10);
    addHands(slice, 0, 10, Act::Work);
    slice.lean = plan::Lean::Late;

    sheet.schedule.tasks = {planned(tables, -60, 1), planned(cook, -50, 0), planned(rest, -30, 0),
                            planned(slice, -15, 0)};
    problem.tasks = {tables, cook, rest, slice};
    problem.links = {
        {1, 2, plan::End::Finish, plan::End::Start, plan::HalfMinutes{0}, {}},
        {2, 3, plan::End::Finish, plan::End::Start, plan::HalfMinutes{0}, minutes(20)}};
    return sheet;
}

/// A day of which only the plan is known, to which operations are added in order.
class SmallDay {
  public:
    SmallDay() { add(journal::PlanPublished{live::writeRunSheet(smallSheet())}); }

    journal::OperationId add(journal::Body body) {
        journal::Operation op;
        op.event = EventId{"lunch"};
        op.id = {DeviceId{"tablet"}, operations.size() + 1};
        op.stamp = {fromBell(-3h) + std::chrono::seconds{operations.size()}, 0};
        op.body = std::move(body);
        operations.push_back(op);
        return op.id;
    }
    [[nodiscard]] live::Day day() const { return live::fold(operations); }
    [[nodiscard]] live::Outlook at(Duration offset) const {
        const live::Day folded = day();
        const plan::Dispatch dispatch(folded.sheet->problem, folded.sheet->schedule);
        return live::lookAt(folded, dispatch, fromBell(offset));
    }

    std::vector<journal::Operation> operations;
};

inline const TaskId kTables{"tables"};
inline const TaskId kCook{"lamb/cook"};
inline const TaskId kRest{"lamb/rest"};
inline const TaskId kSlice{"lamb/slice"};

/// The timer of this name, if there is one.
inline std::optional<live::Timer> timer(const live::Outlook& outlook, const std::string& name) {
    for (const live::Timer& one : outlook.timers)
        if (one.name == name) return one;
    return std::nullopt;
}

}  // namespace samples
