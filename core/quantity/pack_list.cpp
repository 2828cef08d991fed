#include "quantity/pack_list.h"

#include <algorithm>
#include <map>

namespace cinder::quantity {

namespace {

class Van {
  public:
    Van(const event::Event& event, const std::vector<Figure>& supplies)
        : event_(event), supplies_(supplies) {}

    std::vector<PackRow> load(const std::vector<DishFigures>& dishes, const Line& line) {
        for (std::size_t i = 0; i < dishes.size(); ++i)
            loadDish(event_.menu[i], dishes[i]);
        loadKit();
        loadLine(line);
        loadSupplies();
        std::stable_sort(rows_.begin(), rows_.end(),
                         [](const PackRow& a, const PackRow& b) { return a.ride < b.ride; });
        return std::move(rows_);
    }

  private:
    void add(std::string key, LocalText name, Ride ride, Amount amount, bool comesBack) {
        if (amount.value > 0)
            rows_.push_back({"pack/" + std::move(key), std::move(name), ride, amount, comesBack});
    }

    static Ride rideOf(const event::Dish& dish) {
        if (isRaw(dish)) return Ride::ColdBoxRaw;
        for (const event::Ahead& ahead : dish.ahead)
            if (ahead.then == event::Keeping::HoldHot) return Ride::HotBox;
        for (const event::Ahead& ahead : dish.ahead)
            if (ahead.then == event::Keeping::Chill || ahead.then == event::Keeping::Cold)
                return Ride::ColdBoxReady;
        const bool isCold = dish.course == event::Course::Cold || dish.food == event::Food::Dairy ||
                            dish.food == event::Food::Egg;
        return isCold ? Ride::ColdBoxReady : Ride::FoodCrate;
    }
    /// Of an animal, and not cooked ahead. Where something is cooked ahead but something else
    /// only kept cold, and it is still to be cooked there, the meat itself may well be raw: then it
    /// rides with what is raw, for the other mistake would put raw juices among ready food.
    static bool isRaw(const event::Dish& dish) {
        const bool isAnimal = dish.food == event::Food::WholeMeat ||
                              dish.food == event::Food::GroundMeat ||
                              dish.food == event::Food::Poultry || dish.food == event::Food::Fish;
        const auto isKept = [&](event::Keeping how) {
            return std::any_of(dish.ahead.begin(), dish.ahead.end(),
                               [how](const event::Ahead& ahead) { return ahead.then == how; });
        };
        const bool isCookedThere =
            std::any_of(dish.method.begin(), dish.method.end(),
                        [](const event::Step& step) { return step.kind == event::StepKind::Cook; });
        const bool isOnlyTrimmed = isKept(event::Keeping::Cold) && isCookedThere;
        const bool isCookedAhead = isKept(event::Keeping::Chill) || isKept(event::Keeping::HoldHot);
        return isAnimal && (!isCookedAhead || isOnlyTrimmed);
    }

    void loadDish(const event::Dish& dish, const DishFigures& figures) {
        const Amount* amount = nullptr;
        if (figures.pieces) amount = &figures.pieces->amount;
        if (figures.weight && !figures.pieces) amount = &figures.weight->amount;
        if (amount != nullptr)
            add("food/" + dish.id.text(), dish.name, rideOf(dish), *amount, false);
        if (figures.vessels)
            add("vessel/" + dish.id.text(), vesselName(dish), Ride::LineCrate,
                figures.vessels->amount, true);
    }

    static LocalText vesselName(const event::Dish& dish) {
        const auto of = [&](const char* english, const char* spanish) {
            return both(std::string(dish.name.in("en")) + ": " + english,
                        std::string(dish.name.in("es")) + ": " + spanish);
        };
        switch (*dish.serving->vessel) {
            case event::Vessel::Chafer:
            case event::Vessel::ColdPan:
                return of("pans with lids", "charolas con tapa");
            case event::Vessel::Bowl:
                return of("bowls", "tazones");
            case event::Vessel::Basket:
                return of("baskets", "canastas");
            case event::Vessel::Board:
                return of("board", "tabla");
            case event::Vessel::SauceBowl:
                break;
        }
        return of("sauce bowls", "salseras");
    }

    static Ride rideOf(event::EquipmentKind kind) {
        switch (kind) {
            case event::EquipmentKind::Chafer:
                return Ride::LineCrate;
            case event::EquipmentKind::Burner:
                return Ride::FireCrate;
            case event::EquipmentKind::Thermometer:
                return Ride::KitCrate;
            case event::EquipmentKind::HotBox:
            case event::EquipmentKind::ColdBox:
            case event::EquipmentKind::HandWash:
            case event::EquipmentKind::Extinguisher:
            case event::EquipmentKind::WorkTop:
            case event::EquipmentKind::Other:
                break;
        }
        return Ride::Floor;
    }

    void loadKit() {
        for (const event::Grate& grate : event_.kit.grates)
            add("kit/" + grate.id.text(), grate.name, Ride::Floor, {1, Unit::Pieces}, true);
        for (const event::Equipment& kit : event_.kit.equipment)
            add("kit/" + kit.id.text(), kit.name, rideOf(kit.kind),
                {static_cast<double>(kit.count), Unit::Pieces}, true);
        for (const event::Table& table : event_.kit.tables)
            add("kit/" + table.id.text(), table.name, Ride::Floor,
                {static_cast<double>(table.count), Unit::Tables}, true);
        if (!event_.kit.grates.empty()) {
            // Common practice - no source.
            add("ash-can", both("Steel ash can with lid", "Bote de acero con tapa para ceniza"),
                Ride::FireCrate, {1, Unit::Pieces}, true);
            add("lighter", both("Starter and lighter", "Iniciador y encendedor"), Ride::FireCrate,
                {1, Unit::Pieces}, true);
            add("tongs", both("Long tongs and gloves", "Pinzas largas y guantes"), Ride::KitCrate,
                {static_cast<double>(event_.crew.size()), Unit::Pieces}, true);
        }
        add("sanitizer", both("Sanitizer and clean cloths", "Desinfectante y paños limpios"),
            Ride::KitCrate, {1, Unit::Pieces}, true);
        add("foil", both("Foil and film", "Papel aluminio y plástico"), Ride::KitCrate,
            {1, Unit::Pieces}, true);
        add("first-aid", both("First-aid kit", "Botiquín"), Ride::KitCrate, {1, Unit::Pieces},
            true);
    }

    void loadLine(const Line& line) {
        const auto risers = std::count_if(line.stands.begin(), line.stands.end(),
                                          [](const Stand& stand) { return stand.isOnRiser; });
        add("risers", both("Risers", "Elevadores"), Ride::LineCrate,
            {static_cast<double>(risers), Unit::Pieces}, true);
        const auto chafers =
            std::count_if(line.stands.begin(), line.stands.end(),
                          [](const Stand& stand) { return stand.vessel == event::Vessel::Chafer; });
        add("wind-guards", both("Wind guards for chafers", "Cortavientos"), Ride::LineCrate,
            {static_cast<double>(chafers), Unit::Pieces}, true);
        add("ties", both("Ties for table ends", "Amarres para mesas"), Ride::LineCrate,
            {static_cast<double>(jointCount(line)), Unit::Pieces}, true);
        add("cloths", both("Table cloths with clips", "Manteles con pinzas"), Ride::LineCrate,
            {static_cast<double>(line.tables.size()), Unit::Pieces}, true);
    }

    void loadSupplies() {
        struct Carried {
            const char* key;
            Ride ride;
            bool comesBack;
        };
        constexpr Carried kCarried[] = {
            {"supply/ice", Ride::ColdBoxReady, false},
            {"supply/plates", Ride::LineCrate, false},
            {"supply/napkins", Ride::LineCrate, false},
            {"supply/cutlery", Ride::LineCrate, false},
            {"supply/cups", Ride::LineCrate, false},
            {"supply/spoons", Ride::LineCrate, true},
            {"supply/cards", Ride::LineCrate, true},
            {"supply/fuel-cans", Ride::FireCrate, false},
            {"supply/charcoal-bags", Ride::FireCrate, false},
            {"supply/water", Ride::Floor, false},
        };
        for (const Carried& carried : kCarried)
            for (const Figure& figure : supplies_)
                if (figure.key == carried.key)
                    add(figure.key, figure.name, carried.ride, figure.amount, carried.comesBack);
    }

    const event::Event& event_;
    const std::vector<Figure>& supplies_;
    std::vector<PackRow> rows_;
};

std::map<std::string, std::int64_t> byKey(const std::vector<PackCount>& counts) {
    std::map<std::string, std::int64_t> sums;
    for (const PackCount& count : counts)
        sums[count.key] += count.count;
    return sums;
}

}  // namespace

std::vector<PackRow> packList(const event::Event& event, const std::vector<DishFigures>& dishes,
                              const std::vector<Figure>& supplies, const Line& line) {
    return Van(event, supplies).load(dishes, line);
}

std::vector<PackCount> missingOnTheWayHome(const std::vector<PackRow>& list,
                                           const std::vector<PackCount>& out,
                                           const std::vector<PackCount>& home) {
    const auto went = byKey(out);
    const auto came = byKey(home);
    std::vector<PackCount> missing;
    for (const PackRow& row : list) {
        if (!row.comesBack) continue;
        const auto left = went.find(row.key);
        if (left == went.end()) continue;
        const auto back = came.find(row.key);
        const std::int64_t lost = left->second - (back == came.end() ? 0 : back->second);
        if (lost > 0) missing.push_back({row.key, lost});
    }
    return missing;
}

}  // namespace cinder::quantity
