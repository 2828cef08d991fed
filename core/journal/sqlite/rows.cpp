#include "journal/sqlite/rows.h"

#include <cstring>
#include <string>

namespace cinder::journal {

Row rowOf(SQLite::Statement& query) {
    Row row;
    Operation& op = row.operation;
    op.event = EventId{query.getColumn(0).getString()};
    op.id.device = DeviceId{query.getColumn(1).getString()};
    op.id.sequence = static_cast<std::uint64_t>(query.getColumn(2).getInt64());
    op.stamp.wall = Instant{Duration{query.getColumn(3).getInt64()}};
    op.stamp.counter = query.getColumn(4).getUInt();
    if (!query.getColumn(5).isNull()) op.person = PersonId{query.getColumn(5).getString()};
    row.body.kind = query.getColumn(6).getString();
    op.version = query.getColumn(7).getInt();
    row.body.text = query.getColumn(8).getString();
    const auto blob = query.getColumn(9);
    if (blob.getBytes() == static_cast<int>(row.seal.size()))
        std::memcpy(row.seal.data(), blob.getBlob(), row.seal.size());
    op.body = readBody(row.body.kind, op.version, row.body.text);
    return row;
}

std::optional<Row> rowAt(SQLite::Database& database, const EventId& event, const OperationId& id) {
    SQLite::Statement query(
        database, std::string(kSelect) + "WHERE event = ? AND device = ? AND sequence = ?");
    query.bind(1, event.text());
    query.bind(2, id.device.text());
    query.bind(3, static_cast<std::int64_t>(id.sequence));
    if (!query.executeStep()) return std::nullopt;
    return rowOf(query);
}

void insert(SQLite::Statement& statement, const Operation& op, const BodyText& body,
            const Seal& sealed) {
    statement.reset();
    statement.clearBindings();
    statement.bind(1, op.event.text());
    statement.bind(2, op.id.device.text());
    statement.bind(3, static_cast<std::int64_t>(op.id.sequence));
    statement.bind(4, static_cast<std::int64_t>(op.stamp.wall.time_since_epoch().count()));
    statement.bind(5, static_cast<std::int64_t>(op.stamp.counter));
    if (op.person) statement.bind(6, op.person->text());
    statement.bind(7, body.kind);
    statement.bind(8, op.version);
    statement.bind(9, body.text);
    statement.bind(10, sealed.data(), static_cast<int>(sealed.size()));
    statement.exec();
}

}  // namespace cinder::journal
