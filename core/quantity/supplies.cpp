#include "quantity/supplies.h"

#include <algorithm>

#include "event/menu.h"
#include "quantity/pans.h"
#include "quantity/trade.h"
#include "quantity/worked.h"

namespace cinder::quantity {

namespace {

using What = event::Fault::What;

class Stores {
  public:
    Stores(Tally& tally, const std::vector<DishFigures>& dishes)
        : tally_(tally), event_(tally.event()), dishes_(dishes) {}

    std::vector<Figure> reckon() {
        addChafers();
        addWater();
        addIce();
        addPerGuest("plates", both("Plates", "Platos"), "trade/plates");
        addPerGuest("napkins", both("Napkins", "Servilletas"), "trade/napkins");
        addPerGuest("cutlery", both("Sets of cutlery", "Juegos de cubiertos"), "trade/cutlery");
        addPerGuest("cups", both("Cups", "Vasos"), "trade/cups");
        addLineWare();
        return std::move(figures_);
    }

  private:
    [[nodiscard]] double heads() const { return event::headCount(event_.guests); }
    [[nodiscard]] Figure guests() const {
        Figure figure =
            Tally::field(both("Guests", "Personas"), {heads(), Unit::Guests}, "/guests");
        return figure;
    }
    /// Absent, and blamed, when the event does not say how long the line is open.
    std::optional<Figure> service() {
        if (!event_.quantities || !event_.quantities->service) {
            tally_.missing("/quantities/serviceMinutes");
            return std::nullopt;
        }
        const double minutes = static_cast<double>(event_.quantities->service->count()) / 60000.0;
        return Tally::field(both("The line is open", "La línea está abierta"),
                            {minutes, Unit::Minutes}, "/quantities/serviceMinutes");
    }
    Figure add(const char* key, LocalText name, Amount amount, LocalText formula, LocalText worked,
               std::vector<Figure> inputs) {
        Figure figure;
        figure.key = std::string("supply/") + key;
        figure.name = std::move(name);
        figure.amount = amount;
        figure.formula = std::move(formula);
        figure.worked = std::move(worked);
        figure.inputs = std::move(inputs);
        figures_.push_back(tally_.reckoned(std::move(figure)));
        return figures_.back();
    }

    /// Figures `on-line` of the dishes in this vessel; nothing when one of them is not known.
    std::optional<std::vector<Figure>> onLine(event::Vessel vessel) {
        std::vector<Figure> places;
        for (std::size_t i = 0; i < dishes_.size(); ++i) {
            const auto& serving = event_.menu[i].serving;
            if (!serving || serving->vessel != vessel) continue;
            if (!dishes_[i].onLine) return std::nullopt;
            Figure place = *dishes_[i].onLine;
            place.name = dishes_[i].name;
            places.push_back(std::move(place));
        }
        return places;
    }
    static double sum(const std::vector<Figure>& figures) {
        double total = 0;
        for (const Figure& figure : figures)
            total += figure.amount.value;
        return total;
    }

    void addChafers() {
        const auto places = onLine(event::Vessel::Chafer);
        if (!places) return;
        const Figure chafers =
            add("chafers", both("Chafers", "Calientaplatos"), {sum(*places), Unit::Chafers},
                both("one place for each hot dish, or as many as it is given",
                     "un lugar por plato caliente, o los que se le den"),
                sumOf(places->size()), *places);
        const double water = static_cast<double>(chaferWater().millilitres());
        Figure fill;
        fill.key = "trade/chafer-fill";
        fill.name = both("Hot water in one, an inch deep", "Agua caliente en uno, una pulgada");
        fill.amount = {water, Unit::Millilitres};
        fill.source = {Origin::CommonPractice, "catering how-to page; 12 x 20 x 1 in"};
        fill = tally_.reckoned(std::move(fill));
        add("chafer-water", both("Hot water for chafers", "Agua caliente para calientaplatos"),
            {chafers.amount.value * fill.amount.value, Unit::Millilitres},
            both("chafers x fill", "calientaplatos x llenado"), LocalText("{0} x {1}"),
            {chafers, fill});

        const auto open = service();
        if (!open) return;
        const Figure lead = fact(tally_, "trade/chafer-lead");
        const Figure can = fact(tally_, "trade/can-minutes");
        const Figure each = fact(tally_, "trade/cans-a-chafer");
        if (!(can.amount.value > 0)) return;
        const auto rounds = roundedUp((open->amount.value + lead.amount.value) / can.amount.value);
        add("fuel-cans", both("Cans of chafing fuel", "Latas de combustible"),
            {chafers.amount.value * each.amount.value * static_cast<double>(rounds), Unit::Cans},
            both("chafers x cans x (lead + open) / burn time, rounded up",
                 "calientaplatos x latas x (antes + abierta) / duración, hacia arriba"),
            both("{0} x {1} x (({2} + {3}) / {4}, rounded up)",
                 "{0} x {1} x (({2} + {3}) / {4}, hacia arriba)"),
            {chafers, each, lead, *open, can});
    }

    void addWater() {
        std::vector<Figure> parts;
        if (const Figure* hot = findFigure(figures_, "supply/chafer-water")) parts.push_back(*hot);
        if (const auto open = service()) {
            const Figure each = fact(tally_, "trade/drinking-water");
            const auto hours = roundedUp(open->amount.value / 60.0);
            parts.push_back(
                add("drinking-water", both("Drinking water", "Agua para beber"),
                    {heads() * each.amount.value * static_cast<double>(hours), Unit::Millilitres},
                    both("guests x hours begun x share", "personas x horas iniciadas x parte"),
                    both("{0} x ({1} / 60 min, rounded up) x {2}",
                         "{0} x ({1} / 60 min, hacia arriba) x {2}"),
                    {guests(), *open, each}));
        }
        std::int32_t stands = 0;
        for (const auto& kit : event_.kit.equipment)
            if (kit.kind == event::EquipmentKind::HandWash) stands += kit.count;
        if (stands == 0) tally_.blame(What::Missing, "/kit/equipment", {}, "handWash");
        const Figure each = fact(tally_, "trade/hand-water");
        parts.push_back(
            add("hand-water", both("Water for washing hands", "Agua para lavarse las manos"),
                {stands * each.amount.value, Unit::Millilitres},
                both("stands x water of one", "lavamanos x agua de uno"), LocalText("{0} x {1}"),
                {Tally::field(both("Hand-wash stands", "Lavamanos"),
                              {static_cast<double>(stands), Unit::Vessels}, "/kit/equipment"),
                 each}));
        const double all = sum(parts);
        LocalText worked = sumOf(parts.size());
        add("water", both("Water to carry", "Agua por llevar"), {all, Unit::Millilitres},
            both("sum", "suma"), std::move(worked), std::move(parts));
    }

    void addIce() {
        const bool isFoodIced =
            std::any_of(event_.menu.begin(), event_.menu.end(),
                        [](const event::Dish& dish) { return dish.course == event::Course::Cold; });
        std::vector<Figure> inputs{guests(), fact(tally_, "trade/ice-drinks")};
        double each = inputs.back().amount.value;
        if (isFoodIced) {
            inputs.push_back(fact(tally_, "trade/ice-food"));
            each += inputs.back().amount.value;
        }
        add("ice", both("Ice", "Hielo"), {heads() * each, Unit::Grams},
            both("guests x (drinks + cold food)", "personas x (bebidas + comida fría)"),
            LocalText(isFoodIced ? "{0} x ({1} + {2})" : "{0} x {1}"), std::move(inputs));
    }

    void addPerGuest(const char* key, LocalText name, const char* factKey) {
        const Figure percent = fact(tally_, factKey);
        add(key, std::move(name),
            {static_cast<double>(roundedUp(heads() * percent.amount.value / 100.0)), Unit::Pieces},
            both("guests x share, rounded up", "personas x parte, hacia arriba"),
            both("{0} x {1}, rounded up", "{0} x {1}, hacia arriba"), {guests(), percent});
    }

    /// A serving piece in every vessel on the line, and some to change; a card before every dish.
    /// A dish whose vessel is not known yet is blamed for it, and stands there once whatever it is.
    void addLineWare() {
        std::vector<Figure> places;
        places.reserve(dishes_.size());
        for (std::size_t i = 0; i < dishes_.size(); ++i) {
            places.push_back(dishes_[i].onLine.value_or(Tally::field(
                {}, {1, Unit::Vessels}, "/menu/" + std::to_string(i) + "/serving/vessel")));
            places.back().name = dishes_[i].name;
        }
        const Figure spare = fact(tally_, "trade/spare-spoons");
        const double on = sum(places);
        auto inputs = places;
        inputs.push_back(spare);
        add("spoons", both("Serving spoons and tongs", "Cucharas y pinzas de servicio"),
            {static_cast<double>(roundedUp(on * (1.0 + spare.amount.value / 100.0))), Unit::Pieces},
            both("one in every vessel on the line, and spares",
                 "una en cada recipiente de la línea, y repuestos"),
            withSpares(places.size()), std::move(inputs));
        add("cards", both("Dish cards", "Tarjetas de platos"),
            {static_cast<double>(dishes_.size()), Unit::Pieces},
            both("one before each dish", "una delante de cada plato"), {},
            {Tally::field(both("Dishes", "Platos"),
                          {static_cast<double>(dishes_.size()), Unit::Pieces}, "/menu")});
    }

    Tally& tally_;
    const event::Event& event_;
    const std::vector<DishFigures>& dishes_;
    std::vector<Figure> figures_;
};

void checkChafers(Tally& tally, const Figure& needed) {
    const auto& equipment = tally.event().kit.equipment;
    std::int32_t have = 0;
    std::optional<std::size_t> largest;
    for (std::size_t i = 0; i < equipment.size(); ++i) {
        if (equipment[i].kind != event::EquipmentKind::Chafer) continue;
        have += equipment[i].count;
        if (!largest || equipment[i].count > equipment[*largest].count) largest = i;
    }
    const auto short_ = roundedUp(needed.amount.value) - have;
    if (short_ <= 0) return;
    if (!largest) return tally.missing("/kit/equipment");
    tally.blame(What::OutOfRange, "/kit/equipment/" + std::to_string(*largest) + "/count",
                std::to_string(equipment[*largest].count),
                std::to_string(equipment[*largest].count + short_) + "..1000");
}

}  // namespace

std::vector<Figure> reckonSupplies(Tally& tally, const std::vector<DishFigures>& dishes) {
    return Stores(tally, dishes).reckon();
}

void checkService(Tally& tally, const std::vector<Figure>& supplies) {
    const event::Event& event = tally.event();
    if (const Figure* chafers = findFigure(supplies, "supply/chafers"))
        checkChafers(tally, *chafers);
    if (!event.quantities || !event.quantities->service) return;
    const double open = static_cast<double>(event.quantities->service->count()) / 60000.0;
    const double pass =
        event::headCount(event.guests) * fact(tally, "trade/line-minutes").amount.value / 100.0;
    if (pass > open)
        tally.blame(What::Contradiction, "/guests/adults", std::to_string(event.guests.adults),
                    "/quantities/serviceMinutes");
}

}  // namespace cinder::quantity
