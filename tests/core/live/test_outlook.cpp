#include <catch2/catch.hpp>

#include "live/remaining.h"
#include "small_day.h"

using namespace samples;
using namespace cinder::journal;
using live::TaskState;
using live::TimerKind;

namespace {

constexpr std::size_t kTablesAt = 0;
constexpr std::size_t kCookAt = 1;
constexpr std::size_t kRestAt = 2;
constexpr std::size_t kSliceAt = 3;

}  // namespace

TEST_CASE("turns are due from the actual start, then from the last turn, not from the plan") {
    SmallDay lunch;
    lunch.add(TaskStarted{kCook, fromBell(-47min)});
    auto first = timer(lunch.at(-46min), "turn:lamb/cook:1");
    REQUIRE(first);
    CHECK(first->due == fromBell(-41min));
    CHECK(first->count == 2);

    lunch.add(Turned{kCook, 1, fromBell(-39min)});
    CHECK_FALSE(timer(lunch.at(-38min), "turn:lamb/cook:1"));
    CHECK(timer(lunch.at(-38min), "turn:lamb/cook:2")->due == fromBell(-33min));
}

TEST_CASE("a batch is to be pulled when its time on the grate is over, whatever the clock says") {
    SmallDay lunch;
    lunch.add(TaskStarted{kCook, fromBell(-47min)});

    for (const Duration now : {-46min, -30min, -10min, 60min})
        CHECK(timer(lunch.at(now), "pull:lamb/cook")->due == fromBell(-29min));
    CHECK(lunch.at(-30min).tasks[kCookAt].state == TaskState::Running);
    CHECK(lunch.at(-28min).tasks[kCookAt].state == TaskState::Over);
}

TEST_CASE("a rest starts when the meat comes off, ends by itself and calls until it is sliced") {
    SmallDay lunch;
    lunch.add(TaskStarted{kCook, fromBell(-50min)});
    lunch.add(TaskFinished{kCook, fromBell(-28min)});

    CHECK(lunch.at(-20min).tasks[kRestAt].state == TaskState::Running);
    CHECK(lunch.at(-20min).tasks[kRestAt].start == fromBell(-28min));
    CHECK(lunch.at(-12min).tasks[kRestAt].state == TaskState::Done);
    CHECK(timer(lunch.at(-12min), "rest:lamb/rest")->due == fromBell(-13min));

    lunch.add(TaskStarted{kSlice, fromBell(-12min)});
    CHECK_FALSE(timer(lunch.at(-11min), "rest:lamb/rest"));
}

TEST_CASE("whoever slices early has ended the rest") {
    SmallDay lunch;
    lunch.add(TaskFinished{kCook, fromBell(-30min)});
    lunch.add(TaskStarted{kSlice, fromBell(-20min)});

    CHECK(lunch.at(-19min).tasks[kRestAt].finish == fromBell(-20min));
}

TEST_CASE("work on food calls at its moment, set-up only when its room is nearly used") {
    SmallDay lunch;
    const auto early = lunch.at(-60min);

    CHECK(timer(early, "start:lamb/cook")->due == fromBell(-50min));
    // Ten minutes of tables must be begun by T-10; the call comes three minutes before.
    CHECK(timer(early, "start:tables")->due == fromBell(-13min));
    CHECK_FALSE(timer(early, "start:lamb/rest"));
    for (const live::Timer& one : lunch.at(-55min).timers)
        CHECK_FALSE(one.isRinging(fromBell(-55min)));
}

TEST_CASE("a call that nobody answers stays due at the same instant and grows louder") {
    SmallDay lunch;
    const auto call = timer(lunch.at(-45min), "start:lamb/cook");
    REQUIRE(call);

    CHECK(live::taskOfTimer(call->name) == call->task);
    CHECK(call->due == fromBell(-50min));
    CHECK(live::loudness(*call, fromBell(-50min) - 1s) == 0);
    CHECK(live::loudness(*call, fromBell(-50min)) == 1);
    CHECK(live::loudness(*call, fromBell(-50min) + 31s) == 3);
    CHECK(live::loudness(*call, fromBell(-45min)) == 5);

    lunch.add(AlarmAcknowledged{"start:lamb/cook", fromBell(-45min)});
    const auto silent = timer(lunch.at(-44min), "start:lamb/cook");
    CHECK(silent->acknowledged == fromBell(-45min));
    CHECK(live::loudness(*silent, fromBell(-44min)) == 0);
}

TEST_CASE("no task asks for a temperature that only the food record can take") {
    SmallDay lunch;
    lunch.add(TaskStarted{kCook, fromBell(-50min)});
    lunch.add(TemperatureRead{kCook, 41'000, fromBell(-40min)});  // as an old journal has it
    CHECK_FALSE(timer(lunch.at(-39min), "check:lamb/cook:1"));
    CHECK_FALSE(timer(lunch.at(-39min), "check:lamb/cook:2"));
}

TEST_CASE("what is late pushes what follows, and the bell shows by how much") {
    SmallDay lunch;
    CHECK(lunch.at(-60min).lateness == -5min);

    lunch.add(TaskStarted{kCook, fromBell(-40min)});
    const auto late = lunch.at(-39min);
    CHECK(late.tasks[kSliceAt].start == fromBell(-5min));
    CHECK(late.lateness == 5min);
    REQUIRE(late.weakest);
    CHECK(late.tasks[std::size_t(*late.weakest)].slack == -5min);
    CHECK(late.tasks[kSliceAt].isLate);
}

TEST_CASE("moving the bell moves what leans on it and leaves facts where they are") {
    SmallDay lunch;
    lunch.add(TaskStarted{kTables, fromBell(-58min)});
    lunch.add(ServeTimeMoved{fromBell(30min), fromBell(-57min)});
    const auto moved = lunch.at(-56min);

    CHECK(moved.tasks[kCookAt].start == fromBell(-20min));
    CHECK(moved.tasks[kCookAt].plannedStart == fromBell(-20min));
    CHECK(moved.tasks[kTablesAt].start == fromBell(-58min));
    CHECK(moved.tasks[kTablesAt].plannedStart == fromBell(-60min));
    CHECK(moved.lateness == -5min);
}

TEST_CASE("meat that will lie longer than it may is reported with the excess") {
    SmallDay lunch;
    lunch.add(TaskFinished{kCook, fromBell(-60min)});
    const auto seen = lunch.at(-15min);

    // The rest ended at T-45 and slicing may begin at T-25 at the latest.
    REQUIRE(seen.overdue.size() == 1);
    CHECK(seen.overdue[0].task == plan::TaskIndex(kRestAt));
    CHECK(seen.overdue[0].by == 10min);
}

TEST_CASE("a skipped task asks nothing of anybody") {
    SmallDay lunch;
    lunch.add(TaskSkipped{kCook, fromBell(-70min)});
    const auto seen = lunch.at(-30min);

    CHECK(seen.tasks[kCookAt].state == TaskState::Skipped);
    CHECK(seen.tasks[kRestAt].state == TaskState::Skipped);
    CHECK_FALSE(timer(seen, "rest:lamb/rest"));
}

TEST_CASE("a turn comes before work in hand, and each person sees what comes next") {
    SmallDay lunch;
    lunch.add(TaskStarted{kCook, fromBell(-50min)});
    const auto putOn = lunch.at(-49min);
    CHECK(putOn.people[0].now == plan::TaskIndex(kCookAt));
    CHECK(putOn.people[0].nextAt == fromBell(-44min));
    CHECK(putOn.people[1].now == plan::TaskIndex(kTablesAt));

    const auto between = lunch.at(-46min);
    CHECK_FALSE(between.people[0].now);
    CHECK(between.people[0].next == plan::TaskIndex(kCookAt));
    CHECK(lunch.at(-43min).people[0].now == plan::TaskIndex(kCookAt));
}

TEST_CASE("the critical chain and the chance follow from what is still to be done") {
    SmallDay lunch;
    const auto names = [&](const live::Outlook& outlook) {
        std::string text;
        for (const plan::TaskIndex task : outlook.criticalChain)
            text += std::to_string(task) + " ";
        return text;
    };
    CHECK(names(lunch.at(-60min)) == "1 2 3 ");
    const auto chance = [&](Duration now) {
        const live::Day day = lunch.day();
        const plan::Dispatch dispatch(day.sheet->problem, day.sheet->schedule);
        return live::chanceAt(day, dispatch, fromBell(now));
    };
    CHECK(chance(-60min).onTime == 1.0);
    CHECK(chance(-60min).ready80 == fromBell(-5min));
    CHECK(chance(-60min).criticality[kCookAt] == 1.0);
    CHECK(chance(-40min).onTime == 0.0);  // 45 minutes of cooking, rest and slicing are left
    lunch.add(TaskStarted{kCook, fromBell(-50min)});
    lunch.add(TaskFinished{kCook, fromBell(-30min)});
    CHECK(chance(-30min).onTime == 1.0);
    CHECK(names(lunch.at(-29min)) == "2 3 ");
}

TEST_CASE("a call that was silenced rings again when its moment is put off") {
    SmallDay lunch;
    const std::string name = "start:lamb/cook";
    lunch.add(AlarmAcknowledged{name, fromBell(-45min)});
    CHECK(timer(lunch.at(-44min), name)->acknowledged == fromBell(-45min));

    lunch.add(ServeTimeMoved{fromBell(30min), fromBell(-40min)});
    const auto again = timer(lunch.at(-19min), name);
    CHECK(again->due == fromBell(-20min));
    CHECK(again->isRinging(fromBell(-19min)));
    lunch.add(AlarmAcknowledged{name, fromBell(-18min)});
    CHECK_FALSE(timer(lunch.at(-17min), name)->isRinging(fromBell(-17min)));
}

TEST_CASE("a step that is left out releases nothing that the step before it still holds") {
    SmallDay lunch;
    lunch.add(TaskStarted{kCook, fromBell(-50min)});
    lunch.add(TaskSkipped{kRest, fromBell(-40min)});
    for (const Duration now : {-39min, -14min}) {
        CHECK(lunch.at(now).tasks[kSliceAt].state == TaskState::Waiting);
        const auto call = timer(lunch.at(now), "start:lamb/slice");
        CHECK_FALSE((call && call->isRinging(fromBell(now))));
    }
    lunch.add(TaskFinished{kCook, fromBell(-12min)});
    CHECK(lunch.at(-11min).tasks[kSliceAt].state == TaskState::Ready);
}

TEST_CASE("what runs over its time should have been over at a moment that stands still") {
    SmallDay lunch;
    lunch.add(TaskStarted{kTables, fromBell(-60min)});
    for (const Duration now : {-55min, -45min, -40min})
        CHECK(lunch.at(now).tasks[kTablesAt].expectedFinish == fromBell(-50min));
    lunch.add(TaskFinished{kTables, fromBell(-39min)});
    CHECK(lunch.at(-38min).tasks[kTablesAt].expectedFinish == fromBell(-39min));
}

TEST_CASE("whoever is done sooner is free sooner, after a new plan too") {
    live::RunSheet sheet = smallSheet();
    plan::Task signs = task("signs", plan::TaskKind::SetUp, 10);
    addHands(signs, 0, 10, plan::HandsOn::Act::Work);
    sheet.problem.tasks.push_back(signs);
    sheet.schedule.tasks.push_back(planned(signs, -50, 1));  // Ida, after the tables
    SmallDay lunch;
    lunch.add(PlanPublished{live::writeRunSheet(sheet)});
    lunch.add(TaskStarted{kTables, fromBell(-60min)});
    lunch.add(TaskFinished{kTables, fromBell(-58min)});

    const auto rest = live::planRest(live::remainingAt(lunch.day(), fromBell(-57min)));
    REQUIRE(rest);
    lunch.add(PlanPublished{live::writeRunSheet(*rest)});

    CHECK(lunch.at(-57min).tasks.back().start == fromBell(-57min));
}
