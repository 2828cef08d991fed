#include "report/sheet_parts.h"

namespace cinder::report {

namespace {

Drawing drawing(const quantity::Line& line, const Style& style) {
    Drawing picture;
    picture.width = line.available;
    for (const quantity::TableSpan& span : line.tables) {
        picture.height = std::max(picture.height, span.width);
        picture.boxes.push_back({span.x, {}, span.length, span.width, style.name(span.name), true});
    }
    // Guests walk along the lower edge.
    const auto flipped = [&](const quantity::Stand& stand) {
        return picture.height - stand.y - stand.width;
    };
    const Length strip = quantity::kCardStrip;
    picture.boxes.push_back({{},
                             {},
                             quantity::kPlatesRoom,
                             picture.height - strip,
                             style.say("plates", "platos"),
                             false});
    for (const quantity::Stand& stand : line.stands)
        picture.boxes.push_back(
            {stand.x, flipped(stand), stand.length, stand.width,
             style.name(stand.name) + (stand.isOnRiser ? style.say(" (riser)", " (elevador)") : ""),
             false});
    return picture;
}

}  // namespace

Document buffetPlan(const event::Event& event, const quantity::Reckoning& all, const Style& style) {
    Document document = sheetFor(event, style.say("Buffet plan", "Plano del bufé"), style);
    const quantity::Line& line = all.line;
    if (line.tables.empty()) {
        addHoles(document, all, style);
        return document;
    }
    std::string room = style.say("The line takes ", "La línea ocupa ") +
                       lengthText(line.needed, style) + style.say(" of ", " de ") +
                       lengthText(line.available, style);
    const bool isShort = line.shortBy > Length{};
    if (isShort)
        room += style.say("; short by ", "; faltan ") + lengthText(line.shortBy, style) +
                style.say(": add ", ": agregar ") +
                amountText({static_cast<double>(line.moreTables), quantity::Unit::Tables}, style);
    if (line.areChafersEndOn)
        room += style.say("; chafers stand end-on", "; calientaplatos de punta");
    document.blocks.emplace_back(Note{room, isShort});
    document.blocks.emplace_back(drawing(line, style));

    Table table;
    table.name = "line";
    table.boxes = 1;
    table.columns = {{style.say("From the head", "Desde el inicio"), Align::End, 2},
                     {style.say("Dish", "Plato"), Align::Start, 4},
                     {style.say("Vessel", "Recipiente"), Align::Start, 2},
                     {style.say("Where", "Dónde"), Align::Start, 2}};
    for (const quantity::Stand& stand : line.stands)
        table.rows.push_back(
            {{lengthText(stand.x, style), style.name(stand.name), word(stand.vessel, style),
              stand.isOnRiser ? style.say("back, on a riser", "atrás, elevado")
                              : style.say("front", "al frente")},
             false});
    document.blocks.emplace_back(std::move(table));
    for (const DishId& dish : line.waiting)
        document.blocks.emplace_back(Note{
            style.say("No room for ", "Sin lugar para ") + dishName(event, dish, style), true});
    for (const quantity::Prompt& prompt : line.prompts)
        document.blocks.emplace_back(Note{style.name(prompt.words), false});
    return document;
}

Document dishCards(const event::Event& event, const Style& style) {
    Document document = sheetFor(event, style.say("Dish cards", "Tarjetas de platos"), style);
    for (const std::size_t i : quantity::servingOrder(event)) {
        const event::Dish& dish = event.menu[i];
        StandingCard card;
        card.title = style.name(dish.name);
        card.lines.push_back(
            style.say("Contains: ", "Contiene: ") +
            joined(dish.contains, style,
                   style.say("no declared allergen", "ningún alérgeno declarado")));
        if (!dish.suits.empty()) card.lines.push_back(joined(dish.suits, style, {}));
        card.lines.push_back(style.say("Made where allergens are handled: ask us.",
                                       "Hecho donde se manejan alérgenos: pregúntanos."));
        document.blocks.emplace_back(std::move(card));
    }
    return document;
}

}  // namespace cinder::report
