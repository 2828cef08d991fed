#include <catch2/catch.hpp>

#include <rapidcheck.h>

#include <algorithm>

#include "small_day.h"

using namespace samples;
using namespace cinder::journal;

namespace {

int below(int bound) {
    return *rc::gen::inRange(0, bound);
}

TaskId anyTask() {
    const TaskId tasks[] = {kTables, kCook, kRest, kSlice, TaskId{"soup"}};
    return tasks[below(5)];
}

Body anyBody(const std::vector<Operation>& before) {
    const TaskId task = anyTask();
    const Instant at = fromBell(std::chrono::minutes{below(120) - 120});
    const auto pieces = [] {
        std::vector<std::int32_t> some;
        for (int i = below(3); i >= 0; --i)
            some.push_back(below(5));
        return some;
    };
    const ResourceId grate{"grate"};
    switch (below(23)) {
        case 0:
            return TaskStarted{task, at};
        case 1:
            return TaskFinished{task, at};
        case 2:
            return TaskSkipped{task, at};
        case 3:
            return LineTicked{task, below(3), at};
        case 4:
            return Turned{task, below(4), at};
        case 5:
            return ServeTimeMoved{at, at};
        case 6:
            return AlarmAcknowledged{"turn:lamb/cook:1", at};
        case 7:
            return TemperatureRead{task, below(90'000), at};
        case 8:
            return PiecesLaid{task, below(20'000), {{30'000 + below(9), 1 + below(3)}}, at};
        case 9:
            return PieceRead{task, below(5), below(90'000), {}, at};
        case 10:
            return PieceJudged{task, below(5), below(2) == 0, at};
        case 11:
            return PiecesPulled{task, pieces(), 1 + below(2), at};
        case 12:
            return PiecesMoved{task, pieces(), below(2) == 0, at};
        case 13:
            return HandHeld{grate, below(15'000), at};
        case 14:
            return below(2) == 0 ? Body{GrateRead{grate, below(400'000), at}}
                                 : Body{CoalAdded{grate, below(9000), at}};
        case 15:
            return Packed{"pack/chafer", below(4), static_cast<Packed::Where>(below(2)), at};
        case 16:
            return GuestsSet{below(90), below(9), at};
        case 17:
            return below(3) == 0 ? FigureSet{"supply/ice", {}, {}, at}
                                 : FigureSet{"supply/ice", 1000.0 * below(9), {}, at};
        case 18:
            return LineOrdered{{DishId{"bread"}, DishId{"slaw"}}, at};
        case 19:
            return DishLeftOut{DishId{"slaw"}, {task}, at};
        case 20:
            return CrewChanged{{{PersonId{below(2) == 0 ? "nora" : "bo"},
                                 "Bo or Nora",
                                 {SkillId{"any"}},
                                 below(2) == 0}},
                               at};
        default:
            return Undone{before[static_cast<std::size_t>(below(int(before.size())))].id};
    }
}

/// Up to forty touches on two devices whose clocks disagree and stand still now and then.
std::vector<Operation> anyDay() {
    SmallDay lunch;
    std::vector<Operation> day = lunch.operations;
    const int count = below(40);
    std::uint64_t sequences[] = {1, 0};
    for (int i = 0; i < count; ++i) {
        const int device = below(2);
        Operation op;
        op.event = EventId{"lunch"};
        op.id = {DeviceId{device == 0 ? "tablet" : "phone"}, ++sequences[device]};
        op.stamp = {fromBell(-3h) + std::chrono::seconds{below(20)},
                    static_cast<std::uint32_t>(below(3))};
        op.body = anyBody(day);
        day.push_back(std::move(op));
    }
    return day;
}

Operation last(const std::vector<Operation>& day, Body body) {
    Operation op = day.front();
    op.id = {DeviceId{"tablet"}, 1000 + day.size()};
    op.stamp = {fromBell(0min) + std::chrono::seconds{day.size()}, 0};
    op.body = std::move(body);
    return op;
}

void holds(const char* what, void (*property)()) {
    INFO(what);
    CHECK(rc::check(what, property));
}

}  // namespace

TEST_CASE("any order and any repetition of the operations tells of the same day") {
    holds("order and repetition", [] {
        const auto day = anyDay();
        auto shuffled = day;
        for (std::size_t i = shuffled.size(); i > 1; --i)
            std::swap(shuffled[i - 1], shuffled[static_cast<std::size_t>(below(int(i)))]);
        for (int i = below(10); i > 0; --i)
            shuffled.push_back(day[static_cast<std::size_t>(below(int(day.size())))]);

        RC_ASSERT(live::fold(shuffled) == live::fold(day));
    });
}

TEST_CASE("two devices that exchange what they have agree, whoever sends first") {
    holds("merge", [] {
        const auto day = anyDay();
        std::vector<Operation> tablet;
        std::vector<Operation> phone;
        for (const Operation& op : day) {
            const int heard = below(3);
            if (heard != 0) tablet.push_back(op);
            if (heard != 1) phone.push_back(op);
        }
        auto onTablet = tablet;
        onTablet.insert(onTablet.end(), phone.begin(), phone.end());
        auto onPhone = phone;
        onPhone.insert(onPhone.end(), tablet.begin(), tablet.end());

        RC_ASSERT(live::fold(onTablet) == live::fold(onPhone));
        RC_ASSERT(live::fold(onTablet) == live::fold(day));
    });
}

TEST_CASE("an undone touch counts as if it had never been, and undoing that brings it back") {
    holds("undo", [] {
        const auto before = anyDay();
        auto touched = before;
        touched.push_back(last(touched, anyBody(before)));
        auto undone = touched;
        undone.push_back(last(undone, Undone{touched.back().id}));
        auto redone = undone;
        redone.push_back(last(redone, Undone{undone.back().id}));

        RC_ASSERT(live::fold(undone) == live::fold(before));
        RC_ASSERT(live::fold(redone) == live::fold(touched));
    });
}
