#include "live/ways_out.h"

#include <algorithm>

namespace cinder::live {

namespace {

using std::chrono::minutes;

/// Nobody leaves out a dish for less, unless it is all that is missing. Our choice.
constexpr minutes kWorthSaying{2};

class Guide {
  public:
    Guide(const Remaining& remaining, const plan::Search& search)
        : remaining_(remaining), search_(search) {}

    std::vector<WayOut> run() {
        late_ = std::chrono::ceil<minutes>(projectedDelay(remaining_));
        tryAgain();
        tryPeople();
        tryDishes();
        std::stable_sort(ways_.begin(), ways_.end(), [](const WayOut& a, const WayOut& b) {
            return a.late != b.late ? a.late < b.late : a.kind < b.kind;
        });
        return std::move(ways_);
    }

  private:
    [[nodiscard]] bool isStopped() const {
        return search_.stop != nullptr && search_.stop->load(std::memory_order_relaxed);
    }

    /// The lateness that is left with a change, when that wins anything. A search that was asked to
    /// end says nothing.
    [[nodiscard]] std::optional<minutes> lateWith(const Remaining& changed) const {
        if (late_ <= minutes{0}) return std::nullopt;
        const auto soonest = soonestRest(changed, search_);
        if (isStopped() || !soonest) return std::nullopt;
        const minutes least = std::max(minutes{0}, late_ - kWorthSaying);
        return soonest->late <= least ? std::optional(soonest->late) : std::nullopt;
    }

    void tryAgain() {
        const auto late = lateWith(remaining_);
        if (!late) return;
        ways_.push_back({WayOut::Kind::PlanAgain, {}, {}, *late});
        late_ = *late;
    }

    void tryPeople() {
        const std::size_t count = remaining_.sheet.problem.skills.size();
        std::vector<plan::SkillIndex> all;
        for (std::size_t s = 0; s < count; ++s)
            all.push_back(static_cast<plan::SkillIndex>(s));
        std::optional<WayOut> best;
        const auto look = [&](std::vector<plan::SkillIndex> skills) {
            Remaining changed = remaining_;
            changed.sheet.problem.crew.push_back({PersonId("one more"), "", skills});
            const auto late = lateWith(changed);
            if (late && (!best || *late < best->late))
                best = WayOut{WayOut::Kind::OnePersonMore, std::move(skills), {}, *late};
        };
        for (const plan::SkillIndex skill : all)
            look({skill});
        if (count > 1 && (!best || best->late > minutes{0})) look(all);
        if (best) ways_.push_back(*std::move(best));
    }

    void tryDishes() {
        const auto& tasks = remaining_.sheet.problem.tasks;
        std::vector<DishId> dishes;
        for (const plan::Task& task : tasks)
            if (task.dish && std::find(dishes.begin(), dishes.end(), *task.dish) == dishes.end())
                dishes.push_back(*task.dish);
        for (const DishId& dish : dishes) {
            const auto rest = restFor(remaining_, dish);
            if (rest.empty()) continue;
            Remaining changed = remaining_;
            for (const std::size_t i : rest)
                changed.actuals[i].isSkipped = true;
            if (const auto late = lateWith(changed))
                ways_.push_back({WayOut::Kind::DropDish, {}, dish, *late});
        }
    }

    const Remaining& remaining_;
    const plan::Search& search_;
    minutes late_{0};  ///< by which a way must be better
    std::vector<WayOut> ways_;
};

}  // namespace

std::vector<std::size_t> restFor(const Remaining& remaining, const DishId& dish) {
    const auto& tasks = remaining.sheet.problem.tasks;
    std::vector<std::size_t> rest;
    for (std::size_t i = 0; i < tasks.size(); ++i) {
        const plan::Actual& actual = remaining.actuals[i];
        if (tasks[i].dish != dish || actual.finish || actual.isSkipped) continue;
        if (actual.start) return {};
        rest.push_back(i);
    }
    return rest;
}

std::vector<WayOut> waysOut(const Remaining& remaining, const plan::Search& search) {
    return Guide(remaining, search).run();
}

}  // namespace cinder::live
