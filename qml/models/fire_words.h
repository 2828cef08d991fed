#pragma once

/// The words and rows of the Fire board, from the fire cards of the snapshot. QML only places them.
///
/// **No forecast says safe**: wherever a time to pull is told, the published minimum stands beside.

#include <map>
#include <set>

#include <QCoreApplication>

#include "app/snapshot.h"
#include "fire_rows.h"
#include "words.h"

namespace cinder::face {

/// "task#number", how a piece is called between the models and QML.
[[nodiscard]] QString pieceKey(const TaskId& task, std::int32_t number);

class FireWords {
    Q_DECLARE_TR_FUNCTIONS(cinder::face::FireWords)

  public:
    /// `words` must outlive this.
    explicit FireWords(const Words& words) : words_(words) {}

    /// Grates with what lies on them; `chosen` is the key of the piece whose sheet is open.
    [[nodiscard]] std::vector<GrateRow> grates(const app::Snapshot& day, const QString& chosen);
    /// Batches that lie on a grate.
    [[nodiscard]] std::vector<FireBatchRow> batches(const app::Snapshot& day);

    /// The pieces of a batch that lie on the grate; `chosen` are ticked.
    [[nodiscard]] std::vector<PieceChoiceRow> choices(const app::BatchCard& batch,
                                                      const std::set<std::int32_t>& chosen) const;
    [[nodiscard]] std::vector<ShelfRow> shelf(const app::Snapshot& day) const;

    // --- words of one piece or batch ---
    [[nodiscard]] static QString state(app::PieceState state);
    /// The shape of a state, as StateMark knows it.
    [[nodiscard]] static QString mark(app::PieceState state);
    /// "Piece 3 of 8".
    [[nodiscard]] static QString title(const app::BatchCard& batch, const app::PieceCard& piece);
    /// "thick, 96 mm"; empty when the dish has one class without a name and a thickness.
    [[nodiscard]] QString className(const app::BatchCard& batch, std::int32_t kind) const;
    /// 1 for the thinnest class; 0 when there is only one.
    [[nodiscard]] static int studs(const app::BatchCard& batch, std::int32_t kind);
    /// "12 min", "now"; empty when nothing is known.
    [[nodiscard]] static QString toPull(const app::PieceCard& piece);
    /// "8 times in 10 between 9 min and 16 min".
    [[nodiscard]] static QString band(const cook::Band<Duration>& band);
    [[nodiscard]] QString target(const app::BatchCard& batch) const;
    [[nodiscard]] QString minimum(const app::BatchCard& batch) const;
    [[nodiscard]] static QString warning(const app::BatchCard& batch);
    [[nodiscard]] QString peak(const app::PieceCard& piece) const;
    [[nodiscard]] QString reading(const app::PieceCard& piece) const;
    /// What the readings have done by the published roast table; empty under two of them.
    [[nodiscard]] QString roast(const app::PieceCard& piece) const;
    /// cook::kLethalityWarning in the language and unit of this device.
    [[nodiscard]] QString roastWarning(const app::PieceCard& piece) const;
    /// What another turning interval would do to this piece's class; empty without a forecast.
    [[nodiscard]] static QString turning(const app::BatchCard& batch, const app::PieceCard& piece);
    [[nodiscard]] static QString missing(const app::BatchCard& batch);
    /// Why the model cannot go by what was told.
    [[nodiscard]] static QString refused(const app::BatchCard& batch);
    [[nodiscard]] QString title(const app::BatchCard& batch, const app::Snapshot& day) const;

  private:
    [[nodiscard]] PieceRow piece(const app::BatchCard& batch, const app::PieceCard& card,
                                 const app::GrateCard& grate, const QString& chosen) const;
    void tellCoals(GrateRow& row, const app::CoalCard& coal) const;
    [[nodiscard]] std::vector<ClassRow> classes(const app::BatchCard& batch) const;

    const Words& words_;
    std::map<std::string, std::shared_ptr<ListOf<PieceRow>>> pieces_;
    std::map<std::string, std::shared_ptr<ListOf<ClassRow>>> classes_;
};

}  // namespace cinder::face
