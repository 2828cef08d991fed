#pragma once

/// The demo lunch, described and nothing done.

#include <fstream>
#include <sstream>

#include "event/json.h"

namespace cinder::samples {

inline event::Event orchard() {
    std::ifstream file(CINDER_SOURCE "/demo-data/orchard-harvest-lunch.json");
    std::ostringstream text;
    text << file.rdbuf();
    return event::parse(text.str()).value();
}

}  // namespace cinder::samples
