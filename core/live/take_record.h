#pragma once

/// The food-safety record out of the journal; internal to core/live.

#include <vector>

#include "journal/operation.h"
#include "safety/facts.h"

namespace cinder::live {

/// Every entry once, in clock order, from operations that are each there once and in clock order.
[[nodiscard]] std::vector<safety::Entry> takeRecord(
    const std::vector<const journal::Operation*>& order);

/// The name an operation has as an entry of the record.
[[nodiscard]] safety::EntryId entryIdOf(const journal::OperationId& id);

}  // namespace cinder::live
