#include <sodium.h>
#include <catch2/catch.hpp>

#include <set>

#include "sync/check_digits.h"
#include "sync/crew_code.h"

using namespace cinder::sync;

namespace {

std::string hexOf(const CrewKey& key) {
    std::string hex(2 * key.size() + 1, '\0');
    sodium_bin2hex(hex.data(), hex.size(), key.data(), key.size());
    hex.pop_back();
    return hex;
}

/// As an IBAN is checked (ISO 13616): the first four characters go to the end, letters count from
/// A = 10.
std::string asDigits(std::string iban) {
    iban = iban.substr(4) + iban.substr(0, 4);
    std::string digits;
    for (const char c : iban)
        digits += c >= 'A' ? std::to_string(c - 'A' + 10) : std::string(1, c);
    return digits;
}

}  // namespace

TEST_CASE("the check digits are those of ISO/IEC 7064, MOD 97-10") {
    // The example of the standard (from memory), and two more numbers; all three are in the tests
    // of the npm package cdigit 2.6.6, test/mod97_10.js. Where the digits are 97 or 98, that
    // package writes 00 or 01; ours are those of ISO 13616, which says 98 less the rest.
    CHECK(checkDigits("794") == "44");
    CHECK(checkDigits("32142829123456987654321611") == "82");
    CHECK(checkDigits("94230737687") == "04");
}

TEST_CASE("published account numbers, which use the same digits, are 1 modulo 97") {
    // SWIFT, IBAN Registry (ISO 13616), examples of Germany and the United Kingdom; the third is
    // the one most explanations of the check use. All three from memory.
    CHECK(modulo97(asDigits("DE89370400440532013000")) == 1);
    CHECK(modulo97(asDigits("GB29NWBK60161331926819")) == 1);
    CHECK(modulo97(asDigits("GB82WEST12345698765432")) == 1);
}

TEST_CASE("a new code is sixteen digits that fit each other, and another one every time") {
    std::set<std::string> codes;
    for (int i = 0; i < 1000; ++i) {
        const std::string code = newCode();
        CHECK(code.size() == kCodeDigits);
        CHECK(isCode(code));
        codes.insert(code);
    }

    CHECK(codes.size() == 1000);
}

TEST_CASE("every digit comes up at every place that is left to chance") {
    std::array<std::set<char>, kCodeDigits - 2> seen;
    for (int i = 0; i < 1000; ++i) {
        const std::string code = newCode();
        for (std::size_t place = 0; place < seen.size(); ++place)
            seen[place].insert(code[place]);
    }

    for (const auto& digits : seen)
        CHECK(digits.size() == 10);
}

TEST_CASE("no slip in one digit makes another code") {
    const std::string code = newCode();
    for (std::size_t place = 0; place < code.size(); ++place) {
        for (char digit = '0'; digit <= '9'; ++digit) {
            std::string slip = code;
            slip[place] = digit;
            CHECK(isCode(slip) == (slip == code));
        }
    }
}

TEST_CASE("no two digits that changed places make another code") {
    for (int i = 0; i < 20; ++i) {
        const std::string code = newCode();
        for (std::size_t a = 0; a < code.size(); ++a) {
            for (std::size_t b = a + 1; b < code.size(); ++b) {
                std::string slip = code;
                std::swap(slip[a], slip[b]);
                CHECK(isCode(slip) == (slip == code));
            }
        }
    }
}

TEST_CASE("what is not sixteen digits is no code, whatever it is") {
    const std::string code = newCode();

    CHECK_FALSE(isCode(""));
    CHECK_FALSE(isCode(code.substr(1)));
    CHECK_FALSE(isCode(code + "0"));
    CHECK_FALSE(isCode(" " + code.substr(1)));
    CHECK_FALSE(isCode(code.substr(0, 15) + "\xB9"));
    CHECK_FALSE(isCode(std::string(16, '\0')));
    CHECK_FALSE(isCode(std::string(16, '0')));
}

TEST_CASE("the key is Argon2id of the code, the same on every device and in every version") {
    // Made with the command `argon2` of the reference implementation (Debian package argon2
    // 0~20171227): argon2 "cinderbell crew1" -id -t 4 -m 16 -p 1 -l 32
    const auto key = crewKey("1234567890123428");

    REQUIRE(key);
    CHECK(hexOf(*key) == "f6a6c5e4dcaaa6ee6765f08dabcd143aa923199aaf8dd215d5ce48b4b0ba06c2");
    // Python 3.11, hashlib.blake2b("cinderbell crew mark 1", key=…, digest_size=32), the first
    // eight bytes.
    CHECK(crewMark(*key) == "2de02a9ebb167a71");
}

TEST_CASE("there is no key without a code") {
    CHECK_FALSE(crewKey(""));
    CHECK_FALSE(crewKey("1234567890123429"));
    CHECK_FALSE(crewKey("123456789012342"));
}

TEST_CASE("crews have marks of their own") {
    CrewKey one{};
    CrewKey other{};
    other.back() = 1;

    CHECK(crewMark(one).size() == 16);
    CHECK(crewMark(one) != crewMark(other));
}
