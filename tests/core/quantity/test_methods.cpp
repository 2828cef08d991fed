/// The library of methods that ships with the app: every card is read, copied into each demo event,
/// reckoned and built into a planning problem.

#include <algorithm>
#include <filesystem>
#include <map>

#include "demo.h"
#include "event/method_card.h"
#include "plan/build/build.h"
#include "quantity/build/reckon.h"
#include "quantity/yields.h"

using namespace cinder;

namespace {

struct CardFile {
    std::string name;
    std::string text;
};

std::vector<CardFile> cardFiles() {
    std::vector<CardFile> files;
    for (const auto& entry :
         std::filesystem::directory_iterator(std::string(CINDER_SOURCE) + "/assets/methods")) {
        const std::ifstream file(entry.path());
        std::stringstream text;
        text << file.rdbuf();
        files.push_back({entry.path().stem().string(), text.str()});
    }
    std::sort(files.begin(), files.end(),
              [](const auto& a, const auto& b) { return a.name < b.name; });
    return files;
}

event::Dish card(const CardFile& file) {
    INFO(file.name);
    auto dish = event::parseDish(file.text);
    if (!dish)
        for (const auto& fault : dish.error())
            UNSCOPED_INFO(event::describe(fault));
    REQUIRE(dish.has_value());
    return *std::move(dish);
}

event::Dish cardCalled(const std::string& name) {
    for (const auto& file : cardFiles())
        if (file.name == name) return card(file);
    FAIL(name);
    return {};
}

void checkLanguages(const LocalText& text) {
    INFO(text.in("en"));
    CHECK(text.byLanguage().contains("en"));
    CHECK(text.byLanguage().contains("es"));
}

/// All that goes into the only dish of `event` is bought, enough of it, and nothing else.
void checkPurchase(const event::Event& event, const quantity::Reckoning& all) {
    const auto& ingredients = event.menu[0].serving->ingredients;
    REQUIRE(all.purchase.size() == ingredients.size());
    for (std::size_t i = 0; i < ingredients.size(); ++i) {
        const auto& one = ingredients[i];
        const auto& buy = all.purchase[i];
        INFO(one.id.text());
        CHECK(buy.id == one.id);
        CHECK(buy.name == one.name);
        double ready = buy.need.amount.value;
        if (one.yieldPercent) ready *= *one.yieldPercent / 100.0;
        for (const auto& key : one.yields)
            ready *= quantity::readyForOne(*quantity::findYield(key));
        REQUIRE(all.dishes[0].weight);
        const double share = all.dishes[0].weight->amount.value * one.percent / 100.0;
        CHECK(ready >= share - 0.001);
        // A whole gram of the share and of what is bought for it; whole legs of lamb and loaves.
        if (!event.menu[0].pieces || event.menu[0].serving->portionPieces) CHECK(ready < share + 5);
    }
}

}  // namespace

TEST_CASE("There are cards for everything a charcoal buffet uses") {
    const auto files = cardFiles();
    CHECK(files.size() >= 25);
    std::map<event::Food, int> foods;
    std::map<event::Course, int> courses;
    for (const auto& file : files) {
        const auto dish = card(file);
        CHECK(dish.id.text() == file.name);
        ++foods[dish.food];
        ++courses[dish.course];
    }
    for (const auto food :
         {event::Food::WholeMeat, event::Food::GroundMeat, event::Food::Poultry, event::Food::Fish,
          event::Food::Plant, event::Food::Dairy, event::Food::Grain})
        CHECK(foods[food] >= 1);
    for (const auto course : {event::Course::Cold, event::Course::Bread, event::Course::Side,
                              event::Course::Main, event::Course::Sauce})
        CHECK(courses[course] >= 2);
}

TEST_CASE("Every card is written as the app itself writes it, and speaks both languages") {
    for (const auto& file : cardFiles()) {
        const auto dish = card(file);
        CHECK(event::writeDish(dish) == file.text);
        checkLanguages(dish.name);
        REQUIRE(dish.source);
        for (const auto& step : dish.method) {
            checkLanguages(step.name);
            for (const auto& line : step.checklist)
                checkLanguages(line);
        }
        for (const auto& ahead : dish.ahead)
            checkLanguages(ahead.name);
        REQUIRE(dish.serving);
        for (const auto& one : dish.serving->ingredients) {
            checkLanguages(one.name);
            INFO(file.name << " " << one.id.text());
            CHECK((!one.yields.empty() || one.source));
        }
    }
}

TEST_CASE("Every card copied into an event makes no fault, and its food is reckoned") {
    for (const auto* name : {"orchard-harvest-lunch", "pruning-day-supper", "last-apple-feast"}) {
        for (const auto& file : cardFiles()) {
            INFO(name << " with " << file.name);
            auto event = test::demo(name);
            event.guests.adults = 100;
            event.guests.children = 0;
            event.menu = {event::copiedInto(event, card(file))};
            event.quantities->lineOrder.clear();
            event.guests.diets.clear();
            event.guests.allergens.clear();
            const bool needsBurner = std::none_of(
                event.kit.equipment.begin(), event.kit.equipment.end(),
                [](const auto& kit) { return kit.kind == event::EquipmentKind::Burner; });
            if (needsBurner)
                event.kit.equipment.push_back({ResourceId("burner"),
                                               LocalText("Burner"),
                                               event::EquipmentKind::Burner,
                                               1,
                                               std::nullopt,
                                               {}});
            // The lists of work of the other dishes are gone with them.
            for (auto& step : event.work)
                step.after.erase(std::remove_if(step.after.begin(), step.after.end(),
                                                [](const auto& after) {
                                                    return after.step.text().find('/') !=
                                                           std::string::npos;
                                                }),
                                 step.after.end());
            for (const auto& fault : event::findFaults(event))
                FAIL_CHECK(event::describe(fault));
            const auto all = quantity::reckon(event);
            for (const auto& fault : all.faults)
                if (fault.path.starts_with("/menu") &&
                    !fault.path.ends_with("/takePercent"))  // one main is no choice of mains
                    FAIL_CHECK(event::describe(fault));
            CHECK(all.dishes[0].portions);
            CHECK(all.dishes[0].vessels);
            checkPurchase(event, all);
            CHECK(plan::build(event).has_value());
        }
    }
}

TEST_CASE("One id of an ingredient is one good in one pack, in every card and demo event") {
    std::map<std::string, event::Ingredient> goods;
    const auto add = [&](const std::string& where, const event::Dish& dish) {
        for (const auto& one : dish.serving->ingredients) {
            INFO(where << " " << dish.id.text() << " " << one.id.text());
            const auto& first = goods.emplace(one.id.text(), one).first->second;
            CHECK(one.name == first.name);
            CHECK(one.pack == first.pack);
        }
    };
    for (const auto& file : cardFiles())
        add(file.name, card(file));
    for (const auto* name : {"orchard-harvest-lunch", "pruning-day-supper", "last-apple-feast"})
        for (const auto& dish : test::demo(name).menu)
            add(name, dish);
    // And two goods are not called the same.
    std::map<std::string, std::string> names;
    for (const auto& [id, one] : goods)
        for (const auto* language : {"en", "es"}) {
            const std::string name = language + std::string(one.name.in(language));
            INFO(id << " and " << names[name] << ": " << name);
            CHECK(names[name].empty());
            names[name] = id;
        }
}

TEST_CASE(
    "Of pieces that are counted as much is bought as they weigh raw, whatever cooking takes") {
    int counted = 0;
    const auto check = [&](const event::Event& event, const event::Dish& dish,
                           const quantity::DishFigures& figures) {
        if (!dish.serving->portionPieces) return;
        const auto& one = dish.serving->ingredients.front();
        INFO(event.id.text() << " " << dish.id.text());
        REQUIRE(figures.pieces);
        REQUIRE(figures.ingredients.front().weight);
        const double raw =
            figures.pieces->amount.value * static_cast<double>(dish.pieces->mass->grams());
        CHECK(figures.weight->amount.value == raw);
        for (const auto& part : dish.serving->ingredients)
            for (const auto& key : part.yields)
                CHECK_FALSE(quantity::isOfCooking(*quantity::findYield(key)));
        if (dish.serving->ingredients.size() > 1) return;
        CHECK(one.yieldPercent == 100);
        CHECK(figures.ingredients.front().weight->amount.value == raw);
        ++counted;
    };
    for (const auto* name : {"orchard-harvest-lunch", "pruning-day-supper", "last-apple-feast"}) {
        const auto event = test::demo(name);
        const auto all = quantity::reckon(event);
        for (std::size_t i = 0; i < event.menu.size(); ++i)
            check(event, event.menu[i], all.dishes[i]);
    }
    for (const auto& file : cardFiles()) {
        auto event = test::orchard();
        event.menu.push_back(event::copiedInto(event, card(file)));
        const auto all = quantity::reckon(event);
        check(event, event.menu.back(), all.dishes.back());
    }
    // Patties, two sausages, steaks, two cuts of chicken, corn and sweet potatoes; two chickens and
    // two corns of the demos.
    CHECK(counted == 12);
}

TEST_CASE(
    "What cooking takes is no yield of counted pieces, and is blamed where an event says so") {
    auto event = test::orchard();
    event.menu.push_back(event::copiedInto(event, cardCalled("beef-patties")));
    const auto before = quantity::reckon(event);
    auto& beef = event.menu.back().serving->ingredients[0];
    beef.yieldPercent.reset();
    beef.yields = {"cy_23573"};
    const auto after = quantity::reckon(event);
    REQUIRE(after.faults.size() == before.faults.size() + 1);
    const auto fault = std::find_if(after.faults.begin(), after.faults.end(), [](const auto& one) {
        return one.path == "/menu/9/serving/ingredients/0/yields/0";
    });
    REQUIRE(fault != after.faults.end());
    CHECK(fault->what == event::Fault::What::Contradiction);
    CHECK(fault->allowed == "/menu/9/serving/portionPieces");
    // It is bought all the same, and not too much of it.
    CHECK(after.dishes.back().ingredients[0].weight->amount ==
          before.dishes.back().ingredients[0].weight->amount);
    // What trimming takes does count.
    beef.yields = {"trim_celery"};
    CHECK(quantity::reckon(event).dishes.back().ingredients[0].weight->amount.value >
          before.dishes.back().ingredients[0].weight->amount.value);
}

TEST_CASE("A card copied twice has two ids, and its steps follow their own dish") {
    auto event = test::orchard();
    const auto lamb = cardCalled("lamb-leg");
    event.menu.push_back(event::copiedInto(event, lamb));
    event.menu.push_back(event::copiedInto(event, lamb));
    CHECK(event.menu[event.menu.size() - 2].id.text() == "lamb-leg");
    CHECK(event.menu.back().id.text() == "lamb-leg-2");
    CHECK(event.menu.back().order == event.menu[event.menu.size() - 2].order + 1);
    bool isLinked = false;
    for (const auto& step : event.menu.back().method)
        for (const auto& after : step.after) {
            CHECK_FALSE(after.step.text().starts_with("lamb-leg/"));
            isLinked = isLinked || after.step.text() == "lamb-leg-2/rest";
        }
    CHECK(isLinked);
    CHECK(event::findFaults(event).empty());
}

TEST_CASE("A copied card lies on the event's own grates, after the event's own fires") {
    const auto feast = test::demo("last-apple-feast");
    const auto dish = event::copiedInto(feast, cardCalled("corn-in-husk"));
    const auto roast = std::find_if(dish.method.begin(), dish.method.end(),
                                    [](const auto& step) { return !step.onGrates.empty(); });
    REQUIRE(roast != dish.method.end());
    CHECK(roast->onGrates.size() == feast.kit.grates.size());
    const auto waitsFor = [&](const char* id) {
        return std::any_of(roast->after.begin(), roast->after.end(),
                           [&](const auto& after) { return after.step.text() == id; });
    };
    CHECK(waitsFor("spread-a"));
    CHECK(waitsFor("spread-b"));
    CHECK_FALSE(waitsFor("spread"));
}

TEST_CASE("A card that cannot be read names the field, like an event") {
    const auto broken = event::parseDish(R"({"id": "soup"})");
    REQUIRE_FALSE(broken.has_value());
    CHECK(broken.error().front().what == event::Fault::What::Missing);
    CHECK(broken.error().front().path == "/name");
    CHECK_FALSE(event::parseDish("{").has_value());
    CHECK_FALSE(event::parseDish("").has_value());
}
