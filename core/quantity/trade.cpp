#include "quantity/trade.h"

#include <algorithm>
#include <cassert>

namespace cinder::quantity {

namespace {

using enum Origin;
constexpr std::string_view kNoSource = "common practice - no source";
constexpr std::string_view kHowTo = "catering how-to pages";

constexpr TradeFact kFacts[] = {
    {"trade/can-minutes", "One gel can burns, in a breeze", "Una lata de gel arde, con brisa", 90,
     Unit::Minutes, CommonPractice, kHowTo},
    {"trade/cans-a-chafer", "Cans under a full chafer", "Latas por calientaplatos", 2, Unit::Cans,
     FromMemory, "catering practice"},
    {"trade/chafer-lead", "Chafers lit before the bell", "Calientaplatos encendidos antes", 30,
     Unit::Minutes, CommonPractice, kNoSource},
    {"trade/ice-drinks", "Ice for drinks outdoors, a guest", "Hielo para bebidas, por persona", 907,
     Unit::Grams, CommonPractice, "food magazine article, 2 lb outdoors"},
    {"trade/ice-food", "Ice under cold food, a guest", "Hielo para comida fría, por persona", 454,
     Unit::Grams, CommonPractice, "food magazine article, 1 lb more"},
    {"trade/drinking-water", "Drinking water, a guest and hour", "Agua para beber, por hora", 500,
     Unit::Millilitres, CommonPractice, kNoSource},
    {"trade/hand-water", "Water for one hand-wash stand", "Agua por lavamanos", 20000,
     Unit::Millilitres, CommonPractice, kNoSource},
    {"trade/plates", "Plates for a hundred guests", "Platos por cada cien personas", 125,
     Unit::Percent, CommonPractice, kNoSource},
    {"trade/napkins", "Napkins for a hundred guests", "Servilletas por cada cien personas", 200,
     Unit::Percent, CommonPractice, kNoSource},
    {"trade/cutlery", "Sets of cutlery for a hundred guests", "Cubiertos por cada cien personas",
     115, Unit::Percent, CommonPractice, kNoSource},
    {"trade/cups", "Cups for a hundred guests", "Vasos por cada cien personas", 200, Unit::Percent,
     CommonPractice, kNoSource},
    {"trade/spare-spoons", "Spare serving pieces for a hundred",
     "Cubiertos de servicio de repuesto", 25, Unit::Percent, CommonPractice, kNoSource},
    {"trade/line-minutes", "A hundred guests pass the line in", "Cien personas pasan la línea en",
     15, Unit::Minutes, CommonPractice, kNoSource},
    {"trade/charcoal-bag", "One bag of lump charcoal", "Una bolsa de carbón de leña", 18144,
     Unit::Grams, CommonPractice, kNoSource},
};

}  // namespace

std::span<const TradeFact> tradeFacts() {
    return kFacts;
}

Figure fact(Tally& tally, std::string_view key) {
    const auto all = tradeFacts();
    const auto found = std::find_if(all.begin(), all.end(),
                                    [key](const TradeFact& known) { return known.key == key; });
    assert(found != all.end());
    Figure figure;
    figure.key = std::string(key);
    figure.name = both(found->english, found->spanish);
    figure.amount = {found->value, found->unit};
    figure.source = {found->origin, std::string(found->source)};
    return tally.reckoned(std::move(figure));
}

}  // namespace cinder::quantity
