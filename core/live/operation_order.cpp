#include "live/operation_order.h"

#include <algorithm>
#include <set>
#include <tuple>
#include <unordered_set>

#include "journal/codec.h"
#include "live/day.h"

namespace cinder::live {

namespace {

using journal::Operation;
using journal::OperationId;

/// A total order even over operations that claim the same name, so that the result cannot depend
/// on which came first.
bool isFoldedBefore(const Operation* a, const Operation* b) {
    if (journal::comesBefore(*a, *b)) return true;
    if (journal::comesBefore(*b, *a)) return false;
    const auto aText = journal::writeBody(a->body);
    const auto bText = journal::writeBody(b->body);
    return std::tie(aText.kind, aText.text) < std::tie(bText.kind, bText.text);
}

/// Finds operations by what they are called.
struct ByName {
    std::size_t operator()(const OperationId* id) const {
        return std::hash<DeviceId>{}(id->device) ^ std::hash<std::uint64_t>{}(id->sequence);
    }
    bool operator()(const OperationId* a, const OperationId* b) const { return *a == *b; }
};

}  // namespace

std::vector<const Operation*> inOrder(std::span<const Operation> operations) {
    std::vector<const Operation*> order;
    order.reserve(operations.size());
    for (const Operation& op : operations)
        order.push_back(&op);
    if (!std::is_sorted(order.begin(), order.end(), isFoldedBefore))
        std::sort(order.begin(), order.end(), isFoldedBefore);
    std::unordered_set<const OperationId*, ByName, ByName> seen;
    seen.reserve(order.size());
    order.erase(std::remove_if(order.begin(), order.end(),
                               [&](const Operation* op) { return !seen.insert(&op->id).second; }),
                order.end());
    return order;
}

std::vector<const Operation*> withoutUndone(const std::vector<const Operation*>& order) {
    std::set<OperationId> undone;  // one walk from the end decides
    std::vector<const Operation*> counting;
    for (auto op = order.rbegin(); op != order.rend(); ++op) {
        if (undone.erase((*op)->id) > 0) continue;
        if (const auto* undo = std::get_if<journal::Undone>(&(*op)->body))
            undone.insert(undo->operation);
        else
            counting.push_back(*op);
    }
    std::reverse(counting.begin(), counting.end());
    return counting;
}

std::vector<const Operation*> whatCounts(std::span<const journal::Operation> operations) {
    return withoutUndone(inOrder(operations));
}

}  // namespace cinder::live
