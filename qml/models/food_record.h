#pragma once

/// The food-safety record as its page shows it: checks to do, pans as they stand, forecasts apart,
/// and every entry.

#include <memory>

#include <QtQml/qqmlregistration.h>
#include <QObject>

#include "food_closing.h"
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
    /// What the band on the buffet board says: the first check due there; empty while none is.
    Q_PROPERTY(QString band MEMBER band)
    Q_PROPERTY(QString bandCheck MEMBER bandCheck)
    /// A fire is still to be lit, and not everything is answered.
    Q_PROPERTY(bool asksFire MEMBER asksFire)

  public:
    QString due, done, owed, owedPan, authority, whoDecides, band, bandCheck;
    int dueCount = 0;
    bool asksFire = false;
    friend bool operator==(const FoodTally&, const FoodTally&) = default;
};

class FoodRecord : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Given by the face")
    Q_PROPERTY(cinder::face::FoodTally tally READ tally NOTIFY tallied)
    Q_PROPERTY(cinder::face::RowList* checks READ checks CONSTANT)
    /// Those due, or nearly, for who stands at the fire.
    Q_PROPERTY(cinder::face::RowList* dueAtFire READ dueAtFire CONSTANT)
    Q_PROPERTY(cinder::face::RowList* soonAtFire READ soonAtFire CONSTANT)
    Q_PROPERTY(cinder::face::RowList* fireItems READ fireItems CONSTANT)
    Q_PROPERTY(cinder::face::RowList* pans READ pans CONSTANT)
    Q_PROPERTY(cinder::face::RowList* forecasts READ forecasts CONSTANT)
    Q_PROPERTY(cinder::face::RowList* entries READ entries CONSTANT)
    Q_PROPERTY(cinder::face::FoodEntry* entry READ entry CONSTANT)
    /// Which part of the page is open: "checks", "pans", "entries" or "close".
    Q_PROPERTY(QString part READ part WRITE setPart NOTIFY parted)
    Q_PROPERTY(cinder::face::FoodClosing* closing READ closing CONSTANT)

  public:
    /// Both must outlive this.
    FoodRecord(FoodDoor& door, Settings& settings, QObject* parent = nullptr);

    /// The day as it is now; null while none is open.
    void show(const std::shared_ptr<const app::Snapshot>& day);

    [[nodiscard]] const FoodTally& tally() const { return tally_; }
    [[nodiscard]] RowList* checks() { return &checks_; }
    /// What whoever cooks must measure: at once, and before long.
    [[nodiscard]] RowList* dueAtFire() { return &dueAtFire_; }
    [[nodiscard]] RowList* soonAtFire() { return &soonAtFire_; }
    [[nodiscard]] RowList* fireItems() { return &fireItems_; }
    [[nodiscard]] RowList* pans() { return &pans_; }
    [[nodiscard]] RowList* forecasts() { return &forecasts_; }
    [[nodiscard]] RowList* entries() { return &entries_; }
    [[nodiscard]] const QString& part() const { return part_; }
    void setPart(const QString& part);
    [[nodiscard]] FoodClosing* closing() { return &closing_; }
    [[nodiscard]] FoodEntry* entry() { return &entry_; }

    Q_INVOKABLE void readyBeforeFire(const QString& item);
    Q_INVOKABLE void skipBeforeFire(const QString& item);
    /// A call leads here: the keys for the dish, or its pan.
    void answerCall(const QString& dish, int pan);

  Q_SIGNALS:
    /// Why a touch was not taken; empty when it was.
    void refused(const QString& why);
    void tallied();
    void parted();
    /// Something was written down: the boards look again.
    void noted();

  private:
    [[nodiscard]] std::vector<CheckRow> checkRows(const app::Snapshot& day) const;
    [[nodiscard]] static std::vector<FireRow> fireRows(const app::Snapshot& day);
    [[nodiscard]] std::vector<PanRow> panRows(const app::Snapshot& day) const;
    [[nodiscard]] PanRow panRow(const app::FoodPanCard& card, const app::Snapshot& day) const;
    [[nodiscard]] std::vector<ForecastRow> forecastRows(const app::Snapshot& day) const;
    [[nodiscard]] std::vector<EntryRow> entryRows(const app::Snapshot& day) const;
    [[nodiscard]] EntryRow entryRow(const safety::Entry& entry, const app::Snapshot& day) const;
    [[nodiscard]] FoodTally tallyOf(const app::Snapshot& day) const;

    void take(const Taken& taken);

    FoodDoor& door_;
    std::shared_ptr<const app::Snapshot> day_;
    Words words_;
    FoodWords food_;
    FoodEntry entry_;
    FoodClosing closing_;
    FoodTally tally_;
    QString part_ = QStringLiteral("checks");
    ListOf<CheckRow> checks_;
    ListOf<CheckRow> dueAtFire_;
    ListOf<CheckRow> soonAtFire_;
    ListOf<FireRow> fireItems_;
    ListOf<PanRow> pans_;
    ListOf<ForecastRow> forecasts_;
    ListOf<EntryRow> entries_;
};

}  // namespace cinder::face
