/// What one undo takes back, and what the next one does.

#include <catch2/catch.hpp>

#include "demo_day.h"
#include "event/json.h"

using namespace cinder;
using namespace std::chrono_literals;
using app::TaskState;
using app::UndoOffer;
using samples::Device;

namespace {

/// The orchard on its day, when the crew should come.
struct Yard : Device {
    Yard() : Device(event::parse(samples::orchard()).value().serve.at - 96h) {
        event = session->importEvent(samples::orchard()).value();
        clock.advance(session->look()->arrival - clock.wall());
    }
    [[nodiscard]] TaskState stateOf(const TaskId& id) {
        for (const auto& card : session->look()->tasks)
            if (card.id == id) return card.state;
        FAIL("no task " << id.text());
        return {};
    }
    [[nodiscard]] UndoOffer::What offered() {
        const auto offer = session->look()->undo;
        REQUIRE(offer);
        return offer->what;
    }
    EventId event;
    TaskId first{"unload"};
};

}  // namespace

TEST_CASE("a slip that was followed by the touch that was meant goes with two undos") {
    Yard yard;
    const Instant promised = yard.session->look()->serve;
    REQUIRE(yard.session->start(yard.first));  // the slip
    yard.clock.advance(4s);
    REQUIRE(yard.session->moveServe(promised + 10min));
    const bool isRestarted = GENERATE(false, true);
    if (isRestarted) {
        yard.restart();
        REQUIRE(yard.session->open(yard.event));
    }

    CHECK(yard.offered() == UndoOffer::What::ServeTime);
    REQUIRE(yard.session->undo());
    CHECK(yard.session->look()->serve == promised);
    CHECK(yard.stateOf(yard.first) == TaskState::Running);
    CHECK(yard.offered() == UndoOffer::What::Start);
    REQUIRE(yard.session->undo());
    CHECK(yard.stateOf(yard.first) != TaskState::Running);
    // Nothing else is left: now the last undo can be taken back.
    CHECK(yard.offered() == UndoOffer::What::Undo);
    REQUIRE(yard.session->undo());
    CHECK(yard.stateOf(yard.first) == TaskState::Running);
    CHECK(yard.session->look()->serve == promised);
}

TEST_CASE("a touch is offered for its own fifteen seconds, whatever followed it") {
    Yard yard;
    const Instant promised = yard.session->look()->serve;
    REQUIRE(yard.session->start(yard.first));
    yard.clock.advance(10s);
    REQUIRE(yard.session->moveServe(promised + 10min));
    yard.clock.advance(4s);
    REQUIRE(yard.session->undo());
    CHECK(yard.offered() == UndoOffer::What::Start);
    CHECK(yard.session->look()->undo->until == yard.clock.wall() + 1s);
    yard.clock.advance(1s);

    CHECK(yard.offered() == UndoOffer::What::Undo);
    REQUIRE(yard.session->undo());
    CHECK(yard.session->look()->serve == promised + 10min);
    CHECK(yard.stateOf(yard.first) == TaskState::Running);
}

TEST_CASE("what was touched between two undos is the next to go") {
    Yard yard;
    const Instant promised = yard.session->look()->serve;
    REQUIRE(yard.session->start(yard.first));
    REQUIRE(yard.session->moveServe(promised + 10min));
    REQUIRE(yard.session->undo());
    REQUIRE(yard.session->moveServe(promised + 20min));

    REQUIRE(yard.session->undo());
    CHECK(yard.session->look()->serve == promised);
    CHECK(yard.stateOf(yard.first) == TaskState::Running);
    REQUIRE(yard.session->undo());
    CHECK(yard.stateOf(yard.first) != TaskState::Running);
}

TEST_CASE("a new plan can be taken back, and so can the touch before it") {
    Yard yard;
    yard.clock.advance(40min);
    const auto told = *yard.session->sheet();
    REQUIRE(yard.session->start(yard.first));
    REQUIRE(yard.session->replan());
    REQUIRE_FALSE(*yard.session->sheet() == told);

    CHECK(yard.offered() == UndoOffer::What::Plan);
    REQUIRE(yard.session->undo());
    CHECK(*yard.session->sheet() == told);
    CHECK(yard.stateOf(yard.first) == TaskState::Running);
    REQUIRE(yard.session->undo());
    CHECK(yard.stateOf(yard.first) != TaskState::Running);
}

TEST_CASE("the first plan is not taken back on the boards") {
    Device device(event::parse(samples::orchard()).value().serve.at - 96h);
    REQUIRE(device.session->importEvent(samples::orchard()));
    CHECK_FALSE(device.session->look()->undo);
}
