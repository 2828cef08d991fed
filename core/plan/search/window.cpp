#include "plan/search/window.h"

#include <algorithm>

namespace cinder::plan::search {

Window::Window(const Project& project, const Project& opposite)
    : project_(project),
      opposite_(opposite),
      timeline_(project.base),
      pushing_(opposite.base),
      pushedBefore_(opposite),
      freed_(std::max(project.horizon, opposite.horizon)) {
    const std::int32_t size = project.size();
    for (Member a = 0; a < size; ++a) {
        Range range{out_.size(), 0};
        for (const Arc& arc : project.arcs)
            if (arc.from == a) out_.add(arc);
        range.end = out_.size();
        arcsOutOf_.add(range);
    }
    rankMembers();
    const Lanes& lanes = project.base.lanes();
    for (std::int32_t lane = 0; lane < lanes.words * (64 / lanes.bits); ++lane)
        weight_.add(kWhole / std::max<std::int64_t>(1, project.base.mostFree(lane)));
    use_.assign((std::max(project.horizon, opposite.horizon) + 2) * lanes.words, 0);
    zone_.assign(size, Zone::Before);
    for (auto* row : {&clashBefore_, &keptClashBefore_})
        row->assign(size + 1, 0);
    for (auto* row : {&after_, &order_, &keptOrder_, &place_})
        row->assign(size, 0);
    for (auto* row :
         {&pushed_, &latest_, &due_, &head_, &ready_, &start_, &keptReady_, &keptStart_})
        row->assign(size, 0);
}

void Window::rankMembers() {
    const std::int32_t size = project_.size();
    rank_.assign(size, 0);
    Row<std::int32_t> open(size, 0);
    for (const Arc& arc : out_)
        ++open[arc.to];
    for (Member j = 0; j < size; ++j)
        if (open[j] == 0) ranked_.add(j);
    for (std::int32_t k = 0; k < ranked_.size(); ++k) {
        const Member j = ranked_[k];
        rank_[j] = k;
        for (std::int32_t a = arcsOutOf_[j].begin; a < arcsOutOf_[j].end; ++a)
            if (--open[out_[a].to] == 0) ranked_.add(out_[a].to);
    }
}

bool Window::open(const Row<Member>& order, const Draft& draft, Range range) {
    range_ = range;
    count_ = range.end - range.begin;
    makespan_ = draft.makespan;
    for (std::int32_t k = 0; k < order.size(); ++k) {
        const Member j = order[k];
        zone_[j] = k < range.begin ? Zone::Before : k < range.end ? Zone::Window : Zone::After;
    }
    after_.clear();
    for (std::int32_t k = range.end; k < order.size(); ++k)
        after_.add(order[k]);
    std::copy_n(order.from(range.begin), count_, order_.data());
    place({0, count_});
    pushAfter(draft);
    boundMembers(draft);
    if (!occupyBefore(draft)) return false;
    clash_ = 0;
    for (std::int32_t k = 0; k < count_; ++k) {
        const Member j = order_[k];
        start_[j] = draft.start[j];
        ready_[j] = readyAt(j);
        clashBefore_[k] = clash_;
        put(j);
    }
    keep(0);
    return true;
}

/// A pass of the opposite direction over those after the window.
void Window::pushAfter(const Draft& draft) {
    std::sort(after_.begin(), after_.end(), [&](Member a, Member b) {
        return draft.finish[a] != draft.finish[b] ? draft.finish[a] > draft.finish[b]
                                                  : rank_[a] > rank_[b];
    });
    pushing_.resetTo(opposite_.base);
    pushedBefore_.begin();
    std::fill(use_.begin(), use_.end(), std::uint64_t{0});
    const std::int32_t words = pushing_.lanes().words;
    firstUse_ = makespan_;
    for (const Member j : after_) {
        Slot from = 0;
        for (std::int32_t a = opposite_.arcsInto[j].begin; a < opposite_.arcsInto[j].end; ++a)
            from = std::max(from, pushed_[opposite_.arcs[a].from] + opposite_.arcs[a].lag);
        const std::uint64_t* const demand = opposite_.demand.from(j * words);
        const Slot length = project_.duration[j];
        pushed_[j] = pushedBefore_.lay(j, from, pushing_);
        pushing_.occupy(demand, pushed_[j], pushed_[j] + length);
        latest_[j] = makespan_ - pushed_[j] - length;
        firstUse_ = std::min(firstUse_, latest_[j]);
        for (Slot t = std::max(0, latest_[j]); t < latest_[j] + length; ++t)
            for (std::int32_t w = 0; w < words; ++w)
                use_[t * words + w] += demand[w];
    }
    pushedBefore_.end();
}

void Window::boundMembers(const Draft& draft) {
    for (std::int32_t k = 0; k < count_; ++k) {
        const Member j = order_[k];
        head_[j] = 0;
        for (std::int32_t a = project_.arcsInto[j].begin; a < project_.arcsInto[j].end; ++a) {
            const Arc& arc = project_.arcs[a];
            if (zone_[arc.from] == Zone::Before)
                head_[j] = std::max(head_[j], draft.start[arc.from] + arc.lag);
        }
        latest_[j] = makespan_ - project_.duration[j];
        for (std::int32_t a = arcsOutOf_[j].begin; a < arcsOutOf_[j].end; ++a)
            if (zone_[out_[a].to] == Zone::After)
                latest_[j] = std::min(latest_[j], latest_[out_[a].to] - out_[a].lag);
    }
    for (std::int32_t k = count_ - 1; k >= 0; --k) {
        const Member j = order_[k];
        due_[j] = latest_[j];
        for (std::int32_t a = arcsOutOf_[j].begin; a < arcsOutOf_[j].end; ++a)
            if (zone_[out_[a].to] == Zone::Window)
                due_[j] = std::min(due_[j], due_[out_[a].to] - out_[a].lag);
    }
}

/// False when those before the window leave no room for those after it to come a slot earlier.
bool Window::occupyBefore(const Draft& draft) {
    timeline_.resetTo(project_.base);
    lastBefore_ = 0;
    for (Member j = 0; j < project_.size(); ++j) {
        if (zone_[j] != Zone::Before) continue;
        lastBefore_ = std::max(lastBefore_, draft.finish[j]);
        for (std::int32_t a = arcsOutOf_[j].begin; a < arcsOutOf_[j].end; ++a)
            if (zone_[out_[a].to] == Zone::After &&
                draft.start[j] + out_[a].lag > latest_[out_[a].to] - 1)
                return false;
        timeline_.occupy(project_.demand.from(j * timeline_.lanes().words), draft.start[j],
                         draft.finish[j]);
    }
    if (lastBefore_ > makespan_ - 1) return false;
    return shortageBetween(0, lastBefore_, 1) == 0;
}

/// The sum over the lanes of a word of what `measure` says of their bits' place, weighted.
template <class Measure>
std::int64_t Window::sumOfLanes(std::int32_t word, Measure measure) const {
    const Lanes& lanes = timeline_.lanes();
    const std::uint64_t lane = (std::uint64_t{1} << (lanes.bits - 1)) - 1;
    const std::int32_t perWord = 64 / lanes.bits;
    std::int64_t sum = 0;
    for (std::int32_t l = 0; l < perWord; ++l) {
        const auto unitsOf = [&](std::uint64_t lanesOfWord) {
            return static_cast<std::int64_t>(lanesOfWord >> (l * lanes.bits) & lane);
        };
        sum += measure(unitsOf) * weight_[word * perWord + l];
    }
    return sum;
}

/// What those after the window, `shift` slots earlier, lack at a slot.
std::int64_t Window::shortage(Slot at, Slot shift) const {
    const Lanes& lanes = timeline_.lanes();
    std::int64_t sum = 0;
    for (std::int32_t w = 0; w < lanes.words; ++w) {
        const std::uint64_t use = use_[(at + shift) * lanes.words + w];
        const std::uint64_t free = timeline_.freeWord(at, w);
        if (use == 0 || lanes.suffices(free, use)) continue;
        sum += sumOfLanes(w, [&](const auto& unitsOf) {
            return std::max(std::int64_t{0}, unitsOf(use) - unitsOf(free));
        });
    }
    return sum;
}

/// How much more they lack there, a slot earlier, with `demand` in use.
std::int64_t Window::shortageDueTo(const std::uint64_t* demand, Slot at) const {
    const Lanes& lanes = timeline_.lanes();
    std::int64_t sum = 0;
    for (std::int32_t w = 0; w < lanes.words; ++w) {
        const std::uint64_t use = use_[(at + 1) * lanes.words + w];
        const std::uint64_t free = timeline_.freeWord(at, w);
        const std::uint64_t left = free - demand[w];
        if (use == 0 || lanes.suffices(left, use)) continue;
        sum += sumOfLanes(w, [&](const auto& unitsOf) {
            return std::max(std::int64_t{0}, unitsOf(use) - unitsOf(left)) -
                   std::max(std::int64_t{0}, unitsOf(use) - unitsOf(free));
        });
    }
    return sum;
}

std::int64_t Window::shortageBetween(Slot from, Slot until, Slot shift) const {
    std::int64_t sum = 0;
    for (Slot t = std::max(from, firstUse_ - shift); t < std::min(until, makespan_ - shift); ++t)
        sum += shortage(t, shift);
    return sum;
}

Slot Window::readyAt(Member j) const {
    Slot from = head_[j];
    for (std::int32_t a = project_.arcsInto[j].begin; a < project_.arcsInto[j].end; ++a) {
        const Arc& arc = project_.arcs[a];
        if (zone_[arc.from] == Zone::Window) from = std::max(from, start_[arc.from] + arc.lag);
    }
    return from;
}

/// What a member adds to the clash of those that are laid, itself not among them.
std::int64_t Window::clashOf(Member j) const {
    const Slot at = start_[j];
    const Slot finish = at + project_.duration[j];
    const std::uint64_t* const demand = project_.demand.from(j * timeline_.lanes().words);
    std::int64_t clash = kWhole * std::max(0, at + 1 - latest_[j]);
    for (Slot t = std::max(at, firstUse_ - 1); t < std::min(finish, makespan_ - 1); ++t)
        clash += shortageDueTo(demand, t);
    return clash;
}

void Window::put(Member j) {
    clash_ += clashOf(j);
    timeline_.occupy(project_.demand.from(j * timeline_.lanes().words), start_[j],
                     start_[j] + project_.duration[j]);
}

bool Window::isAsLong() const {
    Slot last = lastBefore_;
    for (std::int32_t k = 0; k < count_; ++k) {
        const Member j = order_[k];
        if (start_[j] > latest_[j]) return false;
        last = std::max(last, start_[j] + project_.duration[j]);
    }
    return shortageBetween(0, last, 0) == 0;
}

void Window::readOrder(Row<Member>& order) const {
    std::copy_n(order_.data(), count_, order.from(range_.begin));
}

void Window::readStarts(Row<Slot>& start) const {
    for (std::int32_t k = 0; k < count_; ++k)
        start[order_[k]] = start_[order_[k]];
    for (const Member j : after_)
        start[j] = latest_[j] - (isShorter() ? 1 : 0);
}

}  // namespace cinder::plan::search
