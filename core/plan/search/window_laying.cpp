// The window's members laid in one order after another.

#include <algorithm>

#include "plan/search/window.h"

namespace cinder::plan::search {

/// The least clash of the whole order when a member starts at `at` or later: it, or one that must
/// follow it, is as late as that.
std::int64_t Window::leastClash(Member j, Slot at) const {
    return clash_ + kWhole * std::max(0, at + 1 - due_[j]);
}

/// Takes all from a place of the kept order on.
void Window::takeFrom(std::int32_t place) {
    std::int32_t known = place;
    while (keptClashBefore_[known] == kUnknown)
        ++known;
    clash_ = keptClashBefore_[known];
    for (std::int32_t k = count_ - 1; k >= place; --k) {
        const Member j = keptOrder_[k];
        timeline_.release(project_.demand.from(j * timeline_.lanes().words), start_[j],
                          start_[j] + project_.duration[j]);
        if (k < known) clash_ -= clashOf(j);
    }
    keptClashBefore_[place] = clash_;
}

/// Before anybody is laid anew: a member that goes back is out of the way of those that were behind
/// it, one that comes forward finds those gone that were before it.
void Window::seeMove(const Move& move) {
    freed_.clear();
    const Range gone = move.isLater ? Range{move.places.end - 1, move.places.end}
                                    : Range{move.places.begin + 1, move.places.end};
    for (std::int32_t k = gone.begin; k < gone.end; ++k) {
        const Member j = order_[k];
        freed_.add(keptStart_[j], keptStart_[j] + project_.duration[j]);
    }
}

/// Takes note of where a member was and is no more.
void Window::seeStart(Member j) {
    freed_.addLeft(keptStart_[j], start_[j], project_.duration[j]);
}

/// Whether a member, the same others laid before it as when it got the start that is kept, can find
/// no room before that.
bool Window::comesNoEarlier(Member j) const {
    return ready_[j] >= keptReady_[j] && !freed_.meets(ready_[j], keptStart_[j]);
}

/// Whether it must get that start again.
bool Window::keepsStart(Member j) const {
    const Slot at = keptStart_[j];
    return ready_[j] <= at && comesNoEarlier(j) &&
           timeline_.fits(project_.demand.from(j * timeline_.lanes().words), at,
                          at + project_.duration[j]);
}

/// Whether all that a move touches keeps its start: those between the places find no other room, or
/// the mover has none before its own. Then so do the rest.
bool Window::changesNothing(const Move& move) {
    seeMove(move);
    const Range places = move.places;
    if (!move.isLater) return comesNoEarlier(order_[places.begin]);
    return std::all_of(order_.from(places.begin), order_.from(places.end - 1),
                       [&](Member j) { return comesNoEarlier(j); });
}

/// Lays the order from a move on, until the clash must exceed what is kept. Returns how many places
/// of the order are laid then.
std::int32_t Window::lay(const Move& move) {
    const Range places = move.places;
    const Member mover = order_[move.isLater ? places.end - 1 : places.begin];
    seeMove(move);
    for (std::int32_t k = places.begin; k < count_; ++k) {
        const Member j = order_[k];
        if (k == places.end) {
            // The same are laid now as were: what differs is where.
            freed_.clear();
            for (std::int32_t c = places.begin; c < places.end; ++c)
                seeStart(order_[c]);
        }
        ready_[j] = readyAt(j);
        if (leastClash(j, ready_[j]) > keptClash_) return k;
        // The room that the mover itself left, when it goes back, is no other room for it.
        if (j == mover && move.isLater) freed_.clear();
        start_[j] = keptStart_[j];
        if (!keepsStart(j)) {
            start_[j] = timeline_.earliestFit(project_.demand.from(j * timeline_.lanes().words),
                                              ready_[j], project_.duration[j]);
            ++placements_;
        }
        if (leastClash(j, start_[j]) > keptClash_) return k;
        if (start_[j] + project_.duration[j] > project_.horizon) return k;
        if (j == mover && !move.isLater) {
            freed_.clear();
        } else if (start_[j] != keptStart_[j]) {
            seeStart(j);
        }
        clashBefore_[k] = clash_;
        put(j);
        if (clash_ > keptClash_) return k + 1;
    }
    return count_;
}

/// Moves one member to another place that the links allow; no place when nothing moved.
Window::Move Window::move(Rng& rng) {
    constexpr int kTries = 20;
    for (int n = 0; n < kTries; ++n) {
        const auto k = static_cast<std::int32_t>(rng.below(static_cast<std::uint32_t>(count_)));
        const Member j = order_[k];
        std::int32_t low = 0;
        std::int32_t high = count_ - 1;
        for (std::int32_t a = project_.arcsInto[j].begin; a < project_.arcsInto[j].end; ++a)
            if (zone_[project_.arcs[a].from] == Zone::Window)
                low = std::max(low, place_[project_.arcs[a].from] + 1);
        for (std::int32_t a = arcsOutOf_[j].begin; a < arcsOutOf_[j].end; ++a)
            if (zone_[out_[a].to] == Zone::Window) high = std::min(high, place_[out_[a].to] - 1);
        if (high <= low) continue;
        auto to =
            low + static_cast<std::int32_t>(rng.below(static_cast<std::uint32_t>(high - low)));
        if (to >= k) ++to;
        Member* const order = order_.data();
        if (to < k) {
            std::rotate(order + to, order + k, order + k + 1);
            place({to, k + 1});
            return {{to, k + 1}, false};
        }
        std::rotate(order + k, order + k + 1, order + to + 1);
        place({k, to + 1});
        return {{k, to + 1}, true};
    }
    return {};
}

/// Takes note of the places of the order.
void Window::place(Range range) {
    for (std::int32_t k = range.begin; k < range.end; ++k)
        place_[order_[k]] = k;
}

/// Keeps what is laid from a place on.
void Window::keep(std::int32_t from) {
    clashBefore_[count_] = clash_;
    std::copy(clashBefore_.from(from), clashBefore_.from(count_ + 1), keptClashBefore_.from(from));
    std::copy(order_.from(from), order_.from(count_), keptOrder_.from(from));
    for (std::int32_t k = from; k < count_; ++k) {
        keptReady_[order_[k]] = ready_[order_[k]];
        keptStart_[order_[k]] = start_[order_[k]];
    }
    keptClash_ = clash_;
}

/// Takes back what was laid from place `from` up to `laid`.
void Window::restore(std::int32_t from, std::int32_t laid) {
    const auto demand = [&](Member j) { return project_.demand.from(j * timeline_.lanes().words); };
    for (std::int32_t k = from; k < laid; ++k) {
        const Member j = order_[k];
        timeline_.release(demand(j), start_[j], start_[j] + project_.duration[j]);
    }
    std::copy(keptOrder_.from(from), keptOrder_.from(count_), order_.from(from));
    place({from, count_});
    for (std::int32_t k = from; k < count_; ++k) {
        const Member j = order_[k];
        ready_[j] = keptReady_[j];
        start_[j] = keptStart_[j];
        timeline_.occupy(demand(j), start_[j], start_[j] + project_.duration[j]);
    }
    clash_ = keptClash_;
}

void Window::improve(Rng& rng, std::int64_t placements, std::int32_t patience) {
    const std::int64_t most = placements_ + placements;
    for (std::int32_t waited = 0; waited <= patience && placements_ < most && !isShorter();
         ++waited) {
        const Move moved = move(rng);
        const Range places = moved.places;
        if (places.end == 0) return;
        if (changesNothing(moved)) {
            std::copy(order_.from(places.begin), order_.from(places.end),
                      keptOrder_.from(places.begin));
            std::fill(keptClashBefore_.from(places.begin + 1), keptClashBefore_.from(places.end),
                      kUnknown);
            continue;
        }
        takeFrom(places.begin);
        const std::int32_t laid = lay(moved);
        if (laid < count_ || clash_ > keptClash_) {
            restore(places.begin, laid);
            continue;
        }
        if (clash_ < keptClash_) waited = 0;
        keep(places.begin);
    }
}

}  // namespace cinder::plan::search
