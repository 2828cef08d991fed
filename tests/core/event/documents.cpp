#include "documents.h"

#include <catch2/catch.hpp>
#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>

#include "event/json.h"

namespace cinder::test {

std::string sourceText(const std::string& path) {
    const std::ifstream file(std::string(CINDER_SOURCE) + "/" + path, std::ios::binary);
    INFO(path);
    REQUIRE(file.good());
    std::stringstream text;
    text << file.rdbuf();
    return text.str();
}

std::string everyMember() {
    return sourceText("tests/fuzz/corpus/event/good/every-member.json");
}

std::vector<std::string> demoFiles() {
    return {"demo-data/orchard-harvest-lunch.json", "demo-data/pruning-day-supper.json",
            "demo-data/last-apple-feast.json"};
}

std::string replaced(std::string document, const std::string& what, const std::string& by) {
    const auto at = document.find(what);
    INFO(what);
    REQUIRE(at != std::string::npos);
    return document.replace(at, what.size(), by);
}

event::Faults faultsOf(const std::string& document) {
    const auto read = event::parse(document);
    REQUIRE_FALSE(read.has_value());
    REQUIRE_FALSE(read.error().empty());
    return read.error();
}

event::Fault faultWith(const std::string& pointer, const nlohmann::ordered_json& value) {
    auto document = nlohmann::ordered_json::parse(everyMember());
    document[nlohmann::ordered_json::json_pointer(pointer)] = value;
    const auto faults = faultsOf(document.dump());
    REQUIRE(faults.size() == 1);
    return faults.front();
}

}  // namespace cinder::test
