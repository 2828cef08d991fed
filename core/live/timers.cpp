#include <algorithm>

#include "live/outlook.h"

namespace cinder::live {

namespace {

/// Set-up that has room is not called for before its room is nearly used, or it would ring all
/// morning. Our choice.
constexpr std::chrono::minutes kNudge{3};

std::size_t at(plan::TaskIndex index) {
    return static_cast<std::size_t>(index);
}

/// Makes the timers of one day.
class Watch {
  public:
    explicit Watch(const Situation& s) : s_(s) {}

    std::vector<Timer> run() {
        for (std::size_t i = 0; i < s_.tasks.size(); ++i) {
            if (s_.progress[i].isRunning()) watchRunning(i);
            if (task(i).kind == plan::TaskKind::Rest) watchRest(i);
            if (!s_.progress[i].started && !s_.progress[i].isOut()) watchStart(i);
        }
        std::sort(timers_.begin(), timers_.end(), [](const Timer& a, const Timer& b) {
            return std::tie(a.due, a.name) < std::tie(b.due, b.name);
        });
        return std::move(timers_);
    }

  private:
    const plan::Task& task(std::size_t i) const { return s_.sheet.problem.tasks[i]; }

    Timer& add(TimerKind kind, const char* word, std::size_t i, Instant due,
               const std::string& suffix = {}) {
        Timer timer;
        timer.name = std::string(word) + ":" + task(i).id.text() + suffix;
        timer.kind = kind;
        timer.task = task(i).id;
        timer.due = due;
        timer.acknowledged = heardBy(s_.day, timer.name, timer.due);
        return timers_.emplace_back(std::move(timer));
    }

    void watchRunning(std::size_t i) {
        const Instant end = s_.due(i);
        const bool isOnGrate =
            !task(i).hands.empty() && task(i).hands.back().act == plan::HandsOn::Act::TakeOff;
        if (const auto& due = s_.tasks[i].nextTurn; due && (!isOnGrate || *due < s_.over(i))) {
            const std::int32_t turn = s_.tasks[i].turnsDone + 1;
            Timer& timer = add(TimerKind::Turn, "turn", i, *due, ":" + std::to_string(turn));
            timer.number = turn;
            timer.count = s_.tasks[i].turnCount;
        }
        if (isOnGrate)
            watchPull(i, end);
        else if (waitsForAWord(task(i)) && task(i).kind != plan::TaskKind::Rest)
            add(TimerKind::Check, "look", i, end);
    }

    /// With a forecast each piece calls for itself: silencing one leaves the next one its voice.
    void watchPull(std::size_t i, Instant due) {
        const BatchForecast* batch = s_.forecastOf(i);
        if (!batch || !batch->nextPull()) {
            add(TimerKind::Pull, "pull", i, due);
            return;
        }
        std::int32_t next = 1;
        for (const PieceForecast& piece : batch->pieces)
            if (piece.pulled) ++next;
        Timer& timer = add(TimerKind::Pull, "pull", i, due, ":" + std::to_string(next));
        timer.number = next;
        timer.count = static_cast<std::int32_t>(batch->pieces.size());
    }

    /// Rings until somebody goes on with it, even when the rest has ended by itself.
    void watchRest(std::size_t i) {
        const Progress& progress = s_.progress[i];
        if (!progress.started || progress.isSkipped || isSaidFinished(i)) return;
        for (const plan::Link& link : s_.sheet.problem.links) {
            const Progress& next = s_.progress[at(link.to)];
            if (at(link.from) == i && link.fromEnd == plan::End::Finish &&
                (next.started || next.isOut()))
                return;
        }
        add(TimerKind::RestOver, "rest", i, usualEnd(task(i), *progress.started));
    }

    bool isSaidFinished(std::size_t i) const {
        const auto facts = s_.day.tasks.find(task(i).id);
        return facts != s_.day.tasks.end() && facts->second.finished;
    }

    void watchStart(std::size_t i) {
        if (isStanding(task(i)) && !followsNothing(i)) return;  // starts by itself
        const TaskOutlook& outlook = s_.tasks[i];
        const bool hasRoom = task(i).kind == plan::TaskKind::SetUp ||
                             task(i).kind == plan::TaskKind::Prep ||
                             task(i).kind == plan::TaskKind::Strike;
        const bool isHeld = outlook.state == TaskState::Waiting || isPlaceTaken(i) || isCrewBusy(i);
        // A start that something else holds back is called for when it can be, not before.
        const Instant possible =
            s_.instant(isHeld ? s_.projected[i].start : s_.undisturbed[i].start);
        const Instant due =
            hasRoom
                ? std::max(possible,
                           s_.instant(s_.undisturbed[i].start + s_.undisturbed[i].slack) - kNudge)
                : possible;
        if (isHeld && due <= s_.now) return;
        add(TimerKind::StartNow, "start", i, due);
    }

    bool followsNothing(std::size_t i) const {
        return std::none_of(s_.sheet.problem.links.begin(), s_.sheet.problem.links.end(),
                            [&](const plan::Link& link) {
                                return at(link.to) == i && link.toEnd == plan::End::Start;
                            });
    }

    bool isPlaceTaken(std::size_t i) const {
        for (const plan::ResourceUse& use : task(i).uses) {
            std::int64_t taken = use.units;
            for (std::size_t k = 0; k < s_.tasks.size(); ++k) {
                if (!s_.progress[k].isRunning()) continue;
                for (const plan::ResourceUse& other : task(k).uses)
                    if (other.resource == use.resource) taken += other.units;
            }
            if (taken > s_.sheet.problem.resources[static_cast<std::size_t>(use.resource)].capacity)
                return true;
        }
        return false;
    }

    /// Somebody planned to begin it is in the middle of work that cannot be put down.
    bool isCrewBusy(std::size_t i) const {
        const auto& pieces = s_.sheet.schedule.tasks[i].pieces;
        if (pieces.empty()) return false;
        for (std::size_t k = 0; k < s_.tasks.size(); ++k) {
            const plan::Task& other = task(k);
            if (!s_.progress[k].isRunning() || other.hands.size() != 1 || other.shortestPiece)
                continue;
            const plan::HandsOn& hands = other.hands.front();
            const bool isWhole = hands.offset + hands.length >= other.duration.usual;
            const bool isAtIt =
                isWhole || s_.now < *s_.progress[k].started + hands.offset + hands.length;
            if (isAtIt && sharesSomebody(pieces.front(), s_.sheet.schedule.tasks[k].pieces.front()))
                return true;
        }
        return false;
    }

    static bool sharesSomebody(const plan::Piece& a, const plan::Piece& b) {
        return std::any_of(a.people.begin(), a.people.end(), [&](plan::PersonIndex person) {
            return std::find(b.people.begin(), b.people.end(), person) != b.people.end();
        });
    }

    const Situation& s_;
    std::vector<Timer> timers_;
};

}  // namespace

std::optional<Instant> heardBy(const Day& day, const std::string& name, Instant due) {
    constexpr std::chrono::minutes kSameCall{1};  // our choice
    const auto heard = day.acknowledged.find(name);
    if (heard == day.acknowledged.end() || due > heard->second + kSameCall) return std::nullopt;
    return heard->second;
}

std::vector<Timer> timersOf(const Situation& situation) {
    return Watch(situation).run();
}

}  // namespace cinder::live
