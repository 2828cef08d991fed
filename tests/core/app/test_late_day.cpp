/// A demo day that has got late, and what would bring it nearer to its bell.

#include <catch2/catch.hpp>

#include "demo_day.h"
#include "event/json.h"
#include "live/ways_out.h"
#include "plan/check.h"
#include "plan/replan.h"

using namespace cinder;
using namespace std::chrono_literals;
using live::WayOut;
using samples::Device;

namespace {

/// The day with that change in it.
live::Remaining changed(live::Remaining day, const WayOut& way) {
    plan::Problem& problem = day.sheet.problem;
    if (way.kind == WayOut::Kind::OnePersonMore)
        problem.crew.push_back({PersonId("one more"), "", way.skills});
    for (std::size_t i = 0; way.dish && i < problem.tasks.size(); ++i)
        if (problem.tasks[i].dish == way.dish) day.actuals[i].isSkipped = true;
    return day;
}

}  // namespace

TEST_CASE("every way out of a late demo day leads as far as it says") {
    const char* const name =
        GENERATE("orchard-harvest-lunch.json", "pruning-day-supper.json", "last-apple-feast.json");
    const auto event = event::parse(samples::demo(name)).value();
    Device device(event.serve.at - 96h);
    REQUIRE(device.session->importEvent(samples::demo(name)));
    const Instant planned = device.session->look()->arrival;
    device.clock.advance(planned + 40min - device.clock.wall());
    REQUIRE(device.session->look()->lateness > 5min);
    const auto planning = device.session->askToReplan().value();
    const auto& day = std::get<live::Remaining>(planning.wanted);

    const auto ways = live::waysOut(day);

    INFO(name << ", " << ways.size() << " ways out");
    REQUIRE_FALSE(ways.empty());
    for (std::size_t k = 0; k < ways.size(); ++k) {
        INFO("way " << k << ", " << ways[k].late / 1min << " min late");
        CHECK(ways[k].late < live::projectedDelay(day));
        CHECK((k == 0 || ways[k - 1].late <= ways[k].late));
        const live::Remaining other = changed(day, ways[k]);
        const Duration bell = day.serve + ways[k].late - day.sheet.bell;
        const auto found =
            plan::replan(other.sheet.problem, other.sheet.schedule,
                         {other.actuals, day.now - day.sheet.bell, bell, day.durations});
        REQUIRE(found);
        const plan::Problem& judged = found->problem;
        for (const plan::Violation& broken : plan::check(judged, found->plan.schedule))
            FAIL(plan::describe(judged, broken));
    }
}

TEST_CASE("a device whose clock is many years wrong opens a demo day all the same") {
    Device device(parseRfc3339("2027-09-18T10:00:00-04:00").value().at);
    REQUIRE(device.session->importEvent(samples::orchard()));
    constexpr auto kYears = std::chrono::hours(24 * 365 * 60);
    const Duration jump = GENERATE_COPY(Duration(kYears), -Duration(kYears));
    device.clock.advance(jump);
    device.restart();
    REQUIRE(device.session->open(EventId{"orchard-harvest-lunch"}));
    CHECK_FALSE(device.session->look()->tasks.empty());
    REQUIRE(device.session->start(TaskId("unload")));
    CHECK_FALSE(device.session->look()->food.pans.empty());
}
