/// Every sheet that a day publishes, before the judge: what is still to come breaks no rule.

#include <catch2/catch.hpp>

#include <algorithm>

#include "demo_day.h"
#include "event/json.h"
#include "live/ways_out.h"
#include "plan/check.h"

using namespace cinder;
using namespace std::chrono_literals;
using live::WayOut;
using samples::Device;

namespace {

live::Remaining restOf(const app::Session& session) {
    return std::get<live::Remaining>(session.askToReplan().value().wanted);
}

/// What is left out holds up nothing and nobody.
void forget(std::size_t i, plan::Problem& problem, plan::Schedule& schedule) {
    problem.tasks[i].uses.clear();
    problem.tasks[i].hands.clear();
    problem.tasks[i].shortestPiece.reset();
    schedule.tasks[i].pieces.clear();
    schedule.tasks[i].finish = schedule.tasks[i].start + problem.tasks[i].duration.usual;
    const auto index = static_cast<plan::TaskIndex>(i);
    std::erase_if(problem.links,
                  [&](const plan::Link& link) { return link.from == index || link.to == index; });
}

/// What waits for something that has happened may have waited too long before anybody planned
/// again.
bool hasWaitedTooLong(const plan::Problem& problem, const plan::Schedule& schedule,
                      const plan::Violation& broken, const std::vector<bool>& isFixed) {
    if (broken.rule != plan::Rule::Lag || !isFixed[static_cast<std::size_t>(broken.task)])
        return false;
    const auto moment = [&](plan::TaskIndex i, plan::End end) {
        const plan::PlannedTask& planned = schedule.tasks[static_cast<std::size_t>(i)];
        return end == plan::End::Start ? planned.start : planned.finish;
    };
    return std::any_of(problem.links.begin(), problem.links.end(), [&](const plan::Link& link) {
        return link.from == broken.task && link.to == broken.other && link.maxLag &&
               moment(link.to, link.toEnd) - moment(link.from, link.fromEnd) > *link.maxLag;
    });
}

void judge(const app::Session& session) {
    const live::Remaining day = restOf(session);
    plan::Problem problem = session.sheet()->problem;
    plan::Schedule schedule = session.sheet()->schedule;
    problem.arrival.reset();  // what has begun may have done so before it
    std::vector<bool> isFixed(problem.tasks.size(), false);
    std::size_t toCome = 0;
    for (std::size_t i = 0; i < problem.tasks.size(); ++i) {
        isFixed[i] = day.actuals[i].start || day.actuals[i].finish || day.actuals[i].isSkipped;
        toCome += isFixed[i] ? 0 : 1;
        if (day.actuals[i].isSkipped) forget(i, problem, schedule);
    }
    CHECK(toCome > 5);
    for (const plan::Violation& broken : plan::check(problem, schedule, isFixed))
        if (!hasWaitedTooLong(problem, schedule, broken, isFixed))
            FAIL_CHECK(plan::describe(problem, broken));
}

}  // namespace

TEST_CASE("every plan of a late demo day stands before the judge") {
    const char* const name =
        GENERATE("orchard-harvest-lunch.json", "pruning-day-supper.json", "last-apple-feast.json");
    INFO(name);
    Device device(event::parse(samples::demo(name)).value().serve.at - 96h);
    REQUIRE(device.session->importEvent(samples::demo(name)));
    app::Session& session = *device.session;
    judge(session);
    // The first hour and a half as planned; then nobody does anything for a while.
    const bool isUnderWay = GENERATE(false, true);
    INFO((isUnderWay ? "under way" : "not begun"));
    device.clock.advance(session.look()->arrival - device.clock.wall());
    app::RehearsalCrew crew(session);
    const Instant until = device.clock.wall() + 90min;
    while (isUnderWay && device.clock.wall() < until) {
        REQUIRE(crew.act());
        device.clock.advance(10s);
    }
    device.clock.advance(isUnderWay ? 5min : 20min);

    REQUIRE(session.replan());
    judge(session);
    const auto ways = live::waysOut(restOf(session));
    const auto way = std::find_if(ways.begin(), ways.end(), [](const WayOut& one) {
        return one.kind == WayOut::Kind::DropDish;
    });
    if (way != ways.end()) {
        REQUIRE(session.leaveOut(*way->dish));
        judge(session);
        const auto out = session.look();
        const auto skipped =
            std::find_if(out->tasks.begin(), out->tasks.end(),
                         [](const auto& card) { return card.state == app::TaskState::Skipped; });
        REQUIRE(skipped != out->tasks.end());
        REQUIRE(session.bringBack(skipped->id));
        judge(session);
    }
    app::CrewMember newcomer{{}, "+1", {}};
    for (const plan::Skill& skill : session.sheet()->problem.skills)
        newcomer.skills.push_back(skill.id);
    REQUIRE(session.changeCrew({newcomer}));
    judge(session);
}
