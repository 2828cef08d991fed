/// The prototype example of the project chapter of Hillier & Lieberman, "Introduction to
/// Operations Research"; activities, three-point estimates and results from memory.

#include <catch2/catch.hpp>

#include "orchard.h"
#include "pert_example.h"
#include "plan/dispatch.h"

using namespace cinder;
using namespace cinder::plan;
using namespace cinder::plan::test;

TEST_CASE("the forward pass finds the 44 weeks of the textbook's mean critical path") {
    const PertExample example;
    const Dispatch dispatch(example.problem, example.schedule);
    const auto project =
        dispatch.project({}, Duration{0}, Duration{example.week * 44}, example.means);
    CHECK(dispatch.readyAt(project) == Duration{example.week * 44});

    std::string critical;
    for (std::size_t i = 0; i < project.size(); ++i)
        if (project[i].isCritical) critical += example.problem.tasks[i].id.text();
    CHECK(critical == "ABCEFJLN");

    // Slacks of the textbook's table, in weeks: D 4, G 4, H 4, I 2, K 1, M 4.
    const auto slackOf = [&](char name) {
        return project[static_cast<std::size_t>(name - 'A')].slack;
    };
    CHECK(slackOf('D') == Duration{example.week * 4});
    CHECK(slackOf('G') == Duration{example.week * 4});
    CHECK(slackOf('H') == Duration{example.week * 4});
    CHECK(slackOf('I') == Duration{example.week * 2});
    CHECK(slackOf('K') == Duration{example.week * 1});
    CHECK(slackOf('M') == Duration{example.week * 4});
}
