#include "quantity/dish_figures.h"

#include <algorithm>
#include <cmath>

#include "event/menu.h"
#include "quantity/pans.h"
#include "quantity/worked.h"
#include "quantity/yield_chain.h"
#include "quantity/yields.h"

namespace cinder::quantity {

namespace {

using What = event::Fault::What;

std::int64_t whole(const Figure& figure) {
    return roundedUp(figure.amount.value);
}

/// Reckons one dish; every function needs what the ones before it found.
class Kitchen {
  public:
    Kitchen(Tally& tally, std::size_t index)
        : tally_(tally),
          guests_(tally.event().guests),
          dish_(tally.event().menu[index]),
          path_("/menu/" + std::to_string(index)) {
        out_.dish = dish_.id;
        out_.name = dish_.name;
    }

    DishFigures reckon() {
        if (!dish_.serving) {
            tally_.missing(path_ + "/serving");
            return out_;
        }
        reckonPortions();
        serving().portionPieces ? reckonCounted() : reckonWeighed();
        countIngredients();
        reckonVessels();
        return out_;
    }

  private:
    [[nodiscard]] const event::Serving& serving() const { return *dish_.serving; }
    [[nodiscard]] std::string at(const char* member) const { return path_ + "/serving/" + member; }
    [[nodiscard]] std::string key(const std::string& what) const {
        return "dish/" + dish_.id.text() + "/" + what;
    }

    void reckonPortions() {
        if (!serving().takePercent) return tally_.missing(at("takePercent"));
        const std::int64_t take = *serving().takePercent;
        const std::int64_t child = serving().childPercent.value_or(100);
        const std::int64_t seconds = serving().secondsPercent.value_or(0);
        const std::int64_t adults = quotientUp(guests_.adults * take, 100);
        const std::int64_t children = quotientUp(guests_.children * take, 100);
        const std::int64_t portions =
            quotientUp((adults * 100 + children * child) * (100 + seconds), 10000);

        Figure figure;
        figure.key = key("portions");
        figure.name = both("Portions", "Porciones");
        figure.amount = {static_cast<double>(portions), Unit::Portions};
        figure.formula = both("(adults x take + children x take x child's share) x (1 + seconds)",
                              "(adultos x toman + niños x toman x parte de niño) x (1 + repiten)");
        figure.worked = workedPortions(guests_, serving());
        const auto add = [&](const char* english, const char* spanish, std::int64_t value,
                             Unit unit, std::string path) {
            figure.inputs.push_back(Tally::field(
                both(english, spanish), {static_cast<double>(value), unit}, std::move(path)));
        };
        add("Adults", "Adultos", guests_.adults, Unit::Adults, "/guests/adults");
        add("Children", "Niños", guests_.children, Unit::Children, "/guests/children");
        add("Who takes it", "Quiénes toman", take, Unit::Percent, at("takePercent"));
        add("Child's share", "Parte de niño", child, Unit::Percent, at("childPercent"));
        add("Seconds", "Repiten", seconds, Unit::Percent, at("secondsPercent"));
        out_.portions = tally_.reckoned(std::move(figure));
    }

    /// Portions by weight: ready weight, then what is bought for it, then the pieces that makes.
    void reckonWeighed() {
        if (!serving().portion) tally_.missing(at("portionGrams"));
        if (out_.portions && serving().portion) {
            Figure figure;
            figure.key = key("weight");
            figure.name = both("Ready weight", "Peso listo");
            figure.amount = {
                static_cast<double>(whole(*out_.portions) * serving().portion->grams()),
                Unit::Grams};
            figure.formula = both("portions x portion", "porciones x porción");
            figure.worked = LocalText("{0} x {1}");
            figure.inputs = {
                *out_.portions,
                Tally::field(both("Portion", "Porción"),
                             {static_cast<double>(serving().portion->grams()), Unit::Grams},
                             at("portionGrams"))};
            out_.weight = tally_.reckoned(std::move(figure));
        }
        reckonIngredients();
        if (dish_.pieces) reckonPiecesOfWeight();
    }

    /// Portions by pieces: the pieces, then their weight, then what is bought.
    void reckonCounted() {
        if (!dish_.pieces) tally_.missing(path_ + "/pieces");
        if (out_.portions && dish_.pieces) {
            const std::int64_t each = *serving().portionPieces;
            Figure figure;
            figure.formula = both("portions x pieces each", "porciones x piezas por porción");
            figure.worked = LocalText("{0} x {1}");
            figure.amount.value = static_cast<double>(whole(*out_.portions) * each);
            figure.inputs = {*out_.portions, Tally::field(both("Pieces each", "Piezas por porción"),
                                                          {static_cast<double>(each), Unit::Pieces},
                                                          at("portionPieces"))};
            setPieces(std::move(figure));
            if (dish_.pieces->mass) {
                out_.weight = weightOfPieces(
                    "weight", both("Weight of the pieces, raw", "Peso de las piezas, crudo"));
            } else if (!isAllByThePiece()) {
                tally_.missing(path_ + "/pieces/massGrams");
            }
        }
        reckonIngredients();
    }

    [[nodiscard]] bool isAllByThePiece() const {
        const auto& all = serving().ingredients;
        return !all.empty() && std::all_of(all.begin(), all.end(),
                                           [](const auto& one) { return isByThePiece(one); });
    }

    /// What the portions need, or what the event already counts on when that is more. The plan
    /// lays the counted pieces on the grate: too few is a contradiction a person has to solve.
    void setPieces(Figure figure) {
        const auto counted = event::pieceCount(*dish_.pieces, guests_);
        const std::string where =
            path_ + (dish_.pieces->total ? "/pieces/total" : "/pieces/perHundredGuests");
        const auto needed = roundedUp(figure.amount.value);
        if (counted > needed) figure.worked = orCounted(figure.worked);
        figure.key = key("pieces");
        figure.name = both("Pieces", "Piezas");
        figure.amount = {static_cast<double>(std::max<std::int64_t>(needed, counted)),
                         Unit::Pieces};
        figure.inputs.push_back(Tally::field(both("Pieces counted on", "Piezas previstas"),
                                             {static_cast<double>(counted), Unit::Pieces}, where));
        out_.pieces = tally_.reckoned(std::move(figure));
        checkCounted(out_.pieces->isOverridden() ? whole(*out_.pieces) : needed, counted, where);
    }

    /// An own value is what is bought: the grate has to count on as many, no fewer and no more.
    void checkCounted(std::int64_t wanted, std::int64_t counted, const std::string& where) {
        const std::int64_t stated =
            dish_.pieces->total ? *dish_.pieces->total : dish_.pieces->perHundredGuests.value_or(0);
        const std::int64_t least = leastStated(std::max<std::int64_t>(wanted, 1));
        const bool isTooMany = out_.pieces->isOverridden() && least < stated;
        if (wanted > counted)
            tally_.blame(What::OutOfRange, where, std::to_string(stated),
                         std::to_string(least) + "..20000");
        else if (isTooMany)
            tally_.blame(What::OutOfRange, where, std::to_string(stated),
                         std::to_string(least) + ".." + std::to_string(least));
    }

    /// What would have to stand in the event for `needed` pieces.
    [[nodiscard]] std::int64_t leastStated(std::int64_t needed) const {
        const std::int64_t heads = event::headCount(guests_);
        if (dish_.pieces->total || heads == 0) return needed;
        return ((needed - 1) * 100) / heads + 1;
    }

    Figure weightOfPieces(const std::string& what, LocalText name) {
        Figure figure;
        figure.key = key(what);
        figure.name = std::move(name);
        figure.amount = {static_cast<double>(whole(*out_.pieces) * dish_.pieces->mass->grams()),
                         Unit::Grams};
        figure.formula = both("pieces x weight of one", "piezas x peso de una");
        figure.worked = LocalText("{0} x {1}");
        figure.inputs = {*out_.pieces, pieceMass()};
        return tally_.reckoned(std::move(figure));
    }

    [[nodiscard]] Figure pieceMass() const {
        return Tally::field(both("One piece, raw", "Una pieza, cruda"),
                            {static_cast<double>(dish_.pieces->mass->grams()), Unit::Grams},
                            path_ + "/pieces/massGrams");
    }

    /// The first ingredient is what the pieces are made of.
    void reckonPiecesOfWeight() {
        if (!dish_.pieces->mass) return tally_.missing(path_ + "/pieces/massGrams");
        if (out_.ingredients.empty() || !out_.ingredients.front().weight) return;
        IngredientFigures& first = out_.ingredients.front();
        const double mass = static_cast<double>(dish_.pieces->mass->grams());
        Figure figure;
        figure.formula = both("the larger of weight / one piece and pieces counted on",
                              "lo mayor de peso / una pieza y piezas previstas");
        figure.worked = both("{0} / {1}, rounded up", "{0} / {1}, hacia arriba");
        figure.amount.value = static_cast<double>(roundedUp(first.weight->amount.value / mass));
        figure.inputs = {*first.weight, pieceMass()};
        setPieces(std::move(figure));
        if (!first.weight->isOverridden() &&
            static_cast<double>(whole(*out_.pieces)) * mass > first.weight->amount.value)
            first.weight = weightOfPieces(
                "pieces-weight", both("Bought as whole pieces", "Comprado en piezas enteras"));
    }

    static bool isByThePiece(const auto& one) { return one.pack && one.pack->pieces; }

    /// What is bought by the piece is bought as the pieces are; by the weight of portions alone
    /// nobody knows how many those are.
    void countIngredients() {
        for (IngredientFigures& one : out_.ingredients) {
            if (!isByThePiece(one)) continue;
            one.pieces = out_.pieces;
            if (!dish_.pieces || (!one.pieces && out_.weight && &one == &out_.ingredients.front()))
                tally_.blame(What::Contradiction, one.path + "/pack/pieces",
                             std::to_string(*one.pack->pieces),
                             dish_.pieces ? at("portionGrams") : path_ + "/pieces");
        }
    }

    void reckonIngredients() {
        if (serving().ingredients.empty()) return tally_.missing(at("ingredients"));
        for (std::size_t i = 0; i < serving().ingredients.size(); ++i) {
            const event::Ingredient& one = serving().ingredients[i];
            const std::string where = at("ingredients") + "/" + std::to_string(i);
            IngredientFigures figures;
            figures.id = one.id;
            figures.name = one.name;
            figures.pack = one.pack;
            figures.path = where;
            if (!isByThePiece(figures)) figures.weight = weightBought(one, where);
            out_.ingredients.push_back(std::move(figures));
        }
    }

    std::optional<Figure> weightBought(const event::Ingredient& one, const std::string& where) {
        auto chain = yieldChain(tally_, one, where,
                                serving().portionPieces ? at("portionPieces") : std::string());
        if (!chain || !out_.weight) return std::nullopt;
        double ratio = 1.0;
        for (const Figure& step : *chain)
            ratio *= step.amount.value;
        if (!(ratio > 0)) {
            // Only an own value can be zero.
            tally_.blame(What::OutOfRange, where + "/yields", "0", "0.01..10");
            return std::nullopt;
        }
        const double share = out_.weight->amount.value * one.percent / 100.0;
        Figure figure;
        figure.key = key("buy/" + one.id.text());
        figure.name = one.name;
        figure.amount = {
            static_cast<double>(bought(Mass::fromGrams(roundedUp(share)), ratio).grams()),
            Unit::Grams};
        figure.formula = both("weight x share / yield", "peso x parte / rendimiento");
        figure.inputs = {
            *out_.weight,
            Tally::field(both("Share of the dish", "Parte del plato"),
                         {static_cast<double>(one.percent), Unit::Percent}, where + "/percent")};
        for (Figure& step : *chain)
            figure.inputs.push_back(std::move(step));
        figure.worked = workedBought(figure.inputs);
        return tally_.reckoned(std::move(figure));
    }

    void reckonVessels();
    void reckonOnLine();
    std::optional<Figure> capacity();

    Tally& tally_;
    const event::Guests& guests_;
    const event::Dish& dish_;
    std::string path_;
    DishFigures out_;
};

/// What one vessel holds; faults for what is missing.
std::optional<Figure> Kitchen::capacity() {
    const bool isPan =
        *serving().vessel == event::Vessel::Chafer || *serving().vessel == event::Vessel::ColdPan;
    if (!isPan) {
        if (!serving().vesselVolume) {
            tally_.missing(at("vesselLitres"));
            return std::nullopt;
        }
        return Tally::field(
            both("One vessel holds", "Un recipiente contiene"),
            {static_cast<double>(serving().vesselVolume->millilitres()), Unit::Millilitres},
            at("vesselLitres"));
    }
    if (!serving().panSize) tally_.missing(at("panSize"));
    if (!serving().panDepth) tally_.missing(at("panDepth"));
    if (!serving().panSize || !serving().panDepth) return std::nullopt;
    Figure figure;
    figure.key = key("pan-volume");
    figure.name = both("One pan holds", "Una charola contiene");
    figure.amount = {
        static_cast<double>(usableVolume(*serving().panSize, *serving().panDepth).millilitres()),
        Unit::Millilitres};
    figure.source = {Origin::Published, "steam-cooker operator manual, typical pan capacities"};
    return tally_.reckoned(std::move(figure));
}

void Kitchen::reckonVessels() {
    if (!serving().vessel) return tally_.missing(at("vessel"));
    const bool isPan =
        *serving().vessel == event::Vessel::Chafer || *serving().vessel == event::Vessel::ColdPan;
    if (!isPan) {
        if (!serving().vesselLength) tally_.missing(at("vesselLengthMm"));
        if (!serving().vesselWidth) tally_.missing(at("vesselWidthMm"));
    }
    Figure figure;
    figure.key = key("vessels");
    figure.amount = {1, isPan ? Unit::Pans : Unit::Vessels};
    figure.name = isPan ? both("Pans", "Charolas") : both("Vessels", "Recipientes");
    if (*serving().vessel == event::Vessel::Board) {
        figure.formula = both("one board, filled again", "una tabla, se rellena");
        figure.source = {Origin::CommonPractice, "common practice - no source"};
    } else {
        if (!serving().gramsPerLitre) tally_.missing(at("gramsPerLitre"));
        const auto holds = capacity();
        if (!holds || !serving().gramsPerLitre || !out_.weight) return;
        const double perLitre = *serving().gramsPerLitre;
        if (!(holds->amount.value > 0))
            return tally_.blame(What::OutOfRange, at("vesselLitres"), "0", "0.05..100");
        figure.amount.value = static_cast<double>(std::max<std::int64_t>(
            1, roundedUp(out_.weight->amount.value * 1000.0 / perLitre / holds->amount.value)));
        figure.formula =
            both("weight / what it weighs / one holds", "peso / lo que pesa / contiene");
        figure.worked = both("{0} / {1} / {2}, rounded up", "{0} / {1} / {2}, hacia arriba");
        figure.inputs = {*out_.weight,
                         Tally::field(both("What it weighs", "Lo que pesa"),
                                      {perLitre, Unit::GramsPerLitre}, at("gramsPerLitre")),
                         *holds};
    }
    out_.vessels = tally_.reckoned(std::move(figure));
    reckonOnLine();
}

/// The load step says how many chafers the dish is given; everything else stands there once.
void Kitchen::reckonOnLine() {
    std::int32_t given = 1;
    std::string where = at("vessel");
    for (std::size_t s = 0; s < dish_.method.size(); ++s)
        for (std::size_t u = 0; u < dish_.method[s].uses.size(); ++u)
            for (const event::Equipment& kit : tally_.event().kit.equipment)
                if (*serving().vessel == event::Vessel::Chafer &&
                    dish_.method[s].kind == event::StepKind::Load &&
                    kit.kind == event::EquipmentKind::Chafer &&
                    kit.id == dish_.method[s].uses[u].resource) {
                    given = dish_.method[s].uses[u].units;
                    where = path_ + "/method/" + std::to_string(s) + "/uses/" + std::to_string(u) +
                            "/units";
                }
    Figure onLine;
    onLine.key = key("on-line");
    onLine.name = both("On the line at once", "En la línea a la vez");
    onLine.amount = {static_cast<double>(std::max(given, 1)), out_.vessels->amount.unit};
    onLine.formula = both("places given to the dish", "lugares dados al plato");
    onLine.inputs = {Tally::field(both("Places", "Lugares"),
                                  {static_cast<double>(given), Unit::Vessels}, where)};
    out_.onLine = tally_.reckoned(std::move(onLine));
}

}  // namespace

DishFigures reckonDish(Tally& tally, std::size_t index) {
    return Kitchen(tally, index).reckon();
}

}  // namespace cinder::quantity
