#include <algorithm>
#include <cmath>
#include <functional>

#include "demo.h"
#include "event/menu.h"
#include "quantity/build/reckon.h"

using namespace cinder;
using quantity::findFigure;
using quantity::reckon;

namespace {

event::Event overridden(const std::string& figure, double value) {
    auto event = test::orchard();
    event.quantities->overrides.push_back({figure, value, "they told us so", {}});
    return event;
}

/// Every key there is, once.
std::vector<std::string> keysOf(const quantity::Reckoning& all) {
    std::vector<std::string> keys;
    const std::function<void(const quantity::Figure&)> collect = [&](const auto& figure) {
        if (!figure.key.empty()) keys.push_back(figure.key);
        for (const auto& input : figure.inputs)
            collect(input);
    };
    for (const auto& dish : all.dishes) {
        collect(*dish.vessels);
        collect(*dish.onLine);
    }
    for (const auto& buy : all.purchase)
        collect(buy.toBuy);
    for (const auto& supply : all.supplies)
        collect(supply);
    collect(all.departure->beforeBell);
    std::sort(keys.begin(), keys.end());
    keys.erase(std::unique(keys.begin(), keys.end()), keys.end());
    return keys;
}

}  // namespace

TEST_CASE("An own value takes a figure's place, shows so, and everything after it follows") {
    const auto before = reckon(test::orchard());
    const auto after = reckon(overridden("dish/slaw/portions", 200));
    const auto* portions = findFigure(after, "dish/slaw/portions");
    REQUIRE(portions != nullptr);
    CHECK(portions->isOverridden());
    CHECK(portions->amount.value == 200);
    CHECK(portions->reckoned == before.dishes[0].portions->amount.value);
    CHECK(portions->note == "they told us so");
    CHECK(after.dishes[0].weight->amount.value == 200 * 90);
    CHECK_FALSE(after.dishes[0].weight->isOverridden());
    CHECK(findFigure(after, "buy/cabbage")->amount.value >
          findFigure(before, "buy/cabbage")->amount.value);
    CHECK(after.faults.empty());
}

TEST_CASE("Every figure with a key can be overridden, and undone by taking the own value away") {
    const auto all = reckon(test::orchard());
    const auto keys = keysOf(all);
    CHECK(keys.size() > 100);
    for (const auto& key : keys) {
        INFO(key);
        const double own = findFigure(all, key)->amount.value + 1;
        const auto changed = reckon(overridden(key, own));
        const auto* figure = findFigure(changed, key);
        REQUIRE(figure != nullptr);
        CHECK(figure->isOverridden());
        CHECK(figure->amount.value == own);
        CHECK(figure->reckoned == findFigure(all, key)->amount.value);
    }
}

TEST_CASE("An own value for pieces is held against the pieces the grate counts on") {
    // Eight legs of lamb are counted on.
    REQUIRE(test::orchard().menu[6].pieces->total == 8);
    CHECK(reckon(overridden("dish/lamb/pieces", 8)).faults.empty());
    const auto above = reckon(overridden("dish/lamb/pieces", 11)).faults;
    REQUIRE(above.size() == 1);
    CHECK(above[0].what == event::Fault::What::OutOfRange);
    CHECK(above[0].path == "/menu/6/pieces/total");
    CHECK(above[0].found == "8");
    CHECK(above[0].allowed == "11..20000");
    const auto below = reckon(overridden("dish/lamb/pieces", 5)).faults;
    REQUIRE(below.size() == 1);
    CHECK(below[0].path == "/menu/6/pieces/total");
    CHECK(below[0].found == "8");
    CHECK(below[0].allowed == "5..5");

    // What was said is right: with so many counted on there is nothing to blame.
    for (const int own : {5, 11}) {
        auto settled = overridden("dish/lamb/pieces", own);
        settled.menu[6].pieces->total = own;
        CHECK(reckon(settled).faults.empty());
    }
}

TEST_CASE("By the hundred guests, an own value of pieces asks for the least rate that counts it") {
    const auto halloumi = [](double own, std::optional<std::int32_t> rate) {
        auto event = overridden("dish/halloumi/pieces", own);
        if (rate) event.menu[4].pieces->perHundredGuests = rate;
        return reckon(event).faults;
    };
    const auto rate = test::orchard().menu[4].pieces->perHundredGuests;
    REQUIRE(rate);
    const auto counted = event::pieceCount(*test::orchard().menu[4].pieces, test::orchard().guests);
    CHECK(halloumi(counted, {}).empty());
    for (const int own : {1, counted - 1, counted + 1, 96, 500}) {
        INFO(own);
        const auto faults = halloumi(own, {});
        REQUIRE(faults.size() == 1);
        CHECK(faults[0].path == "/menu/4/pieces/perHundredGuests");
        CHECK(halloumi(own, std::stoi(faults[0].allowed)).empty());
    }
}

TEST_CASE("An own value for a figure that is not there is told so") {
    const auto all = reckon(overridden("dish/soup/portions", 5));
    REQUIRE(all.faults.size() == 1);
    CHECK(all.faults[0].what == event::Fault::What::Dangling);
    CHECK(all.faults[0].path == "/quantities/overrides/0/figure");
}

TEST_CASE("Own values of nothing, of hardly anything and of a mountain break nothing") {
    for (const auto& key : keysOf(reckon(test::orchard()))) {
        for (const double own : {0.0, 1e-9, 1e9}) {
            INFO(key << " " << own);
            const auto all = reckon(overridden(key, own));
            for (const auto& supply : all.supplies)
                CHECK(std::isfinite(supply.amount.value));
            for (const auto& buy : all.purchase) {
                CHECK(std::isfinite(buy.toBuy.amount.value));
                CHECK(buy.toBuy.amount.value >= 0);
            }
            CHECK(all.line.needed > Length{});
        }
    }
}

TEST_CASE("What if more come: own values stay") {
    auto more = overridden("supply/plates", 150);
    more.guests.adults = 176;
    more.guests.children = 16;
    more.guests.diets[0].count = 22;
    more.guests.diets[1].count = 6;
    const auto all = reckon(more);
    CHECK(findFigure(all, "supply/plates")->amount.value == 150);
    CHECK(findFigure(all, "supply/plates")->reckoned == 240);
    CHECK(findFigure(all, "dish/slaw/portions")->amount.value ==
          175);  // (150 + 14 x 60 %) x 110 %, rounded up
}
