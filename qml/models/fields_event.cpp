// When, who eats, where, who works, and with what.

#include <algorithm>

#include <QDateTime>
#include <QTimeZone>

#include "event/limits.h"
#include "fields.h"
#include "report/style.h"

namespace cinder::face {

namespace {

using event::Event;
using Kind = NumberEntry::Kind;

/// The language people write names in: what is typed holds for every language.
LocalText typed(const std::string& text) {
    return LocalText(text);
}

report::Style styleOf(const FieldList& list) {
    report::Style style;
    style.language = list.words.language().toStdString();
    return style;
}

QDateTime wallOf(const Event& draft) {
    const auto offset = std::chrono::seconds(draft.serve.offset).count();
    return QDateTime::fromMSecsSinceEpoch(draft.serve.at.time_since_epoch().count(),
                                          Qt::OffsetFromUTC, static_cast<int>(offset));
}

/// The bell at this date and time on the wall of the event's place.
app::Edit serveAt(QDate date, QTime time) {
    return [date, time](Event draft) {
        const QTimeZone zone(QByteArray::fromStdString(draft.timeZone));
        const auto kept = static_cast<int>(std::chrono::seconds(draft.serve.offset).count());
        QDateTime at(date, time, Qt::OffsetFromUTC, kept);
        if (zone.isValid()) {
            const QDateTime there(date, time, zone);
            at = QDateTime(date, time, Qt::OffsetFromUTC, there.offsetFromUtc());
        }
        const ZonedInstant serve{Instant{Duration{at.toMSecsSinceEpoch()}},
                                 UtcOffset{at.offsetFromUtc() / 60}};
        return event::withServe(std::move(draft), serve);
    };
}

/// Beyond this a crew is warned. The plain charcoal buffet for 100 is the work of two to three
/// people; three times that is no slip of the finger any more: common practice - no source.
constexpr std::int32_t kMostGuestsEach = 150;

template <class Change>
app::Edit site(Change change) {
    return [change](Event draft) {
        event::Site changed = draft.site;
        change(changed, draft);
        return event::withSite(std::move(draft), std::move(changed));
    };
}

}  // namespace

class EventFields {
    Q_DECLARE_TR_FUNCTIONS(cinder::face::EventFields)

  public:
    explicit EventFields(FieldList& fields) : list(fields), draft(fields.draft) {}

    void when() {
        const QDateTime wall = wallOf(draft);
        const QDate date = wall.date();
        const QTime time = wall.time();
        list.text("/name", tr("Name of the event"), list.words.name(draft.name),
                  [](const std::string& text) -> app::Edit {
                      return [text](Event e) { return event::withName(std::move(e), typed(text)); };
                  });
        list.heading(list.words.date(draft.serve.at, draft.serve.offset));
        const auto count = [&](const char* key, const QString& name, int value, int least, int most,
                               auto set) -> Field& {
            Field& field =
                list.number(std::string("/serve#") + key, name, Kind::Count, value, least, most,
                            [set](double v) -> app::Edit { return set(static_cast<int>(v)); });
            field.path = "/serve";
            return field;
        };
        count("day", tr("Day"), date.day(), 1, date.daysInMonth(),
              [=](int d) { return serveAt(QDate(date.year(), date.month(), d), time); });
        count("month", tr("Month"), date.month(), 1, 12, [=](int m) {
            const int last = QDate(date.year(), m, 1).daysInMonth();
            return serveAt(QDate(date.year(), m, std::min(date.day(), last)), time);
        });
        count("year", tr("Year"), date.year(), 2020, 2099, [=](int y) {
            const int last = QDate(y, date.month(), 1).daysInMonth();
            return serveAt(QDate(y, date.month(), std::min(date.day(), last)), time);
        });
        list.heading(tr("Serve at %1").arg(list.words.clock(draft.serve.at)));
        count("hour", tr("Hour, 0 to 23"), time.hour(), 0, 23,
              [=](int h) { return serveAt(date, QTime(h, time.minute())); });
        count("minute", tr("Minute"), time.minute(), 0, 59, [=](int m) {
            return serveAt(date, QTime(time.hour(), m));
        }).stepBy = 5;
    }

    void guests() {
        const auto range = event::kGuestRange;
        const auto& guests = draft.guests;
        const auto heads = [&](const char* path, const QString& name, std::int32_t value,
                               bool isChildren) {
            list.number(path, name, Kind::Count, value, range.low, range.high,
                        [isChildren](double v) -> app::Edit {
                            const auto n = static_cast<std::int32_t>(v);
                            return [=](Event e) {
                                const auto [a, c] = std::pair(e.guests.adults, e.guests.children);
                                return event::withGuests(std::move(e), isChildren ? a : n,
                                                         isChildren ? n : c);
                            };
                        });
        };
        heads("/guests/adults", tr("Adults"), guests.adults, false);
        heads("/guests/children", tr("Children"), guests.children, true);
        const auto people = static_cast<std::int32_t>(draft.crew.size());
        if (event::headCount(guests) > kMostGuestsEach * people)
            list.note(QStringLiteral("many"),
                      tr("More than %1 guests for each of the crew. Bring more people, or make two "
                         "events of it.")
                          .arg(kMostGuestsEach));
        list.heading(tr("Diets, how many guests"));
        counts("/guests/diets", guests.diets, &event::DietCount::diet, &event::withDiet);
        list.heading(tr("Allergies, how many guests"));
        list.note(QStringLiteral("allergens"),
                  guests.allergens.empty()
                      ? tr("No allergy is noted. Unknown is not none: ask the client.")
                      : tr("Ask the client again when guests change."));
        counts("/guests/allergens", guests.allergens, &event::AllergenCount::allergen,
               &event::withAllergen);
    }

    /// One number for every kind, 0 where the event has no line of it.
    template <class Line, class Value, class Put>
    void counts(const std::string& path, const std::vector<Line>& lines, Value Line::*kind,
                Put put) {
        for (const auto& word : event::wordsOf(Value{})) {
            const auto there = std::find_if(lines.begin(), lines.end(), [&](const Line& line) {
                return line.*kind == word.value;
            });
            const bool isThere = there != lines.end();
            QString name = toText(report::word(word.value, styleOf(list)));
            if (!name.isEmpty()) name[0] = name[0].toUpper();
            Field& field = list.number(
                path + "#" + std::string(word.text), name, Kind::Count, isThere ? there->count : 0,
                0, event::kGuestRange.high, [value = word.value, put](double v) -> app::Edit {
                    const auto n = static_cast<std::int32_t>(v);
                    return [=](Event e) { return put(std::move(e), value, n); };
                });
            field.path = isThere ? pointer(path, static_cast<std::size_t>(there - lines.begin()))
                                 : path + "#none";
        }
    }

    void where() {
        const event::Site& there = draft.site;
        list.text("/site/name", tr("Name of the place"), list.words.name(there.name),
                  [](const std::string& text) {
                      return site([text](event::Site& s, const Event&) { s.name = typed(text); });
                  });
        list.text("/site/address", tr("Address"), toText(there.address.value_or("")),
                  [](const std::string& text) {
                      return site([text](event::Site& s, const Event&) {
                          s.address = text.empty() ? std::nullopt : std::optional(text);
                      });
                  });
        list.text("/site/notes", tr("Notes"),
                  there.notes ? list.words.name(*there.notes) : QString(),
                  [](const std::string& text) {
                      return site([text](event::Site& s, const Event&) {
                          s.notes = text.empty() ? std::nullopt : std::optional(typed(text));
                      });
                  });
        arrival();
        list.number(
                "/site/travelMinutes", tr("Drive from the kitchen"), Kind::Minutes,
                inMinutes(there.travel.value_or(Duration{0})), event::kMinutes.low,
                event::kMinutes.high,
                [](double v) {
                    return site([v](event::Site& s, const Event&) { s.travel = fromMinutes(v); });
                })
            .stepBy = 5;
        if (!there.walks.empty()) list.heading(tr("On foot, one way"));
        for (std::size_t i = 0; i < there.walks.size(); ++i) {
            const auto& walk = there.walks[i];
            list.number(pointer("/site/walks", i) + "/minutes",
                        stationName(walk.from) + QStringLiteral(" – ") + stationName(walk.to),
                        Kind::Minutes, inMinutes(walk.time), event::kWalkMinutes.low,
                        event::kWalkMinutes.high,
                        [i](double v) {
                            return site([i, v](event::Site& s, const Event&) {
                                s.walks.at(i).time = fromMinutes(v);
                            });
                        })
                .stepBy = 0.5;
        }
    }

    void arrival() {
        const auto& arrival = draft.site.arrival;
        Field& agreed = list.choice(
            "/site#agreed", tr("When may the crew come?"), false, [](const std::string& key) {
                return site([key](event::Site& s, const Event& e) {
                    using std::chrono::hours;
                    s.arrival.reset();
                    if (key == "agreed")
                        s.arrival = ZonedInstant{e.serve.at - hours(2), e.serve.offset};
                });
            });
        FieldList::option(agreed, "free", tr("As late as it can"), !arrival);
        FieldList::option(agreed, "agreed", tr("An agreed time"), arrival.has_value());
        if (!arrival) return;
        Field& before = list.number(
            "/site/arrival", tr("Before the bell"), Kind::Minutes,
            inMinutes(draft.serve.at - arrival->at), 1, 24 * 60, [](double v) {
                return site([v](event::Site& s, const Event& e) {
                    s.arrival = ZonedInstant{e.serve.at - fromMinutes(v), e.serve.offset};
                });
            });
        before.stepBy = 5;
        before.row.note = tr("The crew arrives at %1.").arg(list.words.clock(arrival->at));
    }

    void crew() {
        for (std::size_t i = 0; i < draft.crew.size(); ++i) {
            const event::Person& person = draft.crew[i];
            QStringList skills;
            for (const auto& skill : person.skills)
                skills << skillName(skill);
            list.go(QStringLiteral("person:") + toText(person.id.text()), toText(person.name),
                    skills.join(QStringLiteral(", ")), pointer("/crew", i));
        }
        list.note(QStringLiteral("crew"), tr("From 1 to 8 people."), "/crew");
        Field& more =
            list.act(QStringLiteral("person"), tr("One person more"), tr("Add"), [](Event e) {
                event::Person person;
                person.name = std::to_string(e.crew.size() + 1);
                for (const auto& skill : e.skills)
                    if (skill.id.text() == "general" || e.skills.size() == 1)
                        person.skills.push_back(skill.id);
                return event::withPerson(std::move(e), std::move(person));
            });
        more.path = "/crew";
    }

    void person(const PersonId& id) {
        const auto at = std::find_if(draft.crew.begin(), draft.crew.end(),
                                     [&](const auto& p) { return p.id == id; });
        if (at == draft.crew.end()) return;
        const std::string path =
            pointer("/crew", static_cast<std::size_t>(at - draft.crew.begin()));
        const event::Person& person = *at;
        list.text(path + "/name", tr("Name"), toText(person.name),
                  [person](const std::string& text) -> app::Edit {
                      return [person = person, text](Event e) mutable {
                          person.name = text;
                          return event::withPerson(std::move(e), person);
                      };
                  });
        Field& skills = list.choice(path + "/skills", tr("What this person can do"), true,
                                    [person](const std::string& key) -> app::Edit {
                                        return [person = person, key](Event e) mutable {
                                            const SkillId skill(key);
                                            if (std::erase(person.skills, skill) == 0)
                                                person.skills.push_back(skill);
                                            return event::withPerson(std::move(e), person);
                                        };
                                    });
        for (const auto& skill : draft.skills)
            FieldList::option(skills, skill.id.text(), list.words.name(skill.name),
                              std::count(person.skills.begin(), person.skills.end(), skill.id) > 0);
        list.removal(
            tr("Take out of the crew"),
            [id](Event e) { return event::withoutPerson(std::move(e), id); },
            QStringLiteral("crew"));
    }

    [[nodiscard]] QString stationName(const StationId& id) const {
        for (const auto& station : draft.site.stations)
            if (station.id == id) return list.words.name(station.name);
        return toText(id.text());
    }
    [[nodiscard]] QString skillName(const SkillId& id) const {
        for (const auto& skill : draft.skills)
            if (skill.id == id) return list.words.name(skill.name);
        return toText(id.text());
    }

    FieldList& list;
    const Event& draft;
};

void addWhen(FieldList& list) {
    EventFields(list).when();
}
void addGuests(FieldList& list) {
    EventFields(list).guests();
}
void addSite(FieldList& list) {
    EventFields(list).where();
    addStations(list);
}
void addCrew(FieldList& list) {
    EventFields(list).crew();
    addSkills(list);
}
void addPerson(FieldList& list, const PersonId& id) {
    EventFields(list).person(id);
}

}  // namespace cinder::face
