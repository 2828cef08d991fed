#include <algorithm>

#include "report/sheet_parts.h"

namespace cinder::report {

namespace {

/// Tables `first` up to `last`; two of them are as many as a page shows large enough.
Drawing drawing(const quantity::Line& line, std::size_t first, std::size_t last,
                const Style& style) {
    Drawing picture;
    const Length from = line.tables[first].x;
    for (std::size_t t = first; t < last; ++t) {
        const quantity::TableSpan& span = line.tables[t];
        picture.width = span.x + span.length - from;
        picture.height = std::max(picture.height, span.width);
    }
    for (std::size_t t = first; t < last; ++t) {
        const quantity::TableSpan& span = line.tables[t];
        picture.boxes.push_back(
            {span.x - from, {}, span.length, span.width, style.name(span.name), true});
    }
    if (first == 0)
        picture.boxes.push_back({{},
                                 {},
                                 quantity::kPlatesRoom,
                                 picture.height - quantity::kCardStrip,
                                 style.say("plates", "platos"),
                                 false});
    for (std::size_t i = 0; i < line.stands.size(); ++i) {
        const quantity::Stand& stand = line.stands[i];
        if (stand.table < first || stand.table >= last) continue;
        // Guests walk along the lower edge. The number comes first: a small box has room for
        // nothing else.
        picture.boxes.push_back({stand.x - from, picture.height - stand.y - stand.width,
                                 stand.length, stand.width,
                                 std::to_string(i + 1) + " " + style.name(stand.name), false});
    }
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
                       roomText(line.available, style);
    const bool isShort = line.shortBy > Length{};
    if (isShort)
        room += style.say("; short by ", "; faltan ") + lengthText(line.shortBy, style) +
                style.say(": add ", ": agregar ") +
                amountText({static_cast<double>(line.moreTables), quantity::Unit::Tables}, style);
    if (line.areChafersEndOn)
        room += style.say("; chafers stand end-on", "; calientaplatos de punta");
    document.blocks.emplace_back(Note{room, isShort});
    constexpr std::size_t kTablesARow = 2;
    for (std::size_t t = 0; t < line.tables.size(); t += kTablesARow)
        document.blocks.emplace_back(
            drawing(line, t, std::min(t + kTablesARow, line.tables.size()), style));

    Table table;
    table.name = "line";
    table.boxes = 1;
    table.columns = {{style.say("No.", "N.º"), Align::End, 1},
                     {style.say("From the head", "Desde el inicio"), Align::End, 2},
                     {style.say("Dish", "Plato"), Align::Start, 4},
                     {style.say("Vessel", "Recipiente"), Align::Start, 2},
                     {style.say("Where", "Dónde"), Align::Start, 2}};
    for (const quantity::Stand& stand : line.stands)
        table.rows.push_back({{std::to_string(table.rows.size() + 1), lengthText(stand.x, style),
                               style.name(stand.name), word(stand.vessel, style),
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
                                       "Hecho donde se manejan alérgenos: pregúntenos."));
        document.blocks.emplace_back(std::move(card));
    }
    return document;
}

}  // namespace cinder::report
