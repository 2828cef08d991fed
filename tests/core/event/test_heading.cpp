#include <catch2/catch.hpp>

#include <fstream>
#include <sstream>

#include "event/heading.h"
#include "event/json.h"

using namespace cinder;

namespace {

std::string demo(const std::string& name) {
    std::ifstream file(CINDER_SOURCE "/demo-data/" + name);
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

}  // namespace

TEST_CASE("the heading of a demo is what the whole document says") {
    for (const char* name :
         {"orchard-harvest-lunch.json", "last-apple-feast.json", "pruning-day-supper.json"}) {
        const auto document = demo(name);
        const auto whole = event::parse(document).value();
        const auto heading = event::readHeading(document);
        REQUIRE(heading);
        CHECK(heading->name == whole.name);
        CHECK(heading->serve == whole.serve);
    }
}

TEST_CASE("a heading is found wherever it stands, and names of other things are not taken for it") {
    const auto heading = event::readHeading(
        R"({"site": {"name": "Meadow", "serve": "x"}, "crew": [{"name": {"en": "Nora"}}],
            "serve": "2027-09-18T13:00:00-04:00", "name": "Lunch"})");
    REQUIRE(heading);
    CHECK(heading->name.in("en") == "Lunch");
    CHECK(formatRfc3339(heading->serve) == "2027-09-18T13:00:00-04:00");
}

TEST_CASE("a document without name or serve time, or that is none, has no heading") {
    for (const char* document :
         {"", "[]", "{}", "notes", R"({"name": "Lunch"})",
          R"({"serve": "2027-09-18T13:00:00-04:00"})",
          R"({"name": 3, "serve": "2027-09-18T13:00:00-04:00"})",
          R"({"name": "Lunch", "serve": "noon"})", R"({"name": {}, "serve": "noon"})"})
        CHECK_FALSE(event::readHeading(document));
}

TEST_CASE("nothing after the heading is read") {
    CHECK(event::readHeading(R"({"name": "Lunch", "serve": "2027-09-18T13:00:00-04:00", broken)"));
}
