#include "quantity/purchase.h"

#include <algorithm>

#include "quantity/worked.h"

namespace cinder::quantity {

namespace {

struct Wanted {
    const IngredientFigures* first = nullptr;
    /// Of its figures: "buy/oil".
    std::string key;
    std::vector<DishId> dishes;
    std::vector<Figure> parts;
    bool isComplete = true;
};

/// One thing at the counter: a copied dish keeps the ids of its ingredients, and one of them may be
/// called something else since.
bool areOneGood(const IngredientFigures& a, const IngredientFigures& b) {
    const auto isSame = [&](const char* language) {
        return a.name.in(language) == b.name.in(language);
    };
    return a.id == b.id && isSame("en") && isSame("es");
}

/// The first good of an id has the plain key, which own values of old events name; another good of
/// the same id is told apart by the dish that first asks for it, because names change.
std::string keyOf(const IngredientFigures& one, const DishId& dish,
                  const std::vector<Wanted>& before) {
    const bool isFirst = std::none_of(before.begin(), before.end(), [&one](const Wanted& wanted) {
        return wanted.first->id == one.id;
    });
    const std::string plain = "buy/" + one.id.text();
    return isFirst ? plain : plain + "/for/" + dish.text();
}

/// Goods, in the order of the menu.
std::vector<Wanted> gather(Tally& tally, const std::vector<DishFigures>& dishes) {
    std::vector<Wanted> all;
    for (const DishFigures& dish : dishes) {
        for (const IngredientFigures& one : dish.ingredients) {
            auto known = std::find_if(all.begin(), all.end(), [&one](const Wanted& wanted) {
                return areOneGood(*wanted.first, one);
            });
            if (known == all.end()) {
                all.push_back({&one, keyOf(one, dish.dish, all), {}, {}, true});
                known = all.end() - 1;
            } else if (one.pack != known->first->pack) {
                tally.blame(event::Fault::What::Contradiction, one.path + "/pack",
                            one.pack ? std::string(one.pack->name.in("en")) : "none",
                            known->first->path + "/pack");
                known->isComplete = false;
            }
            const auto& need = one.weight ? one.weight : one.pieces;
            known->dishes.push_back(dish.dish);
            if (need)
                known->parts.push_back(*need);
            else
                known->isComplete = false;
        }
    }
    return all;
}

Figure sum(Tally& tally, const Wanted& wanted) {
    Figure figure;
    figure.key = wanted.key;
    figure.name = wanted.first->name;
    figure.formula = both("sum over the dishes", "suma de los platos");
    figure.amount.unit = wanted.parts.front().amount.unit;
    for (const Figure& part : wanted.parts)
        figure.amount.value += part.amount.value;
    figure.worked = sumOf(wanted.parts.size());
    figure.inputs = wanted.parts;
    return tally.reckoned(std::move(figure));
}

Figure packs(Tally& tally, const Wanted& wanted, const Figure& need) {
    const IngredientFigures& of = *wanted.first;
    Figure figure;
    figure.key = wanted.key + "/packs";
    figure.name = both("To buy", "Por comprar");
    figure.inputs = {need};
    if (!of.pack) {
        figure.formula = both("rounded up to 100 g", "redondeado a 100 g");
        figure.amount = {static_cast<double>(roundedUpTo(need.amount.value, kLooseStepGrams)),
                         need.amount.unit};
        return tally.reckoned(std::move(figure));
    }
    const double size = of.pack->mass ? static_cast<double>(of.pack->mass->grams())
                                      : static_cast<double>(of.pack->pieces.value_or(1));
    figure.formula = both("need / pack, rounded up", "necesidad / paquete, hacia arriba");
    figure.worked = both("{0} / {1}, rounded up", "{0} / {1}, hacia arriba");
    figure.amount = {static_cast<double>(packsFor(need.amount.value, size)), Unit::Packs};
    figure.inputs.push_back(
        Tally::field(of.pack->name, {size, of.pack->mass ? Unit::Grams : Unit::Pieces},
                     of.path + (of.pack->mass ? "/pack/grams" : "/pack/pieces")));
    return tally.reckoned(std::move(figure));
}

}  // namespace

std::int64_t packsFor(double need, double pack) {
    return roundedUp(need / pack);
}

std::vector<Buy> reckonPurchase(Tally& tally, const std::vector<DishFigures>& dishes) {
    std::vector<Buy> list;
    for (const Wanted& wanted : gather(tally, dishes)) {
        if (!wanted.isComplete) continue;
        Buy buy;
        buy.id = wanted.first->id;
        buy.name = wanted.first->name;
        buy.pack = wanted.first->pack;
        buy.dishes = wanted.dishes;
        buy.need = sum(tally, wanted);
        buy.toBuy = packs(tally, wanted, buy.need);
        list.push_back(std::move(buy));
    }
    return list;
}

}  // namespace cinder::quantity
