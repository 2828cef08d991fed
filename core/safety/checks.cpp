#include "safety/checks.h"

#include <algorithm>

#include "safety/history.h"

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

/// No event goes on so long after its bell. A device whose clock is years wrong would
/// ask for checks without end.
constexpr std::chrono::hours kLongestAfter{24};

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
        for (Instant due = plan_.serve + every_; due < std::min(plan_.serviceEnd, last());
             due += every_)
            add(Occasion::DuringService, holding(plan_.isServedHot), due);
        add(Occasion::Strike, holding(plan_.isServedHot), plan_.serviceEnd);
        return std::move(checks_);
    }

  private:
    [[nodiscard]] Instant last() const { return plan_.serve + kLongestAfter; }
    static Purpose holding(bool isHot) { return isHot ? Purpose::HoldHot : Purpose::HoldCold; }

    /// Leaves out a check that the next occasion would follow within the time a reading counts.
    void holdUntil(Instant end, bool isHot) {
        for (Instant due = last_ + every_; due + kCheckAhead < std::min(end, last()); due += every_)
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

bool isHot(Purpose purpose) {
    return purpose == Purpose::ArriveHot || purpose == Purpose::HoldHot ||
           purpose == Purpose::Cook || purpose == Purpose::Reheat ||
           purpose == Purpose::ReheatPacked;
}
/// The stretch of time in which a reading answers a check.
struct Window {
    Instant from;
    Instant until;
};

/// What the record says of one pan, as far as checks go.
class PanDay {
  public:
    PanDay(const Pan& pan, const FoodPlan& plan, const Limits& limits,
           std::span<const Entry> entries, Instant now)
        : pan_(pan),
          plan_(plan),
          limits_(limits),
          history_(historyOf(pan, entries, now)),
          standing_(standingOf(pan, plan.rule, limits, entries, now)),
          since_(firstOf(pan, entries, now)) {}

    [[nodiscard]] const Pan& pan() const { return pan_; }
    [[nodiscard]] bool isThereBy(Instant at) const { return since_ && *since_ <= at; }
    [[nodiscard]] bool isGone() const {
        return standing_.lost || standing_.control == Control::Discarded;
    }
    [[nodiscard]] Instant canWaitUntil() const {
        return standing_.measureBy.value_or(Instant::max());
    }

    [[nodiscard]] bool answers(const PlannedCheck& check, const Window& window) const {
        const bool isToHeat = check.occasion == Occasion::Cooked;
        // A pan is filled as pieces come off the heat. The whole dish is not done by its first one.
        if (isToHeat &&
            isHeatedFrom(pan_.number > 0 ? std::min(window.from, since_.value_or(window.from))
                                         : window.from))
            return true;
        if (window.until < window.from) return false;
        const bool isRaw = plan_.rule.isCookedHere && !standing_.isCooked;
        const bool isForHot = isToHeat || isHot(check.purpose);
        if (!(isRaw && isForHot) && needsNone(window)) return true;
        const bool mustBeHot =
            isForHot && (isToHeat || isRaw || (plan_.cooked && !isHeatedFrom(Instant::min())));
        return std::any_of(
            history_.moments.begin(), history_.moments.end(), [&](const Moment& moment) {
                if (moment.at < window.from || moment.at > window.until) return false;
                if (const auto* start = std::get_if<TimeStart>(&moment.step))
                    return start->isTrusted && !mustBeHot;
                const auto* measured = std::get_if<Measured>(&moment.step);
                return measured && measured->isTrusted && (!mustBeHot || isHot(measured->purpose));
            });
    }

  private:
    static std::optional<Instant> firstOf(const Pan& pan, std::span<const Entry> entries,
                                          Instant now) {
        std::optional<Instant> first;
        const auto note = [&](const auto& fact) {
            if constexpr (requires { fact.pan; })
                if (fact.pan == pan && fact.at <= now)
                    first = std::min(first.value_or(now), fact.at);
        };
        for (const Entry& entry : entries)
            if (!entry.isTakenBack) std::visit(note, entry.fact);
        return first;
    }

    /// Whether a reading shows that it was cooked, or reheated when it came cooked.
    [[nodiscard]] bool isHeatedFrom(Instant from) const {
        return std::any_of(
            history_.moments.begin(), history_.moments.end(), [&](const Moment& moment) {
                const auto* measured = std::get_if<Measured>(&moment.step);
                return moment.at >= from && measured && measured->isTrusted && showsHeat(*measured);
            });
    }
    [[nodiscard]] bool showsHeat(const Measured& measured) const {
        if (!isHot(measured.purpose)) return false;
        FoodMeasured one;
        one.purpose = plan_.rule.isCookedHere                     ? Purpose::Cook
                      : measured.purpose == Purpose::ReheatPacked ? Purpose::ReheatPacked
                                                                  : Purpose::Reheat;
        one.held = measured.held;
        return std::all_of(measured.values.begin(), measured.values.end(),
                           [&](const Reading& value) {
                               one.reading = value;
                               return isWithin(one, plan_.rule, limits_);
                           });
    }

    /// Whether it was cooling by then, or under a time control that asks for no reading.
    [[nodiscard]] bool needsNone(const Window& window) const {
        const auto& cooling = standing_.cooling;
        const bool isCold = cooling && cooling->ended && *cooling->ended < window.from;
        return std::any_of(history_.moments.begin(), history_.moments.end(),
                           [&](const Moment& moment) {
                               if (moment.at > window.until) return false;
                               if (std::get_if<CoolingBegun>(&moment.step))
                                   return cooling && !isCold;
                               return std::get_if<TimeStart>(&moment.step) && standing_.time &&
                                      !hasWarmest(standing_.time->rule);
                           });
    }

    Pan pan_;
    const FoodPlan& plan_;
    const Limits& limits_;
    History history_;
    Standing standing_;
    std::optional<Instant> since_;  ///< its own record, not that of the whole dish
};

/// Notes who has answered and who is still to be read.
void settle(PlannedCheck& check, const Window& window, const std::vector<PanDay>& pans,
            const PanDay& whole) {
    std::vector<const PanDay*> there;
    for (const PanDay& pan : pans)
        if (pan.isThereBy(window.until)) there.push_back(&pan);
    // Nothing was in pans yet.
    if (there.empty()) there.push_back(&whole);
    std::vector<const PanDay*> missing;
    for (const PanDay* pan : there) {
        if (pan->answers(check, window))
            check.isDone = true;
        else if (!pan->isGone())
            missing.push_back(pan);
    }
    check.isDone = check.isDone && missing.empty();
    std::stable_sort(missing.begin(), missing.end(), [](const PanDay* a, const PanDay* b) {
        return a->canWaitUntil() < b->canWaitUntil();
    });
    for (const PanDay* pan : missing)
        check.missing.push_back(pan->pan());
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
    std::vector<PanDay> pans;
    for (const Pan& pan : pansOf(plan.dish, entries))
        pans.emplace_back(pan, plan, limits, entries, now);
    const PanDay whole({plan.dish, 0}, plan, limits, entries, now);
    for (std::size_t i = 0; i < checks.size(); ++i) {
        Window window{checks[i].due - kCheckAhead, now};
        if (i + 1 < checks.size())
            window.until = std::min(now, std::max(checks[i + 1].due - kCheckAhead, checks[i].due));
        settle(checks[i], window, pans, whole);
    }
    return checks;
}

}  // namespace cinder::safety
