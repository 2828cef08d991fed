#pragma once

/// One row of the table of operations; internal to journal/sqlite. Throws what SQLite throws.

#include <SQLiteCpp/SQLiteCpp.h>

#include <optional>
#include <vector>

#include "journal/entry.h"

namespace cinder::journal {

/// To be followed by a condition or an order; `entryOf` reads its columns.
inline constexpr const char* kSelect =
    "SELECT event, device, sequence, wall, counter, person, kind, version, body, seal "
    "FROM operation ";
inline constexpr const char* kInsert =
    "INSERT INTO operation "
    "(event, device, sequence, wall, counter, person, kind, version, body, seal) "
    "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)";

[[nodiscard]] Entry entryOf(SQLite::Statement& query);
/// The operation of this name; nothing when it is not here.
[[nodiscard]] std::optional<Entry> entryAt(SQLite::Database& database, const EventId& event,
                                           const OperationId& id);
/// The end of every chain of one event, or of all events.
[[nodiscard]] std::vector<ChainHead> headsOf(SQLite::Database& database,
                                             const std::optional<EventId>& event);
/// Up to `bytes` of bodies and one at least, where there is one.
[[nodiscard]] std::vector<Entry> entriesAfter(SQLite::Database& database, const EventId& event,
                                              const OperationId& last, std::size_t bytes);
/// `statement` is `kInsert`.
void insert(SQLite::Statement& statement, const Operation& op, const BodyText& body,
            const Seal& sealed);

}  // namespace cinder::journal
