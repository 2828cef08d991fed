#pragma once

/// Operations of an invented day, and a folder to keep them in.

#include <string>
#include <vector>

#include "folder.h"
#include "journal/operation.h"

namespace samples {

using namespace cinder;
using namespace cinder::journal;

inline Instant at(int second) {
    return Instant{std::chrono::seconds{1'821'000'000 + second}};
}

inline Operation operation(std::uint64_t sequence, Body body, std::string device = "tablet") {
    Operation op;
    op.event = EventId{"orchard"};
    op.id = {DeviceId{std::move(device)}, sequence};
    op.stamp = {at(static_cast<int>(sequence)), 0};
    op.person = PersonId{"nora"};
    op.body = std::move(body);
    return op;
}

/// One of every kind.
inline std::vector<Body> everyKind() {
    const TaskId lamb{"lamb/cook/1"};
    const safety::Pan stew{DishId{"stew"}, 2};
    const safety::ThermometerId probe{"probe-1"};
    return {
        EventDescribed{R"({"name":"Gr\u00fc\u00dfe, \"orchard\""})"},
        EventDrafted{R"({"name":"Half"})", "/guests/adults"},
        PlanPublished{"{}"},
        TaskStarted{lamb, at(1)},
        TaskFinished{lamb, at(2)},
        TaskSkipped{lamb, at(3)},
        DishLeftOut{DishId{"lamb"}, {lamb, TaskId{"lamb/slice"}}, at(4)},
        CrewChanged{{{PersonId{"nora"}, "Nora", {SkillId{"grill"}, SkillId{"any"}}},
                     {PersonId{"came.phone.7.1"}, "Bo, \"the tall\"", {}, false}},
                    at(5)},
        LineTicked{lamb, 4, at(5)},
        Turned{lamb, 3, at(6)},
        ServeTimeMoved{at(7), at(8)},
        AlarmAcknowledged{"turn:lamb/cook/1:3", at(9)},
        TemperatureRead{lamb, 57250, at(10)},
        RehearsalSet{{at(11), at(12), 60}},
        Undone{{DeviceId{"phone"}, 7}},
        PiecesLaid{lamb, 6500, {{35'000, 2}, {62'000, 2}}, at(13)},
        PiecesLaid{lamb, 4000, {}, at(13)},
        HandHeld{ResourceId{"grate"}, 3500, at(14)},
        GrateRead{ResourceId{"grate"}, 212'000, at(15)},
        PieceRead{lamb, 2, 41'300, {}, at(16)},
        PieceRead{lamb, 3, 39'000, 25'000, at(17)},
        PieceJudged{lamb, 2, false, at(18)},
        PiecesPulled{lamb, {1, 4}, 2, at(19)},
        PiecesMoved{lamb, {3}, true, at(20)},
        CoalAdded{ResourceId{"grate"}, 4500, at(21)},
        GuestsPassed{0, at(33)},
        GuestsPassed{40, at(34)},
        LastGuestPassed{at(35)},
        PanLevelTapped{DishId{"slaw"}, 1, 25, at(36)},
        NextPanSet{DishId{"slaw"}, 2, at(37)},
        TaskInterrupted{lamb, true, at(38)},
        TaskInterrupted{lamb, false, at(39)},
        LessonAnswered{"length/lamb/cook", true, 1'530'000, at(40)},
        safety::Fact{safety::FoodMeasured{
            stew, safety::Purpose::HoldHot, safety::inFahrenheit(135), probe, Duration{15'000},
            safety::EntryId{DeviceId{"phone"}, 3}, "mistyped", at(22)}},
        safety::Fact{safety::FoodMeasured{
            stew, safety::Purpose::Cooling, safety::inCelsius(21), probe, {}, {}, {}, at(22)}},
        safety::Fact{safety::FoodMeasured{
            stew, safety::Purpose::HoldHot, safety::inCelsius(60), probe, {}, {}, {}, at(22), 1}},
        safety::Fact{safety::ActionTaken{{DeviceId{"phone"}, 3}, safety::Action::Reheat, at(23)}},
        safety::Fact{safety::ControlLeft{stew, safety::TimeRule::ColdLong, safety::inCelsius(4.5),
                                         probe, at(24)}},
        safety::Fact{safety::ControlLeft{stew, safety::TimeRule::Hot, safety::inCelsius(60), probe,
                                         at(24), 1}},
        safety::Fact{safety::CoolingBegun{stew, safety::CoolingRoute::Ambient, at(25)}},
        safety::Fact{safety::PanDiscarded{stew, at(26)}},
        safety::Fact{safety::PanKept{stew, at(27)}},
        safety::Fact{safety::ThermometerTested{probe, safety::inFahrenheit(32.5), at(28)}},
        safety::Fact{safety::FireItemReady{safety::FireItem::OpenAir, at(29)}},
        safety::Fact{safety::FireItemSkipped{safety::FireItem::Clearance, "hedge", at(30)}},
        safety::Fact{safety::LocalRulesNamed{
            {"Orchard County",
             {{"hotHold", safety::inCelsius(60)}, {"timeControl", Duration{7'200'000}}}},
            at(31)}},
        safety::Fact{safety::RecordSigned{"Nora", "CFPM 12", at(32)}},
        FigureSet{"dish/slaw/portions", 82.5, "as last year", at(33)},
        FigureSet{"dish/slaw/portions", {}, {}, at(34)},
        GuestsSet{88, 8, at(35)},
        LineOrdered{{DishId{"slaw"}, DishId{"bread"}}, at(36)},
        LineOrdered{{}, at(36)},
        Packed{"pack/chafer", 3, Packed::Where::Out, at(37)},
        Packed{"pack/chafer", 2, Packed::Where::Home, at(38)},
        Packed{"line/slaw/1", 1, Packed::Where::Line, at(39)},
        ClockFollowed{at(40)},
        Unknown{"of-a-later-year", "{\"anything\": [1, 2]}"}};
}

/// Every word of the food-safety record that `everyKind` leaves out.
inline std::vector<Body> everyOtherWord() {
    using namespace safety;
    const Pan stew{DishId{"stew"}, 1};
    const ThermometerId probe{"probe-1"};
    const EntryId entry{DeviceId{"phone"}, 3};
    std::vector<Body> words;
    for (const Purpose purpose : {Purpose::ArriveCold, Purpose::ArriveHot, Purpose::Cook,
                                  Purpose::Reheat, Purpose::ReheatPacked, Purpose::HoldCold})
        words.emplace_back(
            Fact{FoodMeasured{stew, purpose, inCelsius(5), probe, {}, {}, {}, at(41)}});
    for (const Action action : {Action::CookOn, Action::Chill, Action::Discard})
        words.emplace_back(Fact{ActionTaken{entry, action, at(42)}});
    for (const TimeRule rule : {TimeRule::Hot, TimeRule::Cold, TimeRule::Fresh})
        words.emplace_back(Fact{ControlLeft{stew, rule, inFahrenheit(41), probe, at(43)}});
    words.emplace_back(Fact{CoolingBegun{stew, CoolingRoute::Cooked, at(44)}});
    words.emplace_back(Fact{FireItemReady{FireItem::Extinguisher, at(45)}});
    return words;
}

}  // namespace samples
