#include "plan/search/exact_model.h"

#include <algorithm>
#include <bit>
#include <set>

namespace cinder::plan::search {

ExactModel::ExactModel(const Project& project, Slot deadline) : project_(project) {
    ofNumber_.resize(static_cast<std::size_t>(project.size()) + 1);
    addNumbers(deadline);
    if (isRefuted_) return;
    addResources();
    addTeams();
    orderForcedPairs();
}

void ExactModel::addNumbers(Slot deadline) {
    const Slot end = std::min(deadline, project_.horizon);
    for (Member j = 0; j < project_.size(); ++j) {
        const Slot latest = std::min(end, project_.deadline[j]) - project_.duration[j];
        isRefuted_ = isRefuted_ || project_.earliest[j] > latest;
        store_.add(project_.earliest[j], latest);
    }
    isRefuted_ = isRefuted_ || end < 0;
    store_.add(0, end);
    for (Member j = 0; j < project_.size(); ++j)
        store_.addDifference(start(j), makespan(), project_.duration[j]);
    for (const Arc& arc : project_.arcs) {
        if (arc.toFinish) continue;  // a finish that may come later bounds no start
        const Slot lag = arc.lag + (arc.fromFinish ? project_.duration[arc.from] : 0);
        store_.addDifference(start(arc.from), start(arc.to), lag);
    }
    // Once around, so that every difference is looked at even where nothing moves.
    for (Member j = 0; j < project_.size() && !isRefuted_; ++j) {
        isRefuted_ = !store_.raise({makespan(), project_.earliest[j] + project_.duration[j]});
    }
    bool hasChanged = true;
    for (Member round = 0; hasChanged && !isRefuted_; ++round) {
        hasChanged = false;
        for (const Arc& arc : project_.arcs) {
            if (arc.toFinish || isRefuted_) continue;
            const Slot lag = arc.lag + (arc.fromFinish ? project_.duration[arc.from] : 0);
            const Bound later{start(arc.to), store_.least(start(arc.from)) + lag};
            const Bound earlier{start(arc.from) ^ 1, lag - store_.most(start(arc.to))};
            hasChanged = hasChanged || !store_.isTrue(later) || !store_.isTrue(earlier);
            isRefuted_ = !store_.raise(later) || !store_.raise(earlier);
        }
    }
}

void ExactModel::addResources() {
    const Lanes& lanes = project_.base.lanes();
    const std::int32_t perWord = 64 / lanes.bits;
    const std::uint64_t mask = (std::uint64_t{1} << (lanes.bits - 1)) - 1;
    for (std::int32_t lane = 0; lane < lanes.words * perWord; ++lane) {
        const std::int32_t shift = (lane % perWord) * lanes.bits;
        std::vector<Use> uses;
        for (Member j = 0; j < project_.size(); ++j) {
            const auto units = static_cast<std::int64_t>(
                project_.demand[j * lanes.words + lane / perWord] >> shift & mask);
            if (units > 0 && project_.duration[j] > 0)
                uses.push_back({start(j), 0, project_.duration[j], units});
        }
        const std::int64_t most = project_.base.mostFree(lane);
        addCumulative(most, std::move(uses), loadsOf(lane, most));
    }
}

/// Everybody with a skill, and everybody with one of two skills: whatever needs only them.
void ExactModel::addTeams() {
    std::set<People> single;
    for (const Segment& segment : project_.segments)
        single.insert(segment.skilled);
    std::set<People> teams = single;
    for (const People a : single)
        for (const People b : single)
            teams.insert(a | b);
    for (const People team : teams) {
        std::vector<Use> uses;
        for (Member j = 0; j < project_.size(); ++j) {
            if (project_.isSplit(j)) continue;
            const Range range = project_.segmentsOf[j];
            for (std::int32_t s = range.begin; s < range.end; ++s) {
                const Segment& segment = project_.segments[s];
                if ((segment.skilled & ~team) == 0 && segment.length > 0)
                    uses.push_back({start(j), segment.offset, segment.length, segment.people});
            }
        }
        addCumulative(std::popcount(team), std::move(uses), workOf(team));
    }
}

std::vector<FixedLoad> ExactModel::loadsOf(std::int32_t lane, std::int64_t most) const {
    std::vector<FixedLoad> loads;
    if (!project_.isUneven) return loads;
    for (Slot t = 0; t < project_.horizon; ++t) {
        const std::int64_t gone = most - project_.base.freeAt(lane, t);
        if (gone == 0) continue;
        if (!loads.empty() && loads.back().end == t && loads.back().units == gone)
            loads.back().end = t + 1;
        else
            loads.push_back({t, t + 1, gone});
    }
    return loads;
}

std::vector<FixedLoad> ExactModel::workOf(People team) const {
    std::vector<FixedLoad> loads;
    for (Slot t = 0; t < project_.horizon; ++t) {
        const std::int64_t busy = std::popcount(project_.base.busyAt(t) & team);
        if (busy == 0) continue;
        if (!loads.empty() && loads.back().end == t && loads.back().units == busy)
            loads.back().end = t + 1;
        else
            loads.push_back({t, t + 1, busy});
    }
    return loads;
}

void ExactModel::addCumulative(std::int64_t capacity, std::vector<Use> uses,
                               std::vector<FixedLoad> loads) {
    std::int64_t sum = 0;
    for (const Use& use : uses)
        sum += use.units;
    if (sum <= capacity && loads.empty()) return;
    for (std::size_t a = 0; a < uses.size(); ++a)
        for (std::size_t b = a + 1; b < uses.size(); ++b) {
            const Use& one = uses[a];
            const Use& two = uses[b];
            if (one.start != two.start && one.units + two.units > capacity)
                pairs_.add(one.start, two.start, one.offset + one.length - two.offset,
                           two.offset + two.length - one.offset);
        }
    for (const Use& use : uses) {
        auto& mine = ofNumber_[static_cast<std::size_t>(use.start >> 1)];
        if (mine.empty() || mine.back() != cumulatives_.size()) mine.push_back(cumulatives_.size());
    }
    cumulatives_.emplace_back(capacity, std::move(uses), std::move(loads));
    isToDo_.push_back(true);
}

/// Where the links alone rule out one order of a pair, the other one is a link.
void ExactModel::orderForcedPairs() {
    const std::int32_t size = project_.size();
    Row<Slot> distance(size * size, -kNoSlot);
    const auto add = [&](Member a, Member b, Slot lag) {
        if (distance[a * size + b] >= lag) return;
        for (Member u = 0; u < size; ++u) {
            const Slot toA = u == a ? 0 : distance[u * size + a];
            if (toA == -kNoSlot) continue;
            for (Member v = 0; v < size; ++v) {
                const Slot fromB = v == b ? 0 : distance[b * size + v];
                if (fromB == -kNoSlot) continue;
                distance[u * size + v] = std::max(distance[u * size + v], toA + lag + fromB);
            }
        }
    };
    for (const Arc& arc : project_.arcs)
        if (!arc.toFinish)
            add(arc.from, arc.to, arc.lag + (arc.fromFinish ? project_.duration[arc.from] : 0));
    const auto isRuledOut = [&](Member first, Member second, Slot lag) {
        const Slot back = distance[second * size + first];
        return back != -kNoSlot && back + lag > 0;
    };
    for (bool hasChanged = true; hasChanged && !isRefuted_;) {
        hasChanged = false;
        for (const PairOrders::Pair& pair : pairs_.pairs()) {
            const Member a = pair.a >> 1;
            const Member b = pair.b >> 1;
            const bool isAOut = isRuledOut(a, b, pair.abLag);
            const bool isBOut = isRuledOut(b, a, pair.baLag);
            isRefuted_ = isRefuted_ || (isAOut && isBOut);
            if (isAOut == isBOut) continue;
            const Member first = isAOut ? b : a;
            const Member second = isAOut ? a : b;
            const Slot lag = isAOut ? pair.baLag : pair.abLag;
            if (distance[first * size + second] >= lag) continue;
            add(first, second, lag);
            store_.addDifference(start(first), start(second), lag);
            hasChanged = true;
        }
        for (Member j = 0; j < size; ++j)
            isRefuted_ = isRefuted_ || distance[j * size + j] > 0;
    }
}

bool ExactModel::propagate() {
    for (;;) {
        const std::size_t before = moved_.size();
        const bool isFine = store_.propagate(moved_);
        for (std::size_t k = before; k < moved_.size(); ++k)
            for (const std::size_t c : ofNumber_[static_cast<std::size_t>(moved_[k] >> 1)])
                isToDo_[c] = true;
        if (!isFine) return false;
        if (!moved_.empty()) {
            const Side side = moved_.back();
            moved_.pop_back();
            if (!pairs_.propagate(store_, side)) return false;
            continue;
        }
        const auto next = std::find(isToDo_.begin(), isToDo_.end(), true);
        if (next == isToDo_.end()) return true;
        *next = false;
        if (!cumulatives_[static_cast<std::size_t>(next - isToDo_.begin())].propagate(store_)) {
            *next = true;
            return false;
        }
    }
}

}  // namespace cinder::plan::search
