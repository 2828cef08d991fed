#include "cli/run_sheet_text.h"

#include <set>

#include "cli/table.h"

namespace cinder::cli {

namespace {

std::string inMinutes(Duration duration) {
    return std::to_string(std::chrono::floor<std::chrono::minutes>(duration).count()) + " min";
}

std::string moment(const PlannedDay& day, plan::FromBell fromBell) {
    return formatWallTime(day.at(fromBell), day.event.serve.offset) + "  " +
           formatBellOffset(fromBell);
}

std::string taskName(const plan::Task& task, std::string_view language) {
    std::string name(task.name.in(language));
    if (task.batch) name += " (" + std::to_string(*task.batch) + ")";
    return name;
}

std::string peopleOf(const PlannedDay& day, std::size_t task) {
    std::set<plan::PersonIndex> people;
    for (const plan::Piece& piece : day.plan.schedule.tasks[task].pieces)
        people.insert(piece.people.begin(), piece.people.end());
    std::string names;
    for (const plan::PersonIndex person : people)
        names +=
            (names.empty() ? "" : ", ") + day.problem.crew[static_cast<std::size_t>(person)].name;
    return names.empty() ? "-" : names;
}

std::string arrivalLine(const PlannedDay& day) {
    std::string line;
    if (day.problem.arrival)
        line += "crew arrives " + moment(day, *day.problem.arrival) + ", as agreed\n";
    line += "latest arrival for this plan " + moment(day, day.plan.latestArrival);
    if (day.plan.arrivalBound == day.plan.latestArrival)
        line += ", proven latest\n";
    else
        line += "; no plan allows later than " + moment(day, day.plan.arrivalBound) + "\n";
    return line;
}

}  // namespace

std::string verdict(const PlannedDay& day) {
    if (day.violations.empty()) return "checker: every rule holds\n";
    std::string words = "checker: " + std::to_string(day.violations.size()) + " broken\n";
    for (const plan::Violation& violation : day.violations)
        words += "  " + plan::describe(day.problem, violation) + "\n";
    return words;
}

std::string runSheetText(const PlannedDay& day, std::string_view language, Cost cost) {
    std::string text = std::string(day.event.name.in(language)) + "\n" +
                       std::to_string(event::headCount(day.event.guests)) + " guests, " +
                       std::to_string(day.problem.crew.size()) + " crew, serve " +
                       formatRfc3339(day.event.serve) + "\n\n";
    // Columns that flush right: slack.
    Table table({"start", "T-minus", "until", "task", "station", "people", "slack", ""}, {6});
    for (const std::size_t i : day.byStart()) {
        const plan::Task& task = day.problem.tasks[i];
        const plan::PlannedTask& planned = day.plan.schedule.tasks[i];
        const auto& station = day.problem.stations[static_cast<std::size_t>(task.station)];
        const bool isKnown = i < day.projected.size();
        table.add({formatWallTime(day.at(planned.start), day.event.serve.offset),
                   formatBellOffset(planned.start),
                   formatWallTime(day.at(planned.finish), day.event.serve.offset),
                   taskName(task, language), std::string(station.name.in(language)),
                   peopleOf(day, i), isKnown ? inMinutes(day.projected[i].slack) : "",
                   isKnown && day.projected[i].isCritical ? "critical" : ""});
    }
    text += table.text() + "\n" + arrivalLine(day) + verdict(day);
    text += "planned in " + std::to_string(cost.searched.count()) + " ms, " +
            std::to_string(day.plan.schedulesTried) + " schedules tried";
    if (cost.peakKibibytes)
        text += ", peak memory " + std::to_string(*cost.peakKibibytes / 1024) + " MiB";
    return text + "\n";
}

}  // namespace cinder::cli
