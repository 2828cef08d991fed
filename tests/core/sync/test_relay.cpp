/// More than two devices.

#include "crew.h"

using namespace samples;

TEST_CASE("a device between two others hands on what each has, also while it comes") {
    Crew crew;
    Tablet& nora = crew.add();
    Tablet& between = crew.add();
    Tablet& ben = crew.add();
    Crew::note(nora, kOrchard, everyKind());
    Crew::note(ben, kOrchard, ticks(9));
    Crew::note(ben, kBarn, ticks(2));

    const Link& left = crew.connect(nora, between);
    const Link& right = crew.connect(between, ben);
    crew.run();
    Crew::touch(nora, kOrchard, 50);
    Crew::touch(ben, kLake, 51);
    crew.run();

    checkSame(nora, between);
    checkSame(nora, ben);
    for (const Tablet* tablet : {&nora, &between, &ben})
        checkEachOnce(*tablet);
    for (const Link* link : {&left, &right}) {
        CHECK(link->a.standing() == Standing::UpToDate);
        CHECK(link->b.standing() == Standing::UpToDate);
    }
    // Each entry went over each connection once.
    CHECK(crew.entriesSaid() == 2 * (everyKind().size() + 9 + 2 + 2));
}

TEST_CASE("two devices that never meet have the same record through a third that goes between") {
    Crew crew;
    Tablet& nora = crew.add();
    Tablet& between = crew.add();
    Tablet& ben = crew.add();
    Crew::note(nora, kOrchard, ticks(5));
    Crew::note(ben, kOrchard, ticks(6));
    for (Tablet* there : {&nora, &ben, &nora}) {
        Link& link = crew.connect(between, *there);
        crew.run();
        crew.cut(link);
    }

    checkSame(nora, ben);
    checkSame(nora, between);
}

TEST_CASE("the same entries from two sides at once are noted and told of once") {
    Crew crew;
    Tablet& nora = crew.add();
    Tablet& ben = crew.add();
    Tablet& late = crew.add();
    Crew::note(nora, kOrchard, ticks(30));
    crew.connect(nora, ben);
    crew.run();
    crew.said.clear();

    const Link& one = crew.connect(late, nora);
    const Link& other = crew.connect(late, ben);
    crew.run();

    CHECK(crew.entriesSaid() == 60);
    CHECK(late.arrived.size() == 30);
    checkEachOnce(late);
    checkSame(late, nora);
    checkSame(late, ben);
    CHECK(one.a.standing() == Standing::UpToDate);
    CHECK(other.a.standing() == Standing::UpToDate);
}

TEST_CASE("where every device reaches every other, a touch goes round and comes to rest") {
    Crew crew;
    std::vector<Tablet*> tablets;
    for (int i = 0; i < 4; ++i) {
        tablets.push_back(&crew.add());
        for (int j = 0; j < i; ++j)
            crew.connect(*tablets[static_cast<std::size_t>(j)], *tablets.back());
    }
    crew.run();

    for (int line = 1; line <= 5; ++line) {
        for (Tablet* tablet : tablets)
            Crew::touch(*tablet, kOrchard, line);
        crew.step();
    }
    crew.run();

    for (const Tablet* tablet : tablets) {
        checkSame(*tablets.front(), *tablet);
        checkEachOnce(*tablet);
        CHECK(tablet->arrived.size() == 15);
    }
}
