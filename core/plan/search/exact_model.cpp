#include "plan/search/exact_model.h"

#include <algorithm>
#include <bit>
#include <set>

namespace cinder::plan::search {

namespace {

/// Teams side by side in a word.
constexpr Lanes kTeamLanes{1, 8, 0x8080808080808080ULL};
static_assert(kMostPeople < 1 << (kTeamLanes.bits - 1));

/// From the start of one to the start of the other.
Slot lagOf(const Project& project, const Arc& arc) {
    return arc.lag + (arc.fromFinish ? project.duration[arc.from] : 0);
}

/// Per lane, the most there is at any slot.
std::uint64_t mostOf(const Lanes& lanes, const Row<std::uint64_t>& free) {
    std::uint64_t most = 0;
    for (std::int32_t lane = 0; lane < 64 / lanes.bits; ++lane) {
        const std::uint64_t mask = ((std::uint64_t{1} << (lanes.bits - 1)) - 1)
                                   << (lane * lanes.bits);
        std::uint64_t mine = 0;
        for (const std::uint64_t word : free)
            mine = std::max(mine, word & mask);
        most |= mine;
    }
    return most;
}

}  // namespace

ExactModel::ExactModel(const Project& project, Slot deadline)
    : project_(project), pairs_(project.size()) {
    ofNumber_.resize(static_cast<std::size_t>(project.size()) + 1);
    isWaiting_.assign(project.size() + 1, 0);
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
    Row<std::uint8_t> isLast(project_.size(), 1);  // nobody must come after it has ended
    for (const Arc& arc : project_.arcs) {
        if (arc.toFinish) continue;  // a finish that may come later bounds no start
        const Slot lag = lagOf(project_, arc);
        store_.addDifference(start(arc.from), start(arc.to), lag);
        if (lag > 0 && lag >= project_.duration[arc.from]) isLast[arc.from] = 0;
    }
    for (Member j = 0; j < project_.size(); ++j)
        if (isLast[j] != 0) store_.addDifference(start(j), makespan(), project_.duration[j]);
    // Once around, so that every difference is looked at even where nothing moves.
    for (Member j = 0; j < project_.size() && !isRefuted_; ++j) {
        isRefuted_ = !store_.raise({makespan(), project_.earliest[j] + project_.duration[j]});
    }
    bool hasChanged = true;
    for (Member round = 0; hasChanged && !isRefuted_; ++round) {
        hasChanged = false;
        for (const Arc& arc : project_.arcs) {
            if (arc.toFinish || isRefuted_) continue;
            const Slot lag = lagOf(project_, arc);
            const Bound later{start(arc.to), store_.least(start(arc.from)) + lag};
            const Bound earlier{start(arc.from) ^ 1, lag - store_.most(start(arc.to))};
            hasChanged = hasChanged || !store_.isTrue(later) || !store_.isTrue(earlier);
            isRefuted_ = !store_.raise(later) || !store_.raise(earlier);
        }
    }
}

void ExactModel::addResources() {
    const Lanes& lanes = project_.base.lanes();
    for (std::int32_t word = 0; word < lanes.words; ++word) {
        std::vector<Use> uses;
        uses.reserve(static_cast<std::size_t>(project_.size()));
        for (Member j = 0; j < project_.size(); ++j)
            uses.push_back(
                {start(j), 0, project_.duration[j], project_.demand[j * lanes.words + word]});
        Row<std::uint64_t> free;
        for (Slot t = 0; t < project_.horizon; ++t)
            free.add(project_.base.freeWord(t, word));
        addCumulative(lanes, std::move(free), std::move(uses));
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
    constexpr std::size_t kPerWord = 64 / kTeamLanes.bits;
    const std::vector<People> all(teams.begin(), teams.end());
    for (std::size_t first = 0; first < all.size(); first += kPerWord) {
        const std::size_t end = std::min(all.size(), first + kPerWord);
        const auto inLanes = [&](const auto& unitsOfTeam) {
            std::uint64_t word = 0;
            for (std::size_t k = first; k < end; ++k)
                word |= static_cast<std::uint64_t>(unitsOfTeam(all[k]))
                        << ((k - first) * kTeamLanes.bits);
            return word;
        };
        std::vector<Use> uses;
        for (Member j = 0; j < project_.size(); ++j) {
            if (project_.isSplit(j)) continue;
            for (std::int32_t s = project_.segmentsOf[j].begin; s < project_.segmentsOf[j].end;
                 ++s) {
                const Segment& segment = project_.segments[s];
                uses.push_back({start(j), segment.offset, segment.length, inLanes([&](People team) {
                                    return (segment.skilled & ~team) == 0 ? segment.people : 0;
                                })});
            }
        }
        Row<std::uint64_t> free;
        for (Slot t = 0; t < project_.horizon; ++t)
            free.add(inLanes(
                [&](People team) { return std::popcount(team & ~project_.base.busyAt(t)); }));
        addCumulative(kTeamLanes, std::move(free), std::move(uses));
    }
}

void ExactModel::addCumulative(const Lanes& lanes, Row<std::uint64_t> free, std::vector<Use> uses) {
    std::erase_if(uses, [](const Use& use) { return use.demand == 0 || use.length == 0; });
    if (uses.empty()) return;
    const std::uint64_t most = mostOf(lanes, free);
    for (std::size_t a = 0; a < uses.size(); ++a)
        for (std::size_t b = a + 1; b < uses.size(); ++b) {
            const Use& one = uses[a];
            const Use& two = uses[b];
            if (one.start != two.start && !lanes.suffices(most, one.demand + two.demand))
                pairs_.add({one.start, two.start, one.offset + one.length - two.offset,
                            two.offset + two.length - one.offset});
        }
    for (const Use& use : uses) {
        auto& mine = ofNumber_[static_cast<std::size_t>(use.start >> 1)];
        if (mine.empty() || mine.back() != cumulatives_.size()) mine.push_back(cumulatives_.size());
    }
    cumulatives_.emplace_back(lanes, std::move(free), std::move(uses));
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
        if (!arc.toFinish) add(arc.from, arc.to, lagOf(project_, arc));
    const auto isRuledOut = [&](Member first, Member second, Slot lag) {
        const Slot back = distance[second * size + first];
        return back != -kNoSlot && back + lag > 0;
    };
    for (bool hasChanged = true; hasChanged && !isRefuted_;) {
        hasChanged = false;
        for (Member a = 0; a < size; ++a)
            for (const PairOrders::Pair& pair : pairs_.of(a)) {
                const Member b = pair.b >> 1;
                if (!isRuledOut(b, a, pair.baLag)) continue;
                isRefuted_ = isRefuted_ || isRuledOut(a, b, pair.abLag);
                if (distance[a * size + b] >= pair.abLag) continue;
                add(a, b, pair.abLag);
                store_.addDifference(start(a), start(b), pair.abLag);
                hasChanged = true;
            }
        for (Member j = 0; j < size; ++j)
            isRefuted_ = isRefuted_ || distance[j * size + j] > 0;
    }
    pairs_.eraseIf([&](const PairOrders::Pair& pair) {
        const Member a = pair.a >> 1;
        const Member b = pair.b >> 1;
        return distance[a * size + b] >= pair.abLag || distance[b * size + a] >= pair.baLag;
    });
}

/// Follows everything to its end, cheap conclusions first.
bool ExactModel::propagate() {
    for (;;) {
        moved_.clear();
        const bool isFine = store_.propagate(moved_);
        for (const Side side : moved_)
            note(side >> 1);
        if (!isFine) return giveUp();
        if (!waiting_.empty()) {
            const std::int32_t number = waiting_.back();
            waiting_.pop_back();
            isWaiting_[number] = 0;
            if (number < project_.size() && !pairs_.propagate(store_, number)) return giveUp();
            continue;
        }
        const auto next = std::find(isToDo_.begin(), isToDo_.end(), true);
        if (next == isToDo_.end()) return true;
        *next = false;
        if (!cumulatives_[static_cast<std::size_t>(next - isToDo_.begin())].propagate(store_))
            return giveUp();
    }
}

void ExactModel::note(std::int32_t number) {
    if (isWaiting_[number] == 0) waiting_.push_back(number);
    isWaiting_[number] = 1;
    for (const std::size_t c : ofNumber_[static_cast<std::size_t>(number)])
        isToDo_[c] = true;
}

/// What waits to be followed belongs to decisions that are taken back now.
bool ExactModel::giveUp() {
    for (const std::int32_t number : waiting_)
        isWaiting_[number] = 0;
    waiting_.clear();
    isToDo_.assign(isToDo_.size(), false);
    return false;
}

}  // namespace cinder::plan::search
