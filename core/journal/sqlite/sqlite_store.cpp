#include "journal/sqlite/sqlite_store.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <cstring>
#include <utility>

#include "journal/codec.h"
#include "journal/seal.h"
#include "journal/sqlite/copy.h"
#include "journal/sqlite/failure.h"
#include "journal/sqlite/open.h"
#include "journal/sqlite/rows.h"

namespace cinder::journal {

struct SqliteStore::Connection {
    SQLite::Database database;
    DeviceId device;
    Access access = Access::Full;
};

namespace {

using Why = StoreError::Why;

/// Where one device's chain in one event ends.
struct ChainEnd {
    std::uint64_t sequence = 0;
    Seal seal = kFirstSeal;
};

ChainEnd chainEnd(SQLite::Database& database, const EventId& event, const DeviceId& device) {
    SQLite::Statement query(database,
                            "SELECT sequence, seal FROM operation WHERE event = ? AND device = ? "
                            "ORDER BY sequence DESC LIMIT 1");
    query.bind(1, event.text());
    query.bind(2, device.text());
    ChainEnd end;
    if (query.executeStep()) {
        end.sequence = static_cast<std::uint64_t>(query.getColumn(0).getInt64());
        std::memcpy(end.seal.data(), query.getColumn(1).getBlob(), end.seal.size());
    }
    return end;
}

/// `rows` are those of whole chains, one after the other.
std::optional<BrokenChain> firstBroken(SQLite::Statement& rows) {
    std::pair<EventId, DeviceId> chain;
    ChainEnd end;
    while (rows.executeStep()) {
        const Entry row = entryOf(rows);
        const Operation& op = row.operation;
        if (const std::pair here{op.event, op.id.device}; here != chain) {
            chain = here;
            end = {};
        }
        if (op.id.sequence != end.sequence + 1)
            return BrokenChain{op.event, op.id, BrokenChain::What::Missing};
        if (seal(end.seal, op, row.body) != row.seal)
            return BrokenChain{op.event, op.id, BrokenChain::What::Altered};
        end = {op.id.sequence, row.seal};
    }
    return std::nullopt;
}

/// The device's own fault, not the record's: the file may be readable all the same.
bool isOfTheDisk(Why why) {
    return why == Why::CannotOpen || why == Why::ReadOnly || why == Why::DiskFull ||
           why == Why::Failed;
}

/// Whether exactly this operation is stored, and not another one of its name.
bool isStoredAs(const Entry& here, const Operation& op, const BodyText& body) {
    return here.body == body && here.operation.stamp == op.stamp &&
           here.operation.person == op.person && here.operation.version == op.version;
}

/// Adds an operation where its device's chain ends, or passes it over when it is here. `sealed` is
/// the seal it must bear; null: it is sealed now. `statement` is `kInsert`.
Stored<void> add(SQLite::Database& database, SQLite::Statement& statement, const Operation& op,
                 const BodyText& body, const Seal* sealed) {
    const ChainEnd end = chainEnd(database, op.event, op.id.device);
    if (op.id.sequence <= end.sequence) {
        const auto here = entryAt(database, op.event, op.id);
        const bool isSame = here && (sealed ? here->seal == *sealed : isStoredAs(*here, op, body));
        if (!isSame) return fail(StoreError{Why::OutOfOrder, "another operation has this name"});
        return {};
    }
    if (op.id.sequence != end.sequence + 1)
        return fail(StoreError{Why::OutOfOrder, "an operation before this one is missing"});
    const Seal follows = seal(end.seal, op, body);
    if (sealed && *sealed != follows)
        return fail(StoreError{Why::BadSeal, "not the entry that was sealed"});
    insert(statement, op, body, follows);
    return {};
}

}  // namespace

SqliteStore::SqliteStore(std::unique_ptr<Connection> connection)
    : connection_(std::move(connection)) {}

SqliteStore::~SqliteStore() = default;

Result<std::unique_ptr<SqliteStore>, StoreError> SqliteStore::openAs(
    const std::filesystem::path& file, Options options) {
    return guarded([&]() -> Stored<std::unique_ptr<SqliteStore>> {
        SQLite::Database database = options.readOnly ? openToRead(file) : openToWrite(file);
        if (!isOurs(database))
            return fail(StoreError{Why::NotAJournal, "another program's database"});
        Access access = Access::Full;
        if (isNewer(database)) {
            // Opened again without the right to write, so that no mistake of ours can touch it.
            database = openToRead(file);
            access = Access::Newer;
        } else if (options.readOnly || !isWritable(database)) {
            access = Access::ReadOnlyFile;
        } else {
            makeReady(database, options);
        }
        DeviceId device = deviceOf(database);
        return std::unique_ptr<SqliteStore>(new SqliteStore(std::make_unique<Connection>(
            Connection{std::move(database), std::move(device), access})));
    });
}

Result<std::unique_ptr<SqliteStore>, StoreError> SqliteStore::open(
    const std::filesystem::path& file, Options options) {
    auto opened = openAs(file, options);
    if (opened || options.readOnly || !isOfTheDisk(opened.error().why)) return opened;
    // A day can be looked at though nothing more can be noted in it.
    auto shown = openAs(file, Options{.readOnly = true, .pageLimit = {}});
    return shown ? std::move(shown) : std::move(opened);
}

const DeviceId& SqliteStore::device() const {
    return connection_->device;
}

Access SqliteStore::access() const {
    return connection_->access;
}

Result<OperationId, StoreError> SqliteStore::nextId(const EventId& event) const {
    return guarded([&]() -> Stored<OperationId> {
        const ChainEnd end = chainEnd(connection_->database, event, connection_->device);
        return OperationId{connection_->device, end.sequence + 1};
    });
}

Result<void, StoreError> SqliteStore::append(std::span<const Operation> operations) {
    if (connection_->access != Access::Full)
        return fail(StoreError{Why::ReadOnly, "opened read-only"});
    return guarded([&]() -> Stored<void> {
        SQLite::Database& database = connection_->database;
        SQLite::Transaction all(database, SQLite::TransactionBehavior::IMMEDIATE);
        SQLite::Statement statement(database, kInsert);
        for (const Operation& op : operations)
            if (auto added = add(database, statement, op, writeBody(op.body), nullptr); !added)
                return added;
        all.commit();
        return {};
    });
}

Result<std::vector<ChainHead>, StoreError> SqliteStore::heads() const {
    return guarded([&]() -> Stored<std::vector<ChainHead>> {
        return headsOf(connection_->database, std::nullopt);
    });
}

Result<std::vector<ChainHead>, StoreError> SqliteStore::heads(const EventId& event) const {
    return guarded(
        [&]() -> Stored<std::vector<ChainHead>> { return headsOf(connection_->database, event); });
}

Result<std::optional<Seal>, StoreError> SqliteStore::sealOf(const EventId& event,
                                                            const OperationId& id) const {
    return guarded([&]() -> Stored<std::optional<Seal>> {
        const auto entry = entryAt(connection_->database, event, id);
        return entry ? std::optional(entry->seal) : std::nullopt;
    });
}

Result<std::vector<Entry>, StoreError> SqliteStore::entriesAfter(const EventId& event,
                                                                 const OperationId& last,
                                                                 std::size_t bytes) const {
    return guarded([&]() -> Stored<std::vector<Entry>> {
        return journal::entriesAfter(connection_->database, event, last, bytes);
    });
}

Result<void, StoreError> SqliteStore::take(std::span<const Entry> entries) {
    if (connection_->access != Access::Full)
        return fail(StoreError{Why::ReadOnly, "opened read-only"});
    return guarded([&]() -> Stored<void> {
        SQLite::Database& database = connection_->database;
        SQLite::Transaction all(database, SQLite::TransactionBehavior::IMMEDIATE);
        SQLite::Statement statement(database, kInsert);
        for (const Entry& entry : entries)
            if (auto added = add(database, statement, entry.operation, entry.body, &entry.seal);
                !added)
                return added;
        all.commit();
        return {};
    });
}

Result<std::vector<Operation>, StoreError> SqliteStore::read(const EventId& event) const {
    return readKinds(event, {});
}

Result<std::vector<Operation>, StoreError> SqliteStore::readKinds(
    const EventId& event, std::span<const std::string_view> kinds) const {
    return guarded([&]() -> Stored<std::vector<Operation>> {
        std::string where = "WHERE event = ? ";
        for (std::size_t i = 0; i < kinds.size(); ++i)
            where += i == 0 ? "AND kind IN (?" : ", ?";
        if (!kinds.empty()) where += ") ";
        SQLite::Statement query(
            connection_->database,
            std::string(kSelect) + where + "ORDER BY wall, counter, device, sequence");
        query.bind(1, event.text());
        int place = 1;
        for (const std::string_view kind : kinds)
            query.bind(++place, std::string(kind));
        std::vector<Operation> operations;
        while (query.executeStep())
            operations.push_back(entryOf(query).operation);
        return operations;
    });
}

Result<std::optional<Operation>, StoreError> SqliteStore::readLast(
    const EventId& event, std::string_view kind, const std::set<OperationId>& but) const {
    return guarded([&]() -> Stored<std::optional<Operation>> {
        // The names first: ordering whole rows would read every body.
        SQLite::Statement names(
            connection_->database,
            "SELECT device, sequence FROM operation WHERE event = ? AND kind = ? "
            "ORDER BY wall DESC, counter DESC, device DESC, sequence DESC");
        names.bind(1, event.text());
        names.bind(2, std::string(kind));
        while (names.executeStep()) {
            const OperationId id{DeviceId{names.getColumn(0).getString()},
                                 static_cast<std::uint64_t>(names.getColumn(1).getInt64())};
            if (but.count(id) > 0) continue;
            if (auto row = entryAt(connection_->database, event, id))
                return std::optional(std::move(row->operation));
        }
        return std::optional<Operation>();
    });
}

Result<std::vector<EventId>, StoreError> SqliteStore::events() const {
    return guarded([&]() -> Stored<std::vector<EventId>> {
        // From one event to the next in the key, not past all that was recorded in between.
        SQLite::Statement next(
            connection_->database,
            "SELECT event FROM operation WHERE event > ? ORDER BY event LIMIT 1");
        std::vector<EventId> events;
        next.bind(1, "");
        while (next.executeStep()) {
            events.emplace_back(next.getColumn(0).getString());
            next.reset();
            next.bind(1, events.back().text());
        }
        return events;
    });
}

Result<std::optional<BrokenChain>, StoreError> SqliteStore::verify() const {
    return guarded([&]() -> Stored<std::optional<BrokenChain>> {
        SQLite::Statement all(connection_->database,
                              std::string(kSelect) + "ORDER BY event, device, sequence");
        return firstBroken(all);
    });
}

Result<std::optional<BrokenChain>, StoreError> SqliteStore::verify(const EventId& event) const {
    return guarded([&]() -> Stored<std::optional<BrokenChain>> {
        SQLite::Statement one(connection_->database,
                              std::string(kSelect) + "WHERE event = ? ORDER BY device, sequence");
        one.bind(1, event.text());
        return firstBroken(one);
    });
}

Result<std::optional<BrokenChain>, StoreError> SqliteStore::copyTo(
    const std::filesystem::path& file) const {
    if (auto written = writeCopy(connection_->database, file); !written)
        return fail(std::move(written.error()));
    return verify();
}

Result<std::unique_ptr<Store>, StoreError> SqliteStore::openCopy(
    const std::filesystem::path& file) const {
    auto copy = open(file, Options{.readOnly = true, .pageLimit = {}});
    if (!copy) return fail(std::move(copy.error()));
    return std::unique_ptr<Store>(*std::move(copy));
}

}  // namespace cinder::journal
