#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include "documents.h"
#include "event/json.h"

using namespace cinder;
using What = event::Fault::What;
using test::faultWith;

TEST_CASE("Only whole meat is of one animal") {
    const auto fault = faultWith("/menu/1/meat", "beef");
    CHECK(fault.what == What::Contradiction);
    CHECK(fault.path == "/menu/1/meat");
    CHECK(fault.allowed == "/menu/1/food");
}

TEST_CASE("A cook wishes a temperature or a doneness, never both") {
    const auto fault = faultWith("/menu/0/doneness", "medium");
    CHECK(fault.what == What::Contradiction);
    CHECK(fault.path == "/menu/0/doneness");
    CHECK(fault.allowed == "/menu/0/pullAtCelsius");
}

TEST_CASE("Beans are not taken medium rare") {
    const auto fault = faultWith("/menu/1/doneness", "mediumRare");
    CHECK(fault.what == What::Contradiction);
    CHECK(fault.path == "/menu/1/doneness");
    CHECK(fault.allowed == "/menu/1/food");
}
