#pragma once

/// One row of the table of operations; internal to journal/sqlite. Throws what SQLite throws.

#include <SQLiteCpp/SQLiteCpp.h>

#include <optional>

#include "journal/codec.h"
#include "journal/operation.h"
#include "journal/seal.h"

namespace cinder::journal {

struct Row {
    Operation operation;
    BodyText body;
    Seal seal{};
};

/// To be followed by a condition or an order; `rowOf` reads its columns.
inline constexpr const char* kSelect =
    "SELECT event, device, sequence, wall, counter, person, kind, version, body, seal "
    "FROM operation ";
inline constexpr const char* kInsert =
    "INSERT INTO operation "
    "(event, device, sequence, wall, counter, person, kind, version, body, seal) "
    "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)";

[[nodiscard]] Row rowOf(SQLite::Statement& query);
/// The operation of this name; nothing when it is not here.
[[nodiscard]] std::optional<Row> rowAt(SQLite::Database& database, const EventId& event,
                                       const OperationId& id);
/// `statement` is `kInsert`.
void insert(SQLite::Statement& statement, const Operation& op, const BodyText& body,
            const Seal& sealed);

}  // namespace cinder::journal
