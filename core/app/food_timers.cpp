#include <algorithm>
#include <map>

#include "app/snapshot.h"

namespace cinder::app {

namespace {

using live::Timer;
using live::TimerKind;

/// How often cooling food is measured. Common practice - no source.
constexpr std::chrono::minutes kCoolingEvery{30};
/// And how long before the stage must be shown at the latest. Our choice: time to add ice.
constexpr std::chrono::minutes kCoolingAhead{10};

std::string at(Instant instant) {
    return std::to_string(instant.time_since_epoch().count());
}

std::string wordOf(const safety::Pan& pan) {
    return pan.dish.text() + "#" + std::to_string(pan.number);
}

/// Of the checks a dish has missed only the last still calls.
std::vector<const safety::PlannedCheck*> calling(const Snapshot& day) {
    std::vector<const safety::PlannedCheck*> list;
    std::map<DishId, std::size_t> lastDue;
    for (const safety::PlannedCheck& check : day.food.checks) {
        const auto before = lastDue.find(check.dish);
        if (check.due <= day.now && before != lastDue.end()) {
            list[before->second] = nullptr;
            lastDue.erase(before);
        }
        if (check.isDone) continue;
        if (check.due <= day.now) lastDue[check.dish] = list.size();
        list.push_back(&check);
    }
    std::erase(list, nullptr);
    return list;
}

void addChecks(const Snapshot& day, std::vector<Timer>& timers) {
    std::map<std::string, std::size_t> known;
    for (const safety::PlannedCheck* check : calling(day)) {
        const std::string occasion = check->name.substr(0, check->name.find(':'));
        const std::string name = "food:" + occasion + ":" + at(check->due);
        const auto [found, isNew] = known.emplace(name, timers.size());
        if (!isNew) {
            timers[found->second].count = timers[found->second].count.value_or(1) + 1;
            continue;
        }
        Timer timer;
        timer.name = name;
        timer.kind = TimerKind::Check;
        timer.dish = check->dish;
        timer.count = 1;
        timer.due = check->due;
        timers.push_back(std::move(timer));
    }
}

void addClocks(const Snapshot& day, std::vector<Timer>& timers) {
    for (const FoodPanCard& card : day.food.pans) {
        const safety::Standing& standing = card.standing;
        if (standing.control == safety::Control::Discarded) continue;
        Timer timer;
        timer.kind = TimerKind::Check;
        timer.dish = card.pan.dish;
        timer.pan = card.pan.number;
        if (standing.time) {
            timer.name = "discard:" + wordOf(card.pan);
            timer.due = standing.time->discardAt;
        } else if (standing.control == safety::Control::Cooling && !standing.lost) {
            const Instant last =
                std::max(standing.cooling->started,
                         standing.lastMeasured.value_or(standing.cooling->started));
            timer.due = std::min(last + kCoolingEvery, standing.cooling->by - kCoolingAhead);
            timer.name = "cool:" + wordOf(card.pan) + ":" + at(last);
        } else {
            continue;
        }
        timers.push_back(std::move(timer));
    }
}

}  // namespace

void addFoodTimers(const live::Day& day, Snapshot& snapshot) {
    std::vector<Timer> timers;
    addChecks(snapshot, timers);
    addClocks(snapshot, timers);
    for (Timer& timer : timers) {
        const auto heard = day.acknowledged.find(timer.name);
        if (heard != day.acknowledged.end()) timer.acknowledged = heard->second;
        snapshot.timers.push_back(std::move(timer));
    }
    std::sort(snapshot.timers.begin(), snapshot.timers.end(), [](const Timer& a, const Timer& b) {
        return std::tie(a.due, a.name) < std::tie(b.due, b.name);
    });
}

}  // namespace cinder::app
