#include <nlohmann/json.hpp>

#include "cli/run_sheet_text.h"

namespace cinder::cli {

namespace {

using Json = nlohmann::ordered_json;

std::string written(const PlannedDay& day, plan::FromBell fromBell) {
    return formatRfc3339({day.at(fromBell), day.event.serve.offset});
}

Json piecesOf(const PlannedDay& day, const plan::PlannedTask& planned) {
    Json pieces = Json::array();
    for (const plan::Piece& piece : planned.pieces) {
        Json people = Json::array();
        for (const plan::PersonIndex person : piece.people)
            people.push_back(day.problem.crew[static_cast<std::size_t>(person)].id.text());
        pieces.push_back({{"start", written(day, piece.start)},
                          {"seconds", std::chrono::seconds(piece.length).count()},
                          {"people", people}});
    }
    return pieces;
}

Json taskOf(const PlannedDay& day, std::size_t i, std::string_view language) {
    const plan::Task& task = day.problem.tasks[i];
    const plan::PlannedTask& planned = day.plan.schedule.tasks[i];
    Json json = {
        {"id", task.id.text()},
        {"name", task.name.in(language)},
        {"station", day.problem.stations[static_cast<std::size_t>(task.station)].id.text()},
        {"start", written(day, planned.start)},
        {"finish", written(day, planned.finish)},
        {"startSecondsFromBell", std::chrono::seconds(planned.start).count()},
        {"finishSecondsFromBell", std::chrono::seconds(planned.finish).count()}};
    if (task.dish) json["dish"] = task.dish->text();
    if (task.batch) json["batch"] = *task.batch;
    if (i < day.projected.size()) {
        json["slackSeconds"] =
            std::chrono::floor<std::chrono::seconds>(day.projected[i].slack).count();
        json["isCritical"] = day.projected[i].isCritical;
    }
    json["handsOn"] = piecesOf(day, planned);
    return json;
}

}  // namespace

std::string runSheetJson(const PlannedDay& day, std::string_view language, Cost cost) {
    Json json = {{"event", day.event.id.text()},
                 {"name", day.event.name.in(language)},
                 {"serve", formatRfc3339(day.event.serve)},
                 {"guests", event::headCount(day.event.guests)},
                 {"latestArrival", written(day, day.plan.latestArrival)},
                 {"arrivalBound", written(day, day.plan.arrivalBound)}};
    if (day.problem.arrival) json["arrival"] = written(day, *day.problem.arrival);
    Json violations = Json::array();
    for (const plan::Violation& violation : day.violations)
        violations.push_back(plan::describe(day.problem, violation));
    json["violations"] = violations;
    json["schedulesTried"] = day.plan.schedulesTried;
    json["planningMilliseconds"] = cost.searched.count();
    if (cost.peakKibibytes) json["peakKibibytes"] = *cost.peakKibibytes;
    Json tasks = Json::array();
    for (const std::size_t i : day.byStart())
        tasks.push_back(taskOf(day, i, language));
    json["tasks"] = tasks;
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace cinder::cli
