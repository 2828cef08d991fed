#pragma once

#include "event/reader.h"

namespace cinder::event {

/// What a dish is on a plate, in a shop and on the line.
void readServing(const Node& node, Serving& out);

/// One piece of work in the kitchen.
void readAhead(const Node& node, Ahead& out);

/// What people decide about quantities and the line.
void readQuantities(const Node& node, Quantities& out);

}  // namespace cinder::event
