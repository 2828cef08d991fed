#include "plan/search/order_rules.h"

#include <algorithm>
#include <bit>
#include <cmath>

namespace cinder::plan::search {

namespace {

/// Latest finish first; ties by latest start, then by position, so that an order is one order.
struct LaterFirst {
    const Draft& draft;
    bool operator()(Member a, Member b) const {
        if (draft.finish[a] != draft.finish[b]) return draft.finish[a] > draft.finish[b];
        if (draft.start[a] != draft.start[b]) return draft.start[a] > draft.start[b];
        return a < b;
    }
};

bool isStrict(const Distances* distances, const Arc& arc) {
    return distances == nullptr ? arc.lag >= 0 || arc.fromFinish
                                : distances->precedes(arc.from, arc.to);
}

}  // namespace

OrderRules::OrderRules(const Project& project, const Distances* distances, Slot horizon)
    : project_(project) {
    const std::int32_t size = project.size();
    for (Member a = 0; a < size; ++a) {
        Range range{followers_.size(), 0};
        for (const Arc& arc : project.arcs)
            if (arc.from == a && isStrict(distances, arc)) followers_.add(arc.to);
        range.end = followers_.size();
        followersOf_.add(range);
    }
    openBefore_.assign(size, 0);
    odds_.assign(size, 0.0);
    place_.assign(size, 0);
    for (auto* list : {&ready_, &before_, &middle_, &after_})
        list->assign(size, 0);
    load_.assign(horizon + 1, 0);

    // Scarcity: all the work a resource must carry, over what it can carry in a slot.
    const std::int32_t words = project.base.lanes().words;
    const std::int32_t bits = project.base.lanes().bits;
    const std::uint64_t mask = (std::uint64_t{1} << (bits - 1)) - 1;
    Row<std::int64_t> total(words * (64 / bits), 0);
    const auto units = [&](Member j, std::int32_t lane) {
        const std::int32_t perWord = 64 / bits;
        return static_cast<std::int64_t>(
            project.demand[j * words + lane / perWord] >> ((lane % perWord) * bits) & mask);
    };
    for (Member j = 0; j < size; ++j)
        for (std::int32_t lane = 0; lane < total.size(); ++lane)
            total[lane] += units(j, lane) * project.duration[j];
    weight_.assign(size, 0);
    for (Member j = 0; j < size; ++j) {
        for (std::int32_t lane = 0; lane < total.size(); ++lane)
            if (total[lane] > 0) weight_[j] += units(j, lane) * 100'000 / total[lane];
        const Range range = project.segmentsOf[j];
        for (std::int32_t s = range.begin; s < range.end; ++s)
            weight_[j] += 500 * project.segments[s].people * project.segments[s].length /
                          std::max(1, project.duration[j]) /
                          std::max(1, std::popcount(project.segments[s].skilled));
    }
    tail_ = tailsOf(project).ofStart;
}

void OrderRules::sample(Rng& rng, double eagerness, Sequence& out) {
    const std::int32_t size = project_.size();
    std::fill(openBefore_.begin(), openBefore_.end(), 0);
    for (const Member b : followers_)
        ++openBefore_[b];
    std::int32_t count = 0;
    for (Member j = 0; j < size; ++j)
        if (openBefore_[j] == 0) ready_[count++] = j;
    for (std::int32_t k = 0; k < size; ++k) {
        Slot shortest = kNoSlot;
        for (std::int32_t r = 0; r < count; ++r)
            shortest = std::min(shortest, tail_[ready_[r]] - project_.duration[ready_[r]]);
        double sum = 0;
        for (std::int32_t r = 0; r < count; ++r) {
            const Slot regret = tail_[ready_[r]] - project_.duration[ready_[r]] - shortest;
            sum += odds_[r] = std::pow(regret + 1.0, eagerness);
        }
        double draw = rng.unit() * sum;
        std::int32_t chosen = 0;
        while (chosen + 1 < count && (draw -= odds_[chosen]) >= 0)
            ++chosen;
        const Member j = ready_[chosen];
        ready_[chosen] = ready_[--count];
        out.order[k] = j;
        for (std::int32_t f = followersOf_[j].begin; f < followersOf_[j].end; ++f)
            if (--openBefore_[followers_[f]] == 0) ready_[count++] = followers_[f];
    }
}

void OrderRules::byFinish(const Draft& draft, Sequence& out) {
    for (Member j = 0; j < project_.size(); ++j)
        out.order[j] = j;
    std::sort(out.order.begin(), out.order.end(), LaterFirst{draft});
    makeFeasible(out);
}

void OrderRules::loadProfile(const Draft& draft) {
    std::fill(load_.begin(), load_.begin() + draft.makespan + 1, 0);
    for (Member j = 0; j < project_.size(); ++j) {
        load_[draft.start[j]] += weight_[j];
        load_[draft.finish[j]] -= weight_[j];
    }
    // Twice summed: first the load of a slot, then the load up to it.
    std::int64_t level = 0;
    std::int64_t sum = 0;
    for (Slot t = 0; t <= draft.makespan; ++t) {
        level += load_[t];
        const std::int64_t before = sum;
        sum += level;
        load_[t] = before;
    }
}

void OrderRules::crossPeak(Rng& rng, const Draft& father, const Draft& mother, Sequence& out) {
    loadProfile(father);
    const Slot first = *std::min_element(father.start.begin(), father.start.end());
    const Slot span = std::max(1, father.makespan - first);
    const auto width = static_cast<Slot>(
        span / 10 + static_cast<Slot>(rng.below(static_cast<std::uint32_t>(span * 2 / 5 + 1))));
    // The busier of two random stretches: a peak, but not always the same one.
    Slot low = 0;
    std::int64_t busiest = -1;
    for (int draw = 0; draw < 2; ++draw) {
        const Slot at =
            first + static_cast<Slot>(rng.below(static_cast<std::uint32_t>(span - width + 1)));
        const std::int64_t load = load_[at + width] - load_[at];
        if (load <= busiest) continue;
        busiest = load;
        low = at;
    }
    const Slot high = low + width;
    std::int32_t before = 0;
    std::int32_t middle = 0;
    std::int32_t after = 0;
    for (Member j = 0; j < project_.size(); ++j) {
        if (father.finish[j] > high)
            before_[before++] = j;
        else if (father.finish[j] > low)
            middle_[middle++] = j;
        else
            after_[after++] = j;
    }
    std::sort(before_.data(), before_.data() + before, LaterFirst{mother});
    std::sort(middle_.data(), middle_.data() + middle, LaterFirst{father});
    std::sort(after_.data(), after_.data() + after, LaterFirst{mother});
    Member* const order = out.order.data();
    std::copy_n(after_.data(), after,
                std::copy_n(middle_.data(), middle, std::copy_n(before_.data(), before, order)));
    makeFeasible(out);
}

void OrderRules::mutate(Rng& rng, double chance, Sequence& sequence) {
    const std::int32_t size = project_.size();
    for (std::int32_t k = 0; k < size; ++k)
        place_[sequence.order[k]] = k;
    for (std::int32_t k = 0; k + 1 < size; ++k) {
        if (rng.unit() >= chance) continue;
        const Member j = sequence.order[k];
        std::int32_t limit = size;  // the first of those that must follow
        for (std::int32_t f = followersOf_[j].begin; f < followersOf_[j].end; ++f)
            limit = std::min(limit, place_[followers_[f]]);
        if (limit <= k + 1) continue;
        const std::int32_t target =
            k + 1 + static_cast<std::int32_t>(rng.below(static_cast<std::uint32_t>(limit - k - 1)));
        for (std::int32_t m = k; m < target; ++m) {
            sequence.order[m] = sequence.order[m + 1];
            place_[sequence.order[m]] = m;
        }
        sequence.order[target] = j;
        place_[j] = target;
    }
}

void OrderRules::makeFeasible(Sequence& sequence) {
    const std::int32_t size = project_.size();
    std::fill(openBefore_.begin(), openBefore_.end(), 0);
    for (const Member b : followers_)
        ++openBefore_[b];
    for (std::int32_t k = 0; k < size; ++k) {
        std::int32_t at = k;
        while (at < size && openBefore_[sequence.order[at]] != 0)
            ++at;
        if (at == size) return;
        std::rotate(sequence.order.begin() + k, sequence.order.begin() + at,
                    sequence.order.begin() + at + 1);
        const Member j = sequence.order[k];
        for (std::int32_t f = followersOf_[j].begin; f < followersOf_[j].end; ++f)
            --openBefore_[followers_[f]];
    }
}

}  // namespace cinder::plan::search
