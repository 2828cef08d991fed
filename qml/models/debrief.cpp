#include "debrief.h"

#include <algorithm>

#include "roles.h"
#include "settings.h"

namespace cinder::face {

namespace {

using std::chrono::minutes;

/// The stretch of the day the picture shows, relative to the bell.
struct Stretch {
    Duration begin{0};
    Duration end{0};
    [[nodiscard]] double at(Duration when) const { return share(when - begin); }
    [[nodiscard]] double share(Duration length) const {
        const auto all = static_cast<double>((end - begin).count());
        return all > 0 ? static_cast<double>(length.count()) / all : 0;
    }
};

Stretch stretchOf(const app::Debrief& debrief) {
    Stretch stretch;
    for (const app::TaskReview& review : debrief.tasks) {
        const learn::Actual& one = review.actual;
        stretch.begin = std::min({stretch.begin, one.plannedStart, one.actualStart});
        stretch.end = std::max({stretch.end, one.plannedStart + one.plannedLength,
                                one.actualStart + one.actualLength});
    }
    return stretch;
}

/// As many lines as a phone can show with their words.
std::vector<HourRow> axisOf(const Stretch& stretch, const Words& words, Instant bell) {
    minutes step{15};
    while ((stretch.end - stretch.begin) / step > 6)
        step *= 2;
    std::vector<HourRow> rows;
    const auto first = (stretch.begin / step) * step;
    for (Duration at = first; at <= stretch.end; at += step) {
        if (at < stretch.begin) continue;
        rows.push_back({QString::number(at.count()), words.clock(bell + at), stretch.at(at),
                        at == Duration{0}});
    }
    return rows;
}

QString lengthDifference(const learn::Actual& one) {
    const Duration more = one.actualLength - one.plannedLength;
    if (std::chrono::abs(more) < minutes{1}) return Debrief::tr("as planned");
    return more > Duration{0} ? Debrief::tr("%1 longer").arg(Words::span(more))
                              : Debrief::tr("%1 shorter").arg(Words::span(-more));
}

ReviewRow rowOf(const app::TaskReview& review, const Stretch& stretch, const Words& words,
                Instant bell) {
    const learn::Actual& one = review.actual;
    ReviewRow row;
    row.key = toText(one.task.text());
    row.name = words.name(one.name);
    if (one.batch) row.name = Debrief::tr("%1, batch\u00a0%2").arg(row.name).arg(*one.batch);
    row.planned = Debrief::tr("planned %1, %2")
                      .arg(words.clock(bell + one.plannedStart), Words::span(one.plannedLength));
    row.actual = Debrief::tr("was %1, %2")
                     .arg(words.clock(bell + one.actualStart), Words::span(one.actualLength));
    row.difference = lengthDifference(one);
    row.plannedAt = stretch.at(one.plannedStart);
    row.plannedShare = stretch.share(one.plannedLength);
    row.actualAt = stretch.at(one.actualStart);
    row.actualShare = stretch.share(one.actualLength);
    row.isInterrupted = review.isInterrupted;
    if (review.isInterrupted)
        row.remark = Debrief::tr("Something came between: it does not count.");
    else if (one.isSuspect)
        row.remark = Debrief::tr("Far from the plan. Did something come between?");
    row.verb = review.isInterrupted ? Debrief::tr("It counts") : Debrief::tr("Interrupted");
    return row;
}

}  // namespace

const std::vector<Role<ReviewRow>>& ReviewRow::roles() {
    static const std::vector<Role<ReviewRow>> all{
        CINDER_ROLE(ReviewRow, key),          CINDER_ROLE(ReviewRow, name),
        CINDER_ROLE(ReviewRow, planned),      CINDER_ROLE(ReviewRow, actual),
        CINDER_ROLE(ReviewRow, difference),   CINDER_ROLE(ReviewRow, plannedAt),
        CINDER_ROLE(ReviewRow, plannedShare), CINDER_ROLE(ReviewRow, actualAt),
        CINDER_ROLE(ReviewRow, actualShare),  CINDER_ROLE(ReviewRow, isInterrupted),
        CINDER_ROLE(ReviewRow, remark),       CINDER_ROLE(ReviewRow, verb),
    };
    return all;
}

const std::vector<Role<HourRow>>& HourRow::roles() {
    static const std::vector<Role<HourRow>> all{
        CINDER_ROLE(HourRow, key),
        CINDER_ROLE(HourRow, label),
        CINDER_ROLE(HourRow, at),
        CINDER_ROLE(HourRow, isBell),
    };
    return all;
}

const std::vector<Role<LessonRow>>& LessonRow::roles() {
    static const std::vector<Role<LessonRow>> all{
        CINDER_ROLE(LessonRow, key),       CINDER_ROLE(LessonRow, name),
        CINDER_ROLE(LessonRow, text),      CINDER_ROLE(LessonRow, support),
        CINDER_ROLE(LessonRow, answer),    CINDER_ROLE(LessonRow, isAccepted),
        CINDER_ROLE(LessonRow, isIgnored),
    };
    return all;
}

Debrief::Debrief(Door& door, Settings& settings, QObject* parent)
    : QObject(parent), door_(door), words_(settings) {}

LessonRow Debrief::lesson(const app::LessonCard& card, const Words& words) {
    LessonRow row;
    row.key = toText(card.figure);
    row.name = words.name(card.name);
    if (card.kind == app::LessonCard::Kind::Length) {
        const auto span = [](std::int64_t ms) { return Words::span(Duration{ms}); };
        row.text =
            tr("Planned %1, learnt %2 (8 times in 10: %3 to %4)")
                .arg(span(card.planned), span(card.learned), span(card.low), span(card.high));
    } else {
        row.text = tr("Taken by %1 of 100 guests as planned, by %2 as learnt (8 times in 10: "
                      "%3 to %4)")
                       .arg(card.planned)
                       .arg(card.learned)
                       .arg(card.low)
                       .arg(card.high);
    }
    row.support = card.events == 1 ? tr("from 1 event") : tr("from %1 events").arg(card.events);
    if (card.interrupted > 0)
        row.support += QStringLiteral(", ") + tr("%1 left out").arg(card.interrupted);
    row.isAccepted = card.answer == app::LessonCard::Answer::Accepted;
    row.isIgnored = card.answer == app::LessonCard::Answer::Ignored;
    if (row.isAccepted) row.answer = tr("Goes into the next event made from this one");
    if (row.isIgnored) row.answer = tr("Left as planned");
    return row;
}

void Debrief::tell(const app::Debrief& debrief, const app::Snapshot& day) {
    words_.setPlace(day.offset, day.serve);
    const Stretch stretch = stretchOf(debrief);
    std::vector<ReviewRow> tasks;
    tasks.reserve(debrief.tasks.size());
    for (const app::TaskReview& review : debrief.tasks)
        tasks.push_back(rowOf(review, stretch, words_, day.serve));
    std::vector<LessonRow> lessons;
    lessons.reserve(debrief.lessons.size());
    for (const app::LessonCard& card : debrief.lessons)
        lessons.push_back(lesson(card, words_));
    summary_ = tasks.empty()
                   ? tr("Nothing was begun and finished yet: there is nothing to compare.")
                   : tr("Begun and finished: %1 tasks").arg(tasks.size());
    if (debrief.isRehearsal)
        basis_ = tr("This was a rehearsal. It can be looked at, and teaches nothing.");
    else if (lessons.empty())
        basis_ = tr("Nothing differs enough from the plan to be worth a change.");
    else
        basis_ =
            tr("Events looked at: %1. Before any event the plan is believed right to a quarter; "
               "each event draws the figure a little.")
                .arg(debrief.events);
    QStringList pans;
    for (const app::PanUse& use : debrief.pans)
        pans << tr("%1: %2 of %3 pans").arg(words_.name(use.dish)).arg(use.used).arg(use.planned);
    pans_ = pans.join(QStringLiteral(" · "));
    canAnswer_ = !day.isReadOnly && !debrief.isRehearsal;
    axis_.show(tasks.empty() ? std::vector<HourRow>{} : axisOf(stretch, words_, day.serve));
    tasks_.show(std::move(tasks));
    lessons_.show(std::move(lessons));
}

void Debrief::look() {
    const auto day = door_.look();
    const auto debrief = door_.debrief();
    if (day && debrief) {
        tell(*debrief, *day);
    } else {
        tasks_.show({});
        axis_.show({});
        lessons_.show({});
        summary_ = debrief ? QString() : Words::refusal(debrief.error());
    }
    Q_EMIT changed();
}

void Debrief::take(const Taken& taken) {
    refusal_ = taken ? QString() : Words::refusal(taken.error());
    if (taken) Q_EMIT noted();
    look();
}

void Debrief::mark(const QString& task) {
    const ReviewRow* row = tasks_.find(task);
    if (row != nullptr)
        take(door_.markInterrupted(TaskId(task.toStdString()), !row->isInterrupted));
}

void Debrief::accept(const QString& figure) {
    take(door_.answerLesson(figure.toStdString(), true));
}

void Debrief::ignore(const QString& figure) {
    take(door_.answerLesson(figure.toStdString(), false));
}

}  // namespace cinder::face
