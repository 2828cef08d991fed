#include <algorithm>

#include "event/menu.h"
#include "event/words.h"
#include "quantity/dish_figures.h"

namespace cinder::quantity {

namespace {

using event::Allergen;
using event::Diet;
using event::Food;
using What = event::Fault::What;

bool declares(const event::Dish& dish, Allergen allergen) {
    return std::find(dish.contains.begin(), dish.contains.end(), allergen) != dish.contains.end();
}

/// What a dish of this food holds by its nature; any one of them declared is enough, because fish
/// in the eyes of the food code is also what has a shell.
std::vector<Allergen> natureOf(Food food) {
    switch (food) {
        case Food::Dairy:
            return {Allergen::Milk};
        case Food::Egg:
            return {Allergen::Egg};
        case Food::Fish:
            return {Allergen::Fish, Allergen::Crustaceans, Allergen::Molluscs};
        case Food::WholeMeat:
        case Food::GroundMeat:
        case Food::Poultry:
        case Food::Plant:
        case Food::Grain:
            break;
    }
    return {};
}

/// Where the dish says what `diet` never allows, as a member of the dish; empty when it does not.
/// Pork in neither; shellfish, and meat together with milk, not in kosher food (from memory). What
/// else makes food halal or kosher is the caterer's word.
std::string breaks(const event::Dish& dish, Diet diet) {
    if (diet != Diet::Halal && diet != Diet::Kosher) return {};
    if (dish.meat == event::Meat::Pork) return "/meat";
    if (diet == Diet::Halal) return {};
    const bool isMeat =
        dish.food == Food::WholeMeat || dish.food == Food::GroundMeat || dish.food == Food::Poultry;
    const bool isForbidden = declares(dish, Allergen::Crustaceans) ||
                             declares(dish, Allergen::Molluscs) ||
                             (isMeat && declares(dish, Allergen::Milk));
    return isForbidden ? "/contains" : "";
}

}  // namespace

void checkDeclared(Tally& tally) {
    const auto& menu = tally.event().menu;
    for (std::size_t i = 0; i < menu.size(); ++i) {
        const std::string path = "/menu/" + std::to_string(i);
        const auto nature = natureOf(menu[i].food);
        const bool isDeclared =
            nature.empty() || std::any_of(nature.begin(), nature.end(), [&](Allergen allergen) {
                return declares(menu[i], allergen);
            });
        if (!isDeclared)
            tally.blame(What::Contradiction, path + "/contains",
                        "without \"" + std::string(event::wordFor(nature.front())) + '"',
                        path + "/food");
        for (std::size_t k = 0; k < menu[i].suits.size(); ++k) {
            const std::string other = breaks(menu[i], menu[i].suits[k]);
            if (!other.empty())
                tally.blame(What::Contradiction, path + "/suits/" + std::to_string(k),
                            '"' + std::string(event::wordFor(menu[i].suits[k])) + '"',
                            path + other);
        }
    }
}

}  // namespace cinder::quantity
