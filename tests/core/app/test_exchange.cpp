/// What other devices of the crew noted, in the session of this one.

#include <catch2/catch.hpp>

#include "demo_day.h"
#include "event/json.h"

using namespace cinder;
using namespace std::chrono_literals;
using samples::Device;

namespace {

Instant morning() {
    return event::parse(samples::orchard()).value().serve.at - 6h;
}

/// What `to` lacks of `from`, as an exchange hands it over.
std::vector<journal::Entry> lacking(const Device& from, const Device& to) {
    std::vector<journal::Entry> all;
    const auto theirs = from.store->heads().value();
    for (const journal::ChainHead& head : theirs) {
        journal::OperationId last{head.last.device, 0};
        const auto ours = to.store->heads(head.event).value();
        for (const journal::ChainHead& here : ours)
            if (here.last.device == last.device) last = here.last;
        const auto chain = from.store->entriesAfter(head.event, last, std::string::npos).value();
        all.insert(all.end(), chain.begin(), chain.end());
    }
    return all;
}

void handOver(const Device& from, Device& to) {
    const auto entries = lacking(from, to);
    REQUIRE(to.store->take(entries));
    REQUIRE(to.session->takeNote(entries));
}

/// The lead's tablet and the assistant's phone, both on the orchard lunch.
struct Two {
    Two() {
        event = tablet.session->importEvent(samples::orchard()).value();
        handOver(tablet, phone);
        REQUIRE(phone.session->open(event));
    }
    void pass(Duration time) {
        tablet.clock.advance(time);
        phone.clock.advance(time);
    }
    Device tablet{morning()};
    Device phone{morning()};
    EventId event;
};

/// The first task with a checklist that has not been begun.
app::TaskCard listed(const Device& device) {
    const auto& tasks = device.session->look()->tasks;
    const auto found = std::find_if(tasks.begin(), tasks.end(), [](const app::TaskCard& card) {
        return card.checklist.size() > 2 && card.state != app::TaskState::Done;
    });
    REQUIRE(found != tasks.end());
    return *found;
}

app::TaskState stateOf(const Device& device, const TaskId& task) {
    const auto seen = device.session->look();
    for (const app::TaskCard& card : seen->tasks)
        if (card.id == task) return card.state;
    FAIL("no such task");
    return {};
}

}  // namespace

TEST_CASE("an event that another device planned is there with its plan") {
    Two crew;
    CHECK(crew.phone.session->look()->tasks == crew.tablet.session->look()->tasks);
}

TEST_CASE("what another device ticks shows in the open event, and both have one day") {
    Two crew;
    const auto task = listed(crew.tablet);
    crew.pass(1min);
    REQUIRE(crew.phone.session->tick(task.id, 0));
    crew.pass(1min);
    REQUIRE(crew.tablet.session->tick(task.id, 1));

    handOver(crew.phone, crew.tablet);
    handOver(crew.tablet, crew.phone);

    CHECK(crew.tablet.session->look()->tasks == crew.phone.session->look()->tasks);
    CHECK(listed(crew.tablet).checklist[0].isTicked);
    CHECK(listed(crew.tablet).checklist[1].isTicked);
}

TEST_CASE("the same line ticked on two devices out of reach is one tick") {
    Two crew;
    const auto task = listed(crew.tablet);
    REQUIRE(crew.phone.session->tick(task.id, 0));
    REQUIRE(crew.tablet.session->tick(task.id, 0));

    handOver(crew.phone, crew.tablet);
    handOver(crew.tablet, crew.phone);

    CHECK(crew.tablet.session->look()->tasks == crew.phone.session->look()->tasks);
}

TEST_CASE("what comes from another device shows the same as if the event were opened anew") {
    Two crew;
    const TaskId first = crew.tablet.session->look()->tasks.front().id;
    REQUIRE(crew.phone.session->start(first));
    crew.pass(2min);
    REQUIRE(crew.tablet.session->moveServe(crew.tablet.session->look()->serve + 10min));
    crew.pass(2min);
    REQUIRE(crew.phone.session->finish(first));

    handOver(crew.phone, crew.tablet);
    const auto shown = crew.tablet.session->look()->tasks;
    crew.tablet.restart();
    REQUIRE(crew.tablet.session->open(crew.event));

    CHECK(crew.tablet.session->look()->tasks == shown);
    CHECK(stateOf(crew.tablet, first) == app::TaskState::Done);
}

TEST_CASE("a touch that another device takes back is taken back here") {
    Two crew;
    const TaskId first = crew.tablet.session->look()->tasks.front().id;
    REQUIRE(crew.phone.session->start(first));
    handOver(crew.phone, crew.tablet);
    CHECK(stateOf(crew.tablet, first) == app::TaskState::Running);
    REQUIRE(crew.phone.session->undo());

    handOver(crew.phone, crew.tablet);

    CHECK(stateOf(crew.tablet, first) != app::TaskState::Running);
}

TEST_CASE("undo takes back what was touched here, not what another device noted since") {
    Two crew;
    const auto task = listed(crew.tablet);
    REQUIRE(crew.tablet.session->tick(task.id, 0));
    crew.pass(1s);
    REQUIRE(crew.phone.session->tick(task.id, 1));
    handOver(crew.phone, crew.tablet);

    REQUIRE(crew.tablet.session->undo());

    CHECK_FALSE(listed(crew.tablet).checklist[0].isTicked);
    CHECK(listed(crew.tablet).checklist[1].isTicked);
}

TEST_CASE("a plan that was searched while another device noted something is not published") {
    Two crew;
    const auto asked = crew.tablet.session->askToReplan();
    REQUIRE(asked);
    const app::Found found = app::searchPlan(*asked);
    REQUIRE(crew.phone.session->start(crew.phone.session->look()->tasks.front().id));
    handOver(crew.phone, crew.tablet);

    const auto published = crew.tablet.session->publish(*asked, found);

    REQUIRE_FALSE(published);
    CHECK(published.error().why == app::Refusal::Why::Overtaken);
}

TEST_CASE("the clock of another device, a little ahead, moves none here, also after a restart") {
    Two crew;
    crew.phone.clock.advance(3min);
    REQUIRE(crew.phone.session->start(crew.phone.session->look()->tasks.front().id));
    REQUIRE(crew.tablet.session->tick(listed(crew.tablet).id, 1));
    handOver(crew.phone, crew.tablet);
    const Instant now = crew.tablet.clock.wall();

    CHECK(crew.tablet.session->now() == now);
    // Its stamps only count on now, until its clock has caught up.
    REQUIRE(crew.tablet.session->tick(listed(crew.tablet).id, 0));
    crew.tablet.restart();
    REQUIRE(crew.tablet.session->open(crew.event));

    CHECK(crew.tablet.session->now() == now);
    CHECK(crew.tablet.session->look()->notices.empty());
}

TEST_CASE("what was noted here is told, with its event, and what others noted is not") {
    Two crew;
    std::vector<EventId> told;
    crew.tablet.session->tellWhenNoted([&](const EventId& id) { told.push_back(id); });
    REQUIRE(crew.phone.session->tick(listed(crew.phone).id, 0));
    handOver(crew.phone, crew.tablet);
    CHECK(told.empty());

    REQUIRE(crew.tablet.session->tick(listed(crew.tablet).id, 1));

    CHECK(told == std::vector{crew.event});
}

TEST_CASE("rehearsals begun on two devices out of reach are two") {
    Two crew;
    const EventId here = crew.tablet.session->rehearse(60, 1min).value();
    const EventId there = crew.phone.session->rehearse(60, 1min).value();
    CHECK(here != there);
}
