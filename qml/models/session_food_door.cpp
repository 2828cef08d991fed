#include "session_food_door.h"

namespace cinder::face {

Taken SessionFoodDoor::measure(const safety::Pan& pan, safety::Purpose purpose,
                               safety::Reading reading, const safety::ThermometerId& thermometer,
                               std::optional<Duration> held, std::optional<std::int32_t> from) {
    return session_.measureFood(pan, purpose, reading, thermometer, held, from);
}
Taken SessionFoodDoor::correct(const safety::EntryId& entry, safety::Reading reading,
                               const std::string& reason) {
    return session_.correctFood(entry, reading, reason);
}
Taken SessionFoodDoor::takeAction(const safety::EntryId& entry, safety::Action action) {
    return session_.takeAction(entry, action);
}
Taken SessionFoodDoor::leaveControl(const safety::Pan& pan, safety::TimeRule rule,
                                    safety::Reading reading,
                                    const safety::ThermometerId& thermometer,
                                    std::optional<std::int32_t> from) {
    return session_.leaveControl(pan, rule, reading, thermometer, from);
}
Taken SessionFoodDoor::beginCooling(const safety::Pan& pan) {
    return session_.beginCooling(pan, safety::CoolingRoute::Cooked);
}
Taken SessionFoodDoor::discard(const safety::Pan& pan) {
    return session_.discardFood(pan);
}
Taken SessionFoodDoor::keep(const safety::Pan& pan) {
    return session_.keepFood(pan);
}
Taken SessionFoodDoor::testThermometer(const safety::ThermometerId& thermometer,
                                       safety::Reading inIceWater) {
    return session_.testThermometer(thermometer, inIceWater);
}
Taken SessionFoodDoor::readyBeforeFire(safety::FireItem item) {
    return session_.readyBeforeFire(item);
}
Taken SessionFoodDoor::skipBeforeFire(safety::FireItem item) {
    return session_.skipBeforeFire(item, {});
}

}  // namespace cinder::face
