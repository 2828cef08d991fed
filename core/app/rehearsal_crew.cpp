#include "app/rehearsal_crew.h"

#include <algorithm>

namespace cinder::app {

namespace {

/// FNV-1a, 64 bits: a seed from a name that is the same on every device. Source:
/// draft-eastlake-fnv.
std::uint64_t seedFrom(const std::string& name) {
    std::uint64_t hash = 0xcbf29ce484222325ULL;
    for (const char c : name)
        hash = (hash ^ static_cast<unsigned char>(c)) * 0x100000001b3ULL;
    return hash;
}

bool isWork(const TaskCard& card) {
    return !card.work.empty();
}

/// A batch on the grate comes off when its alarm says so; other work ends when its time is over.
Instant endOf(const TaskCard& card, const Snapshot& seen) {
    for (const live::Timer& timer : seen.timers)
        if (timer.kind == live::TimerKind::Pull && timer.task == card.id) return timer.due;
    return card.start + (card.plannedFinish - card.plannedStart);
}

}  // namespace

Duration RehearsalCrew::delayOf(const std::string& act) const {
    if (temper_.latest <= Duration{0}) return Duration{0};
    Rng rng(temper_.seed ^ seedFrom(act));
    const auto delay =
        static_cast<std::int64_t>(rng.unit() * static_cast<double>(temper_.latest.count()));
    const bool forgets = rng.below(100) < temper_.forgets;
    return Duration{delay} + (forgets ? temper_.latest * 3 : Duration{0});
}

Result<bool, Refusal> RehearsalCrew::actOnce() {
    const auto seen = session_.look();
    if (!seen) return fail(Refusal{Refusal::Why::NoEvent, {}, {}, {}, {}});
    const Instant now = seen->now;
    const auto isDue = [&](const std::string& act, const TaskCard& card, Instant moment) {
        if (moment > now) return false;
        // What could be begun is projected to begin now, every time anew: its delay counts from
        // when it first could.
        const std::string name = act + ":" + card.id.text();
        return firstDue_.emplace(name, moment).first->second + delayOf(name) <= now;
    };
    const auto done = [](const Result<void, Refusal>& taken) -> Result<bool, Refusal> {
        if (!taken) return fail(taken.error());
        return true;
    };
    for (const TaskCard& card : seen->tasks) {
        if (card.state == TaskState::Running || card.state == TaskState::Over) {
            const std::string turn = "turn" + std::to_string(card.turnsDone + 1);
            if (card.nextTurn && isDue(turn, card, *card.nextTurn) &&
                *card.nextTurn < endOf(card, *seen))
                return done(session_.turn(card.id));
            const bool endsHere = isWork(card) || card.state == TaskState::Over;
            if (endsHere && isDue("finish", card, endOf(card, *seen)))
                return done(session_.finish(card.id));
        }
        if (card.state != TaskState::Ready || !isDue("start", card, card.start)) continue;
        if (card.kind == plan::TaskKind::Fire)
            for (const safety::FireAnswer& asked : seen->food.beforeFire)
                if (!asked.isAnswered()) return done(session_.readyBeforeFire(asked.item));
        return done(session_.start(card.id));
    }
    for (const live::Timer& timer : seen->timers)
        if (timer.isRinging(now) && timer.due + delayOf(timer.name) <= now)
            return done(session_.acknowledge(timer.name));
    return false;
}

Result<int, Refusal> RehearsalCrew::act() {
    int count = 0;
    while (true) {
        const auto acted = actOnce();
        if (!acted) return fail(acted.error());
        if (!*acted) return count;
        ++count;
    }
}

bool RehearsalCrew::isDayOver() {
    const auto seen = session_.look();
    return seen && std::all_of(seen->tasks.begin(), seen->tasks.end(), [](const TaskCard& card) {
               return card.state == TaskState::Done || card.state == TaskState::Skipped;
           });
}

}  // namespace cinder::app
