#include "live/outlook.h"

#include <algorithm>

#include "plan/risk.h"

namespace cinder::live {

namespace {

/// A task is not called late for less; crews do not live by the second. Our choice.
constexpr std::chrono::seconds kGrace{60};

std::size_t at(plan::TaskIndex index) {
    return static_cast<std::size_t>(index);
}

/// Before the crew is there nothing can begin, whatever the clock says.
Duration earliestWork(const RunSheet& sheet) {
    return sheet.problem.arrival.value_or(plan::firstStart(sheet.schedule));
}

/// The forecast length of a batch since its task began, while it is not over.
std::optional<cook::Band<Duration>> forecastLength(const Situation& s, std::size_t i) {
    if (!s.fire || s.progress[i].isOut()) return std::nullopt;
    const BatchForecast* batch = s.fire->find(s.sheet.problem.tasks[i].id);
    if (!batch || !batch->lasts) return std::nullopt;
    cook::Band<Duration> length = *batch->lasts;
    if (batch->laid && s.progress[i].started)
        for (Duration* one : {&length.low, &length.likely, &length.high})
            *one += *batch->laid - *s.progress[i].started;
    return length;
}

/// The problem with what the fire says in place of the estimates.
plan::Problem foreseen(const Situation& s) {
    plan::Problem problem = s.sheet.problem;
    for (std::size_t i = 0; i < s.progress.size(); ++i) {
        const auto length = forecastLength(s, i);
        if (!length) continue;
        const auto up = [](Duration d) {
            return std::max(std::chrono::ceil<plan::HalfMinutes>(d), plan::HalfMinutes{1});
        };
        problem.tasks[i].duration = {up(length->low), up(length->likely), up(length->high)};
    }
    return problem;
}

/// From when on what has not begun may begin.
Duration workingFrom(const Situation& s) {
    const bool hasBegun = std::any_of(s.progress.begin(), s.progress.end(),
                                      [](const Progress& p) { return p.started.has_value(); });
    const Duration now = s.now - s.sheet.bell;
    return hasBegun ? now : std::max(now, earliestWork(s.sheet));
}

void project(Situation& s, const plan::Dispatch& dispatch) {
    const auto actuals = actualsOf(s);
    const auto durations = durationsOf(s);
    const Duration bell = s.serve - s.sheet.bell;
    const Duration first = earliestWork(s.sheet);
    s.projected = dispatch.project(actuals, workingFrom(s), bell, durations);
    s.undisturbed = dispatch.project(actuals, first, bell, durations);
}

bool isReleased(const Situation& s, std::size_t i) {
    if (const auto earliest = s.sheet.problem.tasks[i].earliestStart;
        earliest && s.serve + *earliest > s.now)
        return false;
    return std::all_of(s.sheet.problem.links.begin(), s.sheet.problem.links.end(),
                       [&](const plan::Link& link) {
                           if (at(link.to) != i || link.toEnd != plan::End::Start) return true;
                           const auto released = releasedAt(link, s.progress, s.day, s.sheet);
                           return released && *released <= s.now;
                       });
}

TaskState stateOf(const Situation& s, std::size_t i) {
    const Progress& progress = s.progress[i];
    const plan::Task& task = s.sheet.problem.tasks[i];
    if (progress.isSkipped) return TaskState::Skipped;
    if (progress.finished) return TaskState::Done;
    if (progress.started) {
        const bool isOver = waitsForAWord(task) && s.due(i) <= s.now;
        return isOver ? TaskState::Over : TaskState::Running;
    }
    return isReleased(s, i) ? TaskState::Ready : TaskState::Waiting;
}

std::optional<Instant> nextTurnOf(const Situation& s, std::size_t i) {
    const Progress& progress = s.progress[i];
    if (!progress.isRunning()) return std::nullopt;
    const plan::Task& task = s.sheet.problem.tasks[i];
    std::int32_t turn = 0;
    std::optional<plan::HalfMinutes> before;
    for (const plan::HandsOn& hands : task.hands) {
        if (hands.act != plan::HandsOn::Act::Turn) continue;
        if (++turn <= progress.turnsDone) {
            before = hands.offset;
            continue;
        }
        if (!before) return *progress.started + hands.offset;
        const auto& turns = s.day.tasks.at(task.id).turns;
        return turns.at(progress.turnsDone) + (hands.offset - *before);
    }
    return std::nullopt;
}

/// A batch that the fire holds longer than planned goes on being turned, until half an interval
/// before its last piece comes off.
std::optional<Instant> turnBeyondPlan(const Situation& s, std::size_t i) {
    const BatchForecast* batch = s.forecastOf(i);
    if (!s.progress[i].isRunning() || !batch || batch->batch.turnEvery <= Duration{0})
        return std::nullopt;
    const auto facts = s.day.tasks.find(s.sheet.problem.tasks[i].id);
    const auto last = batch->lastPull();
    if (!last || facts == s.day.tasks.end() || facts->second.turns.empty()) return std::nullopt;
    const Instant next = facts->second.turns.rbegin()->second + batch->batch.turnEvery;
    if (next + batch->batch.turnEvery / 2 > *last) return std::nullopt;
    return next;
}

/// Has begun too late or takes too long, by more than the grace. Work that may lie anywhere is
/// late only when it moves the bell.
bool isLate(const Situation& s, std::size_t i, const TaskOutlook& task) {
    const plan::Task& planned = s.sheet.problem.tasks[i];
    switch (task.state) {
        case TaskState::Waiting:
        case TaskState::Ready:
            if (task.slack < Duration{0}) return true;
            return planned.lean == plan::Lean::Late && s.now > task.plannedStart + kGrace;
        case TaskState::Running:
        case TaskState::Over: {
            const Duration length = task.plannedFinish - task.plannedStart;
            return task.slack < Duration{0} || s.now > task.start + length + kGrace;
        }
        case TaskState::Done:
        case TaskState::Skipped:
            break;
    }
    return false;
}

Instant expectedFinish(const Situation& s, std::size_t i) {
    const Instant finish = s.instant(s.projected[i].finish);
    if (!s.progress[i].isRunning() || finish > s.now) return finish;
    const plan::PlannedTask& planned = s.sheet.schedule.tasks[i];
    const auto forecast = forecastLength(s, i);
    const Duration length = forecast ? forecast->likely : planned.finish - planned.start;
    return std::min(finish, *s.progress[i].started + length);
}

TaskOutlook outlookOf(const Situation& s, std::size_t i) {
    const plan::PlannedTask& planned = s.sheet.schedule.tasks[i];
    const plan::Projected& projected = s.projected[i];
    TaskOutlook task;
    task.state = stateOf(s, i);
    const Instant bell = s.progress[i].started ? s.sheet.bell : s.serve;
    task.plannedStart = bell + planned.start;
    task.plannedFinish = bell + planned.finish;
    task.start = s.instant(projected.start);
    task.finish = s.instant(projected.finish);
    task.expectedFinish = expectedFinish(s, i);
    task.slack = projected.slack;
    task.latestStart = task.start + task.slack;
    task.isCritical = projected.isCritical;
    task.turnCount = turnCount(s.sheet.problem.tasks[i]);
    task.turnsDone = s.progress[i].turnsDone;
    task.nextTurn = nextTurnOf(s, i);
    if (!task.nextTurn && task.turnCount > 0) {
        task.nextTurn = turnBeyondPlan(s, i);
        task.turnCount = std::max(task.turnCount, task.turnsDone + (task.nextTurn ? 1 : 0));
    }
    task.isLate = isLate(s, i, task);
    return task;
}

std::optional<plan::TaskIndex> weakestOf(const Situation& s) {
    std::optional<plan::TaskIndex> weakest;
    for (std::size_t i = 0; i < s.tasks.size(); ++i) {
        if (!s.tasks[i].isCritical) continue;
        const bool isSooner = !weakest || s.tasks[i].start < s.tasks[at(*weakest)].start;
        if (isSooner) weakest = static_cast<plan::TaskIndex>(i);
    }
    return weakest;
}

std::vector<Overdue> overdueOf(const Situation& s) {
    std::vector<Overdue> found;
    const auto moment = [&](plan::TaskIndex task, plan::End end) {
        return end == plan::End::Start ? s.tasks[at(task)].start : s.tasks[at(task)].finish;
    };
    for (const plan::Link& link : s.sheet.problem.links) {
        if (!link.maxLag) continue;
        const Progress& from = s.progress[at(link.from)];
        const Progress& to = s.progress[at(link.to)];
        const bool hasHappened =
            link.toEnd == plan::End::Start ? to.started.has_value() : to.finished.has_value();
        if (from.isSkipped || to.isSkipped || hasHappened) continue;
        const Duration by =
            moment(link.to, link.toEnd) - moment(link.from, link.fromEnd) - *link.maxLag;
        if (by <= kGrace) continue;
        const auto same = std::find_if(found.begin(), found.end(),
                                       [&](const Overdue& o) { return o.task == link.from; });
        if (same == found.end())
            found.push_back({link.from, by});
        else
            same->by = std::max(same->by, by);
    }
    std::sort(found.begin(), found.end(),
              [](const Overdue& a, const Overdue& b) { return a.task < b.task; });
    return found;
}

}  // namespace

Situation situationAt(const Day& day, Instant now, const FireForecast* fire) {
    const RunSheet& sheet = *day.sheet;
    return {day, sheet, now, day.serve.value_or(sheet.bell), progressAt(day, sheet, now), {},
            {},  {},    fire};
}

std::vector<plan::Actual> actualsOf(const Situation& s) {
    std::vector<plan::Actual> actuals;
    actuals.reserve(s.progress.size());
    for (std::size_t i = 0; i < s.progress.size(); ++i) {
        const Progress& progress = s.progress[i];
        plan::Actual actual;
        actual.isSkipped = progress.isSkipped;
        if (progress.started && !progress.isSkipped)
            actual.start = *progress.started - s.sheet.bell;
        if (progress.finished) actual.finish = *progress.finished - s.sheet.bell;
        const auto& hands = s.sheet.problem.tasks[i].hands;
        if (progress.isRunning() && hands.size() > 1) {
            const bool isPutOn = hands.front().act == plan::HandsOn::Act::PutOn;
            const std::int32_t turns =
                std::min(progress.turnsDone, turnCount(s.sheet.problem.tasks[i]));
            actual.piecesDone = turns + (isPutOn ? 1 : 0);
        }
        actuals.push_back(actual);
    }
    return actuals;
}

std::vector<Duration> durationsOf(const Situation& s) {
    std::vector<Duration> durations;
    bool isMoved = false;
    for (std::size_t i = 0; i < s.progress.size(); ++i) {
        durations.emplace_back(s.sheet.problem.tasks[i].duration.usual);
        if (const auto length = forecastLength(s, i)) {
            durations.back() = length->likely;
            isMoved = true;
        }
    }
    if (!isMoved) durations.clear();
    return durations;
}

const BatchForecast* Situation::forecastOf(std::size_t task) const {
    const BatchForecast* batch = fire ? fire->find(sheet.problem.tasks[task].id) : nullptr;
    return batch && batch->isForecast ? batch : nullptr;
}

Instant Situation::due(std::size_t task) const {
    if (const BatchForecast* batch = forecastOf(task))
        if (const auto next = batch->nextPull()) return *next;
    return usualEnd(sheet.problem.tasks[task], *progress[task].started);
}

Instant Situation::over(std::size_t task) const {
    if (const BatchForecast* batch = forecastOf(task))
        if (const auto last = batch->lastPull()) return *last;
    return due(task);
}

Outlook lookAt(const Day& day, const plan::Dispatch& dispatch, Instant now,
               const FireForecast* fire) {
    Situation s = situationAt(day, now, fire);
    const RunSheet& sheet = s.sheet;
    project(s, dispatch);
    for (std::size_t i = 0; i < sheet.problem.tasks.size(); ++i)
        s.tasks.push_back(outlookOf(s, i));

    Outlook outlook;
    outlook.people = peopleOf(s);
    outlook.timers = timersOf(s);
    outlook.overdue = overdueOf(s);
    outlook.ready = s.instant(dispatch.readyAt(s.projected));
    outlook.lateness = outlook.ready - s.serve;
    outlook.weakest = weakestOf(s);
    outlook.criticalChain = dispatch.criticalChain(s.projected);
    outlook.tasks = std::move(s.tasks);
    return outlook;
}

Chance chanceAt(const Day& day, const plan::Dispatch& dispatch, Instant now,
                const FireForecast* fire) {
    constexpr int kDraws = 200;  // a standard error of at most 3.5 %: the boards show tenths
    const Situation s = situationAt(day, now, fire);
    const auto actuals = actualsOf(s);
    plan::RiskQuery query;
    query.actuals = actuals;
    query.now = workingFrom(s);
    query.bell = s.serve - s.sheet.bell;
    query.draws = kDraws;
    plan::Risk risk = plan::assessRisk(foreseen(s), dispatch, query);
    return {now, risk.onTime, s.instant(risk.ready80), risk.onTimeQuarterHourEarlier,
            std::move(risk.criticality)};
}

}  // namespace cinder::live
