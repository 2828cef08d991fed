#include "live/progress.h"

#include <algorithm>

namespace cinder::live {

namespace {

using plan::End;

std::size_t at(plan::TaskIndex index) {
    return static_cast<std::size_t>(index);
}

Progress reported(const Day& day, const plan::Task& task) {
    Progress progress;
    const auto found = day.tasks.find(task.id);
    if (found == day.tasks.end()) return progress;
    const TaskFacts& facts = found->second;
    progress.started = facts.started;
    progress.finished = facts.finished;
    progress.isSkipped = facts.skipped && !facts.finished;
    if (!facts.turns.empty()) progress.turnsDone = facts.turns.rbegin()->first;
    if (progress.started && progress.finished)
        progress.started = std::min(*progress.started, *progress.finished);
    return progress;
}

/// Works out what standing tasks do, until nothing more follows.
class Conclusion {
  public:
    Conclusion(const Day& day, const RunSheet& sheet, Instant now)
        : day_(day), sheet_(sheet), now_(now) {
        for (const plan::Task& task : sheet.problem.tasks)
            progress_.push_back(reported(day, task));
        incoming_.resize(progress_.size());
        outgoing_.resize(progress_.size());
        for (const plan::Link& link : sheet.problem.links) {
            incoming_[at(link.to)].push_back(&link);
            outgoing_[at(link.from)].push_back(&link);
        }
    }

    std::vector<Progress> run() {
        // Each round settles at least one task, or is the last.
        for (std::size_t round = 0; round <= progress_.size() && settle(); ++round) {
        }
        // Said to be finished, never said to be begun: it took no time that anybody knows of.
        for (Progress& progress : progress_)
            if (progress.finished && !progress.started) progress.started = progress.finished;
        return std::move(progress_);
    }

  private:
    bool settle() {
        bool hasMoved = false;
        for (std::size_t i = 0; i < progress_.size(); ++i) {
            const Progress before = progress_[i];
            if (isStanding(task(i))) startByItself(i);
            if (progress_[i].isRunning() && task(i).endsByItself) endByItself(i);
            if (isStanding(task(i))) endByFollower(i);
            hasMoved |= progress_[i] != before;
        }
        return hasMoved;
    }

    const plan::Task& task(std::size_t i) const { return sheet_.problem.tasks[i]; }

    void startByItself(std::size_t i) {
        Progress& progress = progress_[i];
        if (progress.started || progress.isSkipped) return;
        if (!progress.finished && followsOnlySkipped(i)) {
            progress.isSkipped = true;
            return;
        }
        std::optional<Instant> start;
        for (const plan::Link* link : incoming_[i]) {
            if (link->toEnd != End::Start) continue;
            const auto released = releasedAt(*link, progress_, day_, sheet_);
            if (!released || *released > now_) return;
            start = std::max(start.value_or(*released), *released);
        }
        if (!start) return;  // follows nothing: somebody must say so
        if (const auto earliest = task(i).earliestStart; earliest && day_.serve) {
            start = std::max(*start, *day_.serve + *earliest);
            if (*start > now_) return;
        }
        progress.started = std::min(*start, progress.finished.value_or(*start));
    }

    bool followsOnlySkipped(std::size_t i) const {
        bool isAny = false;
        for (const plan::Link* link : incoming_[i]) {
            if (link->toEnd != End::Start) continue;
            if (!progress_[at(link->from)].isSkipped) return false;
            isAny = true;
        }
        return isAny;
    }

    void endByItself(std::size_t i) {
        Instant end = usualEnd(task(i), *progress_[i].started);
        for (const plan::Link* link : incoming_[i]) {
            if (link->toEnd != End::Finish) continue;
            const auto released = releasedAt(*link, progress_, day_, sheet_);
            if (!released) return;
            end = std::max(end, *released);
        }
        if (end <= now_) progress_[i].finished = end;
    }

    /// Whoever slices knows that the rest is over.
    void endByFollower(std::size_t i) {
        Progress& progress = progress_[i];
        if (progress.isSkipped) return;
        std::optional<Instant> begun;
        for (const plan::Link* link : outgoing_[i]) {
            if (link->fromEnd != End::Finish || link->toEnd != End::Start) continue;
            const auto& follower = progress_[at(link->to)].started;
            if (follower && !isStanding(task(at(link->to))))
                begun = std::min(begun.value_or(*follower), *follower);
        }
        if (!begun || (progress.finished && *progress.finished <= *begun)) return;
        const auto said = day_.tasks.find(task(i).id);
        if (said != day_.tasks.end() && said->second.finished) return;
        progress.started = std::min(progress.started.value_or(*begun), *begun);
        progress.finished = begun;
    }

    const Day& day_;
    const RunSheet& sheet_;
    Instant now_;
    std::vector<Progress> progress_;
    std::vector<std::vector<const plan::Link*>> incoming_;
    std::vector<std::vector<const plan::Link*>> outgoing_;
};

}  // namespace

std::vector<Progress> progressAt(const Day& day, const RunSheet& sheet, Instant now) {
    return Conclusion(day, sheet, now).run();
}

std::vector<bool> skippedIn(const Day& day, const RunSheet& sheet) {
    std::vector<bool> isSkipped;
    // What is skipped stays so, whatever else has happened by the end of time.
    for (const Progress& progress : progressAt(day, sheet, Instant::max()))
        isSkipped.push_back(progress.isSkipped);
    return isSkipped;
}

Instant usualEnd(const plan::Task& task, Instant started) {
    if (!task.hands.empty() && task.hands.back().act == plan::HandsOn::Act::TakeOff)
        return started + task.hands.back().offset;
    return started + task.duration.usual;
}

bool waitsForAWord(const plan::Task& task) {
    if (task.endsByItself) return false;
    if (task.hands.empty()) return true;
    const plan::HandsOn& last = task.hands.back();
    return last.act == plan::HandsOn::Act::TakeOff ||
           last.offset + last.length < task.duration.usual;
}

std::optional<Instant> releasedAt(const plan::Link& link, const std::vector<Progress>& progress,
                                  const Day& day, const RunSheet& sheet) {
    const Progress& from = progress[at(link.from)];
    if (from.isSkipped) {
        // Takes no time, asks for no lag and hands on what it followed: nobody slices what is on
        // the fire because its rest is left out. Skipped with all that it follows, it has no
        // instant of its own.
        const auto facts = day.tasks.find(sheet.problem.tasks[at(link.from)].id);
        const bool isSaid = facts != day.tasks.end() && facts->second.skipped;
        Instant latest = isSaid ? *facts->second.skipped : sheet.bell - std::chrono::hours{24};
        for (const plan::Link& before : sheet.problem.links) {
            if (before.to != link.from || before.from == link.from) continue;
            if (before.toEnd == End::Finish && link.fromEnd == End::Start) continue;
            const auto released = releasedAt(before, progress, day, sheet);
            if (!released) return std::nullopt;
            latest = std::max(latest, *released);
        }
        return latest;
    }
    const bool isStart = link.fromEnd == End::Start && from.started;
    const auto& end = isStart || !from.finished ? from.started : from.finished;
    if (!end || (link.fromEnd == End::Finish && !from.finished)) return std::nullopt;
    return *end + link.minLag;
}

}  // namespace cinder::live
