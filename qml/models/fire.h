#pragma once

/// The fire as the Fire board shows it: the grates to scale, the batches on them, and the sheet of
/// what was touched. Part of the day; every touch goes through its door and into the journal.

#include <functional>

#include <QtQml/qqmlregistration.h>
#include <QObject>

#include "fire_door.h"
#include "fire_words.h"
#include "number_entry.h"

namespace cinder::face {

class Settings;

/// One piece on its sheet. Compared whole, so that nothing is told twice.
struct PieceFace {
    Q_GADGET
    QML_VALUE_TYPE(pieceFace)
    Q_PROPERTY(QString title MEMBER title)
    Q_PROPERTY(QString dish MEMBER dish)
    Q_PROPERTY(QString kind MEMBER kind)
    Q_PROPERTY(int studs MEMBER studs)
    Q_PROPERTY(QString state MEMBER state)
    Q_PROPERTY(QString mark MEMBER mark)
    Q_PROPERTY(QString time MEMBER time)
    Q_PROPERTY(QString band MEMBER band)
    Q_PROPERTY(QString target MEMBER target)
    Q_PROPERTY(QString minimum MEMBER minimum)
    Q_PROPERTY(QString source MEMBER source)
    Q_PROPERTY(QString warning MEMBER warning)
    Q_PROPERTY(QString peak MEMBER peak)
    Q_PROPERTY(QString reading MEMBER reading)
    Q_PROPERTY(QString roast MEMBER roast)
    Q_PROPERTY(QString roastWarning MEMBER roastWarning)
    Q_PROPERTY(cinder::face::ChartFace core MEMBER core)
    Q_PROPERTY(QString turning MEMBER turning)
    Q_PROPERTY(QString missing MEMBER missing)
    Q_PROPERTY(QString moveVerb MEMBER moveVerb)
    Q_PROPERTY(QString pullVerb MEMBER pullVerb)
    Q_PROPERTY(bool isDue MEMBER isDue)
    Q_PROPERTY(bool canTouch MEMBER canTouch)

  public:
    QString title, dish, kind, state, mark, time, band, target, minimum, source, warning, peak;
    QString reading, roast, roastWarning, turning, missing, moveVerb, pullVerb;
    ChartFace core;
    int studs = 0;
    bool isDue = false, canTouch = false;
    friend bool operator==(const PieceFace&, const PieceFace&) = default;
};

class Fire : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Part of the day")
    /// "" while no sheet is open; "piece", "several", "probe", "start", "hand" or "coal".
    Q_PROPERTY(QString sheet READ sheet NOTIFY sheetChanged)
    Q_PROPERTY(QString sheetTitle READ sheetTitle NOTIFY sheetChanged)
    Q_PROPERTY(cinder::face::PieceFace piece READ piece NOTIFY pieceChanged)
    Q_PROPERTY(cinder::face::NumberEntry* pad READ pad CONSTANT)
    Q_PROPERTY(cinder::face::RowList* grates READ grates CONSTANT)
    Q_PROPERTY(cinder::face::RowList* batches READ batches CONSTANT)
    Q_PROPERTY(cinder::face::RowList* pans READ pans CONSTANT)
    /// For whoever stands at a grate with something on it.
    Q_PROPERTY(QString thermometerCaution READ thermometerCaution NOTIFY mapChanged)
    Q_PROPERTY(QString greaseCaution READ greaseCaution NOTIFY mapChanged)
    /// The pieces among which the sheet "several" lets choose, and what its great touch does.
    Q_PROPERTY(cinder::face::RowList* choices READ choices CONSTANT)
    Q_PROPERTY(QString severalVerb READ severalVerb NOTIFY severalChanged)
    Q_PROPERTY(bool canPullSeveral READ canPullSeveral NOTIFY severalChanged)

  public:
    /// Shows what became of a touch; true when it was taken.
    using Take = std::function<bool(const Taken&)>;
    /// All must outlive this.
    Fire(FireDoor& door, const Settings& settings, const Words& words, Take take);

    void show(std::shared_ptr<const app::Snapshot> day);

    [[nodiscard]] QString sheet() const { return sheet_; }
    [[nodiscard]] QString sheetTitle() const;
    [[nodiscard]] const PieceFace& piece() const { return piece_; }
    [[nodiscard]] NumberEntry* pad() { return &pad_; }
    [[nodiscard]] RowList* grates() { return &grates_; }
    [[nodiscard]] RowList* batches() { return &batches_; }
    [[nodiscard]] RowList* pans() { return &pans_; }
    [[nodiscard]] QString thermometerCaution() const;
    [[nodiscard]] QString greaseCaution() const;
    [[nodiscard]] RowList* choices() { return &choices_; }
    [[nodiscard]] QString severalVerb() const { return severalVerb_; }
    [[nodiscard]] bool canPullSeveral() const { return !several_.empty(); }
    [[nodiscard]] const GrateRow* grate(const QString& key) const { return grates_.find(key); }

    /// The sheet of one piece, by its key.
    Q_INVOKABLE void openPiece(const QString& key);
    /// The next piece of the batch, or the one before, around its end.
    Q_INVOKABLE void step(int by);
    Q_INVOKABLE void askProbe();
    Q_INVOKABLE void askStart(const QString& task);
    /// So many seconds a palm bore the heat of this grate.
    Q_INVOKABLE void askHand(const QString& grate);
    /// So much coal was added.
    Q_INVOKABLE void askCoal(const QString& grate);
    /// Takes the number that stands on the pad, for whichever sheet asked for it.
    Q_INVOKABLE void noteNumber();
    Q_INVOKABLE void judge(bool isDone);
    Q_INVOKABLE void pull();
    /// The pieces of a batch, those that are due ticked.
    Q_INVOKABLE void openSeveral(const QString& task);
    /// Ticks a piece, or unticks it.
    Q_INVOKABLE void choose(const QString& key);
    /// All that are ticked, at once: one touch, one undo.
    Q_INVOKABLE void pullSeveral();
    /// To the cool side, or back over the coals.
    Q_INVOKABLE void move();
    /// One sheet back: from the pad to the piece, from there to the board.
    Q_INVOKABLE void back();
    Q_INVOKABLE void close();

  Q_SIGNALS:
    void sheetChanged();
    void pieceChanged();
    void severalChanged();
    /// The map is to be drawn anew.
    void mapChanged();

  private:
    [[nodiscard]] const app::BatchCard* batch() const;
    [[nodiscard]] const app::PieceCard* chosen() const;
    [[nodiscard]] PieceFace describePiece() const;
    /// Where the next piece of a dish goes: the pan that was filled last.
    [[nodiscard]] std::int32_t panFor(const app::BatchCard& batch) const;
    void retell();
    void retellSeveral();
    void ask(const QString& name, NumberEntry::Kind kind, double least, double most);
    void openSheet(const QString& name);

    FireDoor& door_;
    const Settings& settings_;
    const Words& words_;
    FireWords fireWords_{words_};
    Take take_;
    std::shared_ptr<const app::Snapshot> day_;
    QString sheet_;
    std::optional<TaskId> task_;
    std::optional<ResourceId> grate_;
    std::int32_t number_ = 0;
    std::set<std::int32_t> several_;
    QString severalVerb_;
    PieceFace piece_;
    NumberEntry pad_;
    ListOf<GrateRow> grates_;
    ListOf<FireBatchRow> batches_;
    ListOf<ShelfRow> pans_;
    ListOf<PieceChoiceRow> choices_;
};

}  // namespace cinder::face
