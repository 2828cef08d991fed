#include "event/step.h"

#include <utility>

namespace cinder::event {

const Workers* workersOf(const Hands& hands) {
    if (const auto* whole = std::get_if<HandsWhole>(&hands)) return &whole->workers;
    if (const auto* start = std::get_if<HandsAtStart>(&hands)) return &start->workers;
    if (const auto* tended = std::get_if<HandsTended>(&hands)) return &tended->workers;
    return nullptr;
}

Workers* workersOf(Hands& hands) {
    return const_cast<Workers*>(workersOf(std::as_const(hands)));
}

StepId fullName(const DishId& dish, const StepId& step) {
    return StepId(dish.text() + "/" + step.text());
}

}  // namespace cinder::event
