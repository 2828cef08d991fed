#include "quantity/build/reckon.h"

#include "event/limits.h"
#include "event/menu.h"
#include "quantity/build/coal.h"
#include "quantity/supplies.h"

namespace cinder::quantity {

namespace {

/// Own values are kept within the limits of the document; guests may be anything in code.
bool areGuestsPossible(Tally& tally) {
    const event::Guests& guests = tally.event().guests;
    const auto check = [&](std::int32_t count, const char* path, std::int32_t least) {
        if (count >= least && count <= event::kGuestRange.high) return true;
        tally.blame(event::Fault::What::OutOfRange, path, std::to_string(count),
                    std::to_string(least) + ".." + std::to_string(event::kGuestRange.high));
        return false;
    };
    const bool hasChildren = check(guests.children, "/guests/children", 0);
    const std::int32_t least = guests.children > 0 ? 0 : 1;
    return check(guests.adults, "/guests/adults", least) && hasChildren;
}

}  // namespace

Reckoning reckon(const event::Event& event, const FromPlan& plan) {
    Tally tally(event);
    Reckoning all;
    if (!areGuestsPossible(tally)) {
        all.faults = tally.faults();
        return all;
    }
    for (std::size_t i = 0; i < event.menu.size(); ++i)
        all.dishes.push_back(reckonDish(tally, i));
    checkDeclared(tally);
    checkChoices(tally, all.dishes);
    all.purchase = reckonPurchase(tally, all.dishes);
    all.supplies = reckonSupplies(tally, all.dishes);
    for (Figure& coal : reckonCharcoal(tally, plan.cooking))
        all.supplies.push_back(std::move(coal));
    checkService(tally, all.supplies);
    all.line = layLine(tally, all.dishes);
    all.departure = reckonDeparture(tally, plan.arrival);
    all.kitchen = kitchenList(tally, all.dishes, all.departure);
    all.pack = packList(event, all.dishes, all.supplies, all.line);
    all.faults = tally.faults();
    return all;
}

}  // namespace cinder::quantity
