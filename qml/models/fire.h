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
    Q_PROPERTY(QString missing MEMBER missing)
    Q_PROPERTY(QString moveVerb MEMBER moveVerb)
    Q_PROPERTY(QString pullVerb MEMBER pullVerb)
    Q_PROPERTY(bool isDue MEMBER isDue)
    Q_PROPERTY(bool canTouch MEMBER canTouch)

  public:
    QString title, dish, kind, state, mark, time, band, target, minimum, source, warning, peak;
    QString reading, missing, moveVerb, pullVerb;
    int studs = 0;
    bool isDue = false, canTouch = false;
    friend bool operator==(const PieceFace&, const PieceFace&) = default;
};

class Fire : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Part of the day")
    /// "" while no sheet is open; "piece", "probe", "start", "hand" or "coal".
    Q_PROPERTY(QString sheet READ sheet NOTIFY sheetChanged)
    Q_PROPERTY(QString sheetTitle READ sheetTitle NOTIFY sheetChanged)
    Q_PROPERTY(cinder::face::PieceFace piece READ piece NOTIFY pieceChanged)
    Q_PROPERTY(cinder::face::NumberEntry* pad READ pad CONSTANT)
    Q_PROPERTY(cinder::face::RowList* grates READ grates CONSTANT)
    Q_PROPERTY(cinder::face::RowList* batches READ batches CONSTANT)

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
    /// To the cool side, or back over the coals.
    Q_INVOKABLE void move();
    /// One sheet back: from the pad to the piece, from there to the board.
    Q_INVOKABLE void back();
    Q_INVOKABLE void close();

  Q_SIGNALS:
    void sheetChanged();
    void pieceChanged();
    /// The map is to be drawn anew.
    void mapChanged();

  private:
    [[nodiscard]] const app::BatchCard* batch() const;
    [[nodiscard]] const app::PieceCard* chosen() const;
    [[nodiscard]] PieceFace describePiece() const;
    /// Where the next piece of a dish goes: the pan that was filled last.
    [[nodiscard]] std::int32_t panFor(const app::BatchCard& batch) const;
    void retell();
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
    PieceFace piece_;
    NumberEntry pad_;
    ListOf<GrateRow> grates_;
    ListOf<FireBatchRow> batches_;
};

}  // namespace cinder::face
