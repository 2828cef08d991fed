#pragma once

/// Making and changing an event by touch: the parts of the draft, the fields of the part that is
/// open, and what is still in the way of a plan. Every touch is an edit in the journal before it
/// shows; undo has no end but the beginning of the draft.

#include <map>
#include <vector>

#include <QtQml/qqmlregistration.h>
#include <QObject>

#include "devices.h"
#include "door.h"
#include "fields.h"
#include "library.h"
#include "planned_touch.h"

namespace cinder::face {

class Editor : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Given by the face")
    /// The event's name and when it is served.
    Q_PROPERTY(QString name READ name NOTIFY changed)
    Q_PROPERTY(QString when READ when NOTIFY changed)
    /// Where the editor is: "" is the list of parts; "guests", "dish:lamb", "step:lamb/rest",
    /// "method:3", …
    Q_PROPERTY(QString place READ place NOTIFY placeChanged)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QString part READ part NOTIFY placeChanged)
    Q_PROPERTY(cinder::face::RowList* parts READ parts CONSTANT)
    Q_PROPERTY(cinder::face::RowList* fields READ fields CONSTANT)
    /// What a new event may begin with.
    Q_PROPERTY(cinder::face::RowList* beginnings READ beginnings CONSTANT)
    /// Why nothing can be changed now, and what can be done instead; empty when it can.
    Q_PROPERTY(QString locked READ locked NOTIFY changed)
    Q_PROPERTY(bool canUndo READ canUndo NOTIFY changed)
    Q_PROPERTY(bool isWhole READ isWhole NOTIFY changed)
    /// A plan is being searched; nothing waits for it.
    Q_PROPERTY(bool isPlanning READ isPlanning NOTIFY changed)
    /// What is still in the way of a plan, or that nothing is.
    Q_PROPERTY(QString standing READ standing NOTIFY changed)
    Q_PROPERTY(QString refusal READ refusal NOTIFY changed)
    Q_PROPERTY(bool canWrite READ canWrite CONSTANT)
    /// Where the event was written to as a file.
    Q_PROPERTY(QString written READ written NOTIFY changed)

  public:
    /// The first three must outlive this; `files` may be null.
    Editor(Door& door, Settings& settings, EventFiles* files = nullptr,
           Library library = shippedLibrary(), QObject* parent = nullptr);

    [[nodiscard]] QString name() const { return name_; }
    [[nodiscard]] QString when() const { return when_; }
    [[nodiscard]] QString place() const { return place_; }
    [[nodiscard]] QString title() const { return title_; }
    [[nodiscard]] QString part() const;
    [[nodiscard]] RowList* parts() { return &parts_; }
    [[nodiscard]] RowList* fields() { return &fields_; }
    [[nodiscard]] RowList* beginnings() { return &beginnings_; }
    [[nodiscard]] QString locked() const { return locked_; }
    [[nodiscard]] bool canUndo() const { return canUndo_; }
    [[nodiscard]] bool isWhole() const { return isWhole_; }
    [[nodiscard]] bool isPlanning() const { return search_.isBusy(); }
    [[nodiscard]] QString standing() const { return standing_; }
    [[nodiscard]] QString refusal() const { return refusal_; }
    [[nodiscard]] bool canWrite() const { return files_ != nullptr; }
    [[nodiscard]] QString written() const { return written_; }
    /// Whether a number of this kind is typed in pounds, inches, quarts or degrees Fahrenheit
    /// first.
    Q_INVOKABLE [[nodiscard]] bool isCustomaryFor(int kind) const;

    /// Lists what a new event may begin with.
    Q_INVOKABLE void prepare();
    /// A new event from `beginning`, a key of `beginnings`; the editor opens on it.
    Q_INVOKABLE void begin(const QString& beginning);
    /// Opens the editor on the event that is open.
    Q_INVOKABLE void open();
    /// Everything anew: language or units changed.
    void retell() { tell(); }
    Q_INVOKABLE void go(const QString& place);
    /// Opens what wants work: the first part with a fault, or else the first; nothing when one is
    /// open.
    Q_INVOKABLE void goWhereNeeded();
    /// One place up; false when there is none.
    Q_INVOKABLE bool back();

    Q_INVOKABLE void step(const QString& field, int steps);
    /// In the base unit of the field. False, and said beside the field, when it is not taken.
    Q_INVOKABLE bool setNumber(const QString& field, double value);
    /// A text, or the key of a choice.
    Q_INVOKABLE bool setText(const QString& field, const QString& text);
    Q_INVOKABLE void act(const QString& field);
    Q_INVOKABLE void undo();
    /// The draft as one file, to be taken to another device.
    Q_INVOKABLE void writeFile();
    /// The draft becomes the event as soon as a plan is found for it, on a thread of its own;
    /// `planned` follows. Any change meanwhile ends the search.
    Q_INVOKABLE void plan();
    /// Waits for the search that runs; for tests.
    void settle() { search_.settle(); }

  Q_SIGNALS:
    void changed();
    void placeChanged();
    /// A new event is begun.
    void begun();
    void planned();

  private:
    [[nodiscard]] const Field* find(const QString& key) const;
    [[nodiscard]] std::vector<Field> fieldsOf(const event::Event& draft) const;
    bool take(const Field& field, const app::Edit& edit);
    bool readFile(const QString& name, app::NewEvent& wanted);
    void say(const app::Refusal& refusal, const QString& field);
    void tell();
    void tellParts(const event::Event& draft);
    void tellTitle(const event::Event& draft);
    [[nodiscard]] QString problemOf(const std::string& path, const event::Event& draft) const;
    [[nodiscard]] const std::vector<event::Dish>& cards() const;
    /// The one whose page is open; null on every other page.
    [[nodiscard]] const learn::MethodHistory* method() const;
    void readMethods();

    Door& door_;
    Settings& settings_;
    EventFiles* files_;
    Words words_;
    Library library_;
    mutable std::optional<std::vector<event::Dish>> cards_;
    std::vector<learn::MethodHistory> methods_;  ///< as they were when the library was opened
    std::map<QString, std::string> begins_;      ///< documents, by key
    QString name_, when_, place_, title_, standing_, refusal_, written_, locked_;
    bool canUndo_ = false, isWhole_ = false;
    event::Faults faults_;             ///< what stops the plan
    event::Faults lacking_;            ///< what stops a reckoning
    std::map<QString, QString> said_;  ///< why an edit was not taken, by field
    std::vector<Field> shown_;
    ListOf<PartRow> parts_, beginnings_;
    ListOf<FieldRow> fields_;
    SearchThread search_;  ///< last: nothing answers into what is gone
};

}  // namespace cinder::face
