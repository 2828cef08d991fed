#include "live/pull_target.h"

#include "event/words.h"

namespace cinder::live {

namespace {

cook::Doneness donenessOf(event::Doneness doneness) {
    switch (doneness) {
        case event::Doneness::Rare:
            return cook::Doneness::Rare;
        case event::Doneness::MediumRare:
            return cook::Doneness::MediumRare;
        case event::Doneness::Medium:
            return cook::Doneness::Medium;
        case event::Doneness::MediumWell:
            return cook::Doneness::MediumWell;
        case event::Doneness::WellDone:
            break;
    }
    return cook::Doneness::WellDone;
}

}  // namespace

std::optional<cook::Meat> meatOf(event::Food food, std::optional<event::Meat> meat) {
    switch (food) {
        case event::Food::WholeMeat:
            if (meat == event::Meat::Lamb) return cook::Meat::IntactLamb;
            if (meat == event::Meat::Pork) return cook::Meat::IntactPork;
            return cook::Meat::IntactBeef;
        case event::Food::GroundMeat:
            return cook::Meat::GroundMeat;
        case event::Food::Poultry:
            return cook::Meat::Poultry;
        case event::Food::Fish:
            return cook::Meat::Fish;
        case event::Food::Egg:
        case event::Food::Plant:
        case event::Food::Dairy:
        case event::Food::Grain:
            break;
    }
    return std::nullopt;
}

std::optional<cook::PullTarget> pullTargetFor(cook::Meat meat, event::Doneness doneness) {
    return cook::pullTarget(meat, donenessOf(doneness));
}

Temperature pullTargetOf(event::Food food, std::optional<event::Meat> meat,
                         std::optional<event::Doneness> doneness, std::optional<Temperature> wish) {
    if (wish) return *wish;
    const auto known = meatOf(food, meat);
    if (!known) return {};
    for (const auto& word : event::wordsOf(event::Doneness{}))
        if (doneness && word.value >= *doneness)
            if (const auto target = pullTargetFor(*known, word.value)) return target->pullAt;
    const auto medium = pullTargetFor(*known, event::Doneness::Medium);
    return medium ? medium->pullAt : cook::safeMinimum(*known).temperature;
}

}  // namespace cinder::live
