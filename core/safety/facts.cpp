#include "safety/facts.h"

namespace cinder::safety {

Instant instantOf(const Fact& fact) {
    return std::visit([](const auto& one) { return one.at; }, fact);
}

}  // namespace cinder::safety
