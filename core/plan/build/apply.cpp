#include "plan/build/apply.h"

#include <algorithm>
#include <set>

#include "event/json.h"

namespace cinder::plan {

namespace {

/// Drops what is gone from the lists of those who waited for it.
void forget(event::Event& event, const std::set<StepId>& gone) {
    const auto release = [&](std::vector<event::Step>& steps) {
        for (event::Step& step : steps)
            step.after.erase(
                std::remove_if(step.after.begin(), step.after.end(),
                               [&](const event::After& after) { return gone.count(after.step); }),
                step.after.end());
    };
    for (event::Dish& dish : event.menu)
        release(dish.method);
    release(event.work);
}

void dropDish(event::Event& event, const DishId& id) {
    std::set<StepId> gone;
    for (const event::Dish& dish : event.menu)
        if (dish.id == id)
            for (const event::Step& step : dish.method)
                gone.insert(event::fullName(id, step.id));
    event.menu.erase(std::remove_if(event.menu.begin(), event.menu.end(),
                                    [&](const event::Dish& dish) { return dish.id == id; }),
                     event.menu.end());
    forget(event, gone);
    if (!event.quantities) return;
    auto& line = event.quantities->lineOrder;
    line.erase(std::remove(line.begin(), line.end(), id), line.end());
    const std::string figures = "dish/" + id.text() + "/";
    auto& own = event.quantities->overrides;
    own.erase(std::remove_if(own.begin(), own.end(),
                             [&](const event::Override& value) {
                                 return value.figure.rfind(figures, 0) == 0;
                             }),
              own.end());
}

/// The cold work is over before the crew sets out.
void prepareAhead(event::Event& event, const DishId& id) {
    const Duration onSite =
        event.site.arrival ? event.serve.at - event.site.arrival->at : Duration{0};
    const Duration left = onSite + event.site.travel.value_or(Duration{0});
    std::set<StepId> gone;
    for (event::Dish& dish : event.menu) {
        if (dish.id != id) continue;
        std::vector<event::Step> rest;
        for (event::Step& step : dish.method) {
            if (step.kind != event::StepKind::Prep) {
                rest.push_back(std::move(step));
                continue;
            }
            gone.insert(event::fullName(id, step.id));
            event::Ahead ahead;
            ahead.id = step.id;
            ahead.name = step.name;
            ahead.duration = step.duration.usual;
            ahead.beforeServe = left;
            ahead.then = event::Keeping::Cold;
            const bool isThere =
                std::any_of(dish.ahead.begin(), dish.ahead.end(),
                            [&](const event::Ahead& other) { return other.id == ahead.id; });
            if (isThere) ahead.id = StepId(ahead.id.text() + "-ahead");
            dish.ahead.push_back(std::move(ahead));
        }
        dish.method = std::move(rest);
    }
    forget(event, gone);
}

void addPerson(event::Event& event, const Problem& problem, const Remedy& remedy) {
    event::Person person;
    person.name = "+1";
    int number = static_cast<int>(event.crew.size()) + 1;
    const auto isTaken = [&](const PersonId& id) {
        return std::any_of(event.crew.begin(), event.crew.end(),
                           [&](const event::Person& other) { return other.id == id; });
    };
    do
        person.id = PersonId("person-" + std::to_string(number++));
    while (isTaken(person.id));
    for (const SkillIndex skill : remedy.skills)
        person.skills.push_back(problem.skills[static_cast<std::size_t>(skill)].id);
    event.crew.push_back(std::move(person));
}

void addUnits(event::Event& event, const ResourceId& id, std::int32_t units) {
    for (event::Grate& grate : event.kit.grates)
        if (grate.id == id) grate.length = grate.length + Length::fromMillimetres(units);
    for (event::Equipment& equipment : event.kit.equipment)
        if (equipment.id == id) equipment.count += units;
    for (event::Table& table : event.kit.tables)
        if (table.id == id) table.count += units;
}

}  // namespace

Result<event::Event, event::Faults> applied(const event::Event& event, const Problem& problem,
                                            const Remedy& remedy) {
    event::Event changed = event;
    switch (remedy.kind) {
        case Remedy::Kind::EarlierArrival:
            if (changed.site.arrival) changed.site.arrival->at -= remedy.time;
            break;
        case Remedy::Kind::LaterServe:
            changed.serve.at += remedy.time;
            break;
        case Remedy::Kind::OnePersonMore:
            addPerson(changed, problem, remedy);
            break;
        case Remedy::Kind::MoreOfResource:
            addUnits(changed, problem.resources[static_cast<std::size_t>(*remedy.resource)].id,
                     remedy.units);
            break;
        case Remedy::Kind::PrepareAhead:
            prepareAhead(changed, *remedy.dish);
            break;
        case Remedy::Kind::DropDish:
            dropDish(changed, *remedy.dish);
            break;
    }
    // Through the document, which also checks the range of every number.
    return event::parse(event::write(changed));
}

}  // namespace cinder::plan
