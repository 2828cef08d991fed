#include <nlohmann/json.hpp>
#include <set>

#include "live/run_sheet.h"
#include "live/sheet_words.h"

namespace cinder::live {

namespace {

using Json = nlohmann::json;
using plan::HalfMinutes;

/// Thrown inside this file only.
struct Misshapen {
    std::string member;
};

/// A week before or after the bell: more than any day of work, far from any overflow.
constexpr std::int32_t kFurthest = 7 * 24 * 120;
constexpr std::int32_t kMostUnits = 10'000'000;
constexpr std::size_t kMostTasks = 5'000;
constexpr std::size_t kMostOthers = 20'000;
constexpr std::size_t kMostBytes = 16U << 20U;

const Json& member(const Json& object, const char* name) {
    const auto found = object.find(name);
    if (found == object.end()) throw Misshapen{name};
    return *found;
}

const Json& list(const Json& object, const char* name, std::size_t most = kMostOthers) {
    const Json& found = member(object, name);
    if (!found.is_array() || found.size() > most) throw Misshapen{name};
    return found;
}

std::int32_t whole(const Json& number, const char* name, std::int32_t least, std::int32_t most) {
    if (!number.is_number_integer()) throw Misshapen{name};
    if (number.is_number_unsigned() && number.get<std::uint64_t>() > std::uint64_t{kMostUnits})
        throw Misshapen{name};
    const auto value = number.get<std::int64_t>();
    if (value < least || value > most) throw Misshapen{name};
    return static_cast<std::int32_t>(value);
}

std::int32_t indexIn(std::size_t count, const Json& number, const char* name) {
    return whole(number, name, 0, static_cast<std::int32_t>(count) - 1);
}

HalfMinutes moment(const Json& number, const char* name) {
    return HalfMinutes{whole(number, name, -kFurthest, kFurthest)};
}

HalfMinutes length(const Json& number, const char* name) {
    return HalfMinutes{whole(number, name, 0, kFurthest)};
}

template <class Read>
auto optionally(const Json& object, const char* name, Read read)
    -> std::optional<decltype(read(object, name))> {
    const auto found = object.find(name);
    if (found == object.end()) return std::nullopt;
    return read(*found, name);
}

std::string text(const Json& object, const char* name) {
    const Json& found = member(object, name);
    if (!found.is_string()) throw Misshapen{name};
    return found.get<std::string>();
}

LocalText localText(const Json& json, const char* name) {
    if (!json.is_object()) throw Misshapen{name};
    std::map<std::string, std::string> words;
    for (const auto& [language, value] : json.items()) {
        if (!value.is_string()) throw Misshapen{name};
        words.emplace(language, value.get<std::string>());
    }
    return LocalText(std::move(words));
}

template <class Enum, std::size_t N>
Enum oneOf(const Json& object, const char* name, const std::array<std::string_view, N>& words) {
    const std::string word = text(object, name);
    for (std::size_t i = 0; i < N; ++i)
        if (words[i] == word) return static_cast<Enum>(i);
    throw Misshapen{name};
}

template <class Place>
std::vector<Place> readPlaces(const Json& sheet, const char* name) {
    std::vector<Place> places;
    for (const Json& json : list(sheet, name)) {
        Place place;
        place.id = decltype(place.id)(text(json, "id"));
        place.name = localText(member(json, "name"), "name");
        places.push_back(std::move(place));
    }
    return places;
}

std::vector<std::vector<HalfMinutes>> readWalk(const Json& sheet, std::size_t stations) {
    std::vector<std::vector<HalfMinutes>> walk;
    for (const Json& row : list(sheet, "walk")) {
        if (!row.is_array() || row.size() != stations) throw Misshapen{"walk"};
        auto& cells = walk.emplace_back();
        for (const Json& cell : row)
            cells.push_back(length(cell, "walk"));
    }
    if (walk.size() != stations) throw Misshapen{"walk"};
    return walk;
}

std::vector<plan::Person> readPeople(const Json& sheet, std::size_t skills) {
    std::vector<plan::Person> crew;
    for (const Json& json : list(sheet, "people")) {
        plan::Person person{PersonId(text(json, "id")), text(json, "name"), {}};
        for (const Json& skill : list(json, "skills"))
            person.skills.push_back(indexIn(skills, skill, "skills"));
        crew.push_back(std::move(person));
    }
    return crew;
}

std::vector<plan::Resource> readResources(const Json& sheet) {
    std::vector<plan::Resource> resources;
    for (const Json& json : list(sheet, "resources")) {
        plan::Resource resource;
        resource.id = ResourceId(text(json, "id"));
        resource.name = localText(member(json, "name"), "name");
        resource.capacity = whole(member(json, "capacity"), "capacity", 0, kMostUnits);
        for (const Json& step : list(json, "steps")) {
            if (!step.is_array() || step.size() != 2) throw Misshapen{"steps"};
            resource.steps.push_back(
                {moment(step[0], "steps"), whole(step[1], "steps", 0, kMostUnits)});
        }
        resources.push_back(std::move(resource));
    }
    return resources;
}

std::vector<plan::HandsOn> readHands(const Json& task, const plan::Problem& problem) {
    std::vector<plan::HandsOn> hands;
    for (const Json& json : list(task, "hands")) {
        plan::HandsOn one;
        one.offset = length(member(json, "offset"), "offset");
        one.length = length(member(json, "length"), "length");
        one.skill = indexIn(problem.skills.size(), member(json, "skill"), "skill");
        one.people = whole(member(json, "people"), "people", 1, 1000);
        one.act = oneOf<plan::HandsOn::Act>(json, "act", kActWords);
        hands.push_back(one);
    }
    return hands;
}

std::vector<LocalText> readChecklist(const Json& task) {
    std::vector<LocalText> lines;
    if (task.contains("checklist"))
        for (const Json& line : list(task, "checklist"))
            lines.push_back(localText(line, "checklist"));
    return lines;
}

bool readFlag(const Json& object, const char* name) {
    const auto found = object.find(name);
    if (found == object.end()) return false;
    if (!found->is_boolean()) throw Misshapen{name};
    return found->get<bool>();
}

void readTimes(const Json& json, plan::Task& task) {
    const Json& duration = list(json, "duration");
    if (duration.size() != 3) throw Misshapen{"duration"};
    task.duration = {length(duration[0], "duration"), length(duration[1], "duration"),
                     length(duration[2], "duration")};
    task.shortestPiece = optionally(json, "shortestPiece", length);
    task.earliestStart = optionally(json, "earliestStart", moment);
    task.latestFinish = optionally(json, "latestFinish", moment);
    task.checkEvery = optionally(json, "checkEvery", length);
}

plan::Task readTask(const Json& json, const plan::Problem& problem) {
    plan::Task task;
    task.id = TaskId(text(json, "id"));
    task.name = localText(member(json, "name"), "name");
    task.kind = oneOf<plan::TaskKind>(json, "kind", kTaskKindWords);
    if (json.contains("dish")) task.dish = DishId(text(json, "dish"));
    task.batch = optionally(json, "batch", [](const Json& number, const char* name) {
        return whole(number, name, 1, kMostUnits);
    });
    task.station = indexIn(problem.stations.size(), member(json, "station"), "station");
    readTimes(json, task);
    task.hands = readHands(json, problem);
    for (const Json& use : list(json, "uses")) {
        if (!use.is_array() || use.size() != 2) throw Misshapen{"uses"};
        task.uses.push_back({indexIn(problem.resources.size(), use[0], "uses"),
                             whole(use[1], "uses", 0, kMostUnits)});
    }
    task.lean = oneOf<plan::Lean>(json, "lean", kLeanWords);
    if (json.contains("staleness"))
        task.staleness = whole(json["staleness"], "staleness", 0, kMostUnits);
    task.endsByItself = readFlag(json, "endsByItself");
    task.checklist = readChecklist(json);
    return task;
}

plan::PlannedTask readPlanned(const Json& json, const plan::Task& task, std::size_t people) {
    plan::PlannedTask planned{
        moment(member(json, "start"), "start"), moment(member(json, "finish"), "finish"), {}};
    for (const Json& one : list(json, "pieces")) {
        if (!one.is_array() || one.size() != 3 || !one[2].is_array()) throw Misshapen{"pieces"};
        plan::Piece piece{moment(one[0], "pieces"), length(one[1], "pieces"), {}};
        for (const Json& person : one[2])
            piece.people.push_back(indexIn(people, person, "pieces"));
        planned.pieces.push_back(std::move(piece));
    }
    const bool answersHands = task.shortestPiece && task.hands.size() == 1
                                  ? !planned.pieces.empty()
                                  : planned.pieces.size() == task.hands.size();
    if (!answersHands || planned.finish < planned.start) throw Misshapen{"planned"};
    return planned;
}

std::vector<plan::Link> readLinks(const Json& sheet, std::size_t tasks) {
    std::vector<plan::Link> links;
    for (const Json& json : list(sheet, "links")) {
        plan::Link link;
        link.from = indexIn(tasks, member(json, "from"), "from");
        link.to = indexIn(tasks, member(json, "to"), "to");
        link.fromEnd = oneOf<plan::End>(json, "fromEnd", kEndWords);
        link.toEnd = oneOf<plan::End>(json, "toEnd", kEndWords);
        link.minLag = moment(member(json, "minLag"), "minLag");
        link.maxLag = optionally(json, "maxLag", moment);
        links.push_back(link);
    }
    return links;
}

RunSheet readSheet(const Json& json) {
    RunSheet sheet;
    plan::Problem& problem = sheet.problem;
    const auto bell = parseRfc3339(text(json, "bell"));
    if (!bell) throw Misshapen{"bell"};
    sheet.bell = bell->at;
    problem.arrival = optionally(json, "arrival", moment);
    problem.stations = readPlaces<plan::Station>(json, "stations");
    problem.skills = readPlaces<plan::Skill>(json, "skills");
    problem.walk = readWalk(json, problem.stations.size());
    problem.crew = readPeople(json, problem.skills.size());
    problem.resources = readResources(json);
    std::set<TaskId> seen;
    for (const Json& one : list(json, "tasks", kMostTasks)) {
        plan::Task task = readTask(one, problem);
        if (!seen.insert(task.id).second) throw Misshapen{"id"};
        sheet.schedule.tasks.push_back(
            readPlanned(member(one, "planned"), task, problem.crew.size()));
        problem.tasks.push_back(std::move(task));
    }
    problem.links = readLinks(json, problem.tasks.size());
    return sheet;
}

}  // namespace

Result<RunSheet, SheetFault> readRunSheet(std::string_view document) {
    if (document.size() > kMostBytes) return fail(SheetFault{SheetFault::What::WrongShape, "size"});
    const Json json = Json::parse(document, nullptr, false);
    if (!json.is_object()) return fail(SheetFault{SheetFault::What::NotJson, {}});
    try {
        if (whole(member(json, "version"), "version", 1, kMostUnits) > kRunSheetVersion)
            return fail(SheetFault{SheetFault::What::Newer, {}});
        return readSheet(json);
    } catch (const Misshapen& fault) {
        return fail(SheetFault{SheetFault::What::WrongShape, fault.member});
    }
}

}  // namespace cinder::live
