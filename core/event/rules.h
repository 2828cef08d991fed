#pragma once

/// The rules between fields, one function per part of the event. Each appends what it finds.

#include <map>
#include <string>

#include "event/event.h"
#include "event/fault.h"

namespace cinder::event {

/// What other parts refer to, with the path where each is defined.
struct Defined {
    std::map<SkillId, std::int32_t> peopleBySkill;
    std::map<StationId, std::string> stations;
    std::map<ResourceId, std::string> kit;
    std::map<ResourceId, std::int32_t> units;
    std::map<ResourceId, const Grate*> grates;
    std::map<StepId, std::string> steps;
};

/// `id` must be new in `seen`.
template <class Key>
void claimId(std::map<Key, std::string>& seen, const Key& id, const std::string& path,
             Faults& faults) {
    if (id.empty()) return;
    const auto [there, isNew] = seen.emplace(id, path);
    if (!isNew)
        faults.push_back(
            {Fault::What::DuplicateId, path, '"' + id.text() + '"', there->second, {}});
}

void checkTimes(const Event& event, Faults& faults);
void checkGuests(const Guests& guests, Faults& faults);
void checkKit(const Kit& kit, const Defined& defined, Faults& faults);
void checkDish(const Dish& dish, const std::string& path, const Event& event,
               const Defined& defined, Faults& faults);
/// `dish` is null for work that belongs to none.
void checkStep(const Step& step, const Dish* dish, const std::string& path, const Event& event,
               const Defined& defined, Faults& faults);
/// What holds for a dish without its event: diets, pieces, serving, ids of its steps and links
/// between them.
void checkCard(const Dish& dish, Faults& faults);
/// Servings of a dish and the work ahead.
void checkServing(const Dish& dish, const std::string& path, Faults& faults);
void checkQuantities(const Event& event, Faults& faults);
/// Steps that wait for each other.
void checkCycles(const Event& event, Faults& faults);

}  // namespace cinder::event
