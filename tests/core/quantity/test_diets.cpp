/// Is there something to eat for everybody who said what they must not?

#include <algorithm>

#include "demo.h"
#include "event/menu.h"
#include "quantity/build/reckon.h"

using namespace cinder;
using event::Allergen;
using event::Diet;
using event::Dish;
using event::Food;
using quantity::reckon;
using What = event::Fault::What;

namespace {

constexpr std::size_t kBread = 2, kStew = 3, kHalloumi = 4, kLamb = 6;

/// The orchard lunch of those of its dishes, with nobody who said anything.
event::Event lunchOf(const std::vector<std::size_t>& dishes) {
    const auto whole = test::orchard();
    auto event = whole;
    event.menu.clear();
    for (const std::size_t i : dishes) {
        event.menu.push_back(whole.menu[i]);
        event.menu.back().serving->choice.reset();
    }
    event.guests.diets.clear();
    event.guests.allergens.clear();
    return event;
}

Dish& with(event::Event& event, std::size_t dish, std::vector<Diet> suits,
           std::vector<Allergen> contains, Food food = Food::Plant) {
    event.menu.at(dish).suits = std::move(suits);
    event.menu.at(dish).contains = std::move(contains);
    event.menu.at(dish).food = food;
    event.menu.at(dish).meat.reset();
    return event.menu.at(dish);
}

/// Faults about who can eat what, by their path.
std::vector<std::string> blamed(const event::Event& event) {
    std::vector<std::string> paths;
    for (const auto& fault : reckon(event).faults)
        if (fault.path.starts_with("/guests/") || fault.path.ends_with("/contains") ||
            fault.path.find("/suits") != std::string::npos || fault.path.ends_with("/takePercent"))
            paths.push_back(fault.path);
    return paths;
}

using Paths = std::vector<std::string>;

/// Is everybody of `diet` fed by the mains that are ticked so?
bool feeds(Diet diet, const std::vector<Diet>& suits) {
    auto event = lunchOf({kStew});
    event.menu[0].course = event::Course::Main;
    with(event, 0, suits, {});
    event.guests.diets = {{diet, 5, {}}};
    return blamed(event).empty();
}

/// Can those who must not have `allergen` eat a main that declares `contains`?
bool spares(Allergen allergen, const std::vector<Allergen>& contains, Food food = Food::Plant) {
    auto event = lunchOf({kStew});
    event.menu[0].course = event::Course::Main;
    with(event, 0, {}, contains, food);
    event.guests.allergens = {{allergen, 2, {}}};
    const auto paths = blamed(event);
    return std::count(paths.begin(), paths.end(), "/guests/allergens/0/count") == 0;
}

}  // namespace

TEST_CASE("A menu that names no choice is looked through for its mains") {
    auto event = lunchOf({kLamb, 8});
    event.guests.diets = {{Diet::Vegan, 40, {}}};
    CHECK(blamed(event) == Paths{"/guests/diets/0/count"});
    // A sauce they may have is no lunch.
    REQUIRE(event::isFitFor(event.menu[1], Diet::Vegan));
    // A main is.
    auto fed = lunchOf({kLamb, kStew});
    fed.menu[1].course = event::Course::Main;
    fed.guests.diets = event.guests.diets;
    CHECK(blamed(fed).empty());
    // Nobody says that everyone takes one of them.
    fed.menu[0].serving->takePercent = 10;
    fed.menu[1].serving->takePercent = 50;
    CHECK(blamed(fed).empty());
}

TEST_CASE("Where nothing is a main, the whole menu is looked through") {
    auto event = lunchOf({kBread, 8});
    event.guests.allergens = {{Allergen::Wheat, 2, {}}};
    CHECK(blamed(event).empty());
    with(event, 1, {}, {Allergen::Wheat});
    CHECK(blamed(event) == Paths{"/guests/allergens/0/count"});
}

TEST_CASE("A main that names no choice is one of the mains") {
    auto event = lunchOf({kLamb, kStew});
    event.menu[0].serving->choice = "mains";
    event.guests.diets = {{Diet::Vegan, 10, {}}};
    CHECK(blamed(event) == Paths{"/menu/0/serving/takePercent", "/guests/diets/0/count"});
    event.menu[1].course = event::Course::Main;
    CHECK(blamed(event).empty());
    // Its take rate covers guests as well, and has to.
    event.menu[1].serving->takePercent = 20;
    CHECK(blamed(event) == Paths{"/menu/1/serving/takePercent"});
    event.menu[1].serving.reset();  // and says nothing yet
    CHECK(blamed(event).empty());
}

TEST_CASE("What is vegan is vegetarian and without milk, and nothing else follows from it") {
    CHECK(feeds(Diet::Vegan, {Diet::Vegan}));
    CHECK(feeds(Diet::Vegetarian, {Diet::Vegan}));
    CHECK(feeds(Diet::DairyFree, {Diet::Vegan}));
    CHECK_FALSE(feeds(Diet::GlutenFree, {Diet::Vegan}));
    CHECK_FALSE(feeds(Diet::Halal, {Diet::Vegan}));
    CHECK_FALSE(feeds(Diet::Kosher, {Diet::Vegan}));
    CHECK_FALSE(feeds(Diet::Vegan, {Diet::Vegetarian, Diet::DairyFree}));
    CHECK_FALSE(feeds(Diet::DairyFree, {Diet::Vegetarian}));
}

// 21 CFR 101.91(a)(1): wheat, rye and barley are the gluten-containing grains.
TEST_CASE("What declares wheat has gluten; what declares gluten may be of another grain") {
    CHECK_FALSE(spares(Allergen::Gluten, {Allergen::Wheat}));
    CHECK_FALSE(spares(Allergen::Gluten, {Allergen::Gluten}));
    CHECK_FALSE(spares(Allergen::Wheat, {Allergen::Wheat}));
    CHECK(spares(Allergen::Wheat, {Allergen::Gluten}));
    CHECK(spares(Allergen::Gluten, {Allergen::Mustard}));
}

TEST_CASE("A dairy dish has milk and an egg dish egg, declared or not") {
    CHECK_FALSE(spares(Allergen::Milk, {}, Food::Dairy));
    CHECK_FALSE(spares(Allergen::Egg, {}, Food::Egg));
    CHECK(spares(Allergen::Milk, {}, Food::Egg));
}

TEST_CASE("A dish that does not declare what its food is by nature is blamed") {
    auto event = lunchOf({kLamb, kHalloumi});
    const auto blamedFor = [&](Food food, std::vector<Allergen> contains) {
        with(event, 1, {}, std::move(contains), food);
        return blamed(event);
    };
    const Paths undeclared{"/menu/1/contains"};
    CHECK(blamedFor(Food::Dairy, {}) == undeclared);
    CHECK(blamedFor(Food::Dairy, {Allergen::Egg}) == undeclared);
    CHECK(blamedFor(Food::Dairy, {Allergen::Milk}).empty());
    CHECK(blamedFor(Food::Egg, {}) == undeclared);
    CHECK(blamedFor(Food::Egg, {Allergen::Egg}).empty());
    CHECK(blamedFor(Food::Fish, {}) == undeclared);
    for (const auto shell : {Allergen::Fish, Allergen::Crustaceans, Allergen::Molluscs})
        CHECK(blamedFor(Food::Fish, {shell}).empty());
    for (const auto food :
         {Food::WholeMeat, Food::GroundMeat, Food::Poultry, Food::Plant, Food::Grain})
        CHECK(blamedFor(food, {}).empty());
}

TEST_CASE("An event of old that declares too little is still read, and told so when reckoned") {
    auto event = lunchOf({kLamb, kHalloumi});
    with(event, 1, {}, {}, Food::Dairy);
    event.quantities->lineOrder.clear();
    for (auto& dish : event.menu)
        for (auto& step : dish.method)
            std::erase_if(step.after, [&](const auto& after) {
                const auto slash = after.step.text().find('/');
                const auto of = after.step.text().substr(0, slash);
                return slash != std::string::npos && of != dish.id.text();
            });
    for (auto& step : event.work)
        std::erase_if(step.after, [](const auto& after) {
            return after.step.text().find('/') != std::string::npos;
        });
    const auto read = event::parse(event::write(event));
    REQUIRE(read.has_value());
    CHECK(blamed(*read) == Paths{"/menu/1/contains"});
}

TEST_CASE("Pork is neither halal nor kosher, shellfish and meat with milk are not kosher") {
    auto event = lunchOf({kStew, kLamb});
    const auto blamedFor = [&](Diet diet, Food food, std::optional<event::Meat> meat,
                               std::vector<Allergen> contains) {
        with(event, 1, {Diet::GlutenFree, diet}, std::move(contains), food).meat = meat;
        return blamed(event);
    };
    const Paths wrong{"/menu/1/suits/1"};
    CHECK(blamedFor(Diet::Halal, Food::WholeMeat, event::Meat::Pork, {}) == wrong);
    CHECK(blamedFor(Diet::Kosher, Food::WholeMeat, event::Meat::Pork, {}) == wrong);
    CHECK(blamedFor(Diet::Halal, Food::WholeMeat, event::Meat::Lamb, {Allergen::Milk}).empty());
    CHECK(blamedFor(Diet::Kosher, Food::WholeMeat, event::Meat::Lamb, {}).empty());
    CHECK(blamedFor(Diet::Kosher, Food::WholeMeat, event::Meat::Lamb, {Allergen::Milk}) == wrong);
    CHECK(blamedFor(Diet::Kosher, Food::Fish, {}, {Allergen::Crustaceans}) == wrong);
    CHECK(blamedFor(Diet::Kosher, Food::Fish, {}, {Allergen::Molluscs}) == wrong);
    CHECK(blamedFor(Diet::Kosher, Food::Fish, {}, {Allergen::Fish}).empty());
    CHECK(blamedFor(Diet::DairyFree, Food::WholeMeat, event::Meat::Pork, {}).empty());
}
