#include <algorithm>
#include <map>

#include "event/menu.h"
#include "quantity/dish_figures.h"

namespace cinder::quantity {

namespace {

using What = event::Fault::What;

/// Dishes of which every guest takes one, as indices of the menu in its order.
struct Group {
    std::vector<std::size_t> dishes;
    /// By the word of a choice: their take rates cover everybody.
    bool isChoice = false;
};

bool isMain(const event::Event& event, std::size_t dish) {
    return event.menu[dish].course == event::Course::Main;
}

/// The choices of the event. A main that names none is a main all the same: it joins the choice the
/// other mains are of, and where there is none the mains are a group, for nobody says that a guest
/// who eats none of them is fed. A menu without mains is a group as a whole.
std::vector<Group> groupsOf(const event::Event& event) {
    std::map<std::string, std::vector<std::size_t>> choices;
    std::vector<std::size_t> loose;
    std::vector<std::size_t> all;
    for (std::size_t i = 0; i < event.menu.size(); ++i) {
        all.push_back(i);
        const auto& serving = event.menu[i].serving;
        if (serving && serving->choice)
            choices[*serving->choice].push_back(i);
        else if (isMain(event, i))
            loose.push_back(i);
    }
    std::vector<Group> groups;
    bool haveMains = false;
    for (auto& [word, dishes] : choices) {
        if (std::any_of(dishes.begin(), dishes.end(),
                        [&](std::size_t i) { return isMain(event, i); })) {
            haveMains = true;
            dishes.insert(dishes.end(), loose.begin(), loose.end());
            std::sort(dishes.begin(), dishes.end());
        }
        groups.push_back({std::move(dishes), true});
    }
    if (!haveMains && !loose.empty())
        groups.push_back({std::move(loose), false});
    else if (groups.empty() && !all.empty())
        groups.push_back({std::move(all), false});
    return groups;
}

std::string takePath(std::size_t dish) {
    return "/menu/" + std::to_string(dish) + "/serving/takePercent";
}

/// Everybody takes one of a choice: the take rates reach a hundred.
void checkEverybody(Tally& tally, const std::vector<std::size_t>& group) {
    std::int32_t sum = 0;
    for (const std::size_t i : group) {
        const auto& serving = tally.event().menu[i].serving;
        if (!serving || !serving->takePercent) return;  // already missing
        sum += *serving->takePercent;
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
    for (const auto& [group, isChoice] : groupsOf(tally.event())) {
        if (isChoice) checkEverybody(tally, group);
        for (std::size_t k = 0; k < guests.diets.size(); ++k) {
            const event::Diet diet = guests.diets[k].diet;
            checkCount(tally, group, dishes, guests.diets[k].count,
                       "/guests/diets/" + std::to_string(k) + "/count",
                       [diet](const event::Dish& dish) { return event::isFitFor(dish, diet); });
        }
        for (std::size_t k = 0; k < guests.allergens.size(); ++k) {
            const event::Allergen allergen = guests.allergens[k].allergen;
            checkCount(tally, group, dishes, guests.allergens[k].count,
                       "/guests/allergens/" + std::to_string(k) + "/count",
                       [allergen](const event::Dish& dish) {
                           return !event::hasAllergen(dish, allergen);
                       });
        }
    }
}

}  // namespace cinder::quantity
