// The menu, and one dish.

#include <algorithm>

#include "dish_fields.h"
#include "event/limits.h"
#include "live/pull_target.h"
#include "report/style.h"
#include "safety/cooked.h"

namespace cinder::face {

using event::Dish;
using event::Event;
using Kind = NumberEntry::Kind;

class MenuFields : DishFields {
    Q_DECLARE_TR_FUNCTIONS(cinder::face::MenuFields)

  public:
    explicit MenuFields(FieldList& fields) : DishFields(fields), draft(fields.draft) {
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

    void dish(const DishId& id) {
        if (!find(id)) return;
        describe();
        if (now.pieces) addPieces(list, id);
        serving();
        addIngredients(list, id);
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
    void animal() {
        Field& choice =
            list.choice(path + "/meat", tr("Meat"), false, [this_ = *this](const std::string& key) {
                return this_.changed([key](Dish& d) { d.meat = event::valueOf<event::Meat>(key); });
            });
        for (const auto& word : event::wordsOf(event::Meat{}))
            FieldList::option(choice, word.text, ChoiceWords::of(word.value),
                              now.meat == word.value);
    }

    /// How far it is taken, each with its pull target; the minimum in force stands beneath.
    void doneness(cook::Meat meat) {
        static const std::string kOwn = "own";
        const Temperature target = live::pullTargetOf(now.food, now.meat, now.doneness, now.pullAt);
        Field& choice = list.choice(path + "/doneness", tr("How far it is taken"), false,
                                    [this_ = *this, target](const std::string& key) {
                                        return this_.changed([key, target](Dish& d) {
                                            d.doneness = event::valueOf<event::Doneness>(key);
                                            d.pullAt =
                                                key == kOwn ? std::optional(target) : std::nullopt;
                                        });
                                    });
        for (const auto& word : event::wordsOf(event::Doneness{}))
            if (const auto offered = live::pullTargetFor(meat, word.value))
                FieldList::option(
                    choice, word.text,
                    tr("%1, pulled at %2")
                        .arg(ChoiceWords::of(word.value), list.words.temperature(offered->pullAt)),
                    !now.pullAt && offered->pullAt == target);
        FieldList::option(choice, kOwn, tr("Own temperature"), now.pullAt.has_value());
        const auto minimum = safety::minimumInForce(now.food, list.limits);
        choice.row.note = list.words.minimum(minimum.temperature, minimum.hold, minimum.isLocal) +
                          QStringLiteral(" (") + toText(minimum.source) + QLatin1Char(')');
        if (target < minimum.temperature)
            choice.row.note +=
                QStringLiteral(". ") + tr("The target lies below it: only a thermometer tells "
                                          "whether a piece reached it.");
    }

    template <class Value>
    void one(const char* member, const QString& name, Value Dish::*field,
             const std::function<void(Dish&)>& settle = {}) {
        Field& choice = list.choice(path + "/" + member, name, false,
                                    [this_ = *this, field, settle](const std::string& key) {
                                        return this_.changed([key, field, settle](Dish& d) {
                                            const Value before = d.*field;
                                            d.*field = event::valueOf<Value>(key).value_or(before);
                                            if (settle && d.*field != before) settle(d);
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

    void describe() {
        list.text(path + "/name", tr("Name"), list.words.name(now.name),
                  [this_ = *this](const std::string& text) {
                      return this_.changed([text](Dish& d) { d.name = LocalText(text); });
                  });
        one("course", tr("On the line"), &Dish::course);
        one("food", tr("In the eyes of the food code"), &Dish::food, [](Dish& d) {
            // What was said of another food does not hold for this one.
            d.meat.reset();
            if (!live::meatOf(d.food, {})) d.doneness.reset();
        });
        if (now.food == event::Food::WholeMeat) animal();
        many("contains", tr("Contains"), &Dish::contains);
        if (now.contains.empty())
            list.note(QStringLiteral("contains"),
                      tr("No allergen is noted. Unknown is not none: read every label."));
        many("suits", tr("Fits these diets"), &Dish::suits);
        if (const auto meat = live::meatOf(now.food, now.meat)) doneness(*meat);
        if (now.pullAt)
            figure("/pullAtCelsius", tr("Pull at, in the middle"), Kind::Temperature,
                   now.pullAt->celsius(), event::kPullCelsius.low, event::kPullCelsius.high,
                   [](Dish& d, double v) { d.pullAt = Temperature::fromCelsius(v); });
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

    const Event& draft;
    report::Style style;
};

void addMenu(FieldList& list) {
    MenuFields(list).menu();
}
void addDish(FieldList& list, const DishId& id) {
    MenuFields(list).dish(id);
}

}  // namespace cinder::face
