#include "report/sheet_parts.h"

namespace cinder::report {

namespace {

std::string toBuyText(const quantity::Buy& buy, const Style& style) {
    if (!buy.pack) return amountText(buy.toBuy.amount, style);
    const auto count = quantity::roundedUp(buy.toBuy.amount.value);
    const std::string size = buy.pack->mass
                                 ? massText(*buy.pack->mass, style)
                                 : amountText({static_cast<double>(buy.pack->pieces.value_or(0)),
                                               quantity::Unit::Pieces},
                                              style);
    return std::to_string(count) + " x " + style.name(buy.pack->name) + " (" + size + ")";
}

}  // namespace

Document purchaseList(const event::Event& event, const quantity::Reckoning& all,
                      const Style& style) {
    Document document = sheetFor(event, style.say("Purchase list", "Lista de compras"), style);
    addHoles(document, all, style);
    Table table;
    table.name = "purchase";
    table.boxes = 1;
    table.columns = {{style.say("Buy", "Comprar"), Align::Start, 3},
                     {style.say("What", "Qué"), Align::Start, 3},
                     {style.say("Needed", "Necesario"), Align::End, 2},
                     {style.say("For", "Para"), Align::Start, 4}};
    for (const quantity::Buy& buy : all.purchase) {
        std::string dishes;
        for (const DishId& dish : buy.dishes)
            dishes += (dishes.empty() ? "" : ", ") + dishName(event, dish, style);
        table.rows.push_back({{toBuyText(buy, style), style.name(buy.name),
                               amountText(buy.need.amount, style), dishes},
                              buy.toBuy.isOverridden() || buy.need.isOverridden()});
    }
    document.blocks.emplace_back(std::move(table));

    Table goods;
    goods.name = "supplies";
    goods.boxes = 1;
    goods.columns = {{style.say("Buy", "Comprar"), Align::Start, 2},
                     {style.say("What", "Qué"), Align::Start, 4}};
    for (const char* key :
         {"supply/charcoal-bags", "supply/ice", "supply/drinking-water", "supply/fuel-cans",
          "supply/plates", "supply/napkins", "supply/cutlery", "supply/cups"})
        if (const auto* figure = quantity::findFigure(all.supplies, key))
            goods.rows.push_back({{amountText(figure->amount, style), style.name(figure->name)},
                                  figure->isOverridden()});
    document.blocks.emplace_back(Heading{style.say("Supplies", "Suministros"), 1});
    document.blocks.emplace_back(std::move(goods));
    return document;
}

}  // namespace cinder::report
