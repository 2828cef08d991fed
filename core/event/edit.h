#pragma once

/// What a person changes in a draft, one touch at a time. Each function returns the draft as it
/// then is, or the faults that stop the change, each at the JSON Pointer of its field, with what
/// would be right; the draft itself is then as before. A change may leave rules broken that other
/// fields have to mend (`faultsOf` in event/draft.h): only what no event could hold, and what would
/// pull the ground from under something else, is refused.
///
/// Entries are put in by id: one that is there is replaced, a new one comes last, and one without
/// an id is given a free one.

#include <cstdint>

#include "base/result.h"
#include "event/event.h"
#include "event/fault.h"

namespace cinder::event {

using Edited = Result<Event, Faults>;

// --- guests, when and where ----------------------------------------------------------------------
[[nodiscard]] Edited withGuests(Event draft, std::int32_t adults, std::int32_t children);
/// So many guests with this diet; 0 takes the line out.
[[nodiscard]] Edited withDiet(Event draft, Diet diet, std::int32_t count);
/// So many guests with this allergy; 0 takes the line out.
[[nodiscard]] Edited withAllergen(Event draft, Allergen allergen, std::int32_t count);
[[nodiscard]] Edited withName(Event draft, const LocalText& name);
/// The bell at another time; an agreed arrival moves along.
[[nodiscard]] Edited withServe(Event draft, ZonedInstant serve);
/// Name, address, notes, arrival, travel, stations and walks. A station may go only when no step
/// and no kit stands there.
[[nodiscard]] Edited withSite(Event draft, Site site);
/// In the place of the station with the same id; a new one without an id lies a minute's walk from
/// every other.
[[nodiscard]] Edited withStation(Event draft, Station station);
[[nodiscard]] Edited withoutStation(Event draft, const StationId& station);

// --- crew and kit --------------------------------------------------------------------------------
[[nodiscard]] Edited withPerson(Event draft, Person person);
[[nodiscard]] Edited withoutPerson(Event draft, const PersonId& person);
[[nodiscard]] Edited withSkill(Event draft, Skill skill);
/// Stopped by the steps that need it; nobody in the crew has it afterwards.
[[nodiscard]] Edited withoutSkill(Event draft, const SkillId& skill);
[[nodiscard]] Edited withGrate(Event draft, Grate grate);
[[nodiscard]] Edited withEquipment(Event draft, Equipment equipment);
[[nodiscard]] Edited withTable(Event draft, Table table);
/// A grate, equipment or table; stopped by the steps that use it.
[[nodiscard]] Edited withoutKit(Event draft, const ResourceId& resource);

// --- menu and steps (edit_menu.cpp) --------------------------------------------------------------
/// The card as a dish of the draft, last on the line; see `copiedInto`.
[[nodiscard]] Edited withCard(Event draft, const Dish& card);
/// A second dish like one of the menu, under a name of its own.
[[nodiscard]] Edited withCopyOf(Event draft, const DishId& dish);
/// In the place of the dish with the same id; Dangling at "/menu" when there is none. Stopped by
/// steps of others that come after one it no longer has.
[[nodiscard]] Edited withDish(Event draft, Dish dish);
/// Its place on the line and the figures overridden for it go with the dish. Stopped by steps of
/// others that come after one of its own.
[[nodiscard]] Edited withoutDish(Event draft, const DishId& dish);
/// What stops `withoutDish` is cut: steps of others no longer wait for those of this dish.
[[nodiscard]] Edited withNobodyWaitingFor(Event draft, const DishId& dish);
/// A step of a dish, or of the work that belongs to none when `dish` is empty.
[[nodiscard]] Edited withStep(Event draft, const DishId& dish, Step step);
/// Stopped by the steps that come after it.
[[nodiscard]] Edited withoutStep(Event draft, const DishId& dish, const StepId& step);

}  // namespace cinder::event
