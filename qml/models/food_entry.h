#pragma once

/// One entry of the food-safety record while it is made: what is measured, of which pan, with what,
/// the number as it is typed, and, when it is out of limit, what is done about it.

#include <memory>
#include <optional>

#include <QtQml/qqmlregistration.h>
#include <QObject>

#include "food_door.h"
#include "food_rows.h"
#include "food_words.h"
#include "number_entry.h"

namespace cinder::face {

/// What the entry sheet says now. Compared whole, so that nothing is told twice.
struct Asking {
    Q_GADGET
    QML_VALUE_TYPE(asking)
    /// "" while the sheet is closed; "keys", "choose" or "act".
    Q_PROPERTY(QString step MEMBER step)
    Q_PROPERTY(QString title MEMBER title)
    /// "Held hot", and the figure it is held against: "135 °F or above".
    Q_PROPERTY(QString purpose MEMBER purpose)
    Q_PROPERTY(QString limit MEMBER limit)
    Q_PROPERTY(QString pan MEMBER pan)
    Q_PROPERTY(QString thermometer MEMBER thermometer)
    /// Over the choices: "Which pan?".
    Q_PROPERTY(QString question MEMBER question)
    /// What was found out of limit.
    Q_PROPERTY(QString finding MEMBER finding)
    Q_PROPERTY(QString refusal MEMBER refusal)
    Q_PROPERTY(bool hasPan MEMBER hasPan)
    Q_PROPERTY(bool hasThermometer MEMBER hasThermometer)
    Q_PROPERTY(bool hasPurpose MEMBER hasPurpose)
    Q_PROPERTY(bool mayClose MEMBER mayClose)
    /// What is taken back now is this reading, and nothing else that was touched.
    Q_PROPERTY(bool isOwnUndo MEMBER isOwnUndo)
    /// Whether none of the choices need fit: it may be said in one's own words.
    Q_PROPERTY(bool takesWords MEMBER takesWords)

  public:
    QString step, title, purpose, limit, pan, thermometer, question, finding, refusal;
    bool hasPan = true, hasThermometer = true, hasPurpose = true, mayClose = true,
         isOwnUndo = false, takesWords = false;
    friend bool operator==(const Asking&, const Asking&) = default;
};

class FoodEntry : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Given by the record")
    Q_PROPERTY(cinder::face::Asking ask READ ask NOTIFY asked)
    Q_PROPERTY(cinder::face::NumberEntry* number READ number CONSTANT)
    Q_PROPERTY(cinder::face::RowList* choices READ choices CONSTANT)

  public:
    /// All must outlive this.
    FoodEntry(FoodDoor& door, Settings& settings, const FoodWords& words,
              QObject* parent = nullptr);

    [[nodiscard]] const Asking& ask() const { return ask_; }
    [[nodiscard]] NumberEntry* number() { return &number_; }
    [[nodiscard]] RowList* choices() { return &choices_; }

    /// The day as it is now; null while none is open.
    void show(std::shared_ptr<const app::Snapshot> day);

    // --- what opens the sheet ---
    /// The keys for a check, by its name.
    Q_INVOKABLE void measureCheck(const QString& check);
    /// What can be done with a pan, by its key.
    Q_INVOKABLE void openPan(const QString& pan);
    /// What may be done about the first reading out of limit of a pan; nothing when it has none.
    Q_INVOKABLE void answer(const QString& pan);
    Q_INVOKABLE void correct(const QString& entry);
    /// The ice point of a thermometer; empty: the one used last.
    Q_INVOKABLE void testThermometer(const QString& thermometer);

    /// The keys for a limit a local authority makes stricter; a looser one cannot be typed.
    Q_INVOKABLE void makeStricter(const QString& limit);

    // --- on the sheet ---
    Q_INVOKABLE void askPan();
    Q_INVOKABLE void askPurpose();
    Q_INVOKABLE void askThermometer();
    Q_INVOKABLE void choose(const QString& key);
    /// Whose rule it is, or why something is corrected, in words of one's own.
    Q_INVOKABLE void sayInWords(const QString& words);
    Q_INVOKABLE void save();
    /// Back to the keys from a choice, else away; refused while a reading waits for its action.
    Q_INVOKABLE void close();
    /// Away whatever it shows: a call is answered first, the record keeps asking.
    Q_INVOKABLE void leave();

  Q_SIGNALS:
    void asked();
    /// Something was written down.
    void noted();

  private:
    enum class Mode { Measure, Leave, IcePoint, Correct, Rule };
    enum class Step {
        Closed,
        Keys,
        Pans,
        Origins,
        Purposes,
        Thermometers,
        Scale,
        Held,
        Reasons,
        Deeds,
        Act
    };

    void begin(Mode mode);
    void go(Step step);
    void tell();
    [[nodiscard]] Asking asking() const;
    void sayLimit(Asking& ask) const;
    [[nodiscard]] std::vector<ChoiceRow> rows() const;
    [[nodiscard]] std::vector<ChoiceRow> panRows() const;
    [[nodiscard]] std::vector<ChoiceRow> purposeRows() const;
    /// The pans of the dish a new one may be filled out of, the most endangered first.
    [[nodiscard]] std::vector<const app::FoodPanCard*> origins() const;
    [[nodiscard]] std::vector<ChoiceRow> originRows() const;
    [[nodiscard]] std::vector<ChoiceRow> scaleRows() const;
    [[nodiscard]] std::vector<ChoiceRow> heldRows() const;
    [[nodiscard]] std::vector<ChoiceRow> deedRows() const;
    void take(const Taken& taken);
    void doDeed(const QString& deed);
    void settle();
    [[nodiscard]] const app::FoodPanCard* card() const;
    [[nodiscard]] std::vector<safety::TimeRule> rulesToLeaveBy() const;
    void choosePan(const safety::Pan& pan);
    void dropWhatDoesNotFit();
    [[nodiscard]] safety::Pan panToRead(const safety::PlannedCheck& check) const;
    /// The reading out of limit that the sheet is about.
    [[nodiscard]] const safety::OpenReading* open() const;
    [[nodiscard]] safety::Reading typed() const;
    /// The same digits on the other scale, when they may well have been read there: what is far
    /// below freezing, or nearly boils. Nothing when there is no doubt.
    [[nodiscard]] std::optional<safety::Reading> otherScale() const;
    void writeOrAskHeld();
    /// The published row that would make the typed reading enough; null when none is asked for.
    [[nodiscard]] std::optional<safety::CookRow> rowToKeep() const;
    [[nodiscard]] safety::LocalRules stricter(const std::string& authority) const;
    [[nodiscard]] Taken write(const std::string& reason, std::optional<Duration> held = {});

    FoodDoor& door_;
    Settings& settings_;
    const FoodWords& words_;
    std::shared_ptr<const app::Snapshot> day_;
    NumberEntry number_;
    ListOf<ChoiceRow> choices_;
    Asking ask_;
    Mode mode_ = Mode::Measure;
    Step step_ = Step::Closed;
    safety::Pan pan_;
    std::optional<std::int32_t> from_;  ///< the pan a new one is filled out of
    safety::Purpose purpose_ = safety::Purpose::HoldHot;
    safety::TimeRule rule_ = safety::TimeRule::Hot;
    safety::EntryId entry_;
    /// Said when the scale was asked after; instead of what the keys show.
    std::optional<safety::Reading> meant_;
    std::string limit_;  ///< the field of the limit that is made stricter
    safety::ThermometerId thermometer_{"probe-1"};
    QString refusal_;
};

/// "stew#1": how QML calls a pan.
[[nodiscard]] QString keyOf(const safety::Pan& pan);
[[nodiscard]] safety::Pan panOf(const QString& key);
[[nodiscard]] QString keyOf(const safety::EntryId& entry);
[[nodiscard]] safety::EntryId entryOf(const QString& key);

}  // namespace cinder::face
