#pragma once

/// The fields of an event as the editor offers them: finished words for the screen, and beside each
/// what a touch on it does to the draft.

#include <functional>
#include <string>
#include <vector>

#include <QCoreApplication>
#include <QString>
#include <QStringList>

#include "app/session.h"
#include "base/units.h"
#include "event/range.h"
#include "event/words.h"
#include "number_entry.h"
#include "row_list.h"
#include "safety/limits.h"
#include "words.h"

namespace cinder::face {

/// One line of the editor. `kind` decides its face: "heading", "note", "number", "text", "choice"
/// (one of a few), "many" (any of a few), "go" (leads to a place) or "act" (does something).
struct FieldRow {
    QString key;
    QString kind;
    QString name;
    QString value;
    QString note;
    QString problem;  ///< what is wrong and the remedy
    QString verb;     ///< on the button of "act"
    QStringList keys, words, chosen;
    int numberKind = 0;  ///< NumberEntry::Kind
    double number = 0, least = 0, most = 0;
    bool canLess = false, canMore = false;
    bool isRemoval = false;
    static const std::vector<Role<FieldRow>>& roles();
    friend bool operator==(const FieldRow&, const FieldRow&) = default;
};

/// A part of the event, or something a new event may begin with.
struct PartRow {
    QString key;
    QString name;
    QString note;
    bool isFaulty = false;
    static const std::vector<Role<PartRow>>& roles();
    friend bool operator==(const PartRow&, const PartRow&) = default;
};

struct Field {
    FieldRow row;
    std::string path;  ///< JSON Pointer of what it shows
    double stepBy = 1;
    std::function<app::Edit(double)> number;
    /// What was typed, or the key of the choice that was touched.
    std::function<app::Edit(const std::string&)> text;
    app::Edit act;
    QString target;  ///< the place it leads to, also after `act`
};

/// Collects the fields of one place.
class FieldList {
    Q_DECLARE_TR_FUNCTIONS(cinder::face::FieldList)

  public:
    /// `limitsInForce` of food: the published ones or a local authority's stricter ones.
    FieldList(const event::Event& theDraft, const Words& theWords, bool usesCustomary,
              safety::Limits limitsInForce)
        : draft(theDraft),
          words(theWords),
          isCustomary(usesCustomary),
          limits(std::move(limitsInForce)) {}

    template <class T>
    using Limits = event::Range<T>;
    using Kind = NumberEntry::Kind;

    void heading(const QString& text);
    void note(const QString& key, const QString& text, const std::string& path = {});
    /// `value` and the limits in the base unit of `kind`.
    Field& number(const std::string& path, const QString& name, Kind kind, double value,
                  double least, double most, std::function<app::Edit(double)> set);
    Field& text(const std::string& path, const QString& name, const QString& value,
                std::function<app::Edit(const std::string&)> set);
    /// One of a few; `isMany`: any of them.
    Field& choice(const std::string& path, const QString& name, bool isMany,
                  std::function<app::Edit(const std::string&)> set);
    static void option(Field& field, std::string_view key, const QString& word, bool isChosen);
    Field& go(const QString& target, const QString& name, const QString& value,
              const std::string& path);
    Field& act(const QString& key, const QString& name, const QString& verb, app::Edit edit);
    /// One of several things, by name.
    Field& takeOut(const QString& key, const QString& name, app::Edit edit);
    /// All that the page shows.
    Field& removal(const QString& name, app::Edit edit, const QString& backTo);

    [[nodiscard]] QString measure(Kind kind, double value) const;
    [[nodiscard]] static QString sizeText(const FieldList& list, Length length, Length width);

    const event::Event& draft;
    const Words& words;
    bool isCustomary;
    safety::Limits limits;
    std::vector<Field> fields;
};

// --- the places, by section (fields_event.cpp, fields_menu.cpp, fields_step.cpp) ---
void addWhen(FieldList& list);
void addGuests(FieldList& list);
void addSite(FieldList& list);
void addCrew(FieldList& list);
void addSkills(FieldList& list);
void addStations(FieldList& list);
void addPerson(FieldList& list, const PersonId& id);
void addKit(FieldList& list);
void addKitItem(FieldList& list, const ResourceId& id);
void addMenu(FieldList& list);
void addDish(FieldList& list, const DishId& id);
void addPieces(FieldList& list, const DishId& dish);
void addIngredients(FieldList& list, const DishId& dish);
void addStep(FieldList& list, const DishId& dish, const StepId& id);
/// What the step could wait for and does not yet.
void addOthers(FieldList& list, const DishId& dish, const StepId& id);
/// The library of method cards, and what the dishes of past events have become.
void addLibrary(FieldList& list, const std::vector<event::Dish>& cards,
                const std::vector<learn::MethodHistory>& histories);
void addMethod(FieldList& list, const learn::MethodHistory& history);

/// What is wrong with a field and what to do about it, in the language of this device.
class FaultWords {
    Q_DECLARE_TR_FUNCTIONS(cinder::face::FaultWords)

  public:
    [[nodiscard]] static QString say(const event::Fault& fault, const event::Event& draft,
                                     const Words& words);
    /// "Lamb leg · Rest": what the pointer leads to.
    [[nodiscard]] static QString place(const std::string& path, const event::Event& draft,
                                       const Words& words);

  private:
    [[nodiscard]] static QString contradiction(const event::Fault& fault, const event::Event& draft,
                                               const Words& words);
};

/// The words of the choices an event offers.
class ChoiceWords {
    Q_DECLARE_TR_FUNCTIONS(cinder::face::ChoiceWords)

  public:
    [[nodiscard]] static QString of(event::Course course);
    [[nodiscard]] static QString of(event::Food food);
    [[nodiscard]] static QString of(event::Meat meat);
    [[nodiscard]] static QString of(event::Doneness doneness);
    [[nodiscard]] static QString of(event::StepKind kind);
    [[nodiscard]] static QString of(event::HandsMode mode);
    [[nodiscard]] static QString of(event::EquipmentKind kind);
    [[nodiscard]] static QString of(event::PanSize size);
    [[nodiscard]] static QString of(event::PanDepth depth);
};

inline std::string pointer(const std::string& path, std::size_t index) {
    return path + "/" + std::to_string(index);
}
inline double inMinutes(Duration time) {
    return static_cast<double>(time.count()) / 60000.0;
}
inline Duration fromMinutes(double minutes) {
    return Duration{static_cast<std::int64_t>(minutes * 60000.0)};
}

}  // namespace cinder::face
