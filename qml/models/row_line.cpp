// The set-up list of the line as a row of the Buffet board, and the rows of strike (row_maker.h).

#include <algorithm>
#include <tuple>

#include "row_maker.h"

namespace cinder::face {

TaskRow RowMaker::line(const app::Snapshot& day) {
    TaskRow row;
    row.key = QString::fromLatin1(kLineRow);
    row.name = row.title = RowMaker::tr("Line, in serving order");
    row.icon = QStringLiteral("table");
    row.isList = true;
    std::vector<LineRow> lines;
    int placed = 0;
    for (const app::StandCard& card : day.line) {
        LineRow one;
        one.key = toText(card.key);
        one.line = static_cast<int>(lines.size());
        one.text = QStringLiteral("%1 · %2").arg(lines.size() + 1).arg(words_.name(card.name));
        if (card.count > 1) one.text += QStringLiteral(" %1/%2").arg(card.number).arg(card.count);
        one.text += QStringLiteral(" · ") + RowMaker::tr("table %1").arg(card.table);
        if (card.isOnRiser) one.text += QStringLiteral(" · ") + RowMaker::tr("riser");
        one.isTicked = card.isPlaced;
        placed += card.isPlaced ? 1 : 0;
        lines.push_back(std::move(one));
    }
    const bool isDone = std::cmp_equal(placed, day.line.size());
    row.mark = isDone       ? QStringLiteral("done")
               : placed > 0 ? QStringLiteral("running")
                            : QStringLiteral("ready");
    row.state = isDone ? RowMaker::tr("All placed") : QString();
    row.awaited = RowMaker::tr("%1 of %2 placed").arg(placed).arg(day.line.size());
    row.startText = row.whenText = RowMaker::tr("plates first");
    auto& inner = lines_[TaskId(kLineRow)];
    if (!inner) inner = std::make_shared<ListOf<LineRow>>();
    inner->show(std::move(lines));
    row.lines = inner;
    return row;
}

std::vector<TaskRow> RowMaker::strike(const app::Snapshot& day) {
    std::vector<const app::TaskCard*> cards;
    for (const app::TaskCard& card : day.tasks)
        if (card.kind == plan::TaskKind::Strike) cards.push_back(&card);
    std::stable_sort(
        cards.begin(), cards.end(), [](const app::TaskCard* a, const app::TaskCard* b) {
            return std::tuple(!isOpen(*a), a->start) < std::tuple(!isOpen(*b), b->start);
        });
    return rowsOf(cards, day);
}

}  // namespace cinder::face
