#include "fixed_food.h"

namespace cinder::face::fixed {

namespace {

using safety::Control;
using safety::Purpose;
using std::chrono::minutes;

const DeviceId kDevice{"device"};
const safety::ThermometerId kProbe{"probe-1"};

safety::FoodMeasured measured(const safety::Pan& pan, Purpose purpose, double fahrenheit,
                              Instant at) {
    safety::FoodMeasured fact;
    fact.pan = pan;
    fact.purpose = purpose;
    fact.reading = safety::inFahrenheit(fahrenheit);
    fact.thermometer = kProbe;
    fact.at = at;
    return fact;
}

struct Table {
    Instant now;
    app::FoodCards cards;
    std::uint64_t sequence = 0;

    safety::EntryId write(safety::Fact fact, bool isTakenBack = false) {
        const safety::EntryId id{kDevice, ++sequence};
        cards.entries.push_back(
            {id, safety::instantOf(fact), PersonId("tomas"), isTakenBack, std::move(fact)});
        return id;
    }
    app::FoodPanCard& pan(const char* dish, const char* english, const char* spanish,
                          std::int32_t number, event::Food food) {
        app::FoodPanCard card;
        card.pan = {DishId(dish), number};
        card.dish = LocalText(std::map<std::string, std::string>{{"en", english}, {"es", spanish}});
        card.food = food;
        return cards.pans.emplace_back(std::move(card));
    }
    void check(const char* name, const char* dish, safety::Occasion occasion, Purpose purpose,
               int from, bool isDone = false) {
        safety::PlannedCheck check;
        check.name = name;
        check.dish = DishId(dish);
        check.occasion = occasion;
        check.purpose = purpose;
        check.due = now + minutes(from);
        check.isDone = isDone;
        cards.checks.push_back(std::move(check));
    }
};

void addPans(Table& table) {
    using event::Food;
    const Instant now = table.now;
    auto& stew =
        table.pan("stew", "Bean and squash stew", "Guiso de frijol y calabaza", 1, Food::Plant);
    stew.standing.control = Control::Hot;
    stew.standing.lastReading = safety::inFahrenheit(128);
    stew.standing.lastMeasured = now - minutes(1);
    stew.standing.measureBy = now + minutes(58);
    const auto bad = table.write(measured(stew.pan, Purpose::HoldHot, 128, now - minutes(1)));
    stew.standing.open.push_back({bad,
                                  now - minutes(1),
                                  Purpose::HoldHot,
                                  safety::inFahrenheit(128),
                                  {safety::Action::Reheat, safety::Action::Discard},
                                  {},
                                  now + minutes(119)});
    stew.standing.withoutAction = {bad};
    table.cards.withoutAction = 1;

    auto& second =
        table.pan("stew", "Bean and squash stew", "Guiso de frijol y calabaza", 2, Food::Plant);
    second.standing.control = Control::Hot;
    second.standing.lastReading = safety::inFahrenheit(146);
    second.standing.lastMeasured = now - minutes(20);
    second.standing.measureBy = now + minutes(100);
    second.standing.mayServe = true;
    second.standing.leftover = safety::Leftover::Cool;

    auto& slaw = table.pan("slaw", "Cabbage slaw", "Ensalada de col", 0, Food::Plant);
    slaw.standing.control = Control::Time;
    slaw.standing.time =
        safety::TimeClock{safety::TimeRule::Cold, now - minutes(201), now + minutes(39)};
    slaw.standing.lastReading = safety::inFahrenheit(40);
    slaw.standing.lastMeasured = now - minutes(201);
    slaw.nextPurpose = Purpose::HoldCold;

    auto& lamb = table.pan("lamb", "Butterflied leg of lamb", "Pierna de cordero deshuesada", 0,
                           Food::WholeMeat);
    lamb.nextPurpose = Purpose::Cook;
    auto& sauce =
        table.pan("sauce", "Herb yogurt sauce", "Salsa de yogur y hierbas", 0, Food::Dairy);
    sauce.standing.lost = safety::Lost{safety::Lost::Why::Gap, now - minutes(12), {}};
    table.cards.toDiscard = 1;
    auto& rice = table.pan("rice", "Rice", "Arroz", 0, Food::Grain);
    rice.standing.control = Control::Cooling;
    rice.standing.cooling = safety::CoolingClock{};
    rice.standing.cooling->started = now - minutes(70);
    rice.standing.cooling->by = now + minutes(50);
    rice.standing.lastReading = safety::inFahrenheit(98);
    rice.standing.lastMeasured = now - minutes(10);
    auto& beans = table.pan("beans", "Refried beans", "Frijoles refritos", 0, Food::Plant);
    beans.standing.control = Control::Discarded;
}

void addChecks(Table& table) {
    using safety::Occasion;
    table.check("arrival:slaw:1", "slaw", Occasion::Arrival, Purpose::ArriveCold, -40, true);
    table.check("arrival:sauce:1", "sauce", Occasion::Arrival, Purpose::ArriveCold, -40);
    table.check("hold:sauce:1", "sauce", Occasion::Hold, Purpose::HoldCold, -4);
    table.check("hold:stew:1", "stew", Occasion::Hold, Purpose::HoldHot, -2);
    table.check("cooked:lamb:1", "lamb", Occasion::Cooked, Purpose::Cook, 11);
    table.check("before-service:stew:1", "stew", Occasion::BeforeService, Purpose::HoldHot, 68);
    table.check("before-service:lamb:1", "lamb", Occasion::BeforeService, Purpose::HoldHot, 68);
}

}  // namespace

app::FoodCards orchardFood(Instant now) {
    Table table{now, {}};
    table.write(safety::ThermometerTested{kProbe, safety::inFahrenheit(32), now - minutes(45)});
    const safety::Pan slaw{DishId("slaw"), 0};
    const auto first = table.write(measured(slaw, Purpose::ArriveCold, 49, now - minutes(40)));
    auto corrected = measured(slaw, Purpose::ArriveCold, 40, now - minutes(39));
    corrected.corrects = first;
    corrected.reason = "Typed wrong";
    table.write(std::move(corrected));
    table.write(measured({DishId("sauce"), 0}, Purpose::ArriveCold, 4, now - minutes(38)), true);
    addPans(table);
    addChecks(table);
    table.cards.warnings.push_back({{DishId("stew"), 2},
                                    Temperature::fromCelsius(57),
                                    {now + minutes(12), now + minutes(18), now + minutes(31)},
                                    now - minutes(20)});
    table.cards.thermometers = {
        {kProbe, safety::ThermometerTested{kProbe, safety::inFahrenheit(32), now - minutes(45)}}};
    for (const auto item :
         {safety::FireItem::Extinguisher, safety::FireItem::Clearance, safety::FireItem::OpenAir})
        table.cards.beforeFire.push_back({item, {}, {}, {}});
    table.cards.beforeFire[0].ready = now - minutes(44);
    return table.cards;
}

}  // namespace cinder::face::fixed
