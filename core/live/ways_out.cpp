#include "live/ways_out.h"

#include <algorithm>

#include "plan/replan.h"

namespace cinder::live {

namespace {

using std::chrono::minutes;

/// Nobody leaves out a dish for less, unless it is all that is missing. Our choice.
constexpr minutes kWorthSaying{2};

/// Whether the rest can be planned for a bell that is so late.
bool canServe(const Remaining& remaining, minutes late, const plan::Search& search) {
    const Instant bell = remaining.sheet.bell;
    return plan::replan(remaining.sheet.problem, remaining.sheet.schedule,
                        {remaining.actuals, remaining.now - bell, remaining.serve + late - bell,
                         remaining.durations},
                        search)
        .has_value();
}

/// The least lateness that a plan is found for; `now` when none is that is worth saying.
minutes leastLate(const Remaining& remaining, minutes now, const plan::Search& search) {
    minutes high = std::max(minutes{0}, now - kWorthSaying);
    if (now <= minutes{0} || !canServe(remaining, high, search)) return now;
    if (canServe(remaining, minutes{0}, search)) return minutes{0};
    minutes low{0};  // none is found for this, one is for `high`
    while (high - low > minutes{1}) {
        const minutes middle = low + (high - low) / 2;
        (canServe(remaining, middle, search) ? high : low) = middle;
    }
    return high;
}

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
        const minutes late = leastLate(changed, late_, search_);
        if (isStopped() || late >= late_) return std::nullopt;
        return late;
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
            Remaining changed = remaining_;
            bool isAtWork = false;
            bool hasMore = false;
            for (std::size_t i = 0; i < tasks.size(); ++i) {
                plan::Actual& actual = changed.actuals[i];
                if (tasks[i].dish != dish || actual.finish || actual.isSkipped) continue;
                isAtWork = isAtWork || actual.start.has_value();
                hasMore = true;
                actual.isSkipped = true;
            }
            if (!hasMore || isAtWork) continue;
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

std::vector<WayOut> waysOut(const Remaining& remaining, const plan::Search& search) {
    return Guide(remaining, search).run();
}

}  // namespace cinder::live
