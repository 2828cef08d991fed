#include "words.h"

#include <algorithm>
#include <cstdlib>

#include <QDateTime>
#include <QLocale>

#include "settings.h"

namespace cinder::face {

namespace {

using std::chrono::ceil;
using std::chrono::floor;
using std::chrono::hours;
using std::chrono::minutes;
using std::chrono::round;
using std::chrono::seconds;

QDateTime wall(Instant at, UtcOffset offset) {
    return QDateTime::fromMSecsSinceEpoch(at.time_since_epoch().count(), Qt::OffsetFromUTC,
                                          static_cast<int>(seconds(offset).count()));
}

QString twoDigits(std::int64_t n) {
    return QStringLiteral("%1").arg(n, 2, 10, QLatin1Char('0'));
}

/// Whole seconds towards later: 0 means now, neither a moment before nor for a second after.
std::int64_t wholeSeconds(Duration left) {
    return std::abs(ceil<seconds>(left).count());
}

const app::TaskCard* cardOf(const app::Snapshot& day, const std::optional<TaskId>& id) {
    const auto at = std::find_if(day.tasks.begin(), day.tasks.end(),
                                 [&](const app::TaskCard& card) { return id && card.id == *id; });
    return at == day.tasks.end() ? nullptr : &*at;
}

}  // namespace

QString toText(const std::string& text) {
    return QString::fromStdString(text);
}

QString Words::clock(Instant at) const {
    return wall(at, offset_)
        .toString(settings_.isTwelveHour() ? QStringLiteral("h:mm ap") : QStringLiteral("H:mm"));
}

QString Words::clockWithSeconds(Instant at) const {
    return wall(at, offset_)
        .toString(settings_.isTwelveHour() ? QStringLiteral("h:mm:ss ap")
                                           : QStringLiteral("H:mm:ss"));
}

QString Words::fromBell(Instant at) const {
    if (at == bell_) return QStringLiteral("T");
    return toText(formatBellOffset(at - bell_)).replace(QLatin1Char('-'), QChar(0x2212));
}

QString Words::clockAndBell(Instant at) const {
    return clock(at) + QStringLiteral(" · ") + fromBell(at);
}

QString Words::countdown(Duration left) {
    const auto total = wholeSeconds(left);
    const auto h = total / 3600;
    const auto m = total / 60 % 60;
    const auto tail = QLatin1Char(':') + twoDigits(total % 60);
    return h > 0 ? QString::number(h) + QLatin1Char(':') + twoDigits(m) + tail
                 : QString::number(m) + tail;
}

QString TimeLeft::text() const {
    return unit.isEmpty() ? figure : figure + QChar(QChar::Nbsp) + unit;
}

TimeLeft Words::timeLeft(Duration left) {
    const auto total = wholeSeconds(left);
    const QString sign = left < Duration::zero() && total > 0 ? QStringLiteral("+") : QString();
    if (total < 600) return {sign + countdown(left), {}};
    if (total < 3600) return {sign + QString::number(total / 60), tr("min")};
    return {sign + QString::number(total / 3600) + QLatin1Char(':') + twoDigits(total / 60 % 60),
            tr("h")};
}

SplitTime Words::splitCountdown(Duration left) {
    const auto total = wholeSeconds(left);
    return {QString::number(total / 3600) + QLatin1Char(':') + twoDigits(total / 60 % 60),
            twoDigits(total % 60)};
}

QString Words::unbroken(QString text) {
    return text.replace(QLatin1Char(' '), QChar(QChar::Nbsp));
}

QString Words::span(Duration length) {
    const auto total = round<seconds>(std::chrono::abs(length)).count();
    if (total < 60) return unbroken(tr("%1 s").arg(total));
    const auto inMinutes = (total + 30) / 60;
    if (inMinutes < 60) return unbroken(tr("%1 min").arg(inMinutes));
    return unbroken(tr("%1 h %2 min").arg(inMinutes / 60).arg(twoDigits(inMinutes % 60)));
}

QString Words::spareSpan(Duration length) {
    const Duration whole = std::chrono::floor<std::chrono::minutes>(length);
    return span(whole > Duration::zero() ? whole : std::max(length, Duration::zero()));
}

QString Words::spare(Duration lateness) {
    if (std::chrono::abs(lateness) < seconds(30)) return tr("ready on the minute");
    return lateness > Duration::zero() ? tr("%1 late").arg(span(lateness))
                                       : tr("%1 spare").arg(spareSpan(-lateness));
}

QString Words::slack(Duration slack) {
    if (slack < Duration::zero()) return tr("%1 too late").arg(span(slack));
    if (slack < seconds(30)) return tr("no slack");
    return tr("%1 slack").arg(spareSpan(slack));
}

QString Words::date(Instant at, UtcOffset offset) const {
    const QLocale locale(settings_.language());
    return locale.toString(wall(at, offset).date(), settings_.language() == QLatin1String("es")
                                                        ? QStringLiteral("ddd d 'de' MMMM yyyy")
                                                        : QStringLiteral("ddd d MMMM yyyy"));
}

bool Words::isFahrenheit() const {
    return settings_.isFahrenheit();
}

QString Words::language() const {
    return settings_.language();
}

QString Words::name(const LocalText& text) const {
    const auto found = text.in(settings_.language().toStdString());
    return QString::fromUtf8(found.data(), static_cast<qsizetype>(found.size()));
}

QString Words::title(const app::TaskCard& card) const {
    QString text = name(card.name);
    if (card.dish && !text.contains(name(*card.dish), Qt::CaseInsensitive))
        text = name(*card.dish) + QStringLiteral(" · ") + text;
    if (const auto which = batch(card); !which.isEmpty()) text += QStringLiteral(" · ") + which;
    return text;
}

QString Words::batch(const app::TaskCard& card) {
    if (!card.batch || card.batchCount.value_or(1) < 2) return {};
    return tr("batch\u00a0%1\u00a0of\u00a0%2")
        .arg(*card.batch)
        .arg(card.batchCount.value_or(*card.batch));
}

QString Words::state(const app::TaskCard& card) {
    switch (card.state) {
        case app::TaskState::Waiting:
            return tr("Waits");
        case app::TaskState::Ready:
            return card.isLate ? tr("Late to begin") : tr("May begin");
        case app::TaskState::Running:
            return card.isLate ? tr("Running late") : tr("Running");
        case app::TaskState::Over:
            return tr("Time is up");
        case app::TaskState::Done:
            return tr("Done");
        case app::TaskState::Skipped:
            return tr("Left out");
    }
    return {};
}

QString Words::startVerb(plan::TaskKind kind) {
    using plan::TaskKind;
    switch (kind) {
        case TaskKind::Fire:
            return tr("Light it");
        case TaskKind::Cook:
        case TaskKind::Warm:
            return tr("Put on");
        case TaskKind::Rest:
            return tr("Let rest");
        case TaskKind::Serve:
            return tr("Open the line");
        default:
            return tr("Begin");
    }
}

QString Words::finishVerb(plan::TaskKind kind) {
    using plan::TaskKind;
    switch (kind) {
        case TaskKind::Fire:
            return tr("Coals are ready");
        case TaskKind::Cook:
        case TaskKind::Warm:
            return tr("Pull");
        case TaskKind::Rest:
            return tr("Rested");
        case TaskKind::Serve:
            return tr("Close the line");
        default:
            return tr("Done");
    }
}

QString Words::turn(const app::TaskCard& card) {
    if (card.turnCount == 0) return {};
    if (card.turnsDone >= card.turnCount)
        return card.turnCount == 1 ? tr("The turn is done")
                                   : tr("All %1 turns done").arg(card.turnCount);
    return tr("Turn %1 of %2").arg(card.turnsDone + 1).arg(card.turnCount);
}

QString Words::call(live::TimerKind kind) {
    switch (kind) {
        case live::TimerKind::Turn:
            return tr("Turn now");
        case live::TimerKind::Pull:
            return tr("Look and pull");
        case live::TimerKind::RestOver:
            return tr("Rested");
        case live::TimerKind::StartNow:
            return tr("Begin now");
        case live::TimerKind::Check:
            return tr("Take the temperature");
    }
    return {};
}

QString Words::undone(const app::UndoOffer& offer, const app::Snapshot& day) const {
    using What = app::UndoOffer::What;
    const auto* card = cardOf(day, offer.task);
    const QString subject = card != nullptr ? title(*card) : QString();
    switch (offer.what) {
        case What::Start:
            return tr("Begun: %1").arg(subject);
        case What::Finish:
            return tr("Done: %1").arg(subject);
        case What::Skip:
            return tr("Left out: %1").arg(subject);
        case What::LeaveOut:
            return tr("Left out: %1")
                .arg(card != nullptr && card->dish ? name(*card->dish) : subject);
        case What::Plan:
            return tr("Planned again");
        case What::Crew:
            return tr("Planned for those who are there");
        case What::Tick: {
            const auto line = static_cast<std::size_t>(std::max(1, offer.number.value_or(1)) - 1);
            if (card != nullptr && line < card->checklist.size())
                return tr("Ticked: %1").arg(name(card->checklist[line].text));
            return tr("Ticked: %1").arg(subject);
        }
        case What::Turn:
            return tr("Turn %1 noted: %2").arg(offer.number.value_or(1)).arg(subject);
        case What::Reading:
            return tr("Temperature noted: %1").arg(subject);
        case What::ServeTime:
            return tr("The bell was moved");
        case What::Acknowledge:
            return subject.isEmpty() ? tr("Call silenced") : tr("Call silenced: %1").arg(subject);
        case What::Undo:
            return tr("Taken back");
        case What::Lay:
            return tr("Laid on the grate: %1").arg(subject);
        case What::FireTest:
            return tr("The fire was tested");
        case What::PieceRead:
            return tr("Temperature of piece %1 noted: %2")
                .arg(offer.number.value_or(1))
                .arg(subject);
        case What::Judge:
            return tr("Piece %1 judged: %2").arg(offer.number.value_or(1)).arg(subject);
        case What::Pull:
            return tr("Pulled: %1").arg(subject);
        case What::Move:
            return tr("Moved on the grate: %1").arg(subject);
        case What::Coal:
            return tr("Coal was added");
        case What::Record:
            return tr("Written in the record");
        case What::Figure:
            return tr("Figure changed");
        case What::Guests:
            return tr("Guests changed");
        case What::LineOrder:
            return tr("Line rearranged");
        case What::Packed:
            return tr("Counted in the van");
        case What::Placed:
            return tr("Placed on the line");
        case What::Interrupted:
            return tr("Marked: %1").arg(subject);
        case What::Lesson:
            return tr("A lesson was answered");
        case What::Passed:
            if (offer.number.value_or(0) == 0) return tr("The first guest steps up");
            return tr("%1 guests are through").arg(*offer.number);
        case What::LastGuest:
            return tr("The last guest is through");
        case What::PanLevel:
            return tr("Level noted: %1 % left").arg(offer.number.value_or(0));
        case What::NextPan:
            return tr("Pan %1 is on the line").arg(offer.number.value_or(2));
    }
    return {};
}

QString Words::notice(const app::Notice& notice, const app::Snapshot& day) const {
    using What = app::Notice::What;
    const auto* card = cardOf(day, notice.task);
    switch (notice.what) {
        case What::ClockJumped:
            return tr("This device's clock was set by %1. Countdowns and the bell go on by the old "
                      "time: compare with a watch.")
                .arg(span(notice.amount));
        case What::ReadOnly:
            return tr("The journal cannot be written. Nothing is lost, nothing new is kept.");
        case What::DiskFull:
            return tr("The last touch could not be saved: the device is full. Free some space.");
        case What::OtherCrew:
            return tr(
                "The plan was made for others than are there now. Plan again, or leave out a "
                "dish first.");
        case What::MaximumLag:
            return tr("%1: %2 too long before what follows.")
                .arg(card != nullptr ? title(*card) : tr("A task"), span(notice.amount));
        case What::NewerVersion:
            return tr("Made by a newer Cinderbell: shown, not changed.");
    }
    return {};
}

QString Words::refusal(const app::Refusal& refusal) {
    using Why = app::Refusal::Why;
    switch (refusal.why) {
        case Why::NoEvent:
            return tr("No event is open. Open one first.");
        case Why::UnknownTask:
            return tr("The plan has changed; that task is no longer on it.");
        case Why::NotNow:
            return tr("That is not open just now; nothing was noted.");
        case Why::ReadOnly:
            if (refusal.storage)
                return tr(
                    "The journal cannot be written: the disk is full or write-protected. "
                    "Everything can be looked at; free some space and start again.");
            return tr("This event can be looked at, not changed.");
        case Why::NotSaved:
            return notSaved(refusal);
        case Why::BadEvent:
            return tr("The event file cannot be used: %1").arg(toText(refusal.detail));
        case Why::Overtaken:
            return tr(
                "Something else was noted while the plan was made. Touch again to plan with it.");
        case Why::AskFirst:
            return tr(
                "First answer for the fire: extinguisher, clear ground, open air. Tick or skip "
                "each on the Fire board.");
        case Why::NobodyCan:
            return tr("Nobody there could do what is still to be done.");
        case Why::BadCopy:
            return tr("This copy cannot be taken back; nothing was changed. Choose another one. "
                      "(%1)")
                .arg(toText(refusal.detail));
        case Why::HasBegun:
            return tr(
                "The day has begun, and the event stays as it is. Move the bell on the Lead "
                "board, change who is there under Crew, figures and guests under Lists; when "
                "it gets late, leave out a dish under Promise.");
        case Why::IsRehearsal:
            return tr(
                "This is a rehearsal: it is played, not changed. Open the event itself to "
                "change it.");
        case Why::NoPlan:
            if (refusal.detail.empty())
                return tr("No plan was found. Leave out a dish, move the bell, or go on as it is.");
            return tr("No plan keeps this promise: %1").arg(toText(refusal.detail));
    }
    return {};
}

QString markOf(app::TaskState state) {
    switch (state) {
        case app::TaskState::Waiting:
            return QStringLiteral("waiting");
        case app::TaskState::Ready:
            return QStringLiteral("ready");
        case app::TaskState::Running:
            return QStringLiteral("running");
        case app::TaskState::Over:
            return QStringLiteral("over");
        case app::TaskState::Done:
            return QStringLiteral("done");
        case app::TaskState::Skipped:
            return QStringLiteral("skipped");
    }
    return {};
}

}  // namespace cinder::face
