/// Two devices that trust each other and whose clocks agree.

#include "crew.h"

using namespace samples;

namespace {

/// A document of so many bytes: more than one message has room for, when there are several.
Body longDocument(std::size_t bytes) {
    return EventDescribed{std::string(bytes, 'x')};
}

}  // namespace

TEST_CASE("two devices that were apart have the same record once they met") {
    Crew crew;
    Tablet& nora = crew.add();
    Tablet& ben = crew.add();
    Crew::note(nora, kOrchard, everyKind());
    Crew::note(nora, kBarn, ticks(3));
    Crew::note(ben, kOrchard, ticks(20));
    Crew::note(ben, kLake, ticks(4));

    const Link& link = crew.connect(nora, ben);
    crew.run();

    checkSame(nora, ben);
    CHECK(nora.day(kOrchard).size() == everyKind().size() + 20);
    CHECK(nora.store->events().value() == std::vector{kBarn, kLake, kOrchard});
    CHECK(nora.arrived.size() == 24);
    CHECK(ben.arrived.size() == everyKind().size() + 3);
    CHECK(link.a.standing() == Standing::UpToDate);
    CHECK(link.b.standing() == Standing::UpToDate);
    CHECK(link.a.peer().device == ben.store->device());
    CHECK(link.a.peer().toCome == 0);
    CHECK(link.a.peer().toGo == 0);
}

TEST_CASE("what arrives is in the store by then, and is what the other device sealed") {
    Crew crew;
    Tablet& nora = crew.add();
    Tablet& ben = crew.add();
    Crew::note(nora, kOrchard, ticks(5));

    crew.connect(nora, ben);
    crew.run();

    CHECK(ben.arrived ==
          nora.store->entriesAfter(kOrchard, {nora.store->device(), 0}, 1'000'000).value());
    CHECK(ben.arrived ==
          ben.store->entriesAfter(kOrchard, {nora.store->device(), 0}, 1'000'000).value());
}

TEST_CASE("two devices with nothing to tell are up to date at once") {
    Crew crew;
    const Link& link = crew.connect(crew.add(), crew.add());
    CHECK(link.a.standing() == Standing::Greeting);

    crew.run();

    CHECK(link.a.standing() == Standing::UpToDate);
    CHECK(link.b.standing() == Standing::UpToDate);
    CHECK(crew.count<Entries>() == 0);
}

TEST_CASE("after a long absence only what is new travels") {
    Crew crew;
    Tablet& nora = crew.add();
    Tablet& ben = crew.add();
    Crew::note(nora, kOrchard, ticks(500));
    Crew::note(ben, kBarn, ticks(300));
    crew.cut([&]() -> Link& {
        Link& link = crew.connect(nora, ben);
        crew.run();
        return link;
    }());
    crew.said.clear();
    Crew::note(nora, kOrchard, ticks(7));
    Crew::note(ben, kOrchard, ticks(2));
    Crew::note(ben, kLake, ticks(1));

    crew.connect(nora, ben);
    crew.run();

    CHECK(crew.entriesSaid() == 10);
    checkSame(nora, ben);
}

TEST_CASE("devices that met before and did nothing since say their heads and no more") {
    Crew crew;
    Tablet& nora = crew.add();
    Tablet& ben = crew.add();
    Crew::note(nora, kOrchard, everyKind());
    Link& first = crew.connect(nora, ben);
    crew.run();
    crew.cut(first);
    crew.said.clear();

    crew.connect(nora, ben);
    crew.run();

    CHECK(crew.count<Entries>() == 0);
    CHECK(crew.count<Heads>() == 2);
    CHECK(crew.said.size() == 8);  // each: greet, ask, answer, heads
}

TEST_CASE("a touch is on the other device as soon as a message can be there") {
    Crew crew;
    Tablet& nora = crew.add();
    Tablet& ben = crew.add();
    const Link& link = crew.connect(nora, ben);
    crew.run();

    Crew::touch(nora, kOrchard);
    CHECK(link.a.standing() == Standing::Exchanging);
    CHECK(link.a.peer().toGo == 1);
    crew.step();

    CHECK(ben.arrived.size() == 1);
    crew.run();
    CHECK(link.a.standing() == Standing::UpToDate);
    checkSame(nora, ben);
}

TEST_CASE("touches on both sides cross without harm, also in the same event") {
    Crew crew;
    crew.delay = Duration{40};
    Tablet& nora = crew.add();
    Tablet& ben = crew.add();
    crew.connect(nora, ben);
    for (int line = 1; line <= 40; ++line) {
        Crew::touch(nora, line % 3 == 0 ? kBarn : kOrchard, line);
        Crew::touch(ben, kOrchard, line);
        if (line % 2 == 0) crew.step();
    }

    crew.run();

    checkSame(nora, ben);
    checkEachOnce(nora);
    checkEachOnce(ben);
    CHECK(nora.arrived.size() == 40);
    CHECK(ben.arrived.size() == 40);
    CHECK(crew.entriesSaid() == 80);
}

TEST_CASE("a touch reads the ends of its event only, not those of all") {
    Crew crew;
    Tablet& nora = crew.add();
    Tablet& ben = crew.add();
    crew.connect(nora, ben);
    crew.run();
    const int before = nora.store->allHeadsRead + ben.store->allHeadsRead;

    for (int line = 1; line <= 10; ++line) {
        Crew::touch(nora, kOrchard, line);
        crew.run();
    }

    CHECK(nora.store->allHeadsRead + ben.store->allHeadsRead == before);
}

TEST_CASE("what is more than a message holds comes in several, one at a time") {
    Crew crew;
    Tablet& nora = crew.add();
    Tablet& ben = crew.add();
    Crew::note(nora, kOrchard, std::vector<Body>(12, longDocument(60'000)));
    Crew::note(nora, kBarn, {longDocument(900'000)});
    std::ptrdiff_t onTheWay = 0;
    crew.between = [&](const Message& message) {
        if (std::holds_alternative<Entries>(message)) CHECK(++onTheWay == 1);
        if (std::holds_alternative<TakenOver>(message)) --onTheWay;
    };

    const Link& link = crew.connect(nora, ben);
    while (crew.count<TakenOver>() < 2 && crew.step()) {
    }
    CHECK(link.b.standing() == Standing::Exchanging);
    CHECK(link.b.peer().toCome == 8);
    CHECK(link.a.peer().toGo == 8);
    crew.run();

    checkSame(nora, ben);
    CHECK(crew.count<Entries>() == 4);
}

TEST_CASE("what a newer app noted passes through word for word, with its seal") {
    Crew crew;
    Tablet& newer = crew.add();
    Tablet& older = crew.add();
    Tablet& third = crew.add();
    const DeviceId device = newer.store->device();
    std::vector<Operation> later = {
        operation(1, Unknown{"of-a-later-year", R"({ "spaced" : [1,  2] })"}, device.text()),
        operation(2, Unknown{"turned", R"({"task":"lamb","turn":3,"at":5,"hand":"left"})"},
                  device.text())};
    later[1].version = 7;
    later[1].person.reset();
    REQUIRE(newer.store->append(later));

    crew.connect(newer, older);
    crew.run();
    crew.connect(older, third);
    crew.run();

    const auto sealed = newer.store->entriesAfter(kOrchard, {device, 0}, 1'000'000).value();
    REQUIRE(sealed.size() == 2);
    CHECK(third.store->entriesAfter(kOrchard, {device, 0}, 1'000'000).value() == sealed);
    CHECK(third.arrived == sealed);
    checkSame(newer, third);
}

TEST_CASE("a device that lost the end of its own record gets it back from another") {
    Crew crew;
    Tablet& nora = crew.add();
    Tablet& ben = crew.add();
    std::vector<Operation> whole;
    for (std::uint64_t sequence = 1; sequence <= 7; ++sequence)
        whole.push_back(operation(sequence, ticks(7)[sequence - 1], nora.store->device().text()));
    REQUIRE(ben.store->append(whole));
    REQUIRE(nora.store->append(std::span(whole).first(3)));

    crew.connect(nora, ben);
    crew.run();

    CHECK(nora.day(kOrchard) == whole);
    CHECK(nora.store->nextId(kOrchard).value().sequence == 8);
    checkSame(nora, ben);
}

TEST_CASE("who holds a device is known on the other, also when that changes") {
    Crew crew;
    const Link& link = crew.connect(crew.add(), crew.add());
    crew.run();
    CHECK(link.a.peer().holder.empty());

    link.b.exchange->setHolder("Ben");
    link.b.exchange->setHolder("Ben");
    crew.run();

    CHECK(link.a.peer().holder == "Ben");
    CHECK(link.a.standing() == Standing::UpToDate);
    CHECK(crew.count<Greet>() == 3);
}

TEST_CASE("a name that is too long is cut between two letters") {
    Crew crew;
    const Link& link = crew.connect(crew.add(), crew.add());
    std::string name = "x";
    for (int i = 0; i < 60; ++i)
        name += "\xC3\xA9";  // e with an acute accent, two bytes

    link.b.exchange->setHolder(name);
    crew.run();

    CHECK(link.a.peer().holder == name.substr(0, 99));
    CHECK_FALSE(link.hungUp);
}
