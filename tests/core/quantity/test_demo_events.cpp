#include <algorithm>
#include <cmath>
#include <functional>

#include "demo.h"
#include "event/edit.h"
#include "event/method_card.h"
#include "quantity/build/reckon.h"

using namespace cinder;
using quantity::reckon;

namespace {

/// The supper leaves its arrival to the plan.
quantity::FromPlan planOf(const event::Event& event) {
    return {event.serve.at - std::chrono::minutes{110}, {}};
}

}  // namespace

TEST_CASE("Every demo event can be reckoned without a fault") {
    for (const auto* name : {"orchard-harvest-lunch", "last-apple-feast", "pruning-day-supper"}) {
        const auto event = test::demo(name);
        const auto all = reckon(event, planOf(event));
        for (const auto& fault : all.faults)
            FAIL_CHECK(name << ": " << event::describe(fault));
        REQUIRE(all.dishes.size() == event.menu.size());
        for (const auto& dish : all.dishes) {
            INFO(name << ": " << dish.dish.text());
            CHECK(dish.portions);
            CHECK(dish.weight);
            CHECK(dish.vessels);
        }
        CHECK(all.departure);
        CHECK_FALSE(all.kitchen.empty());
        CHECK(all.line.waiting.empty());
    }
}

TEST_CASE("Every figure can be opened down to the event, a publication or a practice") {
    const std::string name =
        GENERATE("orchard-harvest-lunch", "last-apple-feast", "pruning-day-supper");
    const bool isPlanned = GENERATE(false, true);
    const auto event = test::demo(name);
    auto plan = planOf(event);
    if (isPlanned) plan.cooking[event.kit.grates.front().id] = std::chrono::hours{1};
    const auto all = reckon(event, plan);
    int opened = 0;
    const std::function<void(const quantity::Figure&)> open = [&](const quantity::Figure& figure) {
        ++opened;
        INFO(figure.key << " " << figure.name.in("en"));
        CHECK(std::isfinite(figure.amount.value));
        CHECK_FALSE(figure.name.empty());
        if (figure.inputs.empty()) {
            CHECK_FALSE(figure.source.text.empty());
            // Only the plan is no field, no publication and no practice.
            if (figure.source.origin == quantity::Origin::Reckoned)
                CHECK(figure.source.text == "the plan");
        } else {
            CHECK(figure.formula.byLanguage().contains("es"));
        }
        if (figure.source.origin == quantity::Origin::Field) CHECK(figure.source.text[0] == '/');
        for (const auto& input : figure.inputs)
            open(input);
    };
    for (const auto& buy : all.purchase)
        open(buy.toBuy);
    for (const auto& supply : all.supplies)
        open(supply);
    for (const auto& dish : all.dishes) {
        open(*dish.vessels);
        open(*dish.onLine);
    }
    CHECK(opened > 200);
}

TEST_CASE("What several dishes use is bought together") {
    const auto all = reckon(test::orchard());
    const auto oil = std::find_if(all.purchase.begin(), all.purchase.end(),
                                  [](const auto& buy) { return buy.id.text() == "oil"; });
    REQUIRE(oil != all.purchase.end());
    CHECK(oil->dishes.size() == 3);
    double parts = 0;
    for (const auto& part : oil->need.inputs)
        parts += part.amount.value;
    CHECK(oil->need.amount.value == parts);
    CHECK(oil->toBuy.amount == quantity::Amount{1, quantity::Unit::Packs});
}

namespace {

/// The orchard lunch with beef patties, and a copy of them that is made of something else.
event::Event withTwoPatties(const char* other) {
    const std::ifstream file(std::string(CINDER_SOURCE) + "/assets/methods/beef-patties.json");
    std::stringstream text;
    text << file.rdbuf();
    const auto card = event::parseDish(text.str());
    REQUIRE(card.has_value());
    auto event = event::withCard(test::orchard(), *card);
    REQUIRE(event.has_value());
    event = event::withCopyOf(*event, DishId("beef-patties"));
    REQUIRE(event.has_value());
    if (other) event->menu.back().serving->ingredients[0].name = LocalText(std::string(other));
    return *std::move(event);
}

std::vector<const quantity::Buy*> bought(const quantity::Reckoning& all, const char* id) {
    std::vector<const quantity::Buy*> found;
    for (const auto& buy : all.purchase)
        if (buy.id.text() == id) found.push_back(&buy);
    return found;
}

}  // namespace

TEST_CASE("A copied dish that is made of something else has its own line on the purchase list") {
    const auto both = reckon(withTwoPatties(nullptr));
    const auto one = bought(both, "ground-beef");
    REQUIRE(one.size() == 1);
    CHECK(one[0]->dishes.size() == 2);

    const auto all = reckon(withTwoPatties("Ground lamb"));
    const auto two = bought(all, "ground-beef");
    REQUIRE(two.size() == 2);
    CHECK(two[0]->name.in("en") == "Ground beef, 20 % fat");
    CHECK(two[1]->name.in("es") == "Ground lamb");
    CHECK(two[0]->dishes == std::vector{DishId("beef-patties")});
    CHECK(two[1]->dishes == std::vector{DishId("beef-patties-2")});
    CHECK(two[0]->need.amount.value + two[1]->need.amount.value == one[0]->need.amount.value);
    CHECK(two[0]->need.key == "buy/ground-beef");
    CHECK(two[0]->toBuy.key == "buy/ground-beef/packs");
    CHECK(two[1]->need.key == "buy/ground-beef/for/beef-patties-2");
    CHECK(two[1]->toBuy.key == "buy/ground-beef/for/beef-patties-2/packs");
}

TEST_CASE("An own value of old holds for the good that was there, and goes with the dish") {
    auto event = withTwoPatties("Ground lamb");
    event.quantities->overrides = {{"buy/ground-beef/packs", 9, {}, {}},
                                   {"buy/ground-beef/for/beef-patties-2/packs", 4, {}, {}}};
    const auto all = reckon(event);
    const auto two = bought(all, "ground-beef");
    REQUIRE(two.size() == 2);
    CHECK(two[0]->toBuy.amount.value == 9);
    CHECK(two[1]->toBuy.amount.value == 4);

    const auto without = event::withoutDish(event, DishId("beef-patties-2"));
    REQUIRE(without.has_value());
    REQUIRE(without->quantities->overrides.size() == 1);
    CHECK(without->quantities->overrides[0].figure == "buy/ground-beef/packs");
}

TEST_CASE("Charcoal is for the grate that is filled first, whichever stands first in the kit") {
    event::Event event = test::orchard();
    event::Grate second = event.kit.grates.front();
    second.id = ResourceId("second");
    event.kit.grates.insert(event.kit.grates.begin(), second);
    const auto coal = [&event](const char* first, const char* then) {
        for (event::Dish& dish : event.menu)
            for (event::Step& step : dish.method)
                if (!step.onGrates.empty()) step.onGrates = {ResourceId(first), ResourceId(then)};
        const auto all = reckon(event);
        const auto of = [&all](const char* grate) {
            const auto* figure = quantity::findFigure(all, std::string("coal/") + grate);
            return figure ? figure->amount.value : 0;
        };
        return std::pair(of(first), of(then));
    };
    // Enough thighs for several batches, so that both are used and the second less.
    event.menu[5].pieces->perHundredGuests = 150;
    const auto [filled, spare] = coal("grate", "second");
    CHECK(spare > 0);
    CHECK(filled > spare);
    CHECK(coal("second", "grate") == std::pair(filled, spare));

    // What is known of the plan counts: nothing is on the grate that was filled first.
    quantity::FromPlan plan;
    plan.cooking[second.id] = std::chrono::hours{1};
    const auto planned = reckon(event, plan);
    const auto* figure = quantity::findFigure(planned, "coal/second");
    REQUIRE(figure);
    CHECK(figure->inputs.at(1).amount == quantity::Amount{60, quantity::Unit::Minutes});
}
