// What a dish is made of: its pieces and their thickness, and its ingredients.

#include <algorithm>
#include <cmath>

#include "dish_fields.h"
#include "event/limits.h"
#include "quantity/yields.h"

namespace cinder::face {

using event::IngredientId;

namespace {

/// The shares of a dish come to 100: what is new takes from the largest, what goes gives to it.
template <class Parts>
auto largest(Parts& parts) {
    return std::max_element(parts.begin(), parts.end(),
                            [](const auto& a, const auto& b) { return a.percent < b.percent; });
}

template <class Parts, class Part>
void addShare(Parts& parts, Part part) {
    if (parts.empty()) {
        part.percent = 100;
    } else {
        const auto from = largest(parts);
        part.percent = std::max(1, from->percent / 4);
        from->percent -= part.percent;
    }
    parts.push_back(std::move(part));
}

template <class Parts>
void dropShare(Parts& parts, std::size_t i) {
    const std::int32_t share = parts.at(i).percent;
    parts.erase(parts.begin() + static_cast<std::ptrdiff_t>(i));
    if (!parts.empty()) largest(parts)->percent += share;
}

}  // namespace

class PartFields : DishFields {
    Q_DECLARE_TR_FUNCTIONS(cinder::face::PartFields)

  public:
    PartFields(FieldList& fields, const DishId& id) : DishFields(fields) { find(id); }

    void pieces() {
        list.heading(tr("Pieces"));
        const event::Pieces& p = *now.pieces;
        if (p.perHundredGuests)
            figure("/pieces/perHundredGuests", tr("For a hundred guests"), Kind::Count,
                   *p.perHundredGuests, event::kPieceRange.low, event::kPieceRange.high,
                   [](Dish& d, double v) {
                       d.pieces->perHundredGuests = static_cast<std::int32_t>(v);
                   });
        if (p.total)
            figure("/pieces/total", tr("In all"), Kind::Count, *p.total, event::kPieceRange.low,
                   event::kPieceRange.high,
                   [](Dish& d, double v) { d.pieces->total = static_cast<std::int32_t>(v); });
        const auto size = [&](const char* member, const QString& name,
                              Length event::Pieces::*side) {
            figure(std::string("/pieces/") + member, name, Kind::Length, (p.*side).millimetres(),
                   event::kPieceMillimetres.low, event::kPieceMillimetres.high,
                   [side](Dish& d, double v) {
                       const bool isPlain = d.pieces->narrowWidth == d.pieces->width;
                       (*d.pieces).*side = Length::fromMillimetres(v);
                       if (isPlain && side == &event::Pieces::width)
                           d.pieces->narrowWidth = d.pieces->width;
                   });
        };
        size("lengthMm", tr("Length"), &event::Pieces::length);
        size("widthMm", tr("Width"), &event::Pieces::width);
        size("narrowWidthMm", tr("Width of the thin end"), &event::Pieces::narrowWidth);
        figure("/pieces/massGrams", tr("Weight of one, raw"), Kind::Mass,
               p.mass ? static_cast<double>(p.mass->grams()) : 0, event::kGramRange.low,
               event::kGramRange.high,
               [](Dish& d, double v) { d.pieces->mass = Mass::fromGrams(std::llround(v)); });
        for (std::size_t i = 0; i < p.thickness.size(); ++i) {
            const QString name = list.words.name(p.thickness[i].name);
            const std::string member = pointer("/pieces/thickness", i);
            label(member + "/name", tr("A thickness"), name,
                  [i](Dish& d) -> LocalText& { return d.pieces->thickness.at(i).name; });
            figure(member + "/thicknessMm", tr("%1: thickness").arg(name), Kind::Length,
                   p.thickness[i].thickness.millimetres(), event::kThicknessMillimetres.low,
                   event::kThicknessMillimetres.high, [i](Dish& d, double v) {
                       d.pieces->thickness.at(i).thickness = Length::fromMillimetres(v);
                   });
            figure(member + "/percent", tr("%1: share of all pieces").arg(name), Kind::Percent,
                   p.thickness[i].percent, 1, 100, [i](Dish& d, double v) {
                       d.pieces->thickness.at(i).percent = static_cast<std::int32_t>(v);
                   });
            list.takeOut(toText(path + member), tr("%1: none of these").arg(name),
                         changed([i](Dish& d) { dropShare(d.pieces->thickness, i); }));
        }
        more("/pieces/thickness", tr("One thickness more"), [](Dish& d) {
            auto& all = d.pieces->thickness;
            event::ThicknessClass one;
            one.name = LocalText(tr("Thicker pieces").toStdString());
            one.thickness = all.empty() ? Length::fromMillimetres(40)
                                        : Length::fromMillimetres(std::min(
                                              std::round(all.back().thickness.millimetres() * 1.25),
                                              event::kThicknessMillimetres.high));
            addShare(all, std::move(one));
        });
    }

    void ingredients() {
        list.heading(tr("Ingredients"));
        more("/serving/ingredients", tr("One ingredient more"), [](Dish& d) {
            if (!d.serving) d.serving.emplace();
            auto& all = d.serving->ingredients;
            event::Ingredient one;
            const auto isTaken = [&](const IngredientId& id) {
                return std::any_of(all.begin(), all.end(),
                                   [&](const auto& other) { return other.id == id; });
            };
            for (int n = 1; one.id.empty() || isTaken(one.id); ++n)
                one.id = IngredientId(d.id.text() + "-" + std::to_string(n));
            one.name = LocalText(tr("New ingredient").toStdString());
            one.yieldPercent = 100;
            addShare(all, std::move(one));
        });
        if (!now.serving) return;
        const auto& all = now.serving->ingredients;
        for (std::size_t i = 0; i < all.size(); ++i) {
            const QString name = list.words.name(all[i].name);
            const std::string member = pointer("/serving/ingredients", i);
            label(member + "/name", tr("An ingredient"), name,
                  [i](Dish& d) -> LocalText& { return d.serving->ingredients.at(i).name; });
            figure(member + "/percent", tr("%1: share of the dish").arg(name), Kind::Percent,
                   all[i].percent, 1, 100, [i](Dish& d, double v) {
                       d.serving->ingredients.at(i).percent = static_cast<std::int32_t>(v);
                   });
            list.takeOut(toText(path + member), tr("%1: none of it").arg(name),
                         changed([i](Dish& d) { dropShare(d.serving->ingredients, i); }));
            if (!all[i].yields.empty() && !hasCookedYield(all[i])) continue;
            Field& field =
                figure(member + "/yieldPercent", tr("%1: ready of bought").arg(name), Kind::Percent,
                       all[i].yieldPercent.value_or(0), event::kYieldPercent.low,
                       event::kYieldPercent.high, [i](Dish& d, double v) {
                           d.serving->ingredients.at(i).yieldPercent = static_cast<std::int32_t>(v);
                           d.serving->ingredients.at(i).yields.clear();
                       });
            // The reckoning misses the published yield or the cook's own, here the own one.
            field.path = path + member + (all[i].yieldPercent ? "/yieldPercent" : "/yields");
        }
    }

  private:
    /// A published yield that the reckoning blames, because counted pieces are weighed raw: an own
    /// one takes its place.
    [[nodiscard]] bool hasCookedYield(const event::Ingredient& one) const {
        return now.serving->portionPieces &&
               std::any_of(one.yields.begin(), one.yields.end(), [](const std::string& key) {
                   const quantity::Yield* yield = quantity::findYield(key);
                   return yield != nullptr && quantity::isOfCooking(*yield);
               });
    }

    template <class Of>
    void label(const std::string& member, const QString& name, const QString& value, Of of) {
        list.text(path + member, name, value, [this_ = *this, of](const std::string& text) {
            return this_.changed([of, text](Dish& d) { of(d) = LocalText(text); });
        });
    }

    template <class Change>
    void more(const std::string& member, const QString& name, Change change) {
        list.act(toText(path + member + "#more"), name, tr("Add"), changed(change));
    }
};

void addPieces(FieldList& list, const DishId& dish) {
    PartFields(list, dish).pieces();
}

void addIngredients(FieldList& list, const DishId& dish) {
    PartFields(list, dish).ingredients();
}

}  // namespace cinder::face
