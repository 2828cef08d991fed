// What the crew brings, with its real sizes.

#include <algorithm>

#include "event/limits.h"
#include "fields.h"

namespace cinder::face {

using event::Event;
using Kind = NumberEntry::Kind;

class KitFields {
    Q_DECLARE_TR_FUNCTIONS(cinder::face::KitFields)

  public:
    explicit KitFields(FieldList& fields) : list(fields), kit(fields.draft.kit) {}

    void all() {
        list.heading(tr("Grates"));
        for (std::size_t i = 0; i < kit.grates.size(); ++i)
            go(kit.grates[i], pointer("/kit/grates", i),
               FieldList::sizeText(list, kit.grates[i].length, kit.grates[i].width));
        list.act(QStringLiteral("grate"), tr("A grate"), tr("Add"), [](Event e) {
            event::Grate grate;
            grate.name = LocalText(tr("Grate").toStdString());
            grate.station = stationOf(
                e, [](const event::Step& s) { return !s.onGrates.empty(); },
                [](const event::Step& s) { return s.kind == event::StepKind::Fire; });
            grate.length = Length::fromMillimetres(900);
            grate.width = Length::fromMillimetres(450);
            grate.gap = Length::fromMillimetres(20);
            return event::withGrate(std::move(e), std::move(grate));
        });
        list.heading(tr("Equipment"));
        for (std::size_t i = 0; i < kit.equipment.size(); ++i)
            go(kit.equipment[i], pointer("/kit/equipment", i),
               QString::number(kit.equipment[i].count));
        list.act(QStringLiteral("equipment"), tr("A piece of equipment"), tr("Add"), [](Event e) {
            event::Equipment equipment;
            equipment.name = LocalText(tr("Equipment").toStdString());
            equipment.station = firstStation(e);
            return event::withEquipment(std::move(e), std::move(equipment));
        });
        list.heading(tr("Tables"));
        for (std::size_t i = 0; i < kit.tables.size(); ++i)
            go(kit.tables[i], pointer("/kit/tables", i),
               QString::number(kit.tables[i].count) + QStringLiteral(" · ") +
                   FieldList::sizeText(list, kit.tables[i].length, kit.tables[i].width));
        list.act(QStringLiteral("table"), tr("A table"), tr("Add"), [](Event e) {
            event::Table table;
            table.name = LocalText(tr("Table").toStdString());
            table.station = stationOf(
                e, [](const event::Step& s) { return s.kind == event::StepKind::Load; },
                [](const event::Step& s) { return s.kind == event::StepKind::Serve; });
            table.length = Length::fromMillimetres(1829);
            table.width = Length::fromMillimetres(762);
            return event::withTable(std::move(e), std::move(table));
        });
    }

    void one(const ResourceId& id) {
        open(kit.grates, id, "/kit/grates", &event::withGrate,
             [&](const auto& g, const auto& path) {
                 size(g, path, "lengthMm", tr("Length"), &event::Grate::length,
                      event::kSurfaceMillimetres, &event::withGrate);
                 size(g, path, "widthMm", tr("Width"), &event::Grate::width,
                      event::kSurfaceMillimetres, &event::withGrate);
                 size(g, path, "coolSideMm", tr("Cool side, no pieces on it"),
                      &event::Grate::coolSide, {0, event::kSurfaceMillimetres.high},
                      &event::withGrate);
                 size(g, path, "gapMm", tr("Between pieces"), &event::Grate::gap,
                      event::kGapMillimetres, &event::withGrate);
             });
        open(kit.equipment, id, "/kit/equipment", &event::withEquipment,
             [&](const auto& e, const auto& path) {
                 count(e, path, &event::withEquipment);
                 kinds(e, path);
             });
        open(kit.tables, id, "/kit/tables", &event::withTable,
             [&](const auto& t, const auto& path) {
                 count(t, path, &event::withTable);
                 size(t, path, "lengthMm", tr("Length"), &event::Table::length,
                      event::kSurfaceMillimetres, &event::withTable);
                 size(t, path, "widthMm", tr("Width"), &event::Table::width,
                      event::kSurfaceMillimetres, &event::withTable);
             });
    }

  private:
    static StationId firstStation(const Event& e) {
        return e.site.stations.empty() ? StationId{} : e.site.stations.front().id;
    }

    /// Where the dishes do what it is for, else where the work of the event does, else the first:
    /// a grate in the van is nowhere near the coals.
    template <class IsOfDish, class IsOfWork>
    static StationId stationOf(const Event& e, IsOfDish isOfDish, IsOfWork isOfWork) {
        for (const event::Dish& dish : e.menu)
            for (const event::Step& step : dish.method)
                if (isOfDish(step)) return step.station;
        for (const event::Step& step : e.work)
            if (isOfWork(step)) return step.station;
        return firstStation(e);
    }

    template <class Item, class Put>
    void place(const Item& item, const std::string& path, Put put) {
        Field& station = list.choice(path + "/station", tr("Where"), false,
                                     [item, put](const std::string& key) -> app::Edit {
                                         return [item = item, put, key](Event e) mutable {
                                             item.station = StationId(key);
                                             return put(std::move(e), item);
                                         };
                                     });
        for (const auto& one : list.draft.site.stations)
            FieldList::option(station, one.id.text(), list.words.name(one.name),
                              item.station == one.id);
    }

    template <class Item>
    void go(const Item& item, const std::string& path, const QString& value) {
        list.go(QStringLiteral("kit:") + toText(item.id.text()), list.words.name(item.name), value,
                path);
    }

    template <class Item, class Put, class Rest>
    void open(const std::vector<Item>& items, const ResourceId& id, const std::string& where,
              Put put, Rest rest) {
        const auto at = std::find_if(items.begin(), items.end(),
                                     [&](const Item& item) { return item.id == id; });
        if (at == items.end()) return;
        const Item& item = *at;
        const std::string path = pointer(where, static_cast<std::size_t>(at - items.begin()));
        list.text(path + "/name", tr("Name"), list.words.name(item.name),
                  [item, put](const std::string& text) -> app::Edit {
                      return [item = item, put, text](Event e) mutable {
                          item.name = LocalText(text);
                          return put(std::move(e), item);
                      };
                  });
        rest(item, path);
        place(item, path, put);
        list.removal(
                tr("Leave it at home"),
                [id](Event e) { return event::withoutKit(std::move(e), id); },
                QStringLiteral("kit"))
            .path = path;
    }

    template <class Item, class Put>
    void size(const Item& item, const std::string& path, const char* member, const QString& name,
              Length Item::*field, event::Range<double> range, Put put) {
        list.number(path + "/" + member, name, Kind::Length, (item.*field).millimetres(), range.low,
                    range.high, [=](double v) -> app::Edit {
                        return [item = item, field, put, v](Event e) mutable {
                            item.*field = Length::fromMillimetres(v);
                            return put(std::move(e), item);
                        };
                    });
    }

    template <class Item, class Put>
    void count(const Item& item, const std::string& path, Put put) {
        list.number(path + "/count", tr("How many"), Kind::Count, item.count, 1, 1000,
                    [=](double v) -> app::Edit {
                        return [item = item, put, v](Event e) mutable {
                            item.count = static_cast<std::int32_t>(v);
                            return put(std::move(e), item);
                        };
                    });
    }

    void kinds(const event::Equipment& item, const std::string& path) {
        Field& kind = list.choice(
            path + "/kind", tr("What it is"), false, [item](const std::string& key) -> app::Edit {
                return [item = item, key](Event e) mutable {
                    item.kind = event::valueOf<event::EquipmentKind>(key).value_or(item.kind);
                    return event::withEquipment(std::move(e), item);
                };
            });
        for (const auto& word : event::wordsOf(event::EquipmentKind{}))
            FieldList::option(kind, word.text, ChoiceWords::of(word.value),
                              item.kind == word.value);
    }

    FieldList& list;
    const event::Kit& kit;
};

void addKit(FieldList& list) {
    KitFields(list).all();
}
void addKitItem(FieldList& list, const ResourceId& id) {
    KitFields(list).one(id);
}

}  // namespace cinder::face
