#include "orchard.h"

namespace cinder::plan::test {

namespace {

ThreePoint exactly(HalfMinutes length) {
    return {length, length, length};
}

PlannedTask planned(int startMinute, int finishMinute, std::vector<Piece> pieces = {}) {
    return {minutes(startMinute), minutes(finishMinute), std::move(pieces)};
}

Piece piece(int startMinute, int length, PersonIndex person) {
    return {minutes(startMinute), minutes(length), {person}};
}

}  // namespace

Task standing(const std::string& id, HalfMinutes length) {
    Task task;
    task.id = TaskId(id);
    task.name = LocalText(id);
    task.duration = exactly(length);
    return task;
}

Task handsOn(const std::string& id, HalfMinutes length, SkillIndex skill) {
    Task task = standing(id, length);
    task.hands.push_back({HalfMinutes{0}, length, skill, 1, HandsOn::Act::Work});
    return task;
}

Task tended(const std::string& id, HalfMinutes length, HalfMinutes interval, SkillIndex skill) {
    Task task = standing(id, length);
    const HalfMinutes touch = minutes(1);
    task.hands.push_back({HalfMinutes{0}, touch, skill, 1, HandsOn::Act::PutOn});
    for (HalfMinutes at = interval; at + touch + touch <= length; at += interval)
        task.hands.push_back({at, touch, skill, 1, HandsOn::Act::Turn});
    task.hands.push_back({length - touch, touch, skill, 1, HandsOn::Act::TakeOff});
    return task;
}

Link after(TaskIndex from, TaskIndex to, HalfMinutes minLag) {
    return {from, to, End::Finish, End::Start, minLag, std::nullopt};
}

Problem emptyKitchen(int people) {
    Problem problem;
    problem.stations.push_back({StationId("ground"), LocalText("Ground")});
    problem.walk = {{HalfMinutes{0}}};
    problem.skills.push_back({SkillId("any"), LocalText("Any")});
    for (int p = 0; p < people; ++p)
        problem.crew.push_back({PersonId(std::to_string(p)), std::to_string(p), {0}});
    return problem;
}

Problem smallLunch() {
    Problem problem = emptyKitchen(2);
    problem.crew[0].name = "Ines";
    problem.crew[1].name = "Tom";
    problem.stations.push_back({StationId("table"), LocalText("Table")});
    problem.walk = {{minutes(0), minutes(2)}, {minutes(2), minutes(0)}};
    problem.skills.push_back({SkillId("fire"), LocalText("Fire")});
    problem.crew[0].skills = {0, 1};
    problem.resources.push_back({ResourceId("grate"), LocalText("Grate"), 10, {}});

    problem.tasks = {handsOn("fire", minutes(10), 1), tended("lamb", minutes(20), minutes(5), 1),
                     standing("rest", minutes(15)),   handsOn("slice", minutes(10), 1),
                     handsOn("lay", minutes(20), 0),  standing("serve", minutes(15))};
    problem.tasks[1].uses = {{0, 8}};
    problem.tasks[3].latestFinish = FromBell{0};
    problem.tasks[3].lean = Lean::Late;
    problem.tasks[4].station = 1;
    problem.tasks[4].shortestPiece = minutes(4);
    problem.tasks[4].latestFinish = FromBell{0};
    problem.tasks[5].earliestStart = FromBell{0};
    problem.links = {after(0, 1), after(1, 2), after(2, 3), after(3, 5), after(4, 5)};
    problem.links[2].maxLag = minutes(5);
    problem.links[3].maxLag = minutes(40);
    return problem;
}

Schedule smallLunchPlan() {
    Schedule schedule;
    schedule.tasks = {
        planned(-60, -50, {piece(-60, 10, 0)}),
        planned(-50, -30,
                {piece(-50, 1, 0), piece(-45, 1, 0), piece(-40, 1, 0), piece(-35, 1, 0),
                 piece(-31, 1, 0)}),
        planned(-30, -15),
        planned(-15, -5, {piece(-15, 10, 0)}),
        planned(-40, -10, {piece(-40, 8, 1), piece(-22, 12, 1)}),
        planned(0, 15),
    };
    return schedule;
}

}  // namespace cinder::plan::test
