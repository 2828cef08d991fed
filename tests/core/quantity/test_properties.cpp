/// What must hold for any event, tried on five hundred invented ones.

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <map>

#include "invented_event.h"
#include "quantity/build/reckon.h"
#include "quantity/yields.h"

using namespace cinder;
using quantity::Figure;
using quantity::Reckoning;

namespace {

constexpr std::uint64_t kEvents = 500;

double value(const std::optional<Figure>& figure) {
    REQUIRE(figure);
    return figure->amount.value;
}

/// Without any rounding: what the guests were promised, in portions of an adult.
double promised(const event::Event& event, const event::Dish& dish) {
    const auto& serving = *dish.serving;
    const double eaters =
        event.guests.adults + event.guests.children * serving.childPercent.value_or(100) / 100.0;
    return eaters * *serving.takePercent / 100.0 * (1 + serving.secondsPercent.value_or(0) / 100.0);
}

/// What comes of what is bought for one ingredient: ready weight, or raw where pieces are counted.
double readyOf(const event::Ingredient& one, double bought, bool isCounted) {
    if (one.yieldPercent) return bought * *one.yieldPercent / 100.0;
    for (const auto& key : one.yields) {
        const auto& yield = *quantity::findYield(key);
        if (!isCounted || !quantity::isOfCooking(yield)) bought *= quantity::readyForOne(yield);
    }
    return bought;
}

/// Only what a person still has to decide: too few pieces, tables or minutes, pieces of which
/// nobody says how many a portion by weight takes, and counted ones with a yield of cooking.
void checkFaults(const Reckoning& all) {
    for (const auto& fault : all.faults) {
        INFO(event::describe(fault));
        CHECK((fault.path.find("/pieces/") != std::string::npos ||
               fault.path.ends_with("/pack/pieces") || fault.allowed.ends_with("/portionPieces") ||
               fault.path.find("/count") != std::string::npos ||
               fault.path.find("/kit/equipment") == 0 || fault.path == "/guests/adults"));
    }
}

void checkDish(const event::Event& event, std::size_t i, const Reckoning& all) {
    const auto& dish = event.menu[i];
    const auto& figures = all.dishes[i];
    const double portions = value(figures.portions);
    CHECK(portions >= promised(event, dish) - 1e-6);
    CHECK(portions <= promised(event, dish) + 5);  // one of rounding for each kind of guest, x 2
    if (dish.serving->portion) {
        CHECK(value(figures.weight) ==
              portions * static_cast<double>(dish.serving->portion->grams()));
    } else {
        CHECK(value(figures.pieces) >= portions * *dish.serving->portionPieces);
    }
    for (std::size_t k = 0; k < figures.ingredients.size(); ++k) {
        const auto& one = dish.serving->ingredients[k];
        // Nothing is left off the purchase list without a word.
        CHECK((figures.ingredients[k].weight || figures.ingredients[k].pieces ||
               std::any_of(all.faults.begin(), all.faults.end(), [&](const auto& fault) {
                   return fault.path == figures.ingredients[k].path + "/pack/pieces";
               })));
        if (!figures.ingredients[k].weight) continue;
        const double needed = value(figures.weight) * one.percent / 100.0;
        CHECK(readyOf(one, value(figures.ingredients[k].weight), dish.serving->portionPieces > 0) >=
              needed - 1e-6 * needed);
    }
    if (*dish.serving->vessel == event::Vessel::Board) return;
    const double litres = value(figures.weight) / *dish.serving->gramsPerLitre;
    const double each = figures.vessels->inputs.back().amount.value / 1000.0;
    CHECK(value(figures.vessels) * each >= litres - 1e-6);
    CHECK((value(figures.vessels) - 1) * each < litres);
}

void checkPurchase(const Reckoning& all) {
    for (const auto& buy : all.purchase) {
        INFO(buy.id.text());
        double step = static_cast<double>(quantity::kLooseStepGrams);
        double got = buy.toBuy.amount.value;
        if (buy.pack) {
            step =
                buy.pack->mass ? static_cast<double>(buy.pack->mass->grams()) : *buy.pack->pieces;
            got *= step;
        }
        CHECK(got >= buy.need.amount.value);
        CHECK(got - buy.need.amount.value < step);
    }
}

void checkLine(const Reckoning& all) {
    Length last;
    for (const auto& stand : all.line.stands) {
        const auto& table = all.line.tables.at(stand.table);
        CHECK(stand.x >= table.x);
        CHECK(stand.x + stand.length <= table.x + table.length);
        CHECK(table.x >= last);
        last = table.x;
    }
    CHECK((all.line.shortBy == Length{} || !all.faults.empty()));
    if (all.line.shortBy == Length{}) CHECK(all.line.waiting.empty());
}

/// Every amount that may only grow with the guests, by its key.
std::map<std::string, double> amounts(const Reckoning& all) {
    std::map<std::string, double> by;
    for (const auto& dish : all.dishes) {
        by["portions/" + dish.dish.text()] = value(dish.portions);
        by["weight/" + dish.dish.text()] = value(dish.weight);
        by["vessels/" + dish.dish.text()] = value(dish.vessels);
        if (dish.pieces) by["pieces/" + dish.dish.text()] = value(dish.pieces);
    }
    for (const auto& buy : all.purchase)
        by["buy/" + buy.id.text()] = buy.toBuy.amount.value;
    for (const auto& supply : all.supplies)
        by[supply.key] = supply.amount.value;
    return by;
}

}  // namespace

TEST_CASE("Never less than promised, never a whole pack too much, in 500 invented events") {
    for (std::uint64_t seed = 1; seed <= kEvents; ++seed) {
        const auto event = test::inventedEvent(seed);
        INFO("seed " << seed);
        const auto all = quantity::reckon(event);
        checkFaults(all);
        for (std::size_t i = 0; i < event.menu.size(); ++i)
            checkDish(event, i, all);
        checkPurchase(all);
        checkLine(all);
    }
}

TEST_CASE("More guests never get less, in 500 invented events") {
    for (std::uint64_t seed = 1; seed <= kEvents; ++seed) {
        auto event = test::inventedEvent(seed);
        const auto before = amounts(quantity::reckon(event));
        event.guests.adults += static_cast<std::int32_t>(seed % 3);
        event.guests.children += static_cast<std::int32_t>(1 + seed % 2);
        const auto after = amounts(quantity::reckon(event));
        REQUIRE(before.size() == after.size());
        for (const auto& [key, amount] : before) {
            INFO("seed " << seed << " " << key);
            CHECK(after.at(key) >= amount);
        }
    }
}

TEST_CASE("The same event comes to the same, figure by figure") {
    for (std::uint64_t seed = 1; seed <= 50; ++seed) {
        const auto one = quantity::reckon(test::inventedEvent(seed));
        const auto other = quantity::reckon(test::inventedEvent(seed));
        CHECK(one.supplies == other.supplies);
        CHECK(one.line == other.line);
        CHECK(one.faults == other.faults);
        CHECK(one.pack == other.pack);
    }
}
