/// Devices whose clocks do not agree.

#include "crew.h"

using namespace samples;
using namespace std::chrono_literals;

namespace {

/// Lies about the clock to a device whose own showed an even second when it asked.
struct Lie {
    Duration by;
    void operator()(Message& message) const {
        auto* answer = std::get_if<Answer>(&message);
        if (answer == nullptr || answer->asked.time_since_epoch() % 2s != 0s) return;
        answer->received += by;
        answer->answered += by;
    }
};

}  // namespace

TEST_CASE("the clocks are measured and their difference is known on both devices") {
    Crew crew;
    crew.delay = 15ms;
    const Link& link = crew.connect(crew.add(at(0)), crew.add(at(100)));

    crew.run();

    // The way takes 15 ms there and back each, and as long again for every message in between.
    CHECK(std::chrono::abs(link.a.peer().clock->ahead - 100s) <=
          link.a.peer().clock->roundTrip / 2);
    CHECK(std::chrono::abs(link.b.peer().clock->ahead + 100s) <=
          link.b.peer().clock->roundTrip / 2);
    CHECK(link.a.peer().clock->roundTrip > 0ms);
    CHECK(link.a.standing() == Standing::UpToDate);
}

TEST_CASE("devices whose clocks are far apart exchange nothing until one is set right") {
    Crew crew;
    Tablet& nora = crew.add(at(0));
    Tablet& ben = crew.add(at(3600));
    Crew::note(nora, kOrchard, everyKind());
    Crew::note(ben, kBarn, everyKind());
    const Link& link = crew.connect(nora, ben);
    crew.run();
    for (int i = 0; i < 10; ++i)
        crew.beat();
    Crew::touch(nora, kOrchard);
    Crew::touch(ben, kBarn);
    crew.run();

    CHECK(link.a.standing() == Standing::ClocksApart);
    CHECK(link.b.standing() == Standing::ClocksApart);
    CHECK(link.a.peer().clock->ahead == 1h);
    CHECK(crew.count<Heads>() == 0);
    CHECK(crew.count<Entries>() == 0);
    CHECK(nora.arrived.empty());
    CHECK(ben.arrived.empty());

    ben.clock.setWall(nora.clock.wall());
    crew.beat();

    CHECK(link.a.standing() == Standing::UpToDate);
    CHECK(link.b.standing() == Standing::UpToDate);
    checkSame(nora, ben);
    checkEachOnce(nora);
    checkEachOnce(ben);
}

TEST_CASE("a little less than too far apart is not too far, either way") {
    const auto standing = [](Duration ahead) {
        Crew crew;
        Tablet& nora = crew.add();
        Tablet& ben = crew.add();
        ben.clock.advance(ahead);
        const Link& link = crew.connect(nora, ben);
        crew.run();
        CHECK(link.a.standing() == link.b.standing());
        return link.a.standing();
    };

    CHECK(standing(kMostApart) == Standing::UpToDate);
    CHECK(standing(-kMostApart) == Standing::UpToDate);
    CHECK(standing(kMostApart + 1ms) == Standing::ClocksApart);
    CHECK(standing(-kMostApart - 1ms) == Standing::ClocksApart);
}

TEST_CASE("a clock that is set wrong while they talk stops it, and set right lets it go on") {
    Crew crew;
    Tablet& nora = crew.add();
    Tablet& ben = crew.add();
    const Link& link = crew.connect(nora, ben);
    crew.run();
    Crew::touch(nora, kOrchard, 1);
    crew.run();

    ben.clock.advance(2h);
    crew.beat();
    CHECK(link.a.standing() == Standing::ClocksApart);
    CHECK(link.b.standing() == Standing::ClocksApart);
    Crew::touch(nora, kOrchard, 2);
    Crew::touch(ben, kOrchard, 3);
    crew.run();
    CHECK(nora.arrived.empty());
    CHECK(ben.arrived.size() == 1);

    nora.clock.advance(2h);
    crew.beat();
    CHECK(link.a.standing() == Standing::UpToDate);
    checkSame(nora, ben);
    checkEachOnce(nora);
    checkEachOnce(ben);
}

TEST_CASE("while one device alone finds the clocks apart, nothing is lost that the other gives") {
    Crew crew;
    Tablet& nora = crew.add(at(0));
    Tablet& ben = crew.add(at(1));
    Crew::note(nora, kOrchard, everyKind());
    Crew::note(ben, kBarn, everyKind());
    crew.between = Lie{1h};
    const Link& link = crew.connect(nora, ben);
    crew.run();

    CHECK(link.a.standing() == Standing::ClocksApart);
    CHECK(link.b.standing() == Standing::Greeting);
    CHECK(nora.arrived.empty());
    CHECK(ben.arrived.empty());

    crew.between = nullptr;
    crew.beat();

    CHECK(link.a.standing() == Standing::UpToDate);
    CHECK(link.b.standing() == Standing::UpToDate);
    checkSame(nora, ben);
}

TEST_CASE("what was given while the other passed it over is given again") {
    Crew crew;
    Tablet& nora = crew.add(at(0));
    Tablet& ben = crew.add(at(1));
    const Link& link = crew.connect(nora, ben);
    crew.run();
    nora.clock.advance(1s);
    ben.clock.advance(1s);
    crew.between = Lie{1h};
    crew.beat();  // the clocks show 6 and 7 seconds
    REQUIRE(link.a.standing() == Standing::ClocksApart);
    REQUIRE(link.b.standing() == Standing::UpToDate);
    Crew::touch(ben, kOrchard, 1);
    Crew::touch(ben, kBarn, 2);
    Crew::touch(nora, kLake, 3);
    crew.run();
    CHECK(crew.count<Entries>() == 1);
    CHECK(nora.arrived.empty());
    CHECK(link.b.standing() == Standing::Exchanging);
    CHECK(link.b.peer().toGo == 2);

    crew.between = nullptr;
    crew.beat();

    CHECK(link.a.standing() == Standing::UpToDate);
    CHECK(link.b.standing() == Standing::UpToDate);
    checkSame(nora, ben);
    checkEachOnce(nora);
}

TEST_CASE("an answer on whose way our clock was set back does not count, and the next one does") {
    Crew crew;
    Tablet& nora = crew.add();
    Tablet& ben = crew.add();
    const Link& link = crew.connect(nora, ben);
    nora.clock.advance(-2h);
    ben.clock.advance(-2h);
    crew.run();
    CHECK(link.a.standing() == Standing::Greeting);

    crew.beat();

    CHECK(link.a.standing() == Standing::UpToDate);
}
