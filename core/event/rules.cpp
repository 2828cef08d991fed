#include "event/rules.h"

#include "event/json.h"
#include "event/reader.h"

namespace cinder::event {

namespace {

std::string at(const std::string& path, std::size_t index) {
    return joinPath(path, index);
}

Defined collect(const Event& event, Faults& faults) {
    Defined defined;
    std::map<SkillId, std::string> skills;
    for (std::size_t i = 0; i < event.skills.size(); ++i) {
        claimId(skills, event.skills[i].id, at("/skills", i) + "/id", faults);
        defined.peopleBySkill.emplace(event.skills[i].id, 0);
    }
    for (std::size_t i = 0; i < event.site.stations.size(); ++i)
        claimId(defined.stations, event.site.stations[i].id, at("/site/stations", i) + "/id",
                faults);
    const auto claimKit = [&](const auto& list, const std::string& path, auto units) {
        for (std::size_t i = 0; i < list.size(); ++i) {
            claimId(defined.kit, list[i].id, at(path, i) + "/id", faults);
            defined.units.emplace(list[i].id, units(list[i]));
        }
    };
    claimKit(event.kit.grates, "/kit/grates", [](const Grate& grate) {
        return static_cast<std::int32_t>((grate.length - grate.coolSide).millimetres());
    });
    claimKit(event.kit.equipment, "/kit/equipment", [](const Equipment& e) { return e.count; });
    claimKit(event.kit.tables, "/kit/tables", [](const Table& table) { return table.count; });
    for (const auto& grate : event.kit.grates)
        defined.grates.emplace(grate.id, &grate);

    std::map<DishId, std::string> dishes;
    for (std::size_t d = 0; d < event.menu.size(); ++d) {
        const auto& dish = event.menu[d];
        const std::string path = at("/menu", d);
        claimId(dishes, dish.id, path + "/id", faults);
        for (std::size_t s = 0; s < dish.method.size(); ++s) {
            if (dish.id.empty() || dish.method[s].id.empty()) continue;
            claimId(defined.steps, fullName(dish.id, dish.method[s].id),
                    at(path + "/method", s) + "/id", faults);
        }
    }
    for (std::size_t s = 0; s < event.work.size(); ++s)
        claimId(defined.steps, event.work[s].id, at("/work", s) + "/id", faults);
    return defined;
}

void checkCrew(const Event& event, Defined& defined, Faults& faults) {
    if (event.crew.empty()) faults.push_back({Fault::What::OutOfRange, "/crew", "[]", "1..8", {}});
    std::map<PersonId, std::string> people;
    for (std::size_t i = 0; i < event.crew.size(); ++i) {
        const auto& person = event.crew[i];
        const std::string path = at("/crew", i);
        claimId(people, person.id, path + "/id", faults);
        std::map<SkillId, std::string> own;
        for (std::size_t k = 0; k < person.skills.size(); ++k) {
            const std::string skillPath = at(path + "/skills", k);
            if (person.skills[k].empty()) continue;
            const auto known = defined.peopleBySkill.find(person.skills[k]);
            if (known == defined.peopleBySkill.end()) {
                faults.push_back({Fault::What::Dangling,
                                  skillPath,
                                  '"' + person.skills[k].text() + '"',
                                  "/skills",
                                  {}});
            } else if (own.emplace(person.skills[k], skillPath).second) {
                ++known->second;
            }
        }
    }
}

void checkWalks(const Site& site, const Defined& defined, Faults& faults) {
    for (std::size_t i = 0; i < site.walks.size(); ++i) {
        const std::string path = at("/site/walks", i);
        const auto checkEnd = [&](const StationId& id, const char* member) {
            if (!id.empty() && !defined.stations.contains(id))
                faults.push_back({Fault::What::Dangling,
                                  path + member,
                                  '"' + id.text() + '"',
                                  "/site/stations",
                                  {}});
        };
        checkEnd(site.walks[i].from, "/from");
        checkEnd(site.walks[i].to, "/to");
    }
}

}  // namespace

Faults findFaults(const Event& event) {
    Faults faults;
    checkTimes(event, faults);
    checkGuests(event.guests, faults);
    Defined defined = collect(event, faults);
    checkCrew(event, defined, faults);
    checkWalks(event.site, defined, faults);
    checkKit(event.kit, defined, faults);
    for (std::size_t d = 0; d < event.menu.size(); ++d)
        checkDish(event.menu[d], at("/menu", d), event, defined, faults);
    for (std::size_t s = 0; s < event.work.size(); ++s)
        checkStep(event.work[s], nullptr, at("/work", s), event, defined, faults);
    checkCycles(event, faults);
    checkQuantities(event, faults);
    if (faults.size() > kMostFaults) faults.resize(kMostFaults);
    return faults;
}

}  // namespace cinder::event
