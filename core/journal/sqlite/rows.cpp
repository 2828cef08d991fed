#include "journal/sqlite/rows.h"

#include <cstring>
#include <string>

namespace cinder::journal {

namespace {

Seal sealOf(const SQLite::Column& column) {
    Seal seal{};
    if (column.getBytes() == static_cast<int>(seal.size()))
        std::memcpy(seal.data(), column.getBlob(), seal.size());
    return seal;
}

}  // namespace

Entry entryOf(SQLite::Statement& query) {
    Entry row;
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
    row.seal = sealOf(query.getColumn(9));
    op.body = readBody(row.body.kind, op.version, row.body.text);
    return row;
}

std::optional<Entry> entryAt(SQLite::Database& database, const EventId& event,
                             const OperationId& id) {
    SQLite::Statement query(
        database, std::string(kSelect) + "WHERE event = ? AND device = ? AND sequence = ?");
    query.bind(1, event.text());
    query.bind(2, id.device.text());
    query.bind(3, static_cast<std::int64_t>(id.sequence));
    if (!query.executeStep()) return std::nullopt;
    return entryOf(query);
}

std::vector<ChainHead> headsOf(SQLite::Database& database, const std::optional<EventId>& event) {
    // From one chain to the next in the key, not past all that was recorded in between.
    SQLite::Statement next(database,
                           std::string("SELECT event, device FROM operation WHERE ") +
                               (event ? "event = ? AND device > ? " : "(event, device) > (?, ?) ") +
                               "ORDER BY event, device LIMIT 1");
    SQLite::Statement end(database,
                          "SELECT sequence, seal FROM operation WHERE event = ? AND device = ? "
                          "ORDER BY sequence DESC LIMIT 1");
    std::vector<ChainHead> heads;
    next.bind(1, event ? event->text() : std::string());
    next.bind(2, std::string());
    while (next.executeStep()) {
        ChainHead head{EventId{next.getColumn(0).getString()},
                       {DeviceId{next.getColumn(1).getString()}, 0},
                       {}};
        end.reset();
        end.bind(1, head.event.text());
        end.bind(2, head.last.device.text());
        if (end.executeStep()) {
            head.last.sequence = static_cast<std::uint64_t>(end.getColumn(0).getInt64());
            head.seal = sealOf(end.getColumn(1));
        }
        next.reset();
        next.bind(1, head.event.text());
        next.bind(2, head.last.device.text());
        heads.push_back(std::move(head));
    }
    return heads;
}

std::vector<Entry> entriesAfter(SQLite::Database& database, const EventId& event,
                                const OperationId& last, std::size_t bytes) {
    SQLite::Statement query(database, std::string(kSelect) +
                                          "WHERE event = ? AND device = ? AND sequence > ? "
                                          "ORDER BY sequence");
    query.bind(1, event.text());
    query.bind(2, last.device.text());
    query.bind(3, static_cast<std::int64_t>(last.sequence));
    std::vector<Entry> entries;
    std::size_t sum = 0;
    while (query.executeStep()) {
        Entry entry = entryOf(query);
        sum += entry.body.text.size();
        if (!entries.empty() && sum > bytes) break;
        entries.push_back(std::move(entry));
    }
    return entries;
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
