#include "live/take_record.h"

#include <map>

#include "safety/record.h"

namespace cinder::live {

safety::EntryId entryIdOf(const journal::OperationId& id) {
    return {id.device, id.sequence};
}

std::vector<safety::Entry> takeRecord(const std::vector<const journal::Operation*>& order) {
    // Undone operation -> the earliest word of an undo that stands itself; from the end, as undo
    // only reaches back.
    std::map<journal::OperationId, Instant> undone;
    std::vector<safety::Entry> record;
    for (auto it = order.rbegin(); it != order.rend(); ++it) {
        const journal::Operation& op = **it;
        const auto found = undone.find(op.id);
        if (const auto* undo = std::get_if<journal::Undone>(&op.body)) {
            if (found == undone.end()) undone[undo->operation] = op.stamp.wall;
            continue;
        }
        const auto* fact = std::get_if<safety::Fact>(&op.body);
        if (!fact) continue;
        const bool isSlip = found != undone.end() && found->second - op.stamp.wall <= safety::kSlip;
        record.push_back({entryIdOf(op.id), op.stamp.wall, op.person, isSlip, *fact});
    }
    return {record.rbegin(), record.rend()};
}

}  // namespace cinder::live
