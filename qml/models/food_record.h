#pragma once

/// The food-safety record as its page shows it: checks to do, pans as they stand, forecasts apart,
/// and every entry.

#include <memory>

#include <QtQml/qqmlregistration.h>
#include <QObject>

#include "food_entry.h"

namespace cinder::face {

/// The few lines that stand alone on the page.
struct FoodTally {
    Q_GADGET
    QML_VALUE_TYPE(foodTally)
    /// "3 due", "nothing due before 12:05".
    Q_PROPERTY(QString due MEMBER due)
    Q_PROPERTY(QString done MEMBER done)
    /// What has to be answered first: "1 reading out of limit without an action"; else empty.
    Q_PROPERTY(QString owed MEMBER owed)
    /// The pan of it.
    Q_PROPERTY(QString owedPan MEMBER owedPan)
    Q_PROPERTY(QString authority MEMBER authority)
    Q_PROPERTY(QString whoDecides MEMBER whoDecides)
    Q_PROPERTY(int dueCount MEMBER dueCount)

  public:
    QString due, done, owed, owedPan, authority, whoDecides;
    int dueCount = 0;
    friend bool operator==(const FoodTally&, const FoodTally&) = default;
};

class FoodRecord : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Given by the face")
    Q_PROPERTY(cinder::face::FoodTally tally READ tally NOTIFY tallied)
    Q_PROPERTY(cinder::face::RowList* checks READ checks CONSTANT)
    Q_PROPERTY(cinder::face::RowList* pans READ pans CONSTANT)
    Q_PROPERTY(cinder::face::RowList* forecasts READ forecasts CONSTANT)
    Q_PROPERTY(cinder::face::RowList* entries READ entries CONSTANT)
    Q_PROPERTY(cinder::face::FoodEntry* entry READ entry CONSTANT)

  public:
    /// Both must outlive this.
    FoodRecord(FoodDoor& door, Settings& settings, QObject* parent = nullptr);

    /// The day as it is now; null while none is open.
    void show(const std::shared_ptr<const app::Snapshot>& day);

    [[nodiscard]] const FoodTally& tally() const { return tally_; }
    [[nodiscard]] RowList* checks() { return &checks_; }
    [[nodiscard]] RowList* pans() { return &pans_; }
    [[nodiscard]] RowList* forecasts() { return &forecasts_; }
    [[nodiscard]] RowList* entries() { return &entries_; }
    [[nodiscard]] FoodEntry* entry() { return &entry_; }

  Q_SIGNALS:
    void tallied();
    /// Something was written down: the boards look again.
    void noted();

  private:
    [[nodiscard]] std::vector<CheckRow> checkRows(const app::Snapshot& day) const;
    [[nodiscard]] std::vector<PanRow> panRows(const app::Snapshot& day) const;
    [[nodiscard]] PanRow panRow(const app::FoodPanCard& card, const app::Snapshot& day) const;
    [[nodiscard]] std::vector<ForecastRow> forecastRows(const app::Snapshot& day) const;
    [[nodiscard]] std::vector<EntryRow> entryRows(const app::Snapshot& day) const;
    [[nodiscard]] EntryRow entryRow(const safety::Entry& entry, const app::Snapshot& day) const;
    [[nodiscard]] FoodTally tallyOf(const app::Snapshot& day) const;

    Words words_;
    FoodWords food_;
    FoodEntry entry_;
    FoodTally tally_;
    ListOf<CheckRow> checks_;
    ListOf<PanRow> pans_;
    ListOf<ForecastRow> forecasts_;
    ListOf<EntryRow> entries_;
};

}  // namespace cinder::face
