#include "report/sheet_parts.h"

namespace cinder::report {

namespace {

std::string textOf(const std::optional<quantity::Figure>& figure, const Style& style) {
    return figure ? amountText(figure->amount, style) : "?";
}

bool isOwn(const std::optional<quantity::Figure>& figure) {
    return figure && figure->isOverridden();
}

}  // namespace

Document quantitySheet(const event::Event& event, const quantity::Reckoning& all,
                       const Style& style) {
    Document document = sheetFor(event, style.say("Quantities", "Cantidades"), style);
    addHoles(document, all, style);
    Table table;
    table.name = "dishes";
    table.columns = {{style.say("Dish", "Plato"), Align::Start, 4},
                     {style.say("Portions", "Porciones"), Align::End, 2},
                     {style.say("Pieces", "Piezas"), Align::End, 2},
                     {style.say("Weight", "Peso"), Align::End, 2},
                     {style.say("Vessels", "Recipientes"), Align::End, 2},
                     {style.say("On the line", "En la línea"), Align::End, 2}};
    for (const quantity::DishFigures& dish : all.dishes)
        table.rows.push_back(
            {{style.name(dish.name), textOf(dish.portions, style),
              dish.pieces ? textOf(dish.pieces, style) : std::string("-"),
              textOf(dish.weight, style), textOf(dish.vessels, style), textOf(dish.onLine, style)},
             isOwn(dish.portions) || isOwn(dish.pieces) || isOwn(dish.weight) ||
                 isOwn(dish.vessels)});
    document.blocks.emplace_back(std::move(table));

    Table supplies;
    supplies.name = "needs";
    supplies.columns = {{style.say("What", "Qué"), Align::Start, 4},
                        {style.say("How much", "Cuánto"), Align::End, 2}};
    for (const quantity::Figure& figure : all.supplies)
        supplies.rows.push_back(
            {{style.name(figure.name), amountText(figure.amount, style)}, figure.isOverridden()});
    document.blocks.emplace_back(Heading{style.say("Line and guests", "Línea y personas"), 1});
    document.blocks.emplace_back(std::move(supplies));
    return document;
}

}  // namespace cinder::report
