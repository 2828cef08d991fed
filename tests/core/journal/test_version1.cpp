/// The bytes of a journal, as they stand on disks already. Nothing here may be written anew so that
/// a test passes: what an older app wrote must be read, and understood as it was meant.

#include <catch2/catch.hpp>

#include <algorithm>
#include <charconv>
#include <fstream>
#include <set>

#include "journal/codec.h"
#include "journal/seal.h"
#include "samples.h"

using namespace samples;

namespace {

/// A line of version1.jsonl: {"kind":word,"version":n,"body":object}, the body word for word.
struct Line {
    BodyText body;
    std::int32_t version = 0;
};

std::string textOf(const BodyText& body) {
    return R"({"kind":")" + body.kind + R"(","version":)" + std::to_string(kBodyVersion) +
           R"(,"body":)" + body.text + "}";
}

Line lineOf(const std::string& text) {
    const std::string before[] = {R"({"kind":")", R"(","version":)", R"(,"body":)"};
    const auto version = text.find(before[1]);
    const auto body = text.find(before[2]);
    INFO(text);
    REQUIRE(text.starts_with(before[0]));
    REQUIRE(version < body);
    REQUIRE(body != std::string::npos);
    REQUIRE(text.ends_with('}'));
    Line line;
    const auto kindAt = before[0].size();
    line.body.kind = text.substr(kindAt, version - kindAt);
    const auto versionAt = version + before[1].size();
    std::from_chars(text.data() + versionAt, text.data() + body, line.version);
    const auto bodyAt = body + before[2].size();
    line.body.text = text.substr(bodyAt, text.size() - 1 - bodyAt);
    return line;
}

std::vector<std::string> versionOne() {
    std::ifstream file(CINDER_SOURCE "/tests/core/journal/version1.jsonl", std::ios::binary);
    std::vector<std::string> lines;
    for (std::string line; std::getline(file, line);)
        lines.push_back(line);
    return lines;
}

std::vector<Body> everything() {
    std::vector<Body> all = everyKind();
    const std::vector<Body> words = everyOtherWord();
    all.insert(all.end(), words.begin(), words.end());
    return all;
}

std::string hex(const Seal& seal) {
    constexpr const char* kDigits = "0123456789abcdef";
    std::string text;
    for (const std::uint8_t byte : seal) {
        text += kDigits[byte >> 4U];
        text += kDigits[byte & 0xFU];
    }
    return text;
}

}  // namespace

TEST_CASE("every operation is written byte for byte as version 1 wrote it") {
    const auto written = versionOne();
    REQUIRE_FALSE(written.empty());
    for (const Body& body : everything()) {
        // A kind that is new has no line yet: add this one, and touch no other.
        INFO("not in version1.jsonl: " << textOf(writeBody(body)));
        CHECK(std::count(written.begin(), written.end(), textOf(writeBody(body))) == 1);
    }
}

TEST_CASE("every operation that version 1 wrote is read as what it was") {
    const auto all = everything();
    const auto written = versionOne();
    CHECK(written.size() == all.size());
    for (const std::string& text : written) {
        CAPTURE(text);
        const Line line = lineOf(text);
        CHECK(line.version == 1);
        const Body body = readBody(line.body.kind, line.version, line.body.text);
        CHECK(std::holds_alternative<Unknown>(body) == (line.body.kind == "of-a-later-year"));
        CHECK(std::find(all.begin(), all.end(), body) != all.end());
        CHECK(textOf(writeBody(body)) == text);
    }
}

TEST_CASE("the samples have every kind of operation and of entry in the food record") {
    std::set<std::size_t> kinds;
    std::set<std::size_t> facts;
    for (const Body& body : everyKind()) {
        kinds.insert(body.index());
        if (const auto* fact = std::get_if<safety::Fact>(&body)) facts.insert(fact->index());
    }
    CHECK(kinds.size() == std::variant_size_v<Body>);
    CHECK(facts.size() == std::variant_size_v<safety::Fact>);
}

TEST_CASE("the seals of a chain are those that version 1 set") {
    // Computed apart from the app: Python 3.11, hashlib.blake2b(digest_size=32), over what seal.h
    // says is sealed, numbers as eight bytes with the least first and texts after their length.
    Operation first = operation(1, Turned{TaskId{"lamb/cook/1"}, 3, at(6)});
    Operation second = operation(2, Undone{{DeviceId{"tablet"}, 1}});
    second.person.reset();
    second.stamp.counter = 7;

    const Seal one = seal(kFirstSeal, first, writeBody(first.body));
    const Seal two = seal(one, second, writeBody(second.body));

    CHECK(hex(one) == "2455816a1b294f1b9d56db27b6105d8b3a105cd16006f2f0b205ed07eecfc62c");
    CHECK(hex(two) == "c0cfcb6bc6755b60f1199c5e6177935343f1aea8cd8ea786acb608a8958e88f4");
}
