#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include "documents.h"
#include "event/json.h"

using namespace cinder;
using What = event::Fault::What;
using test::faultWith;
using Json = nlohmann::ordered_json;

TEST_CASE("A portion is weighed or counted, never both") {
    const auto fault = faultWith("/menu/0/serving/portionPieces", 1);
    CHECK(fault.what == What::Contradiction);
    CHECK(fault.path == "/menu/0/serving/portionPieces");
    CHECK(fault.allowed == "/menu/0/serving/portionGrams");
}

TEST_CASE("The ingredients of a dish make a whole") {
    const auto fault = faultWith("/menu/0/serving/ingredients/1/percent", 11);
    CHECK(fault.what == What::OutOfRange);
    CHECK(fault.path == "/menu/0/serving/ingredients");
    CHECK(fault.found == "101");
}

TEST_CASE("An ingredient has a published yield or the cook's own, never both") {
    const auto fault = faultWith("/menu/0/serving/ingredients/0/yieldPercent", 80);
    CHECK(fault.what == What::Contradiction);
    CHECK(fault.allowed == "/menu/0/serving/ingredients/0/yields");
}

TEST_CASE("A pack says what is in it, once") {
    const auto both = faultWith("/menu/0/serving/ingredients/0/pack/pieces", 4);
    CHECK(both.what == What::Contradiction);
    CHECK(both.path == "/menu/0/serving/ingredients/0/pack/pieces");

    const auto neither = faultWith("/menu/0/serving/ingredients/0/pack", Json{{"name", "Case"}});
    CHECK(neither.what == What::Missing);
    CHECK(neither.path == "/menu/0/serving/ingredients/0/pack/grams");
}

TEST_CASE("The order of the line names dishes of the menu, each once") {
    const auto stranger = faultWith("/quantities/lineOrder/1", "soup");
    CHECK(stranger.what == What::Dangling);
    CHECK(stranger.path == "/quantities/lineOrder/1");

    const auto twice = faultWith("/quantities/lineOrder/1", "beans");
    CHECK(twice.what == What::DuplicateId);
    CHECK(twice.allowed == "/quantities/lineOrder/0");
}

TEST_CASE("A figure has one own value") {
    const Json own{{"figure", "buy/beef/packs"}, {"value", 3}};
    const auto fault = faultWith("/quantities/overrides", Json::array({own, own}));
    CHECK(fault.what == What::DuplicateId);
    CHECK(fault.path == "/quantities/overrides/1/figure");
}
