/// What a device makes of another that does not keep to the order, or is none of its kind.

#include "base/rng.h"
#include "crew.h"

using namespace samples;

namespace {

/// One device, and everything that it says to another that the test plays.
struct Alone {
    Crew crew;
    Tablet& nora = crew.add();
    std::vector<Message> said;
    std::vector<Entry> arrived;
    Exchange exchange{
        *nora.store,
        "Nora",
        {[this](std::string bytes) { said.push_back(cinder::sync::read(bytes).value()); },
         [this] { return nora.clock.wall(); },
         [this](const std::vector<Entry>& entries) {
             arrived.insert(arrived.end(), entries.begin(), entries.end());
         }}};

    Alone() { exchange.begin(); }
    bool hears(const Message& message) { return exchange.receive(cinder::sync::write(message)); }
    bool hearsAll(const std::vector<Message>& messages) {
        return std::all_of(messages.begin(), messages.end(),
                           [this](const Message& message) { return hears(message); });
    }
    /// To the question that `begin` asked.
    [[nodiscard]] Answer answer() const {
        return {nora.clock.wall(), nora.clock.wall(), nora.clock.wall()};
    }
};

const Greet kGreet{kVersion, DeviceId{"other"}, "Ben"};

Entries oneEntry(std::uint64_t sequence = 1, const std::string& device = "other") {
    const Operation op = operation(sequence, LineTicked{TaskId{"tables"}, 1, at(1)}, device);
    const BodyText body = writeBody(op.body);
    return {{{op, body, seal(kFirstSeal, op, body)}}};
}

}  // namespace

TEST_CASE("a device begins with a greeting and a question about the time") {
    const Alone alone;

    CHECK(alone.said ==
          std::vector<Message>{Greet{kVersion, alone.nora.store->device(), "Nora"}, Ask{at(0)}});
    CHECK(alone.exchange.peer() == Peer{});
}

TEST_CASE("nothing is heard before the greeting") {
    for (const Message& message :
         std::vector<Message>{Ask{at(0)}, Answer{at(0), at(0), at(0)}, Heads{}, oneEntry(),
                              TakenOver{}, Refused{kOrchard, Refused::Why::Parted}})
        CHECK_FALSE(Alone().hears(message));
}

TEST_CASE("a device with the name of this one is a copy of it, and is refused") {
    Alone alone;

    CHECK_FALSE(alone.hears(Greet{kVersion, alone.nora.store->device(), ""}));
    CHECK_FALSE(Alone().hears(Greet{kVersion + 1, DeviceId{}, ""}));
}

TEST_CASE("a device does not become another one") {
    Alone alone;

    REQUIRE(alone.hears(kGreet));
    CHECK(alone.hears(Greet{kVersion, DeviceId{"other"}, "Ann"}));
    CHECK(alone.exchange.peer().holder == "Ann");
    CHECK_FALSE(alone.hears(Greet{kVersion, DeviceId{"third"}, "Ann"}));
}

TEST_CASE("with another version nothing is exchanged, whatever it says") {
    Alone alone;
    Crew::touch(alone.nora, kOrchard);
    REQUIRE(alone.hears(Greet{kVersion + 1, DeviceId{"other"}, "Ben"}));
    const std::size_t before = alone.said.size();

    CHECK(alone.hearsAll({Ask{at(0)}, alone.answer(), Heads{}, oneEntry()}));
    CHECK(alone.exchange.receive("in words of that version"));
    alone.exchange.beat();
    alone.exchange.noteAdded(kOrchard);

    CHECK(alone.said.size() == before);
    CHECK(alone.exchange.peer().standing == Standing::OtherVersion);
    CHECK(alone.exchange.peer().device == DeviceId{"other"});
    CHECK(alone.exchange.peer().holder == "Ben");
    CHECK(alone.nora.day(kOrchard).size() == 1);
}

TEST_CASE("an answer that nobody asked for breaks the order") {
    Alone alone;

    CHECK(alone.hearsAll({kGreet, alone.answer()}));
    CHECK_FALSE(alone.hears(alone.answer()));
}

TEST_CASE("a question about the time is answered at once") {
    Alone alone;

    REQUIRE(alone.hearsAll({kGreet, Ask{at(-7)}}));

    CHECK(alone.said.back() == Message{Answer{at(-7), at(0), at(0)}});
}

TEST_CASE("entries and what is said of them come after the heads, never before") {
    for (const Message& message :
         std::vector<Message>{oneEntry(), TakenOver{}, Refused{kOrchard, Refused::Why::Storage}}) {
        Alone alone;
        REQUIRE(alone.hearsAll({kGreet, alone.answer()}));
        CHECK_FALSE(alone.hears(message));
    }
}

TEST_CASE("entries of which one does not follow the other break the order") {
    const auto isHeard = [](const Entries& said) {
        Alone alone;
        REQUIRE(alone.hearsAll({kGreet, alone.answer(), Heads{}}));
        return alone.hears(said);
    };
    Entries twice{{oneEntry().entries[0], oneEntry().entries[0]}};
    Entries gap{{oneEntry(1).entries[0], oneEntry(3).entries[0]}};
    Entries two{{oneEntry(1).entries[0], oneEntry(2, "third").entries[0]}};

    CHECK(isHeard(oneEntry()));
    CHECK_FALSE(isHeard(Entries{}));
    CHECK_FALSE(isHeard(twice));
    CHECK_FALSE(isHeard(gap));
    CHECK_FALSE(isHeard(two));
}

TEST_CASE("an entry before which others are missing is not taken, and its event is left alone") {
    Alone alone;
    REQUIRE(alone.hearsAll({kGreet, alone.answer(), Heads{}, oneEntry(2)}));

    CHECK(alone.said.back() == Message{Refused{kOrchard, Refused::Why::Parted}});
    CHECK(alone.nora.day(kOrchard).empty());
}

TEST_CASE("what was taken is answered with how far its chain goes now") {
    Alone alone;
    REQUIRE(alone.hearsAll({kGreet, alone.answer(), Heads{}}));
    const Entries said = oneEntry();

    REQUIRE(alone.hears(said));

    CHECK(alone.said.back() ==
          Message{TakenOver{{{kOrchard, {DeviceId{"other"}, 1}, said.entries[0].seal}}}});
    CHECK(alone.exchange.peer().standing == Standing::UpToDate);
}

TEST_CASE("a device that says less of itself than we gave it is given the rest again") {
    Alone alone;
    Crew::note(alone.nora, kOrchard, everyKind());
    REQUIRE(alone.hearsAll({kGreet, alone.answer(), Heads{}}));
    const Message given = alone.said.back();
    REQUIRE(std::holds_alternative<Entries>(given));

    REQUIRE(alone.hears(Heads{}));

    CHECK(alone.said.back() == given);
}

TEST_CASE("a device that takes something after it refused something is given the next") {
    Alone alone;
    Crew::note(alone.nora, kBarn, everyKind());
    Crew::note(alone.nora, kOrchard, everyKind());
    REQUIRE(alone.hearsAll({kGreet, alone.answer(), Heads{}}));
    const ChainHead barn = alone.nora.store->heads(kBarn).value().front();

    REQUIRE(alone.hears(Refused{kBarn, Refused::Why::Storage}));
    CHECK(alone.exchange.peer().standing == Standing::NotNoted);
    REQUIRE(alone.hears(TakenOver{{barn}}));

    CHECK(std::get<Entries>(alone.said.back()).entries.front().operation.event == kOrchard);
    CHECK(alone.exchange.peer().standing == Standing::Exchanging);
}

TEST_CASE("a parted event is named once, and nothing of it is taken any more") {
    Alone alone;
    Crew::touch(alone.nora, kOrchard);
    const DeviceId nora = alone.nora.store->device();
    const Heads otherWay{{{kOrchard, {nora, 1}, kFirstSeal}}};
    REQUIRE(alone.hearsAll({kGreet, alone.answer(), otherWay}));
    CHECK(alone.said.back() == Message{Refused{kOrchard, Refused::Why::Parted}});
    const std::size_t before = alone.said.size();

    REQUIRE(alone.hearsAll({otherWay, otherWay}));
    CHECK(alone.said.size() == before);
    REQUIRE(alone.hears(oneEntry()));

    CHECK(alone.said.back() == Message{Refused{kOrchard, Refused::Why::Parted}});
    CHECK(alone.nora.day(kOrchard).size() == 1);
    CHECK(alone.arrived.empty());
}

TEST_CASE("heads that come before the clocks are known are compared once they are") {
    Alone alone;
    Crew::touch(alone.nora, kOrchard);
    const OperationId first{alone.nora.store->device(), 1};

    REQUIRE(alone.hearsAll({kGreet, Heads{{{kOrchard, first, kFirstSeal}}}}));
    CHECK(alone.exchange.peer().parted.empty());
    REQUIRE(alone.hears(alone.answer()));

    CHECK(std::holds_alternative<Heads>(alone.said[alone.said.size() - 2]));
    CHECK(alone.said.back() == Message{Refused{kOrchard, Refused::Why::Parted}});
}

TEST_CASE("what a third device brought a moment before is not told of again") {
    Alone alone;
    REQUIRE(alone.hearsAll({kGreet, alone.answer(), Heads{}}));
    REQUIRE(alone.nora.store->take(oneEntry().entries));

    REQUIRE(alone.hears(oneEntry()));

    CHECK(alone.arrived.empty());
    CHECK(std::holds_alternative<TakenOver>(alone.said.back()));
}

TEST_CASE("an answer that comes twice is none to what was given since") {
    Alone alone;
    const Body picture = Unknown{"picture", std::string(200'000, 'x')};
    Crew::note(alone.nora, kOrchard, {picture, picture, picture});
    // Says again what it has before it heard the first picture, and so is given that twice.
    REQUIRE(alone.hearsAll({kGreet, alone.answer(), Heads{}, Heads{}}));
    const OperationId first{alone.nora.store->device(), 1};
    const Message taken =
        TakenOver{{{kOrchard, first, alone.nora.store->sealOf(kOrchard, first).value().value()}}};
    REQUIRE(alone.hears(taken));
    const std::size_t before = alone.said.size();

    REQUIRE(alone.hears(taken));

    CHECK(std::get<Entries>(alone.said.back()).entries.front().operation.id.sequence == 2);
    CHECK(alone.said.size() == before);
    CHECK(alone.exchange.peer().toGo == 2);
}

TEST_CASE("no bytes at all bring an exchange down") {
    Rng rng(20'270'918);
    std::string sound;
    for (int round = 0; round < 80; ++round) {
        Alone alone;
        Crew::touch(alone.nora, kOrchard);
        REQUIRE(alone.hears(kGreet));
        for (const Message& message : std::vector<Message>{
                 alone.answer(), Heads{{{kOrchard, {DeviceId{"third"}, 4}, {}}}}, oneEntry(),
                 TakenOver{}, Ask{at(3)}, Refused{kBarn, Refused::Why::Storage}}) {
            sound = cinder::sync::write(message);
            const std::size_t place = rng.below(static_cast<std::uint32_t>(sound.size()));
            if (rng.below(2) == 0) sound[place] = static_cast<char>(rng.below(256));
            if (rng.below(8) == 0) sound.resize(place);
            if (!alone.exchange.receive(sound)) break;
            alone.exchange.beat();
        }
        CHECK_FALSE(alone.nora.store->verify().value());
        CHECK(alone.nora.day(kOrchard).size() <= 2);
    }
}
