#pragma once

/// From a snapshot to the rows of every board: which task is shown where, in what order, saying
/// what. What is true of a task was decided in the core; here it only gets its words and place.

#include <map>
#include <vector>

#include "rows.h"
#include "words.h"

namespace cinder::face {

class RowMaker {
    Q_DECLARE_TR_FUNCTIONS(cinder::face::RowMaker)

  public:
    explicit RowMaker(const Words& words) : words_(words) {}

    /// Tasks on the grate now, the one that needs hands soonest first.
    [[nodiscard]] std::vector<TaskRow> onGrate(const app::Snapshot& day);
    /// Fires lit, or to be lit next.
    [[nodiscard]] std::vector<TaskRow> coals(const app::Snapshot& day);
    [[nodiscard]] std::vector<TaskRow> rests(const app::Snapshot& day);
    /// What comes to the fire next, not yet begun, by start; at most `most`.
    [[nodiscard]] std::vector<TaskRow> nextAtFire(const app::Snapshot& day, std::size_t most);
    /// Set-up and cold work that fits before the grate next needs hands; at most `most`.
    [[nodiscard]] std::vector<TaskRow> between(const app::Snapshot& day, std::size_t most);
    /// Everything for the buffet, station by station, finished work last within its station.
    [[nodiscard]] std::vector<TaskRow> buffet(const app::Snapshot& day);
    /// The first `most` that have not begun, by when they do.
    [[nodiscard]] std::vector<TaskRow> ahead(const app::Snapshot& day, std::size_t most);
    [[nodiscard]] std::vector<TaskRow> all(const app::Snapshot& day);
    /// What is to be done after the line has closed: open ones by start, then those that are over.
    [[nodiscard]] std::vector<TaskRow> strike(const app::Snapshot& day);
    [[nodiscard]] std::vector<PersonRow> people(const app::Snapshot& day) const;
    [[nodiscard]] std::vector<AlarmRow> ringing(const app::Snapshot& day) const;

    [[nodiscard]] TaskRow task(const app::TaskCard& card, const app::Snapshot& day);
    /// When the grate next needs hands; nothing while nothing is on it.
    [[nodiscard]] static std::optional<Instant> nextAtGrate(const app::Snapshot& day);

  private:
    /// The line as it is laid out, vessel by vessel, to be ticked as each is placed.
    [[nodiscard]] TaskRow line(const app::Snapshot& day);
    /// A call of the food-safety record, which has no task.
    [[nodiscard]] AlarmRow foodCall(const live::Timer& timer, const app::Snapshot& day) const;
    [[nodiscard]] std::vector<TaskRow> rowsOf(const std::vector<const app::TaskCard*>& cards,
                                              const app::Snapshot& day);

    const Words& words_;
    /// One inner list for each task, kept so that a tick changes a line and not the plate.
    std::map<TaskId, std::shared_ptr<ListOf<LineRow>>> lines_;
};

/// The row of the Buffet board that is no task: the set-up list of the line.
inline constexpr const char* kLineRow = "line";

[[nodiscard]] const app::TaskCard* findCard(const app::Snapshot& day, const TaskId& id);
[[nodiscard]] bool isOpen(const app::TaskCard& card);
/// The grill cook's work.
[[nodiscard]] bool isAtFire(plan::TaskKind kind);
/// The name of its drawing.
[[nodiscard]] QString iconOf(plan::TaskKind kind);
/// Rings now and is still owed an answer: of the record, of a task that is not over, or of a rest
/// that has ended by itself and waits for somebody to go on with it.
[[nodiscard]] bool isCalling(const live::Timer& timer, const app::Snapshot& day);

}  // namespace cinder::face
