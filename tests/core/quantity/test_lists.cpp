#include <algorithm>

#include "demo.h"
#include "quantity/build/reckon.h"

using namespace cinder;
using quantity::PackCount;
using quantity::reckon;
using quantity::Ride;

namespace {

const quantity::PackRow& row(const std::vector<quantity::PackRow>& list, const std::string& key) {
    const auto found =
        std::find_if(list.begin(), list.end(), [&](const auto& one) { return one.key == key; });
    INFO(key);
    REQUIRE(found != list.end());
    return *found;
}

}  // namespace

TEST_CASE("All kit and every dish of the menu is on the pack list once") {
    const auto event = test::orchard();
    const auto pack = reckon(event).pack;
    std::vector<std::string> keys;
    for (const auto& one : pack)
        keys.push_back(one.key);
    for (const auto& kit : event.kit.equipment)
        CHECK(std::count(keys.begin(), keys.end(), "pack/kit/" + kit.id.text()) == 1);
    for (const auto& dish : event.menu)
        CHECK(std::count(keys.begin(), keys.end(), "pack/food/" + dish.id.text()) == 1);
    std::sort(keys.begin(), keys.end());
    CHECK(std::adjacent_find(keys.begin(), keys.end()) == keys.end());
}

TEST_CASE("Raw meat rides apart from ready food, fuel apart from all food") {
    const auto pack = reckon(test::orchard()).pack;
    CHECK(row(pack, "pack/food/lamb").ride == Ride::ColdBoxRaw);
    CHECK(row(pack, "pack/food/chicken").ride == Ride::ColdBoxReady);  // roasted the day before
    CHECK(row(pack, "pack/food/slaw").ride == Ride::ColdBoxReady);
    CHECK(row(pack, "pack/food/flatbread").ride == Ride::FoodCrate);
    CHECK(row(pack, "pack/supply/charcoal-bags").ride == Ride::FireCrate);
    CHECK(std::is_sorted(pack.begin(), pack.end(),
                         [](const auto& a, const auto& b) { return a.ride < b.ride; }));
}

TEST_CASE("A roast that is only trimmed cold rides raw, though its gravy is cooked and kept") {
    auto event = test::orchard();
    event::Ahead gravy;
    gravy.id = StepId("gravy");
    gravy.name = LocalText("Boil down the bones");
    for (const auto keeping : {event::Keeping::Chill, event::Keeping::HoldHot}) {
        gravy.then = keeping;
        event.menu[6].ahead = {event.menu[6].ahead[0], gravy};
        REQUIRE(event.menu[6].ahead[0].then == event::Keeping::Cold);
        CHECK(row(reckon(event).pack, "pack/food/lamb").ride == Ride::ColdBoxRaw);
    }
    // Roasted whole and held hot, and nothing left to cook there.
    event.menu[6].ahead = {gravy};
    std::erase_if(event.menu[6].method,
                  [](const auto& step) { return step.kind == event::StepKind::Cook; });
    CHECK(row(reckon(event).pack, "pack/food/lamb").ride == Ride::HotBox);
}

TEST_CASE("A dish without a vessel takes neither the spoons nor the cards of the others") {
    auto event = test::orchard();
    const auto before = reckon(event);
    event.menu[0].serving->vessel.reset();
    const auto after = reckon(event);
    for (const char* key : {"supply/spoons", "supply/cards"}) {
        INFO(key);
        const auto* figure = quantity::findFigure(after, key);
        REQUIRE(figure);
        CHECK(figure->amount == quantity::findFigure(before, key)->amount);
    }
    CHECK(row(after.pack, "pack/supply/spoons").amount.value > 0);
    REQUIRE(after.faults.size() == 1);
    CHECK(after.faults[0].path == "/menu/0/serving/vessel");
}

TEST_CASE("What went out and did not come back is named with its count") {
    const auto pack = reckon(test::orchard()).pack;
    const std::vector<PackCount> out{{"pack/kit/chafer", 4},
                                     {"pack/kit/probe", 3},
                                     {"pack/food/slaw", 1},
                                     {"pack/kit/grate", 1}};
    const std::vector<PackCount> home{
        {"pack/kit/chafer", 2}, {"pack/kit/chafer", 1}, {"pack/kit/grate", 1}};
    const auto missing = quantity::missingOnTheWayHome(pack, out, home);
    REQUIRE(missing.size() == 2);
    CHECK(missing[0].key == "pack/kit/chafer");
    CHECK(missing[0].count == 1);
    CHECK(missing[1].key == "pack/kit/probe");
    CHECK(missing[1].count == 3);
}

TEST_CASE("The van leaves in time for the road and what goes wrong on it") {
    const auto event = test::orchard();
    const auto departure = reckon(event).departure;
    REQUIRE(departure);
    CHECK(event.site.arrival->at - departure->leaveBy == std::chrono::minutes{35 + 20});
    CHECK(departure->beforeBell.amount == quantity::Amount{175, quantity::Unit::Minutes});
}

TEST_CASE("What is cooked and cooled carries the published limits, with the time of each") {
    const auto event = test::orchard();
    const auto kitchen = reckon(event).kitchen;
    CHECK(std::is_sorted(kitchen.begin(), kitchen.end(),
                         [](const auto& a, const auto& b) { return a.finishBy < b.finishBy; }));
    const auto stew = std::find_if(kitchen.begin(), kitchen.end(),
                                   [](const auto& task) { return task.dish.text() == "stew"; });
    REQUIRE(stew != kitchen.end());
    REQUIRE(stew->deadlines.size() == 2);
    CHECK(stew->deadlines[0].by == stew->finishBy + std::chrono::hours{2});
    CHECK(stew->deadlines[0].temperature == Temperature::fromFahrenheit(70));
    CHECK(stew->deadlines[1].by == stew->finishBy + std::chrono::hours{6});
    CHECK(stew->deadlines[1].temperature == Temperature::fromFahrenheit(41));
    REQUIRE(stew->startBy);
    CHECK(stew->finishBy - *stew->startBy == std::chrono::minutes{120});
}
