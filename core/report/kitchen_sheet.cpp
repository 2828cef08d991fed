#include "report/sheet_parts.h"

namespace cinder::report {

namespace {

std::string limitText(const quantity::Deadline& deadline, UtcOffset offset, const Style& style) {
    const std::string temperature = temperatureText(deadline.temperature, style);
    if (!deadline.by)
        return style.say("always at or above ", "siempre a ") + temperature +
               style.say("", " o más");
    return temperature + style.say(" or below by ", " o menos a las ") +
           dayText(*deadline.by, offset, style);
}

}  // namespace

Document kitchenSheet(const event::Event& event, const quantity::Reckoning& all,
                      const Style& style) {
    Document document = sheetFor(event, style.say("Kitchen, ahead", "Cocina, antes"), style);
    if (all.departure)
        document.blocks.emplace_back(
            Note{style.say("The van leaves by ", "La camioneta sale a más tardar ") +
                     dayText(all.departure->leaveBy, event.serve.offset, style),
                 false});
    addHoles(document, all, style);
    Table table;
    table.name = "kitchen";
    table.boxes = 1;
    table.columns = {{style.say("Start", "Empezar"), Align::Start, 2},
                     {style.say("Done by", "Listo"), Align::Start, 2},
                     {style.say("Dish", "Plato"), Align::Start, 3},
                     {style.say("Work", "Trabajo"), Align::Start, 3},
                     {style.say("How much", "Cuánto"), Align::End, 2},
                     {style.say("Then", "Después"), Align::Start, 2}};
    const UtcOffset offset = event.serve.offset;
    for (const quantity::KitchenTask& task : all.kitchen)
        table.rows.push_back(
            {{task.startBy ? dayText(*task.startBy, offset, style) : std::string(),
              dayText(task.finishBy, offset, style), style.name(task.dishName),
              style.name(task.name), task.weight ? amountText(task.weight->amount, style) : "",
              word(task.then, style)},
             false});
    document.blocks.emplace_back(std::move(table));

    document.blocks.emplace_back(
        Heading{style.say("Cooling and holding record", "Registro de enfriado y espera"), 1});
    for (const quantity::KitchenTask& task : all.kitchen)
        for (const quantity::Deadline& deadline : task.deadlines)
            document.blocks.emplace_back(
                Blank{style.name(task.dishName) + ": " + limitText(deadline, offset, style)});
    document.blocks.emplace_back(
        Note{style.say("Cooked food: from 57 °C (135 °F) to 21 °C (70 °F) within 2 h, to 5 °C "
                       "(41 °F) within 6 h in all; cold food made of room-warm things to 5 °C "
                       "(41 °F) within 4 h. FDA Food Code 2022, 3-501.14. Above that: correct or "
                       "throw away, and write down which.",
                       "Comida cocida: de 57 °C (135 °F) a 21 °C (70 °F) en 2 h y a 5 °C (41 °F) "
                       "en 6 h en total; comida fría de ingredientes a temperatura ambiente a 5 °C "
                       "(41 °F) en 4 h. FDA Food Code 2022, 3-501.14. Si no: corregir o tirar, y "
                       "anotar qué se hizo."),
             true});
    addFoodCode(document, style);
    return document;
}

}  // namespace cinder::report
