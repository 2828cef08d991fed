#include "plan/search/window_search.h"

#include <algorithm>
#include <numeric>

namespace cinder::plan::search {

WindowSearch::WindowSearch(const Arena& arena, std::uint64_t seed)
    : arena_(arena), rng_(seed, 1), draft_(arena.backward), kept_(arena.backward) {
    makers_.emplace_back(arena.backward, nullptr);
    makers_.emplace_back(arena.forward, nullptr);
    windows_.emplace_back(arena.backward, arena.forward);
    windows_.emplace_back(arena.forward, arena.backward);
    sequence_.order.assign(arena.backward.size(), 0);
    placeOfStart_.assign(std::max(arena.backward.horizon, arena.forward.horizon) + 2, 0);
    for (Generator& maker : makers_)
        maker.rememberPasses();
}

std::int64_t WindowSearch::passes() const {
    const std::int64_t placements =
        windows_[kBackward].placements() + windows_[kForward].placements() +
        makers_[kBackward].placements() + makers_[kForward].placements();
    return placements / std::max(1, arena_.backward.size());
}

/// By start; of those that start together, who must be before others is.
void WindowSearch::sortByStart() {
    std::fill(placeOfStart_.begin(), placeOfStart_.end(), 0);
    for (const Slot start : draft_.start)
        ++placeOfStart_[start + 1];
    std::partial_sum(placeOfStart_.begin(), placeOfStart_.end(), placeOfStart_.begin());
    for (const Member j : windows_[side_].ranked())
        sequence_.order[placeOfStart_[draft_.start[j]]++] = j;
}

/// A pass in the order there is; false when it would be longer than `longest`.
bool WindowSearch::generate(Slot longest) {
    if (!makers_[side_].generate(sequence_, 0, draft_, longest)) return false;
    sortByStart();
    return true;
}

void WindowSearch::justify() {
    sortByStart();
    generate();
}

void WindowSearch::turn() {
    mirror(project(side_), draft_, kept_);
    std::swap(draft_, kept_);
    side_ = side_ == kBackward ? kForward : kBackward;
    justify();
}

/// One window, of a size and in a place drawn at random; takes not much more than `passes`.
void WindowSearch::rework(Slot longest, std::int64_t passes) {
    constexpr double kSmallest = 0.15;  // of all members
    constexpr double kLargest = 0.4;
    constexpr std::int64_t kMostPasses = 40;
    constexpr std::int32_t kPatience = 60;
    const std::int32_t size = draft_.start.size();
    const double share = kSmallest + (kLargest - kSmallest) * rng_.unit();
    const std::int32_t width = std::max(2, static_cast<std::int32_t>(size * share));
    // Windows reach over both ends, so that the members there are in as many as those in between.
    const std::int32_t first =
        static_cast<std::int32_t>(rng_.below(static_cast<std::uint32_t>(size))) - width / 2;
    const Range range{std::max(0, first), std::min(size, first + width)};
    Window& window = windows_[side_];
    if (range.end - range.begin < 2 || !window.open(sequence_.order, draft_, range)) return;
    window.improve(rng_, std::min(kMostPasses, passes) * size, kPatience);
    if (window.isShorter() || window.isAsLong()) {
        window.readStarts(draft_.start);
        justify();
        return;
    }
    // The order may still do: what comes after need not lie as late as it can.
    kept_ = draft_;
    window.readOrder(sequence_.order);
    if (generate(longest)) return;
    std::swap(draft_, kept_);
    sortByStart();
}

void WindowSearch::run(const Limits& limits, Draft& best) {
    constexpr double kStray = 0.02;  // of the makespan, in the beginning
    side_ = kBackward;
    draft_ = best;
    justify();
    while (passes() < limits.schedules && best.makespan > limits.bound &&
           !(limits.endNow && limits.endNow())) {
        const std::int64_t left = limits.schedules - passes();
        const double share = static_cast<double>(left) / static_cast<double>(limits.schedules);
        const auto stray = static_cast<Slot>(kStray * share * best.makespan + rng_.unit());
        rework(best.makespan + stray, left);
        if (draft_.makespan <= best.makespan) {
            if (side_ == kBackward)
                best = draft_;
            else
                mirror(arena_.forward, draft_, best);
        }
        if (rng_.below(2) == 0) turn();
    }
}

}  // namespace cinder::plan::search
