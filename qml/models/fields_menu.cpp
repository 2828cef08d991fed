// The menu, the library of method cards, and one dish.

#include <algorithm>

#include "event/limits.h"
#include "fields.h"
#include "report/style.h"

namespace cinder::face {

using event::Dish;
using event::Event;
using Kind = NumberEntry::Kind;

class MenuFields {
    Q_DECLARE_TR_FUNCTIONS(cinder::face::MenuFields)

  public:
    explicit MenuFields(FieldList& fields) : list(fields), draft(fields.draft) {
        style.language = list.words.language().toStdString();
    }

    void menu() {
        for (std::size_t i = 0; i < draft.menu.size(); ++i)
            list.go(QStringLiteral("dish:") + toText(draft.menu[i].id.text()),
                    list.words.name(draft.menu[i].name), ChoiceWords::of(draft.menu[i].course),
                    pointer("/menu", i));
        if (draft.menu.empty())
            list.note(QStringLiteral("menu"),
                      tr("Nothing on the menu yet: take dishes from the "
                         "library, or write one of your own."),
                      "/menu");
        list.go(QStringLiteral("library"), tr("Add from the library"), {}, "/menu#library");
        list.act(QStringLiteral("own"), tr("A dish of your own"), tr("Add"), [](Event e) {
            Dish dish;
            dish.id = DishId("own");
            dish.name = LocalText(tr("New dish").toStdString());
            event::Step step;
            step.id = StepId("prepare");
            step.name = LocalText(tr("Prepare").toStdString());
            step.kind = event::StepKind::Prep;
            if (!e.site.stations.empty()) step.station = e.site.stations.back().id;
            using std::chrono::minutes;
            step.duration = {minutes(4), minutes(5), minutes(8)};
            if (!e.skills.empty()) step.hands = event::HandsWhole{{e.skills.back().id, 1}};
            dish.method.push_back(std::move(step));
            return event::withCard(std::move(e), dish);
        });
    }

    void library(const std::vector<Dish>& cards) {
        for (const auto& course : event::wordsOf(event::Course{})) {
            list.heading(ChoiceWords::of(course.value));
            for (const Dish& card : cards) {
                if (card.course != course.value) continue;
                const QString name = list.words.name(card.name);
                Field& add =
                    list.act(toText("card:" + card.id.text()), name, tr("Add"),
                             [card](Event e) { return event::withCard(std::move(e), card); });
                add.row.note = allergens(card);
                const auto copies =
                    std::count_if(draft.menu.begin(), draft.menu.end(),
                                  [&](const Dish& dish) { return dish.name == card.name; });
                if (copies > 0) add.row.value = tr("On the menu");
            }
        }
    }

    void dish(const DishId& id) {
        const auto at = std::find_if(draft.menu.begin(), draft.menu.end(),
                                     [&](const Dish& one) { return one.id == id; });
        if (at == draft.menu.end()) return;
        path = pointer("/menu", static_cast<std::size_t>(at - draft.menu.begin()));
        now = *at;
        describe();
        if (now.pieces) pieces();
        serving();
        ingredients();
        list.heading(tr("Steps"));
        for (std::size_t i = 0; i < now.method.size(); ++i)
            list.go(toText("step:" + id.text() + "/" + now.method[i].id.text()),
                    list.words.name(now.method[i].name),
                    list.measure(Kind::Minutes, inMinutes(now.method[i].duration.usual)),
                    pointer(path + "/method", i));
        list.act(QStringLiteral("step"), tr("One step more"), tr("Add"), [id](Event e) {
            event::Step step;
            for (const Dish& dish : e.menu)
                if (dish.id == id && !dish.method.empty()) {
                    const event::Step& last = dish.method.back();
                    step.station = last.station;
                    if (!e.skills.empty()) step.hands = event::HandsWhole{{e.skills.back().id, 1}};
                    event::After after;
                    after.step = event::fullName(id, last.id);
                    step.after.push_back(after);
                }
            step.name = LocalText(tr("New step").toStdString());
            step.kind = event::StepKind::Prep;
            using std::chrono::minutes;
            step.duration = {minutes(4), minutes(5), minutes(8)};
            return event::withStep(std::move(e), id, std::move(step));
        });
        list.act(QStringLiteral("copy"), tr("A second dish like this"), tr("Copy"),
                 [id](Event e) { return event::withCopyOf(std::move(e), id); })
            .target = QStringLiteral("menu");
        list.removal(
            tr("Take off the menu"),
            [id](Event e) {
                auto free = event::withNobodyWaitingFor(std::move(e), id);
                return free ? event::withoutDish(*std::move(free), id) : free;
            },
            QStringLiteral("menu"));
    }

  private:
    template <class Change>
    [[nodiscard]] app::Edit changed(Change change) const {
        return [dish = now, change](Event e) mutable {
            change(dish);
            return event::withDish(std::move(e), dish);
        };
    }

    [[nodiscard]] QString allergens(const Dish& dish) const {
        QStringList names;
        for (const auto allergen : dish.contains)
            names << toText(report::word(allergen, style));
        return names.isEmpty() ? QString()
                               : tr("Contains: %1").arg(names.join(QStringLiteral(", ")));
    }

    template <class Value>
    void one(const char* member, const QString& name, Value Dish::*field) {
        Field& choice = list.choice(
            path + "/" + member, name, false, [this_ = *this, field](const std::string& key) {
                return this_.changed([key, field](Dish& d) {
                    d.*field = event::valueOf<Value>(key).value_or(d.*field);
                });
            });
        for (const auto& word : event::wordsOf(Value{}))
            FieldList::option(choice, word.text, ChoiceWords::of(word.value),
                              now.*field == word.value);
    }

    template <class Value>
    void many(const char* member, const QString& name, std::vector<Value> Dish::*field) {
        Field& choice = list.choice(path + "/" + member, name, true,
                                    [this_ = *this, field](const std::string& key) {
                                        return this_.changed([key, field](Dish& d) {
                                            const auto value = event::valueOf<Value>(key);
                                            if (value && std::erase(d.*field, *value) == 0)
                                                (d.*field).push_back(*value);
                                        });
                                    });
        const auto& held = now.*field;
        for (const auto& word : event::wordsOf(Value{}))
            FieldList::option(choice, word.text, toText(report::word(word.value, style)),
                              std::count(held.begin(), held.end(), word.value) > 0);
    }

    template <class Set>
    Field& figure(const std::string& member, const QString& name, Kind kind, double value,
                  double least, double most, Set set) {
        return list.number(path + member, name, kind, value, least, most,
                           [this_ = *this, set](double v) {
                               return this_.changed([set, v](Dish& d) { set(d, v); });
                           });
    }

    void describe() {
        list.text(path + "/name", tr("Name"), list.words.name(now.name),
                  [this_ = *this](const std::string& text) {
                      return this_.changed([text](Dish& d) { d.name = LocalText(text); });
                  });
        one("course", tr("On the line"), &Dish::course);
        one("food", tr("In the eyes of the food code"), &Dish::food);
        many("contains", tr("Contains"), &Dish::contains);
        if (now.contains.empty())
            list.note(QStringLiteral("contains"),
                      tr("No allergen is noted. Unknown is not none: read every label."));
        many("suits", tr("Fits these diets"), &Dish::suits);
        if (now.pullAt)
            figure("/pullAtCelsius", tr("Pull at, in the middle"), Kind::Temperature,
                   now.pullAt->celsius(), event::kPullCelsius.low, event::kPullCelsius.high,
                   [](Dish& d, double v) { d.pullAt = Temperature::fromCelsius(v); });
    }

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
            figure(member + "/thicknessMm", tr("%1: thickness").arg(name), Kind::Length,
                   p.thickness[i].thickness.millimetres(), event::kThicknessMillimetres.low,
                   event::kThicknessMillimetres.high, [i](Dish& d, double v) {
                       d.pieces->thickness.at(i).thickness = Length::fromMillimetres(v);
                   });
            figure(member + "/percent", tr("%1: share of all pieces").arg(name), Kind::Percent,
                   p.thickness[i].percent, 1, 100, [i](Dish& d, double v) {
                       d.pieces->thickness.at(i).percent = static_cast<std::int32_t>(v);
                   });
        }
    }

    void serving() {
        list.heading(tr("On the plate and on the line"));
        const event::Serving s = now.serving.value_or(event::Serving{});
        const auto of = [](Dish& d) -> event::Serving& {
            if (!d.serving) d.serving.emplace();
            return *d.serving;
        };
        if (s.portionPieces)
            figure("/serving/portionPieces", tr("Pieces in a portion"), Kind::Count,
                   *s.portionPieces, event::kPortionPieces.low, event::kPortionPieces.high,
                   [of](Dish& d, double v) { of(d).portionPieces = static_cast<std::int32_t>(v); });
        else
            figure("/serving/portionGrams", tr("A portion"), Kind::Mass,
                   s.portion ? static_cast<double>(s.portion->grams()) : 0,
                   event::kPortionGrams.low, event::kPortionGrams.high,
                   [of](Dish& d, double v) { of(d).portion = Mass::fromGrams(std::llround(v)); });
        const auto share = [&](const char* member, const QString& name,
                               std::optional<std::int32_t> event::Serving::*field, double least,
                               double most) {
            figure(std::string("/serving/") + member, name, Kind::Percent, (s.*field).value_or(0),
                   least, most,
                   [of, field](Dish& d, double v) { of(d).*field = static_cast<std::int32_t>(v); });
        };
        share("takePercent", tr("Guests who take it"), &event::Serving::takePercent, 1, 100);
        share("childPercent", tr("A child's portion"), &event::Serving::childPercent, 1, 100);
        share("secondsPercent", tr("Seconds"), &event::Serving::secondsPercent, 0, 100);
        vessel(s);
    }

    void vessel(const event::Serving& s) {
        const auto pick = [&](const std::string& member, const QString& name, auto field,
                              auto wordOf) {
            using Value = typename std::decay_t<decltype(s.*field)>::value_type;
            Field& choice = list.choice(path + member, name, false,
                                        [this_ = *this, field](const std::string& key) {
                                            return this_.changed([key, field](Dish& d) {
                                                if (!d.serving) d.serving.emplace();
                                                (*d.serving).*field = event::valueOf<Value>(key);
                                            });
                                        });
            for (const auto& word : event::wordsOf(Value{}))
                FieldList::option(choice, word.text, wordOf(word.value), s.*field == word.value);
        };
        pick("/serving/vessel", tr("It stands in"), &event::Serving::vessel,
             [&](event::Vessel v) { return toText(report::word(v, style)); });
        if (!s.vessel) return;
        if (*s.vessel == event::Vessel::Chafer || *s.vessel == event::Vessel::ColdPan) {
            pick("/serving/panSize", tr("Pan"), &event::Serving::panSize,
                 [](event::PanSize v) { return ChoiceWords::of(v); });
            pick("/serving/panDepth", tr("Depth of the pan"), &event::Serving::panDepth,
                 [](event::PanDepth v) { return ChoiceWords::of(v); });
            return;
        }
        figure("/serving/vesselLitres", tr("It holds"), Kind::Volume,
               s.vesselVolume ? s.vesselVolume->litres() * 1000 : 0,
               event::kVesselLitres.low * 1000, event::kVesselLitres.high * 1000,
               [](Dish& d, double v) { d.serving->vesselVolume = Volume::fromLitres(v / 1000); });
        const auto side = [&](const char* member, const QString& name, auto field) {
            figure(std::string("/serving/") + member, name, Kind::Length,
                   s.*field ? (s.*field)->millimetres() : 0, event::kVesselMillimetres.low,
                   event::kVesselMillimetres.high, [field](Dish& d, double v) {
                       (*d.serving).*field = Length::fromMillimetres(v);
                   });
        };
        side("vesselLengthMm", tr("Along the table"), &event::Serving::vesselLength);
        side("vesselWidthMm", tr("Across the table"), &event::Serving::vesselWidth);
    }

    void ingredients() {
        if (!now.serving || now.serving->ingredients.empty()) return;
        list.heading(tr("Ingredients"));
        const auto& all = now.serving->ingredients;
        for (std::size_t i = 0; i < all.size(); ++i) {
            const QString name = list.words.name(all[i].name);
            const std::string member = pointer("/serving/ingredients", i);
            figure(member + "/percent", tr("%1: share of the dish").arg(name), Kind::Percent,
                   all[i].percent, 1, 100, [i](Dish& d, double v) {
                       d.serving->ingredients.at(i).percent = static_cast<std::int32_t>(v);
                   });
            if (!all[i].yields.empty()) continue;
            Field& field =
                figure(member + "/yieldPercent", tr("%1: ready of bought").arg(name), Kind::Percent,
                       all[i].yieldPercent.value_or(0), event::kYieldPercent.low,
                       event::kYieldPercent.high, [i](Dish& d, double v) {
                           d.serving->ingredients.at(i).yieldPercent = static_cast<std::int32_t>(v);
                       });
            // The reckoning misses the published yield or the cook's own, here the own one.
            field.path = path + member + (all[i].yieldPercent ? "/yieldPercent" : "/yields");
        }
    }

    FieldList& list;
    const Event& draft;
    report::Style style;
    std::string path;
    Dish now;
};

void addMenu(FieldList& list) {
    MenuFields(list).menu();
}
void addLibrary(FieldList& list, const std::vector<Dish>& cards) {
    MenuFields(list).library(cards);
}
void addDish(FieldList& list, const DishId& id) {
    MenuFields(list).dish(id);
}

}  // namespace cinder::face
