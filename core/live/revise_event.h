#pragma once

/// What is said about guests, quantities and the line after the event was described changes the
/// event itself, so that whoever reckons from it follows. Said twice it is as if said once: an
/// event that was written out with a value in it and is revised with the same value stays the same.

#include "event/event.h"
#include "journal/list_facts.h"

namespace cinder::live {

/// Each is false, and changes nothing, when no event could hold what was said.
[[nodiscard]] bool revise(event::Event& event, const journal::FigureSet& set);
/// Diets and allergies keep the counts they were `described` with, but never more than there are
/// guests.
[[nodiscard]] bool revise(event::Event& event, const journal::GuestsSet& set,
                          const event::Guests& described);
/// Dishes that are not on the menu are left out, and each counts once. Always true.
bool revise(event::Event& event, const journal::LineOrdered& ordered);

}  // namespace cinder::live
