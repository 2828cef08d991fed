// The library of methods: the cards that ship, and what the dishes of one's own events have become.

#include <algorithm>

#include "fields.h"
#include "report/style.h"

namespace cinder::face {

using event::Dish;
using event::Event;
using learn::MethodChange;
using learn::MethodHistory;
using learn::MethodVersion;

class LibraryFields {
    Q_DECLARE_TR_FUNCTIONS(cinder::face::LibraryFields)

  public:
    explicit LibraryFields(FieldList& fields) : list(fields) {
        style.language = list.words.language().toStdString();
    }

    /// Those that somebody changed, or wrote, or the days taught something about.
    void own(const std::vector<Dish>& cards, const std::vector<MethodHistory>& histories) {
        bool isFirst = true;
        for (std::size_t i = 0; i < histories.size(); ++i) {
            const MethodHistory& history = histories[i];
            const bool ships = std::any_of(cards.begin(), cards.end(), [&](const Dish& card) {
                return card.name == history.name;
            });
            if (ships && history.versions.size() < 2) continue;
            if (isFirst) list.heading(tr("From your events"));
            isFirst = false;
            const QString key = toText("method:" + std::to_string(i));
            Field& row =
                list.go(key, list.words.name(history.name),
                        history.versions.size() == 1 ? used(history)
                                                     : tr("%1; changed %2 times")
                                                           .arg(used(history))
                                                           .arg(history.versions.size() - 1),
                        "/menu#" + key.toStdString());
            if (history.versions.size() == 2)
                row.row.value = tr("%1; changed once").arg(used(history));
        }
    }

    void cards(const std::vector<Dish>& cards) {
        for (const auto& course : event::wordsOf(event::Course{})) {
            list.heading(ChoiceWords::of(course.value));
            for (const Dish& card : cards) {
                if (card.course != course.value) continue;
                Field& row =
                    add(toText("card:" + card.id.text()), list.words.name(card.name), card);
                row.row.note = allergens(card);
                const auto& menu = list.draft.menu;
                if (std::any_of(menu.begin(), menu.end(),
                                [&](const Dish& dish) { return dish.name == card.name; }))
                    row.row.value = tr("On the menu");
            }
        }
    }

    /// All versions of one dish, the newest first.
    void history(const MethodHistory& history) {
        int number = 0;
        for (const MethodVersion& version : history.versions) {
            const QString day = list.words.date(version.serve.at, version.serve.offset);
            const QString from = version.isLearnt ? tr("Learnt on %1").arg(day)
                                 : version.changes.empty() && &version == &history.versions.back()
                                     ? tr("As first cooked on %1").arg(day)
                                     : tr("As changed for %1").arg(day);
            Field& row = add(toText("version:" + std::to_string(number++)), from, version.dish);
            QStringList said;
            for (const MethodChange& change : version.changes)
                said << words(change);
            said << list.words.name(version.eventName);
            row.row.note = said.join(QStringLiteral(" · "));
        }
    }

  private:
    Field& add(const QString& key, const QString& name, const Dish& dish) {
        return list.act(key, name, tr("Add"),
                        [dish](Event e) { return event::withCard(std::move(e), dish); });
    }

    [[nodiscard]] QString used(const MethodHistory& history) const {
        const QString last = list.words.date(history.lastServe.at, history.lastServe.offset);
        return history.events == 1 ? tr("1 event, on %1").arg(last)
                                   : tr("%1 events, the last on %2").arg(history.events).arg(last);
    }

    [[nodiscard]] QString words(const MethodChange& change) const {
        switch (change.kind) {
            case MethodChange::Kind::Length:
                return tr("%1 %2, before %3")
                    .arg(list.words.name(change.step), Words::span(Duration{change.after}),
                         Words::span(Duration{change.before}));
            case MethodChange::Kind::Take:
                return tr("%1 of 100 take it, before %2").arg(change.after).arg(change.before);
            case MethodChange::Kind::Pull:
                if (change.after == 0) return tr("pulled by doneness");
                return tr("pulled at %1")
                    .arg(list.words.temperature(
                        Temperature::fromCelsius(static_cast<double>(change.after) / 1000)));
            case MethodChange::Kind::Steps:
                return tr("%1 steps, before %2").arg(change.after).arg(change.before);
        }
        return {};
    }

    [[nodiscard]] QString allergens(const Dish& dish) const {
        QStringList names;
        for (const auto allergen : dish.contains)
            names << toText(report::word(allergen, style));
        return names.isEmpty() ? QString()
                               : tr("Contains: %1").arg(names.join(QStringLiteral(", ")));
    }

    FieldList& list;
    report::Style style;
};

void addLibrary(FieldList& list, const std::vector<Dish>& cards,
                const std::vector<MethodHistory>& histories) {
    LibraryFields library(list);
    library.own(cards, histories);
    library.cards(cards);
}

void addMethod(FieldList& list, const MethodHistory& history) {
    LibraryFields(list).history(history);
}

}  // namespace cinder::face
