#include "day.h"

#include <algorithm>
#include <cmath>

#include "cautions.h"
#include "settings.h"

namespace cinder::face {

namespace {
using std::chrono::minutes;
using std::chrono::seconds;
TaskId taskId(const QString& text) {
    return TaskId(text.toStdString());
}
/// How long before the first task a rehearsal begins.
constexpr Duration kRehearsalLead = minutes(5);
}  // namespace

Day::Day(Door& door, Settings& settings, QObject* parent)
    : QObject(parent),
      door_(door),
      settings_(settings),
      words_(settings),
      fire_(door.fire(), settings_, words_, [this](const Taken& taken) { return take(taken); }) {
    connect(&settings_, &Settings::changed, this, [this] { retell(); });
}

void Day::beat() {
    const bool wasOpen = isOpen();
    auto next = door_.look();
    const bool isSame = next == seen_;
    seen_ = std::move(next);
    if (seen_ && !isSame) {
        words_.setPlace(seen_->offset, seen_->serve);
        settings_.tellHour(
            static_cast<int>(std::chrono::floor<std::chrono::hours>(seen_->now.time_since_epoch() +
                                                                    minutes(seen_->offset))
                                 .count() %
                             24));
        showLists();
        showSeconds();
        if (auto line = headline(); !(line == line_)) {
            line_ = std::move(line);
            Q_EMIT lineChanged();
        }
    }
    if (wasOpen != isOpen()) Q_EMIT isOpenChanged();
    if (!isSame || wasOpen != isOpen()) Q_EMIT looked();
    if (ringing_.count() > 0 || isFlashOn_) {
        isFlashOn_ = ringing_.count() > 0 && !isFlashOn_;
        Q_EMIT flashed();
    }
}

void Day::retell() {
    seen_.reset();
    beat();
}

void Day::tellMute(bool isMute) {
    if (isMute_ == isMute) return;
    isMute_ = isMute;
    if (seen_) notices_.show(noticeRows());
}

void Day::tellDevices(const QString& words) {
    if (devices_ == words) return;
    devices_ = words;
    if (seen_) notices_.show(noticeRows());
}

void Day::tellBattery(std::optional<int> percentLeft) {
    // Low enough to look for a charger, early enough to find one.
    constexpr int kLow = 20;
    const QString words =
        percentLeft && *percentLeft <= kLow ? tr("Battery %1 %").arg(*percentLeft) : QString();
    if (words == battery_) return;
    battery_ = words;
    Q_EMIT batteryChanged();
}

void Day::showLists() {
    const auto& day = *seen_;
    grate_.show(maker_.onGrate(day));
    coals_.show(maker_.coals(day));
    rests_.show(maker_.rests(day));
    nextAtFire_.show(maker_.nextAtFire(day, 6));
    between_.show(maker_.between(day, 3));
    buffet_.show(maker_.buffet(day));
    all_.show(maker_.all(day));
    ahead_.show(maker_.ahead(day, 8));
    strike_.show(maker_.strike(day));
    people_.show(maker_.people(day));
    ringing_.show(maker_.ringing(day));
    notices_.show(noticeRows());
    wick_.show(day, words_);
    runSheet_.show(day, words_);
    fire_.show(seen_);
}

void Day::showSeconds() {
    const auto& day = *seen_;
    const auto left = Words::splitCountdown(day.serve - day.now).small;
    const auto wall = words_.clockWithSeconds(day.now);
    const auto undo = day.undo ? Words::countdown(day.undo->until - day.now) : QString();
    if (left == bellSeconds_ && wall == wallClock_ && undo == undoLeft_) return;
    bellSeconds_ = left;
    wallClock_ = wall;
    undoLeft_ = undo;
    Q_EMIT secondPassed();
}

Headline Day::headline() const {
    const auto& day = *seen_;
    Headline h;
    h.name = words_.name(day.name);
    h.isPastBell = day.now >= day.serve;
    h.bellLarge = Words::splitCountdown(day.serve - day.now).large;
    h.bellCaption = h.isPastBell ? tr("since the bell") : tr("to the bell");
    h.serveClock = words_.clock(day.serve);
    if (day.promisedServe != day.serve)
        h.promised = tr("promised %1").arg(words_.clock(day.promisedServe));
    h.fromBell = words_.fromBell(day.now);
    h.isLate = day.lateness >= seconds(30);
    h.isUnderWay = day.now >= day.arrival && day.ready && day.now < *day.ready;
    if (day.ready) {
        h.ready = tr("Ready %1").arg(words_.clock(*day.ready));
        h.spare = Words::spare(day.lateness);
    }
    const auto percent = [](double share) {
        return tr("%1 %").arg(static_cast<int>(std::floor(share * 100)));
    };
    if (day.onTime && !h.isPastBell) {
        h.chance = percent(*day.onTime);
        if (day.ready80) h.chanceReady = tr("8 days in 10 by %1").arg(words_.clock(*day.ready80));
        if (day.onTimeQuarterHourEarlier)
            h.chanceEarlier = tr("15 min earlier: %1").arg(percent(*day.onTimeQuarterHourEarlier));
    }
    h.readyMark = h.isLate ? QStringLiteral("late") : QStringLiteral("done");
    if (const auto* card = day.weakest ? findCard(day, *day.weakest) : nullptr) {
        h.weakest = words_.title(*card);
        h.weakestSlack = Words::slack(card->slack);
        h.weakestLatest =
            card->state == app::TaskState::Waiting || card->state == app::TaskState::Ready
                ? tr("latest start %1").arg(words_.clockAndBell(card->latestStart))
                : tr("ends %1").arg(words_.clockAndBell(card->finish));
    }
    h.isRehearsal = day.isRehearsal;
    h.isReadOnly = day.isReadOnly;
    h.speed = day.speed;
    if (day.isRehearsal) h.rehearsal = tr("Rehearsal %1×").arg(day.speed);
    int done = 0;
    for (const auto& row : buffet_.rows())
        done += row.mark == QLatin1String("done") ? 1 : 0;
    h.buffetProgress = tr("%1 of %2 done").arg(done).arg(buffet_.count());
    h.buffetDone = buffet_.count() > 0 ? static_cast<double>(done) / buffet_.count() : 0;
    if (day.undo && day.undo->until > day.now) h.undo = words_.undone(*day.undo, day);
    h.deference = deference();
    for (const auto& call : ringing_.rows()) {
        if (h.callBoard.isEmpty()) {
            h.callBoard = call.board;
            h.callText = call.call + QStringLiteral(": ") + call.title;
            h.callKey = call.key;
        }
        h.isCallMine = h.isCallMine || (!person_.isEmpty() && call.people.contains(person_));
    }
    return h;
}

std::vector<NoticeRow> Day::noticeRows() const {
    std::vector<NoticeRow> rows;
    for (const auto& notice : seen_->notices) {
        NoticeRow row;
        row.key = QStringLiteral("%1:%2")
                      .arg(static_cast<int>(notice.what))
                      .arg(notice.task ? toText(notice.task->text()) : QString());
        row.text = words_.notice(notice, *seen_);
        const bool isClock = notice.what == app::Notice::What::ClockJumped;
        row.icon = isClock ? QStringLiteral("clock") : QStringLiteral("caution");
        if (isClock) row.verb = tr("The clock is right now");
        rows.push_back(row);
    }
    if (!devices_.isEmpty())
        rows.push_back({QStringLiteral("devices"), devices_, QStringLiteral("devices"), {}});
    if (isMute_)
        rows.push_back({QStringLiteral("mute"),
                        tr("No sound on this device: calls flash the whole board."),
                        QStringLiteral("mute"),
                        {}});
    return rows;
}

void Day::setPerson(const QString& person) {
    if (person == person_) return;
    person_ = person;
    door_.setPerson(person.isEmpty() ? std::optional<PersonId>() : PersonId(person.toStdString()));
    Q_EMIT personChanged();
}

void Day::refuse(const QString& why) {
    if (why == refusal_) return;
    refusal_ = why;
    Q_EMIT refusalChanged();
}

void Day::dropRefusal() {
    refuse({});
}

bool Day::take(const Taken& taken) {
    refuse(taken ? QString() : Words::refusal(taken.error()));
    beat();
    Q_EMIT touched();
    return taken.has_value();
}

void Day::plan(SearchThread& thread, Ask ask, std::function<void()> whenDone) {
    carryOut(thread, door_, std::move(ask),
             [this, whenDone = std::move(whenDone)](const Taken& taken) {
                 if (!isLeft(taken)) take(taken);
                 whenDone();
             });
}

void Day::start(const QString& task) {
    take(door_.start(taskId(task)));
}
void Day::finish(const QString& task) {
    take(door_.finish(taskId(task)));
}
void Day::skip(const QString& task) {
    take(door_.skip(taskId(task)));
}
void Day::turn(const QString& task) {
    take(door_.turn(taskId(task)));
}
void Day::tick(const QString& task, int line) {
    if (task == QLatin1String(kLineRow)) return place(line);
    take(door_.tick(taskId(task), line));
}
void Day::place(int line) {
    const auto at = static_cast<std::size_t>(line);
    if (!seen_ || at >= seen_->line.size()) return;
    take(door_.lists().pack(seen_->line[at].key, journal::Packed::Where::Line, 1));
}
void Day::acknowledge(const QString& alarm) {
    take(door_.acknowledge(alarm.toStdString()));
}
void Day::undo() {
    take(door_.undo());
}
void Day::followClock() {
    take(door_.followClock());
}
void Day::replan() {
    planRest([this] { return door_.askToReplan(); });
}
void Day::bringBack(const QString& task) {
    planRest([this, id = taskId(task)] { return door_.askToBringBack(id); });
}
void Day::planRest(Ask ask) {
    if (isPlanning()) return;
    plan(search_, std::move(ask), [this] { Q_EMIT planningChanged(); });
    Q_EMIT planningChanged();
}
void Day::setSpeed(int speed) {
    take(door_.setRehearsalSpeed(speed));
}

void Day::moveServe(int byMinutes) {
    if (seen_) take(door_.moveServe(seen_->serve + minutes(byMinutes)));
}

void Day::act(const QString& deed, const QString& task) {
    if (deed == QLatin1String("turn"))
        turn(task);
    else if (deed == QLatin1String("finish"))
        finish(task);
    else if (deed == QLatin1String("start"))
        start(task);
}

void Day::follow(const QString& alarm) {
    if (!seen_) return;
    for (const auto& timer : seen_->timers) {
        if (toText(timer.name) != alarm || !timer.dish) continue;
        const QString dish = toText(timer.dish->text());
        const int pan = timer.pan.value_or(0);
        const bool isOfLine = timer.occasion == live::TimerOccasion::NextPan;
        take(door_.acknowledge(timer.name));
        if (isOfLine) {
            Q_EMIT serveAsked();
        } else {
            Q_EMIT recordAsked(dish, pan);
        }
        return;
    }
}

void Day::rehearse(int speed) {
    const auto made = door_.rehearse(speed, kRehearsalLead);
    take(made ? Taken() : Taken(fail(made.error())));
}

}  // namespace cinder::face
