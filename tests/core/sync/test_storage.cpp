/// Devices that cannot note or cannot read.

#include "crew.h"

using namespace samples;

namespace {

using Why = StoreError::Why;

void checkBoth(const Link& link, Standing standing) {
    CHECK(link.a.standing() == standing);
    CHECK(link.b.standing() == standing);
}

}  // namespace

TEST_CASE("a device that cannot note still gives what it has, and both say so") {
    Crew crew;
    Tablet& nora = crew.add();
    Tablet& locked = crew.add();
    Crew::note(locked, kOrchard, everyKind());
    Crew::note(nora, kBarn, everyKind());
    locked.open(SqliteStore::Options{.readOnly = true, .pageLimit = {}});

    const Link& link = crew.connect(nora, locked);
    crew.run();

    checkBoth(link, Standing::NotNoted);
    CHECK(nora.day(kOrchard) == locked.day(kOrchard));
    CHECK(nora.day(kOrchard).size() == everyKind().size());
    CHECK(locked.day(kBarn).empty());
    CHECK(link.a.peer().toGo == everyKind().size());
    CHECK(link.b.peer().toCome == everyKind().size());

    // What can never be noted is not sent again and again.
    crew.said.clear();
    for (int i = 0; i < 5; ++i)
        crew.beat();
    CHECK(crew.entriesSaid() == 0);
    checkBoth(link, Standing::NotNoted);
}

TEST_CASE("a device that cannot note, and has nothing to note, is up to date") {
    Crew crew;
    Tablet& nora = crew.add();
    Tablet& locked = crew.add();
    Crew::note(locked, kOrchard, everyKind());
    locked.open(SqliteStore::Options{.readOnly = true, .pageLimit = {}});

    const Link& link = crew.connect(nora, locked);
    crew.run();

    checkBoth(link, Standing::UpToDate);
    CHECK(nora.day(kOrchard) == locked.day(kOrchard));
}

TEST_CASE("what a full disk could not take is noted once there is room") {
    Crew crew;
    Tablet& nora = crew.add();
    Tablet& full = crew.add();
    Crew::note(nora, kOrchard, everyKind());
    Crew::note(full, kBarn, everyKind());
    full.store->takingFails = Why::DiskFull;
    const Link& link = crew.connect(nora, full);
    crew.run();
    Crew::touch(nora, kOrchard);
    Crew::touch(full, kBarn);
    crew.beat();

    checkBoth(link, Standing::NotNoted);
    CHECK(full.arrived.empty());
    CHECK(nora.day(kBarn).size() == everyKind().size() + 1);

    full.store->takingFails.reset();
    crew.beat();

    checkBoth(link, Standing::UpToDate);
    checkSame(nora, full);
    checkEachOnce(nora);
    checkEachOnce(full);
}

TEST_CASE("a disk that is really full is left as it was and says so") {
    Crew crew;
    Tablet& nora = crew.add();
    Tablet& full = crew.add();
    Crew::note(full, kBarn, everyKind());
    full.open(SqliteStore::Options{.readOnly = false, .pageLimit = 16});
    Crew::note(nora, kOrchard, {EventDescribed{std::string(500'000, 'x')}});

    const Link& link = crew.connect(nora, full);
    crew.run();

    checkBoth(link, Standing::NotNoted);
    CHECK(full.day(kOrchard).empty());
    CHECK_FALSE(full.store->verify().value());

    full.exchanges.clear();
    full.open({});
    crew.connect(nora, full);
    crew.run();
    checkSame(nora, full);
}

TEST_CASE("what one device could not note and got from a third meanwhile is no trouble any more") {
    Crew crew;
    Tablet& nora = crew.add();
    Tablet& ben = crew.add();
    Crew::touch(nora, kOrchard);
    ben.store->takingFails = Why::Locked;
    const Link& link = crew.connect(nora, ben);
    crew.run();
    checkBoth(link, Standing::NotNoted);

    REQUIRE(ben.store->append(nora.day(kOrchard)));
    link.b.exchange->noteAdded(kOrchard);
    ben.store->takingFails.reset();
    crew.beat();
    checkBoth(link, Standing::UpToDate);

    Crew::touch(nora, kOrchard, 2);
    crew.run();
    checkBoth(link, Standing::UpToDate);
    checkSame(nora, ben);
}

TEST_CASE("a store that cannot be read exchanges nothing, and goes on when it can") {
    Crew crew;
    Tablet& nora = crew.add();
    Tablet& ben = crew.add();
    Crew::note(nora, kOrchard, everyKind());
    Crew::note(ben, kBarn, everyKind());
    nora.store->headsFail = Why::Failed;
    const Link& link = crew.connect(nora, ben);
    crew.run();

    CHECK(link.a.standing() == Standing::NotNoted);
    CHECK(crew.count<Entries>() == 0);

    nora.store->headsFail.reset();
    crew.beat();

    checkBoth(link, Standing::UpToDate);
    checkSame(nora, ben);
}

TEST_CASE("a store that can no longer be read when something arrives gets it later") {
    Crew crew;
    Tablet& nora = crew.add();
    Tablet& ben = crew.add();
    const Link& link = crew.connect(nora, ben);
    crew.run();
    ben.store->headsFail = Why::Damaged;
    Crew::touch(nora, kOrchard, 1);
    Crew::touch(ben, kOrchard, 2);
    crew.run();
    CHECK(link.b.standing() == Standing::NotNoted);
    CHECK(ben.arrived.empty());

    ben.store->headsFail.reset();
    crew.beat();

    checkBoth(link, Standing::UpToDate);
    checkSame(nora, ben);
}

TEST_CASE("an event that cannot be read keeps back no other one") {
    Crew crew;
    Tablet& nora = crew.add();
    Tablet& ben = crew.add();
    Crew::note(nora, kBarn, everyKind());
    Crew::note(nora, kOrchard, everyKind());
    nora.store->damaged = kBarn;
    const Link& link = crew.connect(nora, ben);
    crew.run();

    CHECK(link.a.standing() == Standing::NotNoted);
    CHECK(link.a.peer().toGo == everyKind().size());
    CHECK(ben.day(kOrchard) == nora.day(kOrchard));
    CHECK(ben.day(kBarn).empty());

    nora.store->damaged.reset();
    crew.beat();

    checkBoth(link, Standing::UpToDate);
    checkSame(nora, ben);
}

TEST_CASE("an entry that is too long for a message keeps back no other chain") {
    Crew crew;
    Tablet& nora = crew.add();
    Tablet& ben = crew.add();
    Crew::note(nora, kBarn, {EventDescribed{std::string(kMostBytes, 'x')}});
    Crew::note(nora, kOrchard, everyKind());

    const Link& link = crew.connect(nora, ben);
    crew.run();

    CHECK_FALSE(link.hungUp);
    CHECK(link.a.standing() == Standing::NotNoted);
    CHECK(ben.day(kOrchard) == nora.day(kOrchard));
}

TEST_CASE("a seal that cannot be read is compared again later, and what it covers waits") {
    Crew crew;
    Tablet& nora = crew.add();
    Tablet& ben = crew.add();
    Crew::touch(nora, kOrchard, 1);
    REQUIRE(ben.store->append(nora.day(kOrchard)));
    Crew::touch(nora, kOrchard, 2);
    nora.store->sealsFail = Why::Damaged;
    const Link& link = crew.connect(nora, ben);
    crew.run();
    CHECK(link.a.standing() == Standing::NotNoted);
    CHECK(ben.arrived.empty());

    nora.store->sealsFail.reset();
    crew.beat();

    checkBoth(link, Standing::UpToDate);
    checkSame(nora, ben);
}
