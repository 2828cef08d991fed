// What calls, as rows (row_maker.h).

#include "row_maker.h"

namespace cinder::face {

bool isCalling(const live::Timer& timer, const app::Snapshot& day) {
    if (!timer.isRinging(day.now)) return false;
    if (timer.dish) return true;
    const app::TaskCard* const card = findCard(day, timer.task);
    return card != nullptr && (isOpen(*card) || timer.kind == live::TimerKind::RestOver);
}

AlarmRow RowMaker::foodCall(const live::Timer& timer, const app::Snapshot& day) const {
    AlarmRow row;
    row.key = toText(timer.name);
    row.call = Words::call(timer.kind);
    for (const auto& card : day.food.pans)
        if (card.pan.dish == *timer.dish) row.title = words_.name(card.dish);
    if (timer.pan.value_or(0) > 0) row.title = tr("%1, pan %2").arg(row.title).arg(*timer.pan);
    if (timer.count.value_or(1) > 1)
        row.title = tr("%1 and %2 more").arg(row.title).arg(*timer.count - 1);
    row.overdue = Words::countdown(day.now - timer.due);
    row.icon = QStringLiteral("caution");
    row.board = timer.occasion == live::TimerOccasion::CheckAtFire ? QStringLiteral("fire")
                                                                   : QStringLiteral("buffet");
    row.actVerb = tr("Measure");
    row.act = QStringLiteral("measure");
    if (timer.occasion == live::TimerOccasion::NextPan) {
        row.call = tr("Start the next pan");
        row.icon = QStringLiteral("table");
        row.actVerb = tr("To the line");
    } else if (timer.occasion == live::TimerOccasion::Discard) {
        row.call = tr("Discard it now");
        row.actVerb = tr("To the record");
    }
    return row;
}

std::vector<AlarmRow> RowMaker::ringing(const app::Snapshot& day) const {
    std::vector<AlarmRow> rows;
    for (const auto& timer : day.timers) {
        if (!isCalling(timer, day)) continue;
        if (timer.dish) {
            rows.push_back(foodCall(timer, day));
            continue;
        }
        const auto* card = findCard(day, timer.task);  // there, or it would not call
        AlarmRow row;
        row.key = toText(timer.name);
        row.task = toText(timer.task.text());
        row.call = Words::call(timer.kind);
        row.title = words_.title(*card);
        row.overdue = Words::countdown(day.now - timer.due);
        row.board = isAtFire(card->kind) ? QStringLiteral("fire") : QStringLiteral("buffet");
        for (const auto& person : card->people)
            row.people << toText(person.text());
        switch (timer.kind) {
            case live::TimerKind::Turn:
                row.icon = QStringLiteral("turn");
                row.actVerb = RowMaker::tr("Turned");
                row.act = QStringLiteral("turn");
                break;
            case live::TimerKind::Pull:
                row.icon = QStringLiteral("pull");
                row.actVerb = RowMaker::tr("Pulled");
                row.act = QStringLiteral("finish");
                break;
            case live::TimerKind::StartNow:
                row.icon = iconOf(card->kind);
                row.actVerb =
                    card->state == app::TaskState::Ready ? Words::startVerb(card->kind) : QString();
                row.act = QStringLiteral("start");
                break;
            case live::TimerKind::RestOver:
                row.icon = QStringLiteral("rest");
                break;
            case live::TimerKind::Check:
                row.icon = QStringLiteral("caution");
                break;
        }
        rows.push_back(row);
    }
    return rows;
}

}  // namespace cinder::face
