#pragma once

/// The demo events as values.

#include <catch2/catch.hpp>
#include <fstream>
#include <sstream>
#include <string>

#include "event/json.h"

namespace cinder::test {

inline event::Event demo(const std::string& name) {
    const std::ifstream file(std::string(CINDER_SOURCE) + "/demo-data/" + name + ".json");
    std::stringstream text;
    text << file.rdbuf();
    auto event = event::parse(text.str());
    INFO(name);
    REQUIRE(event.has_value());
    return *std::move(event);
}

inline event::Event orchard() {
    return demo("orchard-harvest-lunch");
}

}  // namespace cinder::test
