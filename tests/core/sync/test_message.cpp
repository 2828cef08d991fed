#include <catch2/catch.hpp>

#include <rapidcheck.h>

#include "../journal/samples.h"
#include "base/rng.h"
#include "sync/cbor_guard.h"
#include "sync/message.h"

using namespace samples;
using namespace cinder::sync;

namespace {

Seal someSeal(std::uint8_t first) {
    Seal seal{};
    for (std::uint8_t& byte : seal)
        byte = first++;
    return seal;
}

/// Sealed and written as the store keeps them.
std::vector<Entry> someEntries() {
    std::vector<Entry> entries;
    Seal last = kFirstSeal;
    for (const Body& body : everyKind()) {
        Entry entry{operation(entries.size() + 1, body), writeBody(body), {}};
        if (entries.size() % 3 == 0) entry.operation.person.reset();
        last = entry.seal = seal(last, entry.operation, entry.body);
        entries.push_back(std::move(entry));
    }
    return entries;
}

std::vector<ChainHead> someHeads() {
    return {{EventId{"orchard"}, {DeviceId{"tablet"}, 1}, someSeal(0)},
            {EventId{"orchard"}, {DeviceId{"phone"}, std::uint64_t{1} << 53U}, someSeal(200)}};
}

std::vector<Message> oneOfEach() {
    return {Greet{kVersion, DeviceId{"tablet"}, "Nora"},
            Greet{2'147'483'647, DeviceId{"phone"}, ""},
            Ask{at(1)},
            Answer{at(1), at(-3600), Instant{}},
            Heads{someHeads()},
            Heads{},
            Entries{someEntries()},
            TakenOver{someHeads()},
            Refused{EventId{"orchard"}, Refused::Why::Parted},
            Refused{EventId{"barn"}, Refused::Why::Storage}};
}

std::string bytes(std::initializer_list<unsigned> values) {
    std::string text;
    for (const unsigned value : values)
        text.push_back(static_cast<char>(value));
    return text;
}

std::string repeated(unsigned byte, std::size_t times) {
    return std::string(times, static_cast<char>(byte));
}

/// An Entries message of one entry; `change` makes it unsound.
template <class Change>
Message entriesWith(Change change) {
    Entries said{{someEntries()[1]}};
    change(said.entries.front());
    return said;
}

}  // namespace

TEST_CASE("whatever is said is heard as it was said") {
    for (const Message& message : oneOfEach()) {
        const auto heard = read(write(message));
        REQUIRE(heard);
        CHECK(*heard == message);
    }
}

TEST_CASE("the same message has the same bytes") {
    for (const Message& message : oneOfEach())
        CHECK(write(message) == write(read(write(message)).value()));
}

TEST_CASE("a message is CBOR as RFC 8949 writes it") {
    // The pieces by RFC 8949, section 3 and appendix A: a2 a map of two, 63 and 65 text of three
    // and five bytes, 1b000000e8d4a51000 the number 1000000000000.
    const std::string ask = bytes({0xA2, 0x65}) + "asked" +
                            bytes({0x1B, 0, 0, 0, 0xE8, 0xD4, 0xA5, 0x10, 0}) + bytes({0x63}) +
                            "say" + bytes({0x63}) + "ask";

    CHECK(write(Ask{Instant{Duration{1'000'000'000'000}}}) == ask);
    CHECK(read(ask).value() == Message{Ask{Instant{Duration{1'000'000'000'000}}}});
}

TEST_CASE("members in another order and members of later versions do not matter") {
    // f6 is null and 83010203 is [1, 2, 3] (RFC 8949, appendix A).
    const std::string ask = bytes({0xA4, 0x63}) + "say" + bytes({0x63}) + "ask" + bytes({0x61}) +
                            "a" + bytes({0xF6, 0x61}) + "b" + bytes({0x83, 1, 2, 3, 0x65}) +
                            "asked" + bytes({0x18, 0x64});  // 1864 is 100

    CHECK(read(ask).value() == Message{Ask{Instant{Duration{100}}}});
}

TEST_CASE("examples of RFC 8949, appendix A, are sound where lengths are known, and no messages") {
    const std::string plain[] = {
        bytes({0xA0}),                                                  // {}
        bytes({0x80}),                                                  // []
        bytes({0x00}),                                                  // 0
        bytes({0xF6}),                                                  // null
        bytes({0xFB, 0x3F, 0xF1, 0x99, 0x99, 0x99, 0x99, 0x99, 0x9A}),  // 1.1
        bytes({0x44, 1, 2, 3, 4}),                                      // h'01020304'
        bytes({0x64, 0x49, 0x45, 0x54, 0x46}),                          // "IETF"
        bytes({0xA2, 0x61, 0x61, 1, 0x61, 0x62, 0x82, 2, 3}),           // {"a": 1, "b": [2, 3]}
        bytes({0x82, 0x61, 0x61, 0xA1, 0x61, 0x62, 0x61, 0x63}),        // ["a", {"b": "c"}]
        bytes({0xA2, 1, 2, 3, 4}),                                      // {1: 2, 3: 4}
    };
    const std::string unknownLengthOrTag[] = {
        bytes({0x9F, 0xFF}),                             // [_ ]
        bytes({0xBF, 0x61, 0x61, 1, 0xFF}),              // {_ "a": 1}, shortened
        bytes({0x5F, 0x42, 1, 2, 0x43, 3, 4, 5, 0xFF}),  // (_ h'0102', h'030405')
        bytes({0xC1, 0x1A, 0x51, 0x4B, 0x67, 0xB0}),     // 1(1363896240)
    };

    for (const std::string& example : plain) {
        CHECK(isPlainCbor(example));
        CHECK_FALSE(read(example));
    }
    for (const std::string& example : unknownLengthOrTag) {
        CHECK_FALSE(isPlainCbor(example));
        CHECK_FALSE(read(example));
    }
}

TEST_CASE("what a newer app wrote comes through word for word") {
    Entry entry{operation(1, Unknown{"of-a-later-year", "not even { JSON"}), {}, someSeal(9)};
    entry.operation.version = 7;
    entry.body = {"of-a-later-year", "not even { JSON"};
    Entry known = entry;
    known.body = {"turned", R"({"task":"lamb","turn":3,"at":5,"hand":"left"})"};
    known.operation.body = Unknown{known.body.kind, known.body.text};

    CHECK(read(write(Entries{{entry, known}})).value() == Message{Entries{{entry, known}}});
}

TEST_CASE("text that is no sound UTF-8 comes through word for word, as its seal wants it") {
    Entry entry{operation(1, Unknown{"later", "\xFF\xC3("}), {"later", "\xFF\xC3("}, someSeal(9)};
    entry.operation.person = PersonId{std::string("no\0ra", 5)};

    CHECK(read(write(Entries{{entry}})).value() == Message{Entries{{entry}}});
}

TEST_CASE("who did it may be nobody, which is not the same as a person without a name") {
    const auto said = [](std::optional<PersonId> person) {
        return entriesWith([&](Entry& entry) { entry.operation.person = std::move(person); });
    };

    CHECK(read(write(said({}))).value() == said({}));
    CHECK(read(write(said(PersonId{}))).value() == said(PersonId{}));
    CHECK(said({}) != said(PersonId{}));
}

TEST_CASE("an entry with a field beyond its bounds is not read") {
    const std::string longName(201, 'x');
    const std::uint64_t most = std::uint64_t{1} << 53U;
    const auto isRead = [](auto change) { return read(write(entriesWith(change))).has_value(); };

    CHECK(isRead([](Entry&) {}));
    CHECK(isRead([&](Entry& e) { e.operation.event = EventId{longName.substr(1)}; }));
    CHECK(isRead([&](Entry& e) { e.operation.id.sequence = most; }));
    CHECK(isRead([&](Entry& e) { e.operation.stamp.counter = 4'294'967'295; }));
    CHECK_FALSE(isRead([&](Entry& e) { e.operation.event = EventId{longName}; }));
    CHECK_FALSE(isRead([&](Entry& e) { e.operation.event = EventId{}; }));
    CHECK_FALSE(isRead([&](Entry& e) { e.operation.id.device = DeviceId{longName}; }));
    CHECK_FALSE(isRead([&](Entry& e) { e.operation.id.device = DeviceId{}; }));
    CHECK_FALSE(isRead([&](Entry& e) { e.operation.id.sequence = 0; }));
    CHECK_FALSE(isRead([&](Entry& e) { e.operation.id.sequence = most + 1; }));
    CHECK_FALSE(isRead([&](Entry& e) { e.operation.id.sequence = ~std::uint64_t{0}; }));
    CHECK_FALSE(isRead([&](Entry& e) { e.operation.stamp.wall = Instant::max(); }));
    CHECK_FALSE(isRead([&](Entry& e) { e.operation.stamp.wall = Instant::min(); }));
    CHECK_FALSE(isRead([&](Entry& e) { e.operation.person = PersonId{longName}; }));
    CHECK_FALSE(isRead([&](Entry& e) { e.operation.version = -1; }));
    CHECK_FALSE(isRead([&](Entry& e) { e.body.kind = longName; }));
    CHECK_FALSE(isRead([&](Entry& e) { e.body.kind.clear(); }));
}

TEST_CASE("a holder's name is as long as may be and no longer") {
    CHECK(read(write(Greet{1, DeviceId{"tablet"}, std::string(kLongestHolder, 'x')})));
    CHECK_FALSE(read(write(Greet{1, DeviceId{"tablet"}, std::string(kLongestHolder + 1, 'x')})));
}

TEST_CASE("a seal is thirty-two bytes, not one more or less, and not text") {
    const std::string sound = write(Heads{{someHeads().front()}});
    const auto start = sound.find(bytes({0x58, 0x20, 0x00, 0x01}));  // a byte string of 32
    REQUIRE(start != std::string::npos);
    const auto with = [&](unsigned kind, unsigned length) {
        std::string changed = sound;
        changed.replace(start, 34, bytes({kind, length}) + repeated('a', length));
        return changed;
    };

    CHECK(read(with(0x58, 32)));
    CHECK_FALSE(read(with(0x58, 31)));
    CHECK_FALSE(read(with(0x58, 33)));
    CHECK_FALSE(read(with(0x78, 32)));
}

TEST_CASE("more bytes than any message has are not read") {
    Entries said{{someEntries().front()}};
    said.entries.front().body.text.assign(kMostBytes, ' ');

    CHECK_FALSE(read(write(said)));
}

TEST_CASE("bytes made to exhaust the stack or the memory are refused") {
    const std::size_t many = 100'000;
    CHECK_FALSE(read(repeated(0x81, many)));                  // a list in a list in a list
    CHECK_FALSE(read(repeated(0x81, many) + bytes({0x00})));  // the same, whole
    CHECK_FALSE(read(repeated(0x9F, many)));                  // of unknown length
    CHECK_FALSE(read(repeated(0xBF, many)));
    CHECK_FALSE(read(repeated(0x7F, many)));  // text in pieces of pieces
    CHECK_FALSE(read(repeated(0x5F, many)));
    CHECK_FALSE(read(bytes({0xA1}) + repeated(0x7F, many)));  // as the name of a member
    CHECK_FALSE(read(repeated(0xC1, many)));                  // tags on tags
    CHECK_FALSE(read(repeated(0x7F, kMostBytes)));
    CHECK_FALSE(read(repeated(0x81, kMostBytes)));
    // A list, a map and a text that claim to be longer than there are bytes in the world.
    CHECK_FALSE(read(bytes({0x9B}) + repeated(0xFF, 8)));
    CHECK_FALSE(read(bytes({0x9B}) + repeated(0xFF, 7) + bytes({0xFE}) + repeated(0, 64)));
    CHECK_FALSE(read(bytes({0xBB, 0x80}) + repeated(0, 7) + repeated(0, 64)));
    CHECK_FALSE(read(bytes({0x7B}) + repeated(0xFF, 8) + "text"));
    CHECK_FALSE(read(bytes({0x5B}) + repeated(0xFF, 8) + "bytes"));
    // A million and more values in one list.
    CHECK_FALSE(isPlainCbor(bytes({0x9A, 0x00, 0xF0, 0x00, 0x00}) + repeated(0, 0xF00000)));
}

TEST_CASE("a body nested without end is taken as words and not followed") {
    for (const char* open : {"[", R"({"a":)"}) {
        std::string deep;
        for (int i = 0; i < 200'000; ++i)
            deep += open;
        Entry entry{operation(1, Unknown{"turned", deep}), {"turned", deep}, someSeal(1)};

        CHECK(read(write(Entries{{entry}})).value() == Message{Entries{{entry}}});
    }
}

TEST_CASE("no beginning of a message is a message") {
    for (const Message& message : oneOfEach()) {
        const std::string whole = write(message);
        std::size_t heard = 0;
        for (std::size_t length = 0; length < whole.size(); ++length)
            heard += read(std::string_view(whole).substr(0, length)).has_value() ? 1 : 0;
        CHECK(heard == 0);
        CHECK_FALSE(read(whole + '\0'));
    }
}

TEST_CASE("bytes that were changed anywhere are refused or heard as another message, never more") {
    std::vector<std::string> sound;
    for (const Message& message : oneOfEach())
        sound.push_back(write(message));
    const auto changedIn = [](std::string text, Rng& rng) {
        for (std::uint32_t changes = 1 + rng.below(5); changes > 0 && !text.empty(); --changes) {
            const std::size_t place = rng.below(static_cast<std::uint32_t>(text.size()));
            const auto byte = static_cast<char>(rng.below(256));
            const std::uint32_t how = rng.below(3);
            if (how == 0) text[place] = byte;
            if (how == 1) text.insert(place, 1, byte);
            if (how == 2) text.erase(place, 1);
        }
        return text;
    };

    CHECK(rc::check("any change", [&] {
        Rng rng(*rc::gen::arbitrary<std::uint64_t>());
        for (int i = 0; i < 20; ++i) {
            for (const std::string& text : sound) {
                // What is heard is a message like any other: it can be said again.
                const auto heard = read(changedIn(text, rng));
                if (heard) RC_ASSERT(read(write(*heard)).value() == *heard);
            }
        }
    }));
    CHECK(rc::check("any bytes", [] {
        const auto heard = read(*rc::gen::arbitrary<std::string>());
        if (heard) RC_ASSERT(read(write(*heard)).value() == *heard);
    }));
}

TEST_CASE("each bit of a message may be the other one") {
    for (const Message& message : oneOfEach()) {
        std::string changed = write(message);
        std::size_t heardTwoWays = 0;
        for (char& byte : changed) {
            for (unsigned bit = 1; bit < 256 && changed.size() < 2000; bit <<= 1U) {
                byte = static_cast<char>(static_cast<unsigned char>(byte) ^ bit);
                const auto heard = read(changed);
                if (heard && !(read(write(*heard)).value() == *heard)) ++heardTwoWays;
                byte = static_cast<char>(static_cast<unsigned char>(byte) ^ bit);
            }
        }
        CHECK(heardTwoWays == 0);
    }
}
