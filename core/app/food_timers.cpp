#include <algorithm>
#include <map>

#include "app/snapshot.h"

namespace cinder::app {

namespace {

using live::Timer;
using live::TimerKind;
using live::TimerOccasion;

/// How often cooling food is measured. Common practice - no source.
constexpr std::chrono::minutes kCoolingEvery{30};
/// And how long before the stage must be shown at the latest. Our choice: time to add ice.
constexpr std::chrono::minutes kCoolingAhead{10};
/// How long before a pan nobody has read is lost it calls once more, whoever silenced its checks.
/// Our choice: time to find the pan and a thermometer.
constexpr std::chrono::minutes kLostAhead{20};

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
        if ((check.due <= day.now || check.isDone) && before != lastDue.end()) {
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

/// Calls of one name are one call that says how many there are.
class Calls {
  public:
    explicit Calls(std::vector<Timer>& timers) : timers_(timers) {}

    /// `pan` when there is one to read, so that the call can name it.
    void add(const std::string& name, TimerOccasion occasion, const DishId& dish,
             std::optional<std::int32_t> pan, Instant due) {
        const auto [found, isNew] = known_.emplace(name, timers_.size());
        if (!isNew) {
            Timer& timer = timers_[found->second];
            timer.count = timer.count.value_or(1) + 1;
            return;
        }
        Timer timer;
        timer.name = name;
        timer.kind = TimerKind::Check;
        timer.occasion = occasion;
        timer.dish = dish;
        if (pan.value_or(0) > 0) timer.pan = pan;
        timer.count = 1;
        timer.due = due;
        timers_.push_back(std::move(timer));
    }

  private:
    std::vector<Timer>& timers_;
    std::map<std::string, std::size_t> known_;
};

void addChecks(const Snapshot& day, Calls& calls) {
    for (const safety::PlannedCheck* check : calling(day)) {
        const std::string occasion = check->name.substr(0, check->name.find(':'));
        std::optional<std::int32_t> pan;
        if (check->missing.size() == 1) pan = check->missing.front().number;
        calls.add("food:" + occasion + ":" + at(check->due),
                  check->occasion == safety::Occasion::Cooked ? TimerOccasion::CheckAtFire
                                                              : TimerOccasion::Check,
                  check->dish, pan, check->due);
    }
}

/// A pan is not lost for want of a reading without a call of its own.
void addLast(const Snapshot& day, Calls& calls) {
    for (const FoodPanCard& card : day.food.pans) {
        const safety::Standing& standing = card.standing;
        if (standing.lost || standing.control == safety::Control::Discarded || !standing.measureBy)
            continue;
        const Instant due = *standing.measureBy - kLostAhead;
        calls.add("food:last:" + at(due), TimerOccasion::Check, card.pan.dish, card.pan.number,
                  due);
    }
}

void addClocks(const Snapshot& day, std::vector<Timer>& timers) {
    for (const FoodPanCard& card : day.food.pans) {
        const safety::Standing& standing = card.standing;
        if (standing.control == safety::Control::Discarded) continue;
        Timer timer;
        timer.kind = TimerKind::Check;
        timer.occasion = standing.time ? TimerOccasion::Discard : TimerOccasion::Check;
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
    Calls calls(timers);
    addChecks(snapshot, calls);
    addLast(snapshot, calls);
    addClocks(snapshot, timers);
    for (Timer& timer : timers) {
        timer.acknowledged = live::heardBy(day, timer.name, timer.due);
        snapshot.timers.push_back(std::move(timer));
    }
    std::sort(snapshot.timers.begin(), snapshot.timers.end(), [](const Timer& a, const Timer& b) {
        return std::tie(a.due, a.name) < std::tie(b.due, b.name);
    });
}

}  // namespace cinder::app
