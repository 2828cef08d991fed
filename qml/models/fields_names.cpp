// What the crew can do and where the work is done: names that steps and people refer to.

#include "fields.h"

namespace cinder::face {

using event::Event;

class NameFields {
    Q_DECLARE_TR_FUNCTIONS(cinder::face::NameFields)

  public:
    explicit NameFields(FieldList& fields) : list(fields) {}

    void skills() {
        list.heading(tr("Skills"));
        const auto& all = list.draft.skills;
        for (std::size_t i = 0; i < all.size(); ++i)
            name(pointer("/skills", i), tr("A skill"), all[i], event::withSkill,
                 event::withoutSkill);
        list.act(QStringLiteral("skill"), tr("One skill more"), tr("Add"), [](Event e) {
            event::Skill skill;
            skill.name = LocalText(tr("New skill").toStdString());
            return event::withSkill(std::move(e), std::move(skill));
        });
    }

    void stations() {
        list.heading(tr("Where work is done"));
        const auto& all = list.draft.site.stations;
        for (std::size_t i = 0; i < all.size(); ++i)
            name(pointer("/site/stations", i), tr("A place"), all[i], event::withStation,
                 event::withoutStation);
        list.act(QStringLiteral("station"), tr("One place more"), tr("Add"), [](Event e) {
            event::Station station;
            station.name = LocalText(tr("New place").toStdString());
            return event::withStation(std::move(e), std::move(station));
        });
    }

  private:
    /// Its name, and a touch to do without it; what still needs it says so beneath.
    template <class Thing, class Id>
    void name(const std::string& path, const QString& kind, const Thing& thing,
              event::Edited (*with)(Event, Thing), event::Edited (*without)(Event, const Id&)) {
        const QString word = list.words.name(thing.name);
        list.text(path + "/name", kind, word, [thing, with](const std::string& text) -> app::Edit {
            return [thing = thing, with, text](Event e) mutable {
                thing.name = LocalText(text);
                return with(std::move(e), thing);
            };
        });
        Field& removal =
            list.takeOut(toText(path), tr("Remove %1").arg(word),
                         [id = thing.id, without](Event e) { return without(std::move(e), id); });
        removal.path = path;
    }

    FieldList& list;
};

void addSkills(FieldList& list) {
    NameFields(list).skills();
}
void addStations(FieldList& list) {
    NameFields(list).stations();
}

}  // namespace cinder::face
