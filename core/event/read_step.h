#pragma once

#include "event/reader.h"

namespace cinder::event {

/// One step of a method or of the work that belongs to no dish.
void readStep(const Node& node, Step& out);

}  // namespace cinder::event
