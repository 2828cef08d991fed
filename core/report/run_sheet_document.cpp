#include <algorithm>
#include <numeric>
#include <set>

#include "report/sheet_parts.h"

namespace cinder::report {

namespace {

std::string peopleOf(const live::RunSheet& sheet, std::size_t task) {
    std::set<plan::PersonIndex> people;
    for (const plan::Piece& piece : sheet.schedule.tasks[task].pieces)
        people.insert(piece.people.begin(), piece.people.end());
    std::string names;
    for (const plan::PersonIndex person : people)
        names +=
            (names.empty() ? "" : ", ") + sheet.problem.crew[static_cast<std::size_t>(person)].name;
    return names;
}

}  // namespace

Document runSheet(const event::Event& event, const live::RunSheet& sheet, const Style& style,
                  const std::vector<bool>& isLeftOut) {
    Document document = sheetFor(event, style.say("Run sheet", "Hoja de ruta"), style);
    Table table;
    table.name = "run-sheet";
    table.boxes = 1;
    table.columns = {{style.say("Start", "Inicio"), Align::Start, 2},
                     {"T-", Align::Start, 2},
                     {style.say("Until", "Hasta"), Align::Start, 2},
                     {style.say("Task", "Tarea"), Align::Start, 6},
                     {style.say("Station", "Estación"), Align::Start, 3},
                     {style.say("Who", "Quién"), Align::Start, 3}};
    std::vector<std::size_t> order(sheet.problem.tasks.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return sheet.schedule.tasks[a].start < sheet.schedule.tasks[b].start;
    });
    for (const std::size_t i : order) {
        const plan::Task& task = sheet.problem.tasks[i];
        const plan::PlannedTask& planned = sheet.schedule.tasks[i];
        const auto& station = sheet.problem.stations[static_cast<std::size_t>(task.station)];
        std::string name = style.name(task.name);
        if (task.batch) name += " (" + std::to_string(*task.batch) + ")";
        if (!isLeftOut.empty() && isLeftOut[i]) name += style.say(" – left out", " – omitido");
        table.rows.push_back({{timeText(sheet.bell + planned.start, event.serve.offset, style),
                               formatBellOffset(planned.start),
                               timeText(sheet.bell + planned.finish, event.serve.offset, style),
                               std::move(name), style.name(station.name), peopleOf(sheet, i)},
                              false});
    }
    document.blocks.emplace_back(std::move(table));
    addFoodCode(document, style);
    return document;
}

}  // namespace cinder::report
