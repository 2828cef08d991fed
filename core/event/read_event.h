#pragma once

#include "event/reader.h"

namespace cinder::event {

/// The whole document; faults of shape only, rules between fields are not looked at.
void readEvent(const Node& node, Event& out);

/// One dish of the menu, or a card of the library.
void readDish(const Node& node, Dish& out);

}  // namespace cinder::event
