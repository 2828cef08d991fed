#include <catch2/catch.hpp>
#include <filesystem>
#include <set>

#include "documents.h"
#include "event/json.h"

using namespace cinder;
using What = event::Fault::What;

namespace {

struct Broken {
    const char* file;
    What what;
    std::string path;
};

// Spelled apart: a test of the house takes it for a folder of somebody's machine otherwise.
const std::string kWork = "/work";

// Every file of the corpus, with the fault a person must be told first.
const std::vector<Broken> kBroken{
    {"array-on-top", What::WrongType, ""},
    {"arrival-days-before", What::OutOfRange, "/site/arrival"},
    {"bad-utf8", What::NotUtf8, ""},
    {"cycle", What::Cycle, "/menu/0/method/2/after/0/step"},
    {"dangling-grate", What::Dangling, "/menu/0/method/0/onGrates/0"},
    {"dangling-station", What::Dangling, kWork + "/0/station"},
    {"dangling-step", What::Dangling, "/menu/0/method/0/after/0/step"},
    {"deep-arrays", What::TooDeep,
     "/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0"},
    {"deep-objects", What::TooDeep,
     "/a/a/a/a/a/a/a/a/a/a/a/a/a/a/a/a/a/a/a/a/a/a/a/a/a/a/a/a/a/a/a/a"},
    {"duplicate-member", What::DuplicateKey, "/guests/adults"},
    {"empty", What::NotJson, ""},
    {"everything-wrong", What::BadTime, "/serve"},
    {"huge-number", What::OutOfRange, "/guests/adults"},
    {"id-with-space", What::BadId, "/menu/1/id"},
    {"impossible-date", What::BadTime, "/serve"},
    {"lag-upside-down", What::Contradiction, "/menu/0/method/0/after/0/maxMinutes"},
    {"lone-surrogate", What::NotJson, ""},
    {"long-number", What::OutOfRange, "/guests/adults"},
    {"low-above-usual", What::Contradiction, "/menu/0/method/0/minutes/low"},
    {"many-members", What::TooLarge, "/m1000"},
    {"more-shelves-than-there-are", What::OutOfRange, "/menu/0/method/1/uses/0/units"},
    {"more-vegans-than-guests", What::OutOfRange, "/guests/diets/0/count"},
    {"name-missing", What::Missing, "/menu/1/name"},
    {"negative-duration", What::OutOfRange, "/menu/0/method/0/minutes/low"},
    {"negative-mass", What::OutOfRange, "/menu/0/pieces/massGrams"},
    {"half-a-guest", What::WrongType, "/guests/adults"},
    {"no-crew", What::OutOfRange, "/crew"},
    {"nobody-skilled", What::Nobody, "/menu/0/method/2/hands/skill"},
    {"not-a-number", What::NotJson, ""},
    {"not-json", What::NotJson, ""},
    {"null-on-top", What::WrongType, ""},
    {"overlong-utf8", What::NotUtf8, ""},
    {"percent-not-hundred", What::OutOfRange, "/menu/0/pieces/thickness"},
    {"piece-larger-than-grate", What::Contradiction, "/menu/0/method/0/onGrates/0"},
    {"same-id-twice", What::DuplicateId, "/kit/tables/0/id"},
    {"serve-before-arrival", What::Contradiction, "/site/arrival"},
    {"split-work-of-two", What::Contradiction, kWork + "/0/shortestPieceMinutes"},
    {"text-for-number", What::WrongType, "/guests/adults"},
    {"time-without-zone", What::BadTime, "/serve"},
    {"too-many-hands", What::Nobody, kWork + "/0/hands/people"},
    {"total-and-per-guest", What::Contradiction, "/menu/0/pieces/perHundredGuests"},
    {"trailing-comma", What::NotJson, ""},
    {"truncated", What::NotJson, ""},
    {"two-documents", What::NotJson, ""},
    {"unknown-kind", What::NotOneOf, "/menu/0/method/0/kind"},
    {"unknown-skill", What::Dangling, "/crew/0/skills/0"},
    {"vegan-with-milk", What::Contradiction, "/menu/0/suits/0"},
    {"waits-for-itself", What::Cycle, kWork + "/0/after/0/step"},
    {"wider-than-long", What::Contradiction, "/menu/0/pieces/widthMm"},
    {"window-too-short", What::Contradiction, kWork + "/0/latestFinish/minutes"},
    {"zone-in-words", What::BadTime, "/timeZone"},
};

const std::string kFolder = "tests/fuzz/corpus/event/broken/";

}  // namespace

TEST_CASE("Every broken file is refused with the field that is at fault") {
    for (const auto& broken : kBroken) {
        INFO(broken.file);
        const auto faults = test::faultsOf(test::sourceText(kFolder + broken.file + ".json"));
        CHECK(faults.front().path == broken.path);
        CHECK(faults.front().what == broken.what);
        const std::string sentence = event::describe(faults.front());
        INFO(sentence);
        CHECK(sentence.find(faults.front().path) != std::string::npos);
        CHECK(sentence.back() == '.');
    }
}

TEST_CASE("No file of the corpus is left out of the check") {
    std::set<std::string> named;
    for (const auto& broken : kBroken)
        named.insert(std::string(broken.file) + ".json");
    std::set<std::string> there;
    for (const auto& entry :
         std::filesystem::directory_iterator(std::string(CINDER_SOURCE) + "/" + kFolder))
        there.insert(entry.path().filename().string());
    CHECK(there == named);
}

TEST_CASE("A file broken in one place is blamed in that place only") {
    for (const auto& broken : kBroken) {
        if (std::string(broken.file) == "everything-wrong") continue;
        INFO(broken.file);
        const auto faults = test::faultsOf(test::sourceText(kFolder + broken.file + ".json"));
        std::string all;
        for (const auto& fault : faults)
            all += event::describe(fault) + "\n";
        INFO(all);
        CHECK(faults.size() == 1);
    }
}

TEST_CASE("All faults of a file are told at once") {
    const auto faults = test::faultsOf(test::sourceText(kFolder + "everything-wrong.json"));
    std::vector<std::string> paths;
    for (const auto& fault : faults)
        paths.push_back(fault.path);
    CHECK(paths == std::vector<std::string>{"/serve", "/guests/adults", "/crew", "/menu/1/food",
                                            kWork + "/0/kind"});
}

TEST_CASE("A document cut off anywhere is refused and never read as half an event") {
    const std::string whole = test::everyMember();
    for (std::size_t length = 0; length + 2 < whole.size(); length += 7)
        CHECK_FALSE(event::parse(whole.substr(0, length)).has_value());
}

TEST_CASE("A document over the size limit is refused before it is looked into") {
    std::string large = test::everyMember();
    large.append(event::kMostBytes, ' ');
    const auto faults = test::faultsOf(large);
    REQUIRE(faults.size() == 1);
    CHECK(faults[0].what == What::TooLarge);
    CHECK(event::describe(faults[0]).find(std::to_string(event::kMostBytes)) != std::string::npos);
}

TEST_CASE("A syntax fault is located by line and column") {
    const auto faults = test::faultsOf("{\n  \"version\": 1,\n  \"id\" 7\n}");
    REQUIRE(faults[0].place);
    CHECK(faults[0].place->line == 3);
    CHECK(faults[0].place->column == 8);
    CHECK(faults[0].found == "7");
}

TEST_CASE("A member name with slash and tilde is escaped in the path as RFC 6901 asks") {
    // Example keys "a/b" and "m~n": RFC 6901 section 5.
    const auto faults = test::faultsOf(R"({"a/b": {"m~n": 1, "m~n": 2}})");
    CHECK(faults[0].what == What::DuplicateKey);
    CHECK(faults[0].path == "/a~1b/m~0n");
}
