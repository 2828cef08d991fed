#pragma once

#include "event/reader.h"

namespace cinder::event {

/// The whole document; faults of shape only, rules between fields are not looked at.
void readEvent(const Node& node, Event& out);

}  // namespace cinder::event
