#include <algorithm>
#include <cmath>
#include <functional>

#include "demo.h"
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
    const auto event = test::orchard();
    const auto all = reckon(event, planOf(event));
    int opened = 0;
    const std::function<void(const quantity::Figure&)> open = [&](const quantity::Figure& figure) {
        ++opened;
        INFO(figure.key << " " << figure.name.in("en"));
        CHECK(std::isfinite(figure.amount.value));
        CHECK_FALSE(figure.name.empty());
        if (figure.inputs.empty()) {
            CHECK((figure.source.origin == quantity::Origin::Reckoned ||
                   !figure.source.text.empty()));
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

TEST_CASE("Charcoal is for the grate that is filled first, whichever stands first in the kit") {
    event::Event event = test::orchard();
    event::Grate second = event.kit.grates.front();
    second.id = ResourceId("second");
    event.kit.grates.insert(event.kit.grates.begin(), second);
    for (event::Dish& dish : event.menu)
        for (event::Step& step : dish.method)
            if (!step.onGrates.empty()) step.onGrates = {ResourceId("grate"), second.id};
    const auto all = reckon(event);
    REQUIRE(quantity::findFigure(all, "coal/grate"));
    const double first = quantity::findFigure(all, "coal/grate")->amount.value;
    const auto* other = quantity::findFigure(all, "coal/second");
    CHECK((!other || other->amount.value <= first));
    // What is known of the plan counts: nothing is on the grate that was filled first.
    quantity::FromPlan plan;
    plan.cooking[second.id] = std::chrono::hours{1};
    CHECK(quantity::findFigure(reckon(event, plan), "coal/second"));
}
