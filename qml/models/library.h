#pragma once

/// The documents that ship inside the program, as bytes: events to begin with and method cards.

#include <functional>
#include <string>
#include <vector>

namespace cinder::face {

/// Read when they are asked for, so that nobody waits for them at the start.
struct Library {
    std::function<std::vector<std::string>()> templates;
    std::function<std::vector<std::string>()> cards;
};

[[nodiscard]] Library shippedLibrary();

}  // namespace cinder::face
