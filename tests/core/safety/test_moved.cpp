#include <catch2/catch.hpp>

#include "kitchen_log.h"
#include "safety/history.h"

using namespace samples;

namespace {

/// Pans of one stew, and one filled out of another.
struct Pans {
    EntryId read(int pan, Duration at, Purpose purpose, double celsius,
                 std::optional<std::int32_t> from = {}) {
        FoodMeasured fact{of(pan), purpose, inCelsius(celsius), kProbe, {}, {}, {}, kEleven + at};
        fact.from = from;
        return log.add(fact);
    }
    void leave(int pan, Duration at, TimeRule rule, double celsius,
               std::optional<std::int32_t> from = {}) {
        ControlLeft fact{of(pan), rule, inCelsius(celsius), kProbe, kEleven + at};
        fact.from = from;
        log.add(fact);
    }
    [[nodiscard]] Standing at(int pan, Duration now) const {
        return standingOf(of(pan), log.rule, log.limits, log.entries, kEleven + now);
    }
    static Pan of(int number) { return {kPan.dish, number}; }

    Log log;
};

}  // namespace

// FDA Food Code 2022, 3-501.19(B): four hours from the moment it leaves control, in any pan.
TEST_CASE("the clock of time control goes on in the pan its food is tipped into") {
    Pans day;
    day.leave(1, 0min, TimeRule::Hot, 60);
    day.read(3, 235min, Purpose::HoldHot, 57, 1);
    day.log.add(PanDiscarded{Pans::of(1), kEleven + 236min});

    CHECK(day.at(3, 237min).control == Control::Time);
    REQUIRE(day.at(3, 237min).time);
    CHECK(day.at(3, 237min).time->discardAt == kEleven + 240min);
    CHECK(isLostBy(day.at(3, 240min), Lost::Why::TimeOver));
    CHECK(day.at(1, 237min).control == Control::Discarded);

    SECTION("it cannot be started anew with the new pan, nor in a third one") {
        day.leave(4, 237min, TimeRule::Hot, 60, 3);
        day.leave(5, 238min, TimeRule::Hot, 60, 4);
        CHECK(day.at(5, 239min).time->discardAt == kEleven + 240min);
        CHECK_FALSE(day.at(5, 240min).mayServe);
    }
    SECTION("emptied first and put away, then read in the new one") {
        Pans late;
        late.leave(1, 0min, TimeRule::Hot, 60);
        late.log.add(PanDiscarded{Pans::of(1), kEleven + 234min});
        late.read(3, 235min, Purpose::HoldHot, 57, 1);
        CHECK(late.at(3, 236min).time->discardAt == kEleven + 240min);
    }
}

TEST_CASE("a pan split off a sound one is sound, whenever it is read first") {
    Pans day;
    day.log.rule.since = kEleven;
    day.read(1, 0min, Purpose::ArriveHot, 70);
    day.read(1, 100min, Purpose::HoldHot, 64);

    SECTION("out of the first") {
        day.read(2, 180min, Purpose::HoldHot, 62, 1);
        CHECK(day.at(2, 181min).control == Control::Hot);
        CHECK(day.at(2, 181min).mayServe);
        CHECK(day.at(2, 181min).measureBy == kEleven + 300min);
        // From then on each has a record of its own.
        CHECK(isLostBy(day.at(1, 221min), Lost::Why::Gap));
        CHECK(day.at(2, 221min).mayServe);
    }
    SECTION("out of nothing that is known") {
        day.read(2, 180min, Purpose::HoldHot, 62);
        CHECK(isLostBy(day.at(2, 181min), Lost::Why::Gap));
    }
    SECTION("when it was cooked it stays cooked") {
        day.log.rule = {event::Food::Poultry, true, {}};
        day.read(3, 100min, Purpose::Cook, 75);
        day.read(4, 110min, Purpose::HoldHot, 60, 3);
        CHECK(day.at(4, 111min).mayServe);
        CHECK(day.at(4, 111min).isCooked);
    }
}

TEST_CASE("what is open, lost or corrected of a pan goes along with its food") {
    Pans day;
    const EntryId first = day.read(1, 0min, Purpose::HoldHot, 64);
    const EntryId bad = day.read(1, 60min, Purpose::HoldHot, 50);
    day.read(2, 70min, Purpose::HoldHot, 58, 1);
    CHECK_FALSE(day.at(2, 71min).mayServe);
    CHECK(day.at(2, 71min).withoutAction == std::vector{bad});

    SECTION("reheated, each pan has to show it") {
        day.log.act(72min, bad, Action::Reheat);
        day.read(2, 90min, Purpose::Reheat, 75);
        CHECK(day.at(2, 91min).mayServe);
        CHECK_FALSE(day.at(1, 91min).mayServe);
    }
    SECTION("discarded for what it showed") {
        day.log.act(72min, bad, Action::Discard);
        CHECK(day.at(2, 73min).control == Control::Discarded);
    }
    SECTION("nobody does anything") {
        CHECK(isLostBy(day.at(2, 181min), Lost::Why::OutOfControl));
    }
    SECTION("a correction heard afterwards") {
        Pans sound;
        const EntryId good = sound.read(1, 0min, Purpose::HoldHot, 64);
        sound.read(2, 30min, Purpose::HoldHot, 62, 1);
        CHECK(sound.at(2, 31min).mayServe);
        sound.log.add(FoodMeasured{
            Pans::of(1), Purpose::HoldHot, inCelsius(46), kProbe, {}, good, "x", kEleven + 40min});
        CHECK_FALSE(sound.at(2, 41min).mayServe);
    }
    CHECK(first.sequence == 1);
}

TEST_CASE(
    "a whole dish that is thrown away is so in every pan, and pans in a ring come to an end") {
    Pans day;
    day.read(1, 0min, Purpose::HoldHot, 64);
    day.log.add(PanDiscarded{Pans::of(0), kEleven + 10min});
    day.read(2, 20min, Purpose::HoldHot, 62, 1);
    CHECK(day.at(2, 21min).control == Control::Discarded);

    Pans ring;
    ring.read(1, 0min, Purpose::HoldHot, 64, 2);
    ring.read(2, 0min, Purpose::HoldHot, 64, 1);
    CHECK(ring.at(1, 1min).mayServe);
    CHECK(originOf(Pans::of(2), ring.log.entries, kEleven) == Pans::of(1));
}
