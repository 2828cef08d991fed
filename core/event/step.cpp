#include "event/step.h"

namespace cinder::event {

StepId fullName(const DishId& dish, const StepId& step) {
    return StepId(dish.text() + "/" + step.text());
}

}  // namespace cinder::event
