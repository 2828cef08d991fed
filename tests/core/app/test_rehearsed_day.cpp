#include <catch2/catch.hpp>

#include "demo_day.h"

using namespace cinder;
using namespace std::chrono_literals;
using app::RehearsalCrew;
using samples::Device;

namespace {

constexpr Instant kMorning{1'821'000'000'000ms};

/// Plays the open rehearsal to its end, one look every ten seconds of its time.
int playDay(Device& device, RehearsalCrew& crew) {
    int touches = 0;
    for (int step = 0; step < 6 * 60 * 24 && !crew.isDayOver(); ++step) {
        const auto done = crew.act();
        REQUIRE(done);
        touches += *done;
        device.clock.advance(10s);
    }
    return touches;
}

}  // namespace

TEST_CASE("a punctual crew plays each demo day to its end and serves at the bell") {
    const auto* name =
        GENERATE("orchard-harvest-lunch.json", "pruning-day-supper.json", "last-apple-feast.json");
    CAPTURE(name);
    Device device(kMorning);
    REQUIRE(device.session->importEvent(samples::demo(name)));
    REQUIRE(device.session->rehearse(1, 5min));
    RehearsalCrew crew(*device.session);

    const int touches = playDay(device, crew);

    const auto seen = device.session->look();
    CAPTURE(touches);
    for (const auto& card : seen->tasks)
        if (card.state != app::TaskState::Done)
            UNSCOPED_INFO(card.id.text() << " state " << int(card.state) << " start "
                                         << formatBellOffset(card.start - seen->serve));
    CHECK(crew.isDayOver());
    CHECK(seen->lateness <= 1min);
    for (const auto& card : seen->tasks) {
        CAPTURE(card.id.text());
        CHECK(card.finish >= card.start);
        CHECK(card.turnsDone == card.turnCount);
    }
}
