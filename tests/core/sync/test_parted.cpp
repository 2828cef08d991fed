/// Records that went two ways, and entries that are not what was sealed.

#include "crew.h"

using namespace samples;

namespace {

const DeviceId kLost{"lost-phone"};

/// What the lost phone recorded; the copy that was gone on with differs from entry `from` on.
std::vector<Operation> ofLostPhone(const EventId& event, std::uint64_t count,
                                   std::uint64_t from = 1'000, int otherLine = 0) {
    std::vector<Operation> operations;
    for (std::uint64_t sequence = 1; sequence <= count; ++sequence) {
        const int line = static_cast<int>(sequence) + (sequence >= from ? otherLine : 0);
        Operation op =
            operation(sequence, LineTicked{TaskId{"tables"}, line, at(line)}, "lost-phone");
        op.event = event;
        operations.push_back(std::move(op));
    }
    return operations;
}

void checkPartedOrchardOnly(const Link& link, std::size_t here, std::size_t there) {
    CHECK(link.a.peer().parted == std::set{kOrchard});
    CHECK(link.b.peer().parted == std::set{kOrchard});
    CHECK(link.a.standing() == Standing::UpToDate);
    CHECK(link.b.standing() == Standing::UpToDate);
    CHECK_FALSE(link.hungUp);
    CHECK(link.a.tablet->day(kOrchard).size() == here);
    CHECK(link.b.tablet->day(kOrchard).size() == there);
    for (const EventId& event : {kBarn, kLake})
        CHECK(link.a.tablet->day(event) == link.b.tablet->day(event));
    CHECK_FALSE(link.a.tablet->store->verify().value());
    CHECK_FALSE(link.b.tablet->store->verify().value());
}

}  // namespace

TEST_CASE("an event whose record went two ways is left alone and named, and the others go on") {
    // Equally long, longer here, longer there, and where only the last entry differs.
    const std::pair<std::uint64_t, std::uint64_t> lengths[] = {{6, 6}, {9, 6}, {6, 9}, {4, 9}};
    for (const auto& [here, there] : lengths) {
        Crew crew;
        Tablet& nora = crew.add();
        Tablet& ben = crew.add();
        REQUIRE(nora.store->append(ofLostPhone(kOrchard, here)));
        REQUIRE(ben.store->append(ofLostPhone(kOrchard, there, 4, 100)));
        Crew::note(nora, kOrchard, everyKind());
        Crew::note(ben, kOrchard, everyKind());
        Crew::note(nora, kBarn, everyKind());
        Crew::note(ben, kLake, everyKind());

        const Link& link = crew.connect(nora, ben);
        crew.run();

        checkPartedOrchardOnly(link, here + everyKind().size(), there + everyKind().size());
        CHECK(nora.day(kBarn).size() == everyKind().size());
        CHECK(ben.day(kLake).size() == everyKind().size());
    }
}

TEST_CASE("touches in a parted event stay where they are, touches in others travel") {
    Crew crew;
    Tablet& nora = crew.add();
    Tablet& ben = crew.add();
    REQUIRE(nora.store->append(ofLostPhone(kOrchard, 5)));
    REQUIRE(ben.store->append(ofLostPhone(kOrchard, 5, 4, 100)));
    const Link& link = crew.connect(nora, ben);
    crew.run();
    crew.said.clear();

    Crew::touch(nora, kOrchard);
    Crew::touch(nora, kBarn);
    Crew::touch(ben, kOrchard);
    Crew::touch(ben, kLake);
    for (int i = 0; i < 3; ++i)
        crew.beat();

    checkPartedOrchardOnly(link, 6, 6);
    CHECK(crew.entriesSaid() == 2);
    CHECK(crew.count<Refused>() == 0);
}

TEST_CASE("a record that parts while they are connected is found by what arrives") {
    Crew crew;
    Tablet& nora = crew.add();
    Tablet& ben = crew.add();
    const Link& link = crew.connect(nora, ben);
    crew.run();

    // From two other devices, which each met one copy of the lost phone.
    REQUIRE(nora.store->append(ofLostPhone(kOrchard, 5)));
    REQUIRE(ben.store->append(ofLostPhone(kOrchard, 6, 3, 100)));
    link.a.exchange->noteAdded(kOrchard);
    link.b.exchange->noteAdded(kOrchard);
    crew.run();
    Crew::touch(nora, kBarn);
    Crew::touch(ben, kLake);
    crew.run();

    checkPartedOrchardOnly(link, 5, 6);
}

TEST_CASE("an entry that was altered on its way is not taken, nor what came with it") {
    const std::function<void(Entry&)> alterations[] = {
        [](Entry& e) { e.body.text.replace(e.body.text.find("tables"), 6, "fences"); },
        [](Entry& e) { e.operation.stamp.wall += Duration{1}; },
        [](Entry& e) { e.operation.stamp.counter += 1; },
        [](Entry& e) { e.operation.person = PersonId{"ben"}; },
        [](Entry& e) { e.operation.person.reset(); },
        [](Entry& e) { e.body.kind = "finished"; },
        [](Entry& e) { e.seal[31] ^= 1U; }};
    for (const auto& alter : alterations) {
        Crew crew;
        Tablet& nora = crew.add();
        Tablet& ben = crew.add();
        for (int line = 1; line <= 4; ++line)
            Crew::touch(nora, kOrchard, line);
        Crew::touch(nora, kBarn);
        crew.between = [&](Message& message) {
            auto* said = std::get_if<Entries>(&message);
            if (said != nullptr && said->entries.size() == 4) alter(said->entries[2]);
        };

        const Link& link = crew.connect(nora, ben);
        crew.run();

        checkPartedOrchardOnly(link, 4, 0);
        CHECK(ben.day(kBarn).size() == 1);
        CHECK(ben.arrived.size() == 1);
    }
}

TEST_CASE("a parted event is tried anew on the next connection") {
    Crew crew;
    Tablet& nora = crew.add();
    Tablet& ben = crew.add();
    for (int line = 1; line <= 4; ++line)
        Crew::touch(nora, kOrchard, line);
    crew.between = [&](Message& message) {
        if (auto* said = std::get_if<Entries>(&message)) said->entries.front().seal[0] ^= 1U;
    };
    Link& spoilt = crew.connect(nora, ben);
    crew.run();
    crew.cut(spoilt);
    crew.between = nullptr;

    const Link& sound = crew.connect(nora, ben);
    crew.run();

    CHECK(sound.a.peer().parted.empty());
    checkSame(nora, ben);
}
