#include <sodium.h>
#include <catch2/catch.hpp>

#include <string>

#include "journal/seal.h"
#include "samples.h"

using namespace samples;

namespace {

Seal sealOf(const Operation& op, const Seal& previous = kFirstSeal) {
    return seal(previous, op, writeBody(op.body));
}

}  // namespace

TEST_CASE("the library computes the BLAKE2b that the standard prints") {
    // Source: RFC 7693 appendix A, BLAKE2b-512 of "abc" (first eight bytes).
    std::array<unsigned char, 64> out{};
    const std::string abc = "abc";

    crypto_generichash(out.data(), out.size(), reinterpret_cast<const unsigned char*>(abc.data()),
                       abc.size(), nullptr, 0);

    const std::array<unsigned char, 8> published{0xBA, 0x80, 0xA5, 0x3F, 0x98, 0x1C, 0x4D, 0x0D};
    CHECK(std::equal(published.begin(), published.end(), out.begin()));
}

TEST_CASE("changing any field of an operation changes its seal") {
    const Operation original = operation(3, Turned{TaskId{"lamb/cook/1"}, 3, at(6)});
    const Seal expected = sealOf(original);
    Operation changed = original;

    SECTION("event") {
        changed.event = EventId{"orchards"};
    }
    SECTION("device") {
        changed.id.device = DeviceId{"phone"};
    }
    SECTION("sequence") {
        changed.id.sequence = 4;
    }
    SECTION("wall time") {
        changed.stamp.wall += Duration{1};
    }
    SECTION("counter") {
        changed.stamp.counter = 1;
    }
    SECTION("person") {
        changed.person.reset();
    }
    SECTION("version") {
        changed.version = 2;
    }
    SECTION("kind") {
        changed.body = LineTicked{TaskId{"lamb/cook/1"}, 3, at(6)};
    }
    SECTION("body") {
        changed.body = Turned{TaskId{"lamb/cook/1"}, 3, at(7)};
    }

    CHECK(sealOf(changed) != expected);
    CHECK(sealOf(original, expected) != expected);
}

TEST_CASE("moving a letter from one field into the next changes the seal") {
    Operation a = operation(1, Undone{}, "tab");
    a.event = EventId{"orchardx"};
    Operation b = operation(1, Undone{}, "xtab");
    b.event = EventId{"orchard"};

    CHECK(sealOf(a) != sealOf(b));
}
