#include <algorithm>

#include "plan/search/generation.h"

namespace cinder::plan::search {

bool Generator::generateWithLags(const Sequence& sequence, Slot floor, Draft& draft) {
    const std::int32_t size = project_.size();
    std::fill(isPlaced_.begin(), isPlaced_.end(), std::uint8_t{0});
    std::fill(raised_.begin(), raised_.end(), 0);
    std::fill(openBefore_.begin(), openBefore_.end(), 0);
    for (const Member b : followers_)
        ++openBefore_[b];
    refreshWindows(floor, draft);
    std::int32_t placed = 0;
    std::int32_t attempts = 4 * size;  // unscheduling may go round in circles
    while (placed < size) {
        const Member j = nextReady(sequence);
        const std::int32_t finishNode = distances_->finishNode(j);
        Slot from = early_[j];
        if (project_.isSplit(j)) from = std::max(from, early_[finishNode] - project_.duration[j]);
        const std::uint8_t taste = sequence.taste.size() == 0 ? std::uint8_t{0} : sequence.taste[j];
        if (!place(j, from, taste, draft)) return false;
        Slot missing = draft.start[j] - late_[j];
        if (project_.isSplit(j)) missing = std::max(missing, draft.finish[j] - late_[finishNode]);
        if (missing > 0) {
            if (--attempts < 0 || !unplaceFor(j, missing, floor, draft)) return false;
            placed = static_cast<std::int32_t>(
                std::count(isPlaced_.begin(), isPlaced_.end(), std::uint8_t{1}));
            continue;
        }
        commit(j, draft);
        isPlaced_[j] = 1;
        ++placed;
        for (std::int32_t k = mustFollow_[j].begin; k < mustFollow_[j].end; ++k)
            --openBefore_[followers_[k]];
        tightenAfter(j, draft);
    }
    return true;
}

Member Generator::nextReady(const Sequence& sequence) const {
    for (const Member j : sequence.order)
        if (isPlaced_[j] == 0 && openBefore_[j] == 0) return j;
    return 0;  // not reached: the order "must be placed before" has no cycle
}

/// What a newly placed member means for everybody's window.
void Generator::tightenAfter(Member j, const Draft& draft) {
    const std::int32_t nodes = distances_->nodes();
    const std::int32_t finishNode = distances_->finishNode(j);
    const auto spread = [&](std::int32_t node, Slot at) {
        const Slot* const there = distances_->from(node);
        for (std::int32_t v = 0; v < nodes; ++v) {
            early_[v] = std::max(early_[v], at + there[v]);
            if (const Slot back = distances_->between(v, node); back != kUnrelated)
                late_[v] = std::min(late_[v], at - back);
        }
    };
    spread(j, draft.start[j]);
    if (finishNode != j) spread(finishNode, draft.finish[j]);
}

/// Frees those whose maximum lag `j` misses and lets them, and all that started after them, begin
/// later. False when no placed member is to blame.
bool Generator::unplaceFor(Member j, Slot missing, Slot floor, Draft& draft) {
    const std::int32_t node = distances_->finishNode(j);
    const Slot limit = std::min(late_[j], late_[node]);
    Slot first = kNoSlot;
    for (Member i = 0; i < project_.size(); ++i) {
        if (isPlaced_[i] == 0) continue;
        const std::int32_t finishNode = distances_->finishNode(i);
        const auto binds = [&](std::int32_t target, Slot bound) {
            const auto holds = [&](std::int32_t source, Slot at) {
                const Slot back = distances_->between(target, source);
                return back != kUnrelated && at - back == bound;
            };
            return holds(i, draft.start[i]) || holds(finishNode, draft.finish[i]);
        };
        const bool isToBlame =
            (draft.start[j] > late_[j] && binds(j, late_[j])) ||
            (node != j && draft.finish[j] > late_[node] && binds(node, late_[node]));
        if (!isToBlame) continue;
        raised_[i] = std::max(raised_[i], draft.start[i] + missing);
        first = std::min(first, draft.start[i]);
    }
    if (first == kNoSlot || limit == kNoSlot) return false;
    for (Member i = 0; i < project_.size(); ++i) {
        if (isPlaced_[i] == 0 || draft.start[i] < first) continue;
        withdraw(i, draft);
        isPlaced_[i] = 0;
        for (std::int32_t k = mustFollow_[i].begin; k < mustFollow_[i].end; ++k)
            ++openBefore_[followers_[k]];
    }
    refreshWindows(floor, draft);
    return true;
}

void Generator::refreshWindows(Slot floor, const Draft& draft) {
    const std::int32_t nodes = distances_->nodes();
    std::fill(early_.begin(), early_.end(), floor);
    std::fill(late_.begin(), late_.end(), kNoSlot);
    for (Member i = 0; i < project_.size(); ++i) {
        const Slot least = std::max({floor, project_.earliest[i], raised_[i]});
        const Slot* const there = distances_->from(i);
        for (std::int32_t v = 0; v < nodes; ++v)
            early_[v] = std::max(early_[v], least + there[v]);
    }
    for (Member i = 0; i < project_.size(); ++i)
        if (isPlaced_[i] != 0) tightenAfter(i, draft);
}

}  // namespace cinder::plan::search
