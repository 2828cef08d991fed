#include <nlohmann/json.hpp>

#include "live/run_sheet.h"
#include "live/sheet_words.h"

namespace cinder::live {

namespace {

using Json = nlohmann::json;

Json nameOf(const LocalText& text) {
    Json json = Json::object();
    for (const auto& [language, words] : text.byLanguage())
        json[language] = words;
    return json;
}

Json namesOf(const std::vector<LocalText>& texts) {
    Json json = Json::array();
    for (const LocalText& text : texts)
        json.push_back(nameOf(text));
    return json;
}

template <class Place>
Json placesOf(const std::vector<Place>& places) {
    Json json = Json::array();
    for (const Place& place : places)
        json.push_back({{"id", place.id.text()}, {"name", nameOf(place.name)}});
    return json;
}

Json walkOf(const plan::Problem& problem) {
    Json json = Json::array();
    for (const auto& row : problem.walk) {
        Json cells = Json::array();
        for (const plan::HalfMinutes time : row)
            cells.push_back(time.count());
        json.push_back(std::move(cells));
    }
    return json;
}

Json peopleOf(const plan::Problem& problem) {
    Json json = Json::array();
    for (const plan::Person& person : problem.crew)
        json.push_back(
            {{"id", person.id.text()}, {"name", person.name}, {"skills", person.skills}});
    return json;
}

Json resourcesOf(const plan::Problem& problem) {
    Json json = Json::array();
    for (const plan::Resource& resource : problem.resources) {
        Json steps = Json::array();
        for (const plan::CapacityStep& step : resource.steps)
            steps.push_back({step.from.count(), step.units});
        json.push_back({{"id", resource.id.text()},
                        {"name", nameOf(resource.name)},
                        {"capacity", resource.capacity},
                        {"steps", std::move(steps)}});
    }
    return json;
}

Json linksOf(const plan::Problem& problem) {
    Json json = Json::array();
    for (const plan::Link& link : problem.links) {
        Json one = {{"from", link.from},
                    {"to", link.to},
                    {"fromEnd", wordFor(link.fromEnd, kEndWords)},
                    {"toEnd", wordFor(link.toEnd, kEndWords)},
                    {"minLag", link.minLag.count()}};
        if (link.maxLag) one["maxLag"] = link.maxLag->count();
        json.push_back(std::move(one));
    }
    return json;
}

Json handsOf(const plan::Task& task) {
    Json json = Json::array();
    for (const plan::HandsOn& hands : task.hands)
        json.push_back({{"offset", hands.offset.count()},
                        {"length", hands.length.count()},
                        {"skill", hands.skill},
                        {"people", hands.people},
                        {"act", wordFor(hands.act, kActWords)}});
    return json;
}

Json plannedOf(const plan::PlannedTask& planned) {
    Json pieces = Json::array();
    for (const plan::Piece& piece : planned.pieces)
        pieces.push_back({piece.start.count(), piece.length.count(), piece.people});
    return {{"start", planned.start.count()},
            {"finish", planned.finish.count()},
            {"pieces", std::move(pieces)}};
}

Json taskOf(const plan::Task& task, const plan::PlannedTask& planned) {
    Json uses = Json::array();
    for (const plan::ResourceUse& use : task.uses)
        uses.push_back({use.resource, use.units});
    Json json = {
        {"id", task.id.text()},
        {"name", nameOf(task.name)},
        {"kind", wordFor(task.kind, kTaskKindWords)},
        {"station", task.station},
        {"duration",
         {task.duration.low.count(), task.duration.usual.count(), task.duration.high.count()}},
        {"hands", handsOf(task)},
        {"uses", std::move(uses)},
        {"lean", wordFor(task.lean, kLeanWords)},
        {"planned", plannedOf(planned)}};
    if (task.dish) json["dish"] = task.dish->text();
    if (task.batch) json["batch"] = *task.batch;
    if (task.shortestPiece) json["shortestPiece"] = task.shortestPiece->count();
    if (task.earliestStart) json["earliestStart"] = task.earliestStart->count();
    if (task.latestFinish) json["latestFinish"] = task.latestFinish->count();
    if (task.staleness != 0) json["staleness"] = task.staleness;
    if (task.endsByItself) json["endsByItself"] = true;
    if (!task.checklist.empty()) json["checklist"] = namesOf(task.checklist);
    if (task.checkEvery) json["checkEvery"] = task.checkEvery->count();
    return json;
}

}  // namespace

std::string writeRunSheet(const RunSheet& sheet) {
    const plan::Problem& problem = sheet.problem;
    Json tasks = Json::array();
    for (std::size_t i = 0; i < problem.tasks.size(); ++i)
        tasks.push_back(taskOf(problem.tasks[i], sheet.schedule.tasks[i]));
    Json json = {{"version", kRunSheetVersion},
                 {"bell", formatRfc3339({sheet.bell, UtcOffset{0}})},
                 {"stations", placesOf(problem.stations)},
                 {"skills", placesOf(problem.skills)},
                 {"walk", walkOf(problem)},
                 {"people", peopleOf(problem)},
                 {"resources", resourcesOf(problem)},
                 {"tasks", std::move(tasks)},
                 {"links", linksOf(problem)}};
    if (problem.arrival) json["arrival"] = problem.arrival->count();
    return json.dump(-1, ' ', false, Json::error_handler_t::replace);
}

}  // namespace cinder::live
