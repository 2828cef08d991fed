#include "fixed_lists.h"

#include <fstream>
#include <sstream>

#include "app/make_list_cards.h"
#include "event/json.h"
#include "live/revise_event.h"

namespace cinder::face::fixed {

namespace {

live::Day describedDay() {
    std::ifstream file(std::string(CINDER_SOURCE) + "/demo-data/orchard-harvest-lunch.json");
    std::ostringstream text;
    text << file.rdbuf();
    live::Day day;
    day.event = event::parse(text.str()).value();
    day.describedGuests = day.event->guests;
    (void)live::revise(*day.event, journal::FigureSet{"supply/ice", 40'000, {}, {}});
    return day;
}

Listed listsOf(live::Day day) {
    const auto reckoned = app::reckonFor(app::eventAsItStands(day), day, nullptr);
    int place = 0;
    const Listed empty = app::makeLists(*reckoned, {});
    for (const auto& card : empty->pack)
        if (++place % 3 != 0) {
            day.packed[card.key].out = place % 4 == 0 ? card.wanted / 2 : card.wanted;
            day.packed[card.key].home = place % 5 == 0 ? 0 : card.wanted;
        }
    if (!reckoned->all.line.stands.empty())
        day.packed["line/" + reckoned->all.line.stands.front().dish.text() + "/1"].line = 1;
    return app::makeLists(*reckoned, day.packed);
}

}  // namespace

Listed FixedLists::lists() {
    static const Listed kLists = listsOf(describedDay());
    return kLists;
}

Result<Listed, app::Refusal> FixedLists::listsFor(std::int32_t adults, std::int32_t children) {
    live::Day day = describedDay();
    (void)live::revise(*day.event, journal::GuestsSet{adults, children, {}}, day.describedGuests);
    return listsOf(std::move(day));
}

}  // namespace cinder::face::fixed
