#include "row_maker.h"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "cautions.h"

namespace cinder::face {

namespace {

using app::TaskCard;
using app::TaskState;
using plan::TaskKind;

bool isOneOf(TaskKind kind, std::initializer_list<TaskKind> kinds) {
    return std::find(kinds.begin(), kinds.end(), kind) != kinds.end();
}
bool isOnHeat(const TaskCard& card) {
    return isOneOf(card.kind, {TaskKind::Cook, TaskKind::Warm});
}
bool isGoing(const TaskCard& card) {
    return card.state == TaskState::Running || card.state == TaskState::Over;
}
bool isToCome(const TaskCard& card) {
    return card.state == TaskState::Waiting || card.state == TaskState::Ready;
}

/// The next moment this task needs somebody, and what for.
struct Await {
    Instant at;
    QString what;
};

Await awaited(const TaskCard& card) {
    switch (card.state) {
        case TaskState::Waiting:
        case TaskState::Ready:
            return {card.isLate ? card.plannedStart : card.start, RowMaker::tr("until start")};
        case TaskState::Running:
            if (card.nextTurn && card.turnsDone < card.turnCount)
                return {*card.nextTurn, RowMaker::tr("to turn %1").arg(card.turnsDone + 1)};
            if (isOnHeat(card)) return {card.finish, RowMaker::tr("to pull")};
            return {card.finish,
                    card.kind == TaskKind::Rest ? RowMaker::tr("of rest") : RowMaker::tr("to go")};
        case TaskState::Over:
            return {card.finish,
                    isOnHeat(card) ? RowMaker::tr("pull") : RowMaker::tr("time is up")};
        default:
            return {card.finish, RowMaker::tr("done")};
    }
}

double progressOf(const TaskCard& card, Instant now) {
    if (card.state == TaskState::Done) return 1;
    if (!isGoing(card) || card.finish <= card.start) return 0;
    const double gone = static_cast<double>((now - card.start).count()) /
                        static_cast<double>((card.finish - card.start).count());
    // In steps: a bar that moves less than a pixel need not be drawn again.
    return std::clamp(std::floor(gone * 200) / 200, 0.0, 1.0);
}

std::vector<const TaskCard*> pick(const app::Snapshot& day, bool (*wanted)(const TaskCard&)) {
    std::vector<const TaskCard*> found;
    for (const auto& card : day.tasks)
        if (wanted(card)) found.push_back(&card);
    return found;
}

void byAwaited(std::vector<const TaskCard*>& cards) {
    std::stable_sort(cards.begin(), cards.end(), [](const TaskCard* a, const TaskCard* b) {
        return awaited(*a).at < awaited(*b).at;
    });
}

QString namesOf(const TaskCard& card, const app::Snapshot& day) {
    QStringList names;
    for (const auto& id : card.people)
        for (const auto& person : day.people)
            if (person.id == id) names << toText(person.name);
    return names.join(QStringLiteral(", "));
}

}  // namespace

bool isAtFire(TaskKind kind) {
    return isOneOf(
        kind, {TaskKind::Fire, TaskKind::Cook, TaskKind::Warm, TaskKind::Rest, TaskKind::Slice});
}

QString iconOf(TaskKind kind) {
    switch (kind) {
        case TaskKind::Fire:
            return QStringLiteral("flame");
        case TaskKind::Cook:
        case TaskKind::Warm:
            return QStringLiteral("putOn");
        case TaskKind::Rest:
        case TaskKind::Hold:
            return QStringLiteral("rest");
        case TaskKind::Serve:
            return QStringLiteral("bell");
        default:
            return QStringLiteral("table");
    }
}

const TaskCard* findCard(const app::Snapshot& day, const TaskId& id) {
    const auto at = std::find_if(day.tasks.begin(), day.tasks.end(),
                                 [&](const TaskCard& card) { return card.id == id; });
    return at == day.tasks.end() ? nullptr : &*at;
}

bool isOpen(const TaskCard& card) {
    return isToCome(card) || isGoing(card);
}

TaskRow RowMaker::task(const TaskCard& card, const app::Snapshot& day) {
    TaskRow row;
    row.key = toText(card.id.text());
    row.name = words_.name(card.name);
    row.title = words_.title(card);
    row.batch = Words::batch(card);
    row.station = words_.name(card.stationName);
    row.people = namesOf(card, day);
    row.icon = iconOf(card.kind);
    row.mark = markOf(card.state);
    row.state = Words::state(card);
    row.isLate = card.isLate;
    row.isCritical = card.isCritical;
    row.slack = Words::slack(card.slack);
    row.startText = words_.clockAndBell(card.start);
    row.finishText = words_.clockAndBell(card.finish);
    row.whenText = isGoing(card) ? RowMaker::tr("ends %1").arg(row.finishText)
                                 : RowMaker::tr("starts %1").arg(row.startText);
    row.latestText = words_.clockAndBell(card.latestStart);
    const auto await = awaited(card);
    const Duration left = await.at - day.now;
    row.isDue = isOpen(card) && left <= Duration::zero();
    row.awaited =
        isToCome(card) && row.isDue && card.isLate ? RowMaker::tr("late to begin") : await.what;
    // What is left out has no moment, and nobody does it.
    const bool isOut = card.state == TaskState::Skipped;
    TimeLeft shown;
    if (isOpen(card))
        shown = Words::timeLeft(left);
    else if (!isOut)
        shown.figure = words_.clock(card.finish);
    row.countdown = shown.figure;
    row.unit = shown.unit;
    row.progress = progressOf(card, day.now);
    row.turnsDone = card.turnsDone;
    row.turnCount = card.turnCount;
    row.turnText = Words::turn(card);
    const bool mayTouch = !day.isReadOnly;
    row.canStart = mayTouch && card.state == TaskState::Ready;
    row.canFinish = mayTouch && isGoing(card);
    row.canTurn = mayTouch && isGoing(card) && card.turnsDone < card.turnCount;
    row.canSkip = mayTouch && isToCome(card);
    row.canComeBack = mayTouch && card.canComeBack;
    row.startVerb = Words::startVerb(card.kind);
    row.finishVerb = Words::finishVerb(card.kind);
    row.caution = cautionFor(card.kind, words_.language());

    auto& lines = lines_[card.id];
    if (!lines) lines = std::make_shared<ListOf<LineRow>>();
    std::vector<LineRow> next;
    int ticked = 0;
    for (std::size_t i = 0; i < card.checklist.size(); ++i) {
        const auto& line = card.checklist[i];
        const int number = static_cast<int>(i);
        next.push_back({QString::number(number), number, words_.name(line.text), line.isTicked});
        ticked += line.isTicked ? 1 : 0;
    }
    QStringList detail;
    if (!row.people.isEmpty() && !isOut) detail << row.people;
    if (!next.empty() && !isOut) detail << RowMaker::tr("%1 of %2").arg(ticked).arg(next.size());
    row.detail = detail.join(QStringLiteral(" · "));
    lines->show(std::move(next));
    row.lines = lines;
    return row;
}

std::vector<TaskRow> RowMaker::rowsOf(const std::vector<const TaskCard*>& cards,
                                      const app::Snapshot& day) {
    std::vector<TaskRow> rows;
    rows.reserve(cards.size());
    for (const auto* card : cards)
        rows.push_back(task(*card, day));
    return rows;
}

std::optional<Instant> RowMaker::nextAtGrate(const app::Snapshot& day) {
    std::optional<Instant> next;
    for (const auto& card : day.tasks)
        if (isOnHeat(card) && isGoing(card))
            next = std::min(next.value_or(awaited(card).at), awaited(card).at);
    return next;
}

std::vector<TaskRow> RowMaker::onGrate(const app::Snapshot& day) {
    auto cards = pick(day, [](const TaskCard& c) { return isOnHeat(c) && isGoing(c); });
    byAwaited(cards);
    return rowsOf(cards, day);
}

std::vector<TaskRow> RowMaker::coals(const app::Snapshot& day) {
    auto rows = rowsOf(
        pick(day, [](const TaskCard& c) { return c.kind == TaskKind::Fire && isOpen(c); }), day);
    // Said once; a caution on every plate is read on none.
    QString said;
    for (auto& row : rows) {
        if (row.caution == said)
            row.caution.clear();
        else
            said = row.caution;
    }
    return rows;
}

std::vector<TaskRow> RowMaker::rests(const app::Snapshot& day) {
    auto cards =
        pick(day, [](const TaskCard& c) { return c.kind == TaskKind::Rest && isGoing(c); });
    byAwaited(cards);
    return rowsOf(cards, day);
}

std::vector<TaskRow> RowMaker::nextAtFire(const app::Snapshot& day, std::size_t most) {
    auto cards = pick(day, [](const TaskCard& c) {
        return isToCome(c) && isOneOf(c.kind, {TaskKind::Cook, TaskKind::Warm, TaskKind::Rest,
                                               TaskKind::Slice, TaskKind::Finish});
    });
    byAwaited(cards);
    cards.resize(std::min(cards.size(), most));
    return rowsOf(cards, day);
}

std::vector<TaskRow> RowMaker::between(const app::Snapshot& day, std::size_t most) {
    const auto until = nextAtGrate(day);
    std::vector<TaskRow> rows;
    for (const auto* card : pick(day, [](const TaskCard& c) {
             return isOneOf(c.kind, {TaskKind::SetUp, TaskKind::Prep, TaskKind::Check}) &&
                    (c.state == TaskState::Ready || c.state == TaskState::Running);
         })) {
        const bool comesInPieces = !card->checklist.empty();
        const bool fits = !until || day.now + (card->finish - card->start) <= *until;
        if ((fits || comesInPieces) && rows.size() < most) rows.push_back(task(*card, day));
    }
    return rows;
}

std::vector<TaskRow> RowMaker::buffet(const app::Snapshot& day) {
    auto cards = pick(day, [](const TaskCard& c) {
        return isOneOf(c.kind,
                       {TaskKind::SetUp, TaskKind::Prep, TaskKind::Check, TaskKind::Load,
                        TaskKind::Hold, TaskKind::Finish, TaskKind::Serve, TaskKind::Strike});
    });
    // The station where work begins first stands first; what is over stands last of all.
    std::map<StationId, Instant> first;
    for (const auto* card : cards)
        if (isOpen(*card)) {
            const auto at = first.try_emplace(card->station, card->start).first;
            at->second = std::min(at->second, card->start);
        }
    std::stable_sort(cards.begin(), cards.end(), [&](const TaskCard* a, const TaskCard* b) {
        const auto rank = [&](const TaskCard* c) {
            return isOpen(*c) ? std::tuple(false, first[c->station], c->station, c->start)
                              : std::tuple(true, Instant{}, StationId{},
                                           Instant{} - (c->finish - Instant{}));
        };
        return rank(a) < rank(b);
    });
    std::vector<TaskRow> rows;
    QString above;
    // Before what is over; with it once every vessel is placed.
    const bool isLaid = std::all_of(day.line.begin(), day.line.end(),
                                    [](const app::StandCard& card) { return card.isPlaced; });
    bool isLineDue = !day.line.empty();
    const auto addLine = [&] {
        rows.push_back(line(day));
        const QString part = isLaid ? RowMaker::tr("Finished") : RowMaker::tr("Line");
        if (part != above) rows.back().heading = part;
        above = part;
        isLineDue = false;
    };
    for (const auto* card : cards) {
        if (isLineDue && !isOpen(*card)) addLine();
        rows.push_back(task(*card, day));
        const QString part = isOpen(*card) ? rows.back().station : RowMaker::tr("Finished");
        if (part != above) rows.back().heading = part;
        above = part;
    }
    if (isLineDue) addLine();
    return rows;
}

std::vector<TaskRow> RowMaker::ahead(const app::Snapshot& day, std::size_t most) {
    auto cards = pick(day, isToCome);
    std::stable_sort(cards.begin(), cards.end(),
                     [](const TaskCard* a, const TaskCard* b) { return a->start < b->start; });
    cards.resize(std::min(cards.size(), most));
    return rowsOf(cards, day);
}

std::vector<TaskRow> RowMaker::all(const app::Snapshot& day) {
    return rowsOf(pick(day, [](const TaskCard&) { return true; }), day);
}

std::vector<PersonRow> RowMaker::people(const app::Snapshot& day) const {
    std::vector<PersonRow> rows;
    for (const auto& person : day.people) {
        if (!person.isHere && !person.now && !person.next) continue;
        PersonRow row;
        row.key = toText(person.id.text());
        row.name = toText(person.name);
        if (!person.isHere) row.name = RowMaker::tr("%1, gone").arg(row.name);
        row.now = RowMaker::tr("Free hands");
        row.mark = QStringLiteral("waiting");
        if (const auto* card = person.now ? findCard(day, *person.now) : nullptr) {
            const auto await = awaited(*card);
            row.now = words_.title(*card);
            const Duration left = await.at - day.now;
            const TimeLeft shown = Words::timeLeft(left);
            row.awaited = await.what;
            row.countdown = shown.figure;
            row.unit = shown.unit;
            row.isDue = left <= Duration::zero();
            row.mark = markOf(card->state);
            row.isLate = card->isLate;
        }
        if (const auto* card = person.next ? findCard(day, *person.next) : nullptr) {
            row.next = words_.title(*card);
            row.nextAt = words_.clockAndBell(person.nextAt.value_or(card->start));
        }
        rows.push_back(row);
    }
    return rows;
}

}  // namespace cinder::face
