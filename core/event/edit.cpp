#include "event/edit.h"

#include "event/edit_parts.h"

namespace cinder::event {

namespace {

std::string inQuotes(const std::string& word) {
    return '"' + word + '"';
}

/// Sets the count of one kind, or takes its line out.
template <class Line, class Kind>
void setCount(std::vector<Line>& lines, Kind Line::*kind, Kind wanted, std::int32_t count) {
    const auto there = std::find_if(lines.begin(), lines.end(),
                                    [&](const Line& line) { return line.*kind == wanted; });
    if (count == 0) {
        if (there != lines.end()) lines.erase(there);
    } else if (there != lines.end()) {
        there->count = count;
    } else {
        Line line;
        line.*kind = wanted;
        line.count = count;
        lines.push_back(std::move(line));
    }
}

/// Whoever occupies the resource, by the field that says so.
Faults usersOf(const Event& draft, const ResourceId& resource, const std::string& where) {
    Faults users;
    const auto blame = [&](const std::string& path) {
        users.push_back({Fault::What::Contradiction, path, inQuotes(resource.text()), where, {}});
    };
    forEachStep(draft, [&](const Dish*, const Step& step, const std::string& path) {
        for (std::size_t i = 0; i < step.onGrates.size(); ++i)
            if (step.onGrates[i] == resource) blame(joinPath(path + "/onGrates", i));
        for (std::size_t i = 0; i < step.uses.size(); ++i)
            if (step.uses[i].resource == resource) blame(joinPath(path + "/uses", i) + "/resource");
    });
    return users;
}

/// Steps and kit at stations the new site does not have.
Faults strandedBy(const Event& draft, Site& site) {
    Faults stranded;
    const auto check = [&](const StationId& station, const std::string& path) {
        if (findById(site.stations, station) == site.stations.end())
            stranded.push_back({Fault::What::Dangling,
                                path + "/station",
                                inQuotes(station.text()),
                                "/site/stations",
                                {}});
    };
    const auto checkList = [&](const auto& list, const std::string& path) {
        for (std::size_t i = 0; i < list.size(); ++i)
            if (list[i].station) check(*list[i].station, joinPath(path, i));
    };
    for (std::size_t i = 0; i < draft.kit.grates.size(); ++i)
        check(draft.kit.grates[i].station, joinPath("/kit/grates", i));
    checkList(draft.kit.equipment, "/kit/equipment");
    checkList(draft.kit.tables, "/kit/tables");
    forEachStep(draft, [&](const Dish*, const Step& step, const std::string& path) {
        check(step.station, path);
    });
    return stranded;
}

template <class Entry>
bool eraseKit(std::vector<Entry>& list, const ResourceId& id) {
    const auto there = findById(list, id);
    if (there == list.end()) return false;
    list.erase(there);
    return true;
}

}  // namespace

Edited withGuests(Event draft, std::int32_t adults, std::int32_t children) {
    draft.guests.adults = adults;
    draft.guests.children = children;
    return settled(draft);
}

Edited withDiet(Event draft, Diet diet, std::int32_t count) {
    setCount(draft.guests.diets, &DietCount::diet, diet, count);
    return settled(draft);
}

Edited withAllergen(Event draft, Allergen allergen, std::int32_t count) {
    setCount(draft.guests.allergens, &AllergenCount::allergen, allergen, count);
    return settled(draft);
}

Edited withName(Event draft, const LocalText& name) {
    draft.name = name;
    return settled(draft);
}

Edited withServe(Event draft, ZonedInstant serve) {
    if (draft.site.arrival)
        draft.site.arrival =
            ZonedInstant{draft.site.arrival->at + (serve.at - draft.serve.at), serve.offset};
    draft.serve = serve;
    return settled(draft);
}

Edited withSite(Event draft, Site site) {
    if (auto stranded = strandedBy(draft, site); !stranded.empty())
        return fail(std::move(stranded));
    std::erase_if(site.walks, [&](const Walk& walk) {
        return findById(site.stations, walk.from) == site.stations.end() ||
               findById(site.stations, walk.to) == site.stations.end();
    });
    draft.site = std::move(site);
    return settled(draft);
}

Edited withStation(Event draft, Station station) {
    const bool isNew = station.id.empty();
    put(draft.site.stations, std::move(station), "station");
    if (isNew) {
        const auto& stations = draft.site.stations;
        for (std::size_t i = 0; i + 1 < stations.size(); ++i) {
            Walk walk{stations[i].id, stations.back().id, std::chrono::minutes{1}, {}};
            draft.site.walks.push_back(std::move(walk));
        }
    }
    return settled(draft);
}

Edited withoutStation(Event draft, const StationId& station) {
    Site site = draft.site;
    std::erase_if(site.stations, [&](const Station& one) { return one.id == station; });
    return withSite(std::move(draft), std::move(site));
}

Edited withSkill(Event draft, Skill skill) {
    put(draft.skills, std::move(skill), "skill");
    return settled(draft);
}

Edited withoutSkill(Event draft, const SkillId& skill) {
    const auto there = findById(draft.skills, skill);
    if (there == draft.skills.end())
        return refused({Fault::What::Dangling, "/skills", inQuotes(skill.text()), "/skills", {}});
    Faults users;
    forEachStep(draft, [&](const Dish*, const Step& step, const std::string& path) {
        if (const Workers* workers = workersOf(step.hands); workers && workers->skill == skill)
            users.push_back({Fault::What::Contradiction,
                             path + "/hands/skill",
                             inQuotes(skill.text()),
                             "/skills",
                             {}});
    });
    if (!users.empty()) return fail(std::move(users));
    draft.skills.erase(there);
    for (Person& person : draft.crew)
        std::erase(person.skills, skill);
    return settled(draft);
}

Edited withPerson(Event draft, Person person) {
    put(draft.crew, std::move(person), "person");
    return settled(draft);
}

Edited withoutPerson(Event draft, const PersonId& person) {
    const auto there = findById(draft.crew, person);
    if (there == draft.crew.end())
        return refused({Fault::What::Dangling, "/crew", inQuotes(person.text()), "/crew", {}});
    draft.crew.erase(there);
    return settled(draft);
}

Edited withGrate(Event draft, Grate grate) {
    put(draft.kit.grates, std::move(grate), "grate");
    return settled(draft);
}

Edited withEquipment(Event draft, Equipment equipment) {
    put(draft.kit.equipment, std::move(equipment), "kit");
    return settled(draft);
}

Edited withTable(Event draft, Table table) {
    put(draft.kit.tables, std::move(table), "table");
    return settled(draft);
}

Edited withoutKit(Event draft, const ResourceId& resource) {
    if (auto users = usersOf(draft, resource, "/kit"); !users.empty())
        return fail(std::move(users));
    if (!eraseKit(draft.kit.grates, resource) && !eraseKit(draft.kit.equipment, resource) &&
        !eraseKit(draft.kit.tables, resource))
        return refused({Fault::What::Dangling, "/kit", inQuotes(resource.text()), "/kit", {}});
    return settled(draft);
}

}  // namespace cinder::event
