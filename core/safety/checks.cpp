#include "safety/checks.h"

#include <algorithm>

namespace cinder::safety {

namespace {

std::string_view wordOf(Occasion occasion) {
    switch (occasion) {
        case Occasion::Arrival:
            return "arrival";
        case Occasion::Cooked:
            return "cooked";
        case Occasion::Hold:
            return "hold";
        case Occasion::BeforeService:
            return "before-service";
        case Occasion::DuringService:
            return "during-service";
        case Occasion::Strike:
            return "strike";
    }
    return "";
}

/// Just before the line opens. Common practice - no source.
constexpr std::chrono::minutes kBeforeService{10};

/// Lays the checks of one dish along its day.
class Calendar {
  public:
    Calendar(const FoodPlan& plan, Duration every) : plan_(plan), every_(every) {}

    std::vector<PlannedCheck> run() {
        const Instant ready = plan_.serve - kBeforeService;
        const bool isHotBefore = plan_.arrivesHot;
        if (!plan_.isFresh)
            add(Occasion::Arrival, isHotBefore ? Purpose::ArriveHot : Purpose::ArriveCold,
                plan_.arrival);
        Instant from = plan_.arrival;
        if (plan_.cooked) {
            if (!plan_.isFresh) holdUntil(*plan_.cooked, isHotBefore);
            add(Occasion::Cooked, plan_.rule.isCookedHere ? Purpose::Cook : Purpose::Reheat,
                *plan_.cooked);
            from = std::max(from, *plan_.cooked);
        }
        last_ = from;
        holdUntil(ready, plan_.isServedHot);
        add(Occasion::BeforeService, holding(plan_.isServedHot), std::max(ready, from));
        for (Instant due = plan_.serve + every_; due < plan_.serviceEnd; due += every_)
            add(Occasion::DuringService, holding(plan_.isServedHot), due);
        add(Occasion::Strike, holding(plan_.isServedHot), plan_.serviceEnd);
        return std::move(checks_);
    }

  private:
    static Purpose holding(bool isHot) { return isHot ? Purpose::HoldHot : Purpose::HoldCold; }

    /// Leaves out a check that the next occasion would follow within the time a reading counts.
    void holdUntil(Instant end, bool isHot) {
        for (Instant due = last_ + every_; due + kCheckAhead < end; due += every_)
            add(Occasion::Hold, holding(isHot), due);
        last_ = std::max(last_, end);
    }

    void add(Occasion occasion, Purpose purpose, Instant due) {
        const auto number =
            1 + std::count_if(checks_.begin(), checks_.end(), [&](const PlannedCheck& check) {
                return check.occasion == occasion;
            });
        PlannedCheck check;
        check.name =
            std::string(wordOf(occasion)) + ":" + plan_.dish.text() + ":" + std::to_string(number);
        check.dish = plan_.dish;
        check.occasion = occasion;
        check.purpose = purpose;
        check.due = due;
        check.station = plan_.station;
        checks_.push_back(std::move(check));
        if (checks_.size() == 1) last_ = due;
    }

    const FoodPlan& plan_;
    Duration every_;
    Instant last_;
    std::vector<PlannedCheck> checks_;
};

bool isOf(const Entry& entry, const DishId& dish) {
    if (entry.isTakenBack) return false;
    if (const auto* measured = std::get_if<FoodMeasured>(&entry.fact))
        return measured->pan.dish == dish;
    if (const auto* left = std::get_if<ControlLeft>(&entry.fact)) return left->pan.dish == dish;
    return false;
}

}  // namespace

std::vector<PlannedCheck> checksOf(const FoodPlan& plan, const Limits& limits,
                                   std::span<const Entry> entries, Instant now) {
    const Duration usual = limits.length(Span::HoldEvery);
    const Duration every = std::max<Duration>(std::chrono::minutes{5},
                                              plan.every ? std::min(*plan.every, usual) : usual);
    auto checks = Calendar(plan, every).run();
    std::stable_sort(checks.begin(), checks.end(),
                     [](const PlannedCheck& a, const PlannedCheck& b) { return a.due < b.due; });
    for (std::size_t i = 0; i < checks.size(); ++i) {
        const Instant from = checks[i].due - kCheckAhead;
        const Instant until = i + 1 < checks.size()
                                  ? std::max(checks[i + 1].due - kCheckAhead, checks[i].due)
                                  : Instant::max();
        checks[i].isDone = std::any_of(entries.begin(), entries.end(), [&](const Entry& entry) {
            if (!isOf(entry, plan.dish)) return false;
            const Instant at = instantOf(entry.fact);
            return at >= from && at <= until && at <= now;
        });
    }
    return checks;
}

}  // namespace cinder::safety
