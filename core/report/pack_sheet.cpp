#include "report/sheet_parts.h"

namespace cinder::report {

Document packSheet(const event::Event& event, const quantity::Reckoning& all, const Style& style) {
    Document document = sheetFor(event, style.say("Pack list", "Lista de carga"), style);
    if (all.departure)
        document.blocks.emplace_back(
            Note{style.say("Leave by ", "Salir a más tardar ") +
                     dayText(all.departure->leaveBy, event.serve.offset, style),
                 false});
    addHoles(document, all, style);
    document.blocks.emplace_back(
        Note{style.say("First box: into the van. Second box: back in the van after the event.",
                       "Primera casilla: en la camioneta. Segunda: de regreso tras el evento."),
             false});
    const quantity::PackRow* before = nullptr;
    for (const quantity::PackRow& row : all.pack) {
        if (before == nullptr || before->ride != row.ride) {
            document.blocks.emplace_back(Heading{word(row.ride, style), 2});
            Table table;
            table.name = "pack-" + std::to_string(static_cast<int>(row.ride));
            table.boxes = 2;
            table.columns = {{style.say("Count", "Cantidad"), Align::End, 2},
                             {style.say("What", "Qué"), Align::Start, 6},
                             {style.say("Comes back", "Regresa"), Align::Start, 2}};
            document.blocks.emplace_back(std::move(table));
        }
        before = &row;
        std::get<Table>(document.blocks.back())
            .rows.push_back({{amountText(row.amount, style), style.name(row.name),
                              row.comesBack ? style.say("yes", "sí") : style.say("no", "no")},
                             false});
    }
    return document;
}

Table packTable(const quantity::Reckoning& all, const Style& style) {
    Table table;
    table.name = "pack";
    table.columns = {{style.say("Rides", "Viaja"), Align::Start, 3},
                     {style.say("Count", "Cantidad"), Align::End, 2},
                     {style.say("What", "Qué"), Align::Start, 6},
                     {style.say("Comes back", "Regresa"), Align::Start, 2}};
    for (const quantity::PackRow& row : all.pack)
        table.rows.push_back(
            {{word(row.ride, style), amountText(row.amount, style), style.name(row.name),
              row.comesBack ? style.say("yes", "sí") : style.say("no", "no")},
             false});
    return table;
}

}  // namespace cinder::report
