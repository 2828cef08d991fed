#include <algorithm>
#include <map>

#include "event/menu.h"
#include "event/words.h"
#include "quantity/dish_figures.h"

namespace cinder::quantity {

namespace {

using What = event::Fault::What;

/// Indices of the menu by the word of their choice.
std::map<std::string, std::vector<std::size_t>> choices(const event::Event& event) {
    std::map<std::string, std::vector<std::size_t>> groups;
    for (std::size_t i = 0; i < event.menu.size(); ++i)
        if (event.menu[i].serving && event.menu[i].serving->choice)
            groups[*event.menu[i].serving->choice].push_back(i);
    return groups;
}

std::string takePath(std::size_t dish) {
    return "/menu/" + std::to_string(dish) + "/serving/takePercent";
}

/// Everybody takes one of a choice: the take rates reach a hundred.
void checkEverybody(Tally& tally, const std::vector<std::size_t>& group) {
    std::int32_t sum = 0;
    for (const std::size_t i : group) {
        const auto take = tally.event().menu[i].serving->takePercent;
        if (!take) return;  // already missing
        sum += *take;
    }
    if (sum >= 100) return;
    const std::size_t last = group.back();
    const std::int32_t take = *tally.event().menu[last].serving->takePercent;
    tally.blame(What::OutOfRange, takePath(last), std::to_string(take),
                std::to_string(take + 100 - sum) + "..100");
}

/// `count` guests can eat only of the dishes in `group` that `isFit` allows.
template <class IsFit>
void checkCount(Tally& tally, const std::vector<std::size_t>& group,
                const std::vector<DishFigures>& dishes, std::int32_t count, const std::string& path,
                IsFit isFit) {
    std::int64_t portions = 0;
    std::optional<std::size_t> largest;
    for (const std::size_t i : group) {
        if (!isFit(tally.event().menu[i])) continue;
        if (!dishes[i].portions) return;  // already missing
        portions += roundedUp(dishes[i].portions->amount.value);
        if (!largest || dishes[i].portions->amount.value > dishes[*largest].portions->amount.value)
            largest = i;
    }
    if (portions >= count) return;
    tally.blame(What::Contradiction, path, std::to_string(count),
                largest ? takePath(*largest) : "/menu");
}

}  // namespace

void checkChoices(Tally& tally, const std::vector<DishFigures>& dishes) {
    const event::Guests& guests = tally.event().guests;
    for (const auto& [word, group] : choices(tally.event())) {
        checkEverybody(tally, group);
        for (std::size_t k = 0; k < guests.diets.size(); ++k) {
            const event::Diet diet = guests.diets[k].diet;
            checkCount(tally, group, dishes, guests.diets[k].count,
                       "/guests/diets/" + std::to_string(k) + "/count",
                       [diet](const event::Dish& dish) {
                           return std::find(dish.suits.begin(), dish.suits.end(), diet) !=
                                  dish.suits.end();
                       });
        }
        for (std::size_t k = 0; k < guests.allergens.size(); ++k) {
            const event::Allergen allergen = guests.allergens[k].allergen;
            checkCount(tally, group, dishes, guests.allergens[k].count,
                       "/guests/allergens/" + std::to_string(k) + "/count",
                       [allergen](const event::Dish& dish) {
                           return std::find(dish.contains.begin(), dish.contains.end(), allergen) ==
                                  dish.contains.end();
                       });
        }
    }
}

}  // namespace cinder::quantity
