#include <catch2/catch.hpp>

#include <rapidcheck.h>

#include <algorithm>
#include <fstream>
#include <set>
#include <type_traits>
#include <utility>

#include "event/json.h"
#include "small_day.h"

using namespace samples;
using namespace cinder::journal;

namespace {

/// Evenly, also in the small cases that the library begins with.
int below(int bound) {
    return *rc::gen::resize(rc::kNominalSize, rc::gen::inRange(0, bound));
}

TaskId anyTask() {
    // One in ten is of another plan.
    if (below(10) == 0) return TaskId{"soup"};
    const TaskId tasks[] = {kTables, kCook, kRest, kSlice};
    return tasks[below(4)];
}

const std::string& document() {
    static const std::string text = [] {
        std::ifstream file(CINDER_SOURCE "/tests/fuzz/corpus/event/good/every-member.json");
        return std::string{std::istreambuf_iterator<char>(file), {}};
    }();
    return text;
}

const event::Event& described() {
    static const event::Event event = event::parse(document()).value();
    return event;
}

DishId anyDish() {
    const auto& menu = described().menu;
    return menu[static_cast<std::size_t>(below(int(menu.size())))].id;
}

Instant anyInstant() {
    return fromBell(std::chrono::minutes{below(120) - 120});
}

/// The event described again: another bell, other guests.
std::string otherDocument() {
    event::Event event = described();
    event.serve.at += std::chrono::minutes{below(30)};
    event.guests.adults += below(20);
    return event::write(event);
}

std::vector<std::int32_t> anyPieces() {
    std::vector<std::int32_t> some;
    for (int i = below(3); i >= 0; --i)
        some.push_back(1 + below(5));
    return some;
}

Body anyFact(const std::vector<Operation>& before) {
    using namespace safety;
    const Instant at = anyInstant();
    const Pan pan{anyDish(), below(3)};
    const ThermometerId probe{"probe"};
    const auto& named = before[static_cast<std::size_t>(below(int(before.size())))].id;
    const EntryId entry{named.device, named.sequence};
    const Reading reading = inCelsius(below(90));
    switch (below(11)) {
        case 0:
            return Fact{
                FoodMeasured{pan, static_cast<Purpose>(below(8)), reading, probe, {}, {}, {}, at}};
        case 1:
            return Fact{ActionTaken{entry, static_cast<Action>(below(4)), at}};
        case 2:
            return Fact{ControlLeft{pan, static_cast<TimeRule>(below(4)), reading, probe, at}};
        case 3:
            return Fact{CoolingBegun{pan, static_cast<CoolingRoute>(below(2)), at}};
        case 4:
            return Fact{PanDiscarded{pan, at}};
        case 5:
            return Fact{PanKept{pan, at}};
        case 6:
            return Fact{ThermometerTested{probe, reading, at}};
        case 7:
            return Fact{FireItemReady{static_cast<FireItem>(below(3)), at}};
        case 8:
            return Fact{FireItemSkipped{static_cast<FireItem>(below(3)), "hedge", at}};
        case 9:
            return Fact{LocalRulesNamed{{"County", {{"hotHold", inCelsius(60 + below(9))}}}, at}};
        default:
            return Fact{RecordSigned{"Nora", "", at}};
    }
}

/// One touch of the alternative with this place in `Body`.
template <std::size_t kPlace>
Body drawn(const std::vector<Operation>& before) {
    using Kind = std::variant_alternative_t<kPlace, Body>;
    const TaskId task = anyTask();
    const Instant at = anyInstant();
    const ResourceId grate{"grate"};
    if constexpr (std::is_same_v<Kind, EventDescribed>)
        return EventDescribed{otherDocument()};
    else if constexpr (std::is_same_v<Kind, EventDrafted>)
        return EventDrafted{otherDocument(), "/serve"};
    else if constexpr (std::is_same_v<Kind, PlanPublished>)
        return PlanPublished{live::writeRunSheet(smallSheet())};
    else if constexpr (std::is_same_v<Kind, TaskStarted> || std::is_same_v<Kind, TaskFinished> ||
                       std::is_same_v<Kind, TaskSkipped>)
        return Kind{task, at};
    else if constexpr (std::is_same_v<Kind, LineTicked>)
        return LineTicked{kTables, below(2), at};
    else if constexpr (std::is_same_v<Kind, Turned>)
        return Turned{kCook, below(4), at};
    else if constexpr (std::is_same_v<Kind, ServeTimeMoved>)
        return ServeTimeMoved{at, at};
    else if constexpr (std::is_same_v<Kind, AlarmAcknowledged>)
        return AlarmAcknowledged{"turn:lamb/cook:1", at};
    else if constexpr (std::is_same_v<Kind, TemperatureRead>)
        return TemperatureRead{task, below(90'000), at};
    else if constexpr (std::is_same_v<Kind, RehearsalSet>)
        return RehearsalSet{{at, at, below(100)}};
    else if constexpr (std::is_same_v<Kind, Undone>)
        return Undone{before[static_cast<std::size_t>(below(int(before.size())))].id};
    else if constexpr (std::is_same_v<Kind, PiecesLaid>)
        return PiecesLaid{task, below(20'000), {{30'000 + below(9), 1 + below(3)}}, at};
    else if constexpr (std::is_same_v<Kind, HandHeld>)
        return HandHeld{grate, below(15'000), at};
    else if constexpr (std::is_same_v<Kind, GrateRead>)
        return GrateRead{grate, below(400'000), at};
    else if constexpr (std::is_same_v<Kind, PieceRead>)
        return PieceRead{task, below(5), below(90'000), {}, at};
    else if constexpr (std::is_same_v<Kind, PieceJudged>)
        return PieceJudged{task, below(5), below(2) == 0, at};
    else if constexpr (std::is_same_v<Kind, PiecesPulled>)
        return PiecesPulled{task, anyPieces(), 1 + below(2), at};
    else if constexpr (std::is_same_v<Kind, PiecesMoved>)
        return PiecesMoved{task, anyPieces(), below(2) == 0, at};
    else if constexpr (std::is_same_v<Kind, CoalAdded>)
        return CoalAdded{grate, below(9000), at};
    else if constexpr (std::is_same_v<Kind, safety::Fact>)
        return anyFact(before);
    else if constexpr (std::is_same_v<Kind, FigureSet>)
        return below(3) == 0 ? FigureSet{"supply/ice", {}, {}, at}
                             : FigureSet{"supply/ice", 1000.0 * below(9), {}, at};
    else if constexpr (std::is_same_v<Kind, GuestsSet>)
        return GuestsSet{40 + below(90), below(9), at};
    else if constexpr (std::is_same_v<Kind, LineOrdered>)
        return LineOrdered{{anyDish(), anyDish()}, at};
    else if constexpr (std::is_same_v<Kind, Packed>)
        return Packed{below(2) == 0 ? "pack/chafer" : "line/" + anyDish().text() + "/1", below(4),
                      static_cast<Packed::Where>(below(3)), at};
    else if constexpr (std::is_same_v<Kind, GuestsPassed>)
        return GuestsPassed{below(90), at};
    else if constexpr (std::is_same_v<Kind, LastGuestPassed>)
        return LastGuestPassed{at};
    else if constexpr (std::is_same_v<Kind, PanLevelTapped>)
        return PanLevelTapped{anyDish(), 1 + below(2), below(101), at};
    else if constexpr (std::is_same_v<Kind, NextPanSet>)
        return NextPanSet{anyDish(), 2 + below(2), at};
    else if constexpr (std::is_same_v<Kind, TaskInterrupted>)
        return TaskInterrupted{task, below(2) == 0, at};
    else if constexpr (std::is_same_v<Kind, LessonAnswered>)
        return LessonAnswered{"length/lamb/cook", below(2) == 0, below(90'000), at};
    else if constexpr (std::is_same_v<Kind, DishLeftOut>)
        return DishLeftOut{anyDish(), {task}, at};
    else if constexpr (std::is_same_v<Kind, CrewChanged>)
        return CrewChanged{{{PersonId{below(2) == 0 ? "nora" : "bo"},
                             "Bo or Nora",
                             {SkillId{"any"}},
                             below(2) == 0}},
                           at};
    else if constexpr (std::is_same_v<Kind, ClockFollowed>)
        return ClockFollowed{at};
    else
        return Unknown{"of-a-later-year", "{}"};  // a new kind that is not drawn is found below
}

constexpr std::size_t kUndo = 11;
static_assert(std::is_same_v<std::variant_alternative_t<kUndo, Body>, Undone>);

template <std::size_t... kPlaces>
Body anyBody(const std::vector<Operation>& before, std::index_sequence<kPlaces...>) {
    using Drawer = Body (*)(const std::vector<Operation>&);
    constexpr Drawer kDrawers[] = {drawn<kPlaces>...};
    return kDrawers[below(sizeof...(kPlaces))](before);
}

Body anyBody(const std::vector<Operation>& before) {
    // Undos meet each other only when there are some, and the food record is eleven kinds in one.
    switch (below(8)) {
        case 0:
            return drawn<kUndo>(before);
        case 1:
        case 2:
            return anyFact(before);
        default:
            break;
    }
    return anyBody(before, std::make_index_sequence<std::variant_size_v<Body>>{});
}

/// What was drawn in all, so that the properties are known to have been of something.
struct Seen {
    std::set<std::size_t> kinds;
    std::set<std::size_t> facts;
    std::size_t operations = 0;
    std::size_t setAside = 0;
};

/// A plan, the event it is of, and up to forty touches on two devices whose clocks disagree and
/// stand still now and then.
std::vector<Operation> anyDay() {
    SmallDay lunch;
    lunch.add(EventDescribed{document()});
    std::vector<Operation> day = lunch.operations;
    const int count = below(40);
    std::uint64_t sequences[] = {day.size(), 0};
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
        const OperationId touch = touched.back().id;
        auto undone = touched;
        undone.push_back(last(undone, Undone{touch}));
        auto redone = undone;
        redone.push_back(last(redone, Undone{undone.back().id}));

        // An entry of the food record stays to be seen, marked as taken back.
        auto day = live::fold(undone);
        std::erase_if(day.record, [&](const safety::Entry& entry) {
            return entry.isTakenBack && entry.id == safety::EntryId{touch.device, touch.sequence};
        });
        RC_ASSERT(day == live::fold(before));
        RC_ASSERT(live::fold(redone) == live::fold(touched));
    });
}

TEST_CASE(
    "the days of these properties are of every kind of touch, and few of them are set aside") {
    static Seen seen;
    holds("what is drawn", [] {
        const auto day = anyDay();
        for (const Operation& op : day) {
            seen.kinds.insert(op.body.index());
            if (const auto* fact = std::get_if<safety::Fact>(&op.body))
                seen.facts.insert(fact->index());
        }
        const live::Day folded = live::fold(day);
        seen.operations += day.size();
        seen.setAside += folded.setAside.size();
    });
    CHECK(seen.kinds.size() == std::variant_size_v<Body>);
    CHECK(seen.facts.size() == std::variant_size_v<safety::Fact>);
    INFO(seen.setAside << " of " << seen.operations << " set aside");
    CHECK(seen.setAside * 6 < seen.operations);
}
