#include "journal/sqlite/sqlite_store.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <sodium.h>
#include <sqlite3.h>

#include <array>
#include <cstring>
#include <utility>

#include "journal/codec.h"
#include "journal/seal.h"
#include "journal/sqlite/rows.h"
#include "journal/sqlite/schema.h"

namespace cinder::journal {

struct SqliteStore::Connection {
    SQLite::Database database;
    DeviceId device;
    Access access = Access::Full;
};

namespace {

using Why = StoreError::Why;

template <class T>
using Stored = Result<T, StoreError>;

Why reasonFor(int code) {
    switch (code) {
        case SQLITE_FULL:
            return Why::DiskFull;
        case SQLITE_READONLY:
            return Why::ReadOnly;
        case SQLITE_BUSY:
        case SQLITE_LOCKED:
            return Why::Locked;
        case SQLITE_NOTADB:
            return Why::NotAJournal;
        case SQLITE_CORRUPT:
            return Why::Damaged;
        case SQLITE_CANTOPEN:
        case SQLITE_PERM:
            return Why::CannotOpen;
        default:
            return Why::Failed;
    }
}

/// Runs `work`, which may throw SQLite's exception; none crosses the border of this library.
template <class Work>
auto guarded(Work work) -> decltype(work()) {
    try {
        return work();
    } catch (const SQLite::Exception& e) {
        return fail(StoreError{reasonFor(e.getErrorCode() & 0xFF), e.what()});
    }
}

std::string newDeviceName() {
    std::array<unsigned char, 8> random{};
    randombytes_buf(random.data(), random.size());
    std::array<char, 2 * random.size() + 1> hex{};
    sodium_bin2hex(hex.data(), hex.size(), random.data(), random.size());
    return hex.data();
}

int pragma(SQLite::Database& database, const char* name) {
    return database.execAndGet(std::string("PRAGMA ") + name).getInt();
}

/// Brings an older or empty file up to date; each step is its own transaction.
void migrate(SQLite::Database& database) {
    const auto steps = migrations();
    for (auto version = static_cast<std::size_t>(pragma(database, "user_version"));
         version < steps.size(); ++version) {
        SQLite::Transaction step(database, SQLite::TransactionBehavior::IMMEDIATE);
        database.exec(steps[version]);
        if (version == 0) {
            SQLite::Statement name(database, "INSERT INTO device (id) VALUES (?)");
            name.bind(1, newDeviceName());
            name.exec();
            database.exec("PRAGMA application_id = " + std::to_string(kApplicationId));
        }
        database.exec("PRAGMA user_version = " + std::to_string(version + 1));
        step.commit();
    }
}

bool isOurs(SQLite::Database& database) {
    const bool isEmpty = database.execAndGet("SELECT count(*) FROM sqlite_schema").getInt() == 0;
    return isEmpty || pragma(database, "application_id") == kApplicationId;
}

constexpr int kBusyMillis = 2000;

SQLite::Database openToWrite(const std::filesystem::path& file) {
    return {file.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE, kBusyMillis};
}

/// A path as a file URI (RFC 3986), for the options that only a URI can carry.
std::string fileUri(const std::filesystem::path& file) {
    std::string uri = "file:";
    for (const char c : file.string()) {
        const bool isReserved = c == '%' || c == '?' || c == '#';
        uri += isReserved ? (c == '%' ? "%25" : c == '?' ? "%3f" : "%23") : std::string(1, c);
    }
    return uri;
}

/// A write-ahead log needs a file beside the store even to be read; on a write-protected disk it
/// cannot be made, and the store is read as it lies ("immutable").
SQLite::Database openToRead(const std::filesystem::path& file) {
    try {
        SQLite::Database database(file.string(), SQLite::OPEN_READONLY, kBusyMillis);
        database.execAndGet("SELECT count(*) FROM sqlite_schema");
        return database;
    } catch (const SQLite::Exception& e) {
        if ((e.getErrorCode() & 0xFF) != SQLITE_CANTOPEN || !std::filesystem::exists(file)) throw;
        return {fileUri(file) + "?immutable=1", SQLite::OPEN_READONLY | SQLite::OPEN_URI,
                kBusyMillis};
    }
}

/// SQLite opens a write-protected file all the same, and says so only when asked.
bool isWritable(SQLite::Database& database) {
    return sqlite3_db_readonly(database.getHandle(), "main") == 0;
}

void makeReady(SQLite::Database& database, const SqliteStore::Options& options) {
    database.exec("PRAGMA journal_mode = WAL");
    database.exec("PRAGMA synchronous = FULL");
    database.exec("PRAGMA foreign_keys = ON");
    if (options.pageLimit)
        database.exec("PRAGMA max_page_count = " + std::to_string(*options.pageLimit));
    migrate(database);
}

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

/// True when exactly this operation is stored; false when another one has its name.
bool isAlreadyHere(SQLite::Database& database, const Operation& op, const BodyText& body) {
    const auto row = rowAt(database, op.event, op.id);
    return row && row->body == body && row->operation.stamp == op.stamp &&
           row->operation.person == op.person && row->operation.version == op.version;
}

}  // namespace

SqliteStore::SqliteStore(std::unique_ptr<Connection> connection)
    : connection_(std::move(connection)) {}

SqliteStore::~SqliteStore() = default;

Result<std::unique_ptr<SqliteStore>, StoreError> SqliteStore::open(
    const std::filesystem::path& file, Options options) {
    return guarded([&]() -> Stored<std::unique_ptr<SqliteStore>> {
        SQLite::Database database = options.readOnly ? openToRead(file) : openToWrite(file);
        if (!isOurs(database))
            return fail(StoreError{Why::NotAJournal, "another program's database"});
        Access access = Access::Full;
        if (pragma(database, "user_version") > static_cast<int>(migrations().size())) {
            // Opened again without the right to write, so that no mistake of ours can touch it.
            database = openToRead(file);
            access = Access::Newer;
        } else if (options.readOnly || !isWritable(database)) {
            access = Access::ReadOnlyFile;
        } else {
            makeReady(database, options);
        }
        DeviceId device{database.execAndGet("SELECT id FROM device").getString()};
        return std::unique_ptr<SqliteStore>(new SqliteStore(std::make_unique<Connection>(
            Connection{std::move(database), std::move(device), access})));
    });
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
        for (const Operation& op : operations) {
            const ChainEnd end = chainEnd(database, op.event, op.id.device);
            const BodyText body = writeBody(op.body);
            if (op.id.sequence <= end.sequence) {
                if (!isAlreadyHere(database, op, body))
                    return fail(StoreError{Why::OutOfOrder, "another operation has this name"});
                continue;
            }
            if (op.id.sequence != end.sequence + 1)
                return fail(StoreError{Why::OutOfOrder, "an operation before this one is missing"});
            insert(statement, op, body, seal(end.seal, op, body));
        }
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
            operations.push_back(rowOf(query).operation);
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
            if (auto row = rowAt(connection_->database, event, id))
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
        SQLite::Statement query(connection_->database,
                                std::string(kSelect) + "ORDER BY event, device, sequence");
        std::pair<EventId, DeviceId> chain;
        ChainEnd end;
        while (query.executeStep()) {
            const Row row = rowOf(query);
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
    });
}

Result<void, StoreError> SqliteStore::copyTo(const std::filesystem::path& file) const {
    const std::filesystem::path part = file.string() + ".part";
    std::error_code ignored;
    std::filesystem::remove(part, ignored);
    auto written = guarded([&]() -> Stored<void> {
        // As durable as the store: the copy is written with the store's own "synchronous" (SQLite
        // source, vacuum.c).
        SQLite::Statement copy(connection_->database, "VACUUM INTO ?");
        copy.bind(1, part.string());
        copy.executeStep();
        return {};
    });
    if (written) {
        const auto copy = openCopy(part);
        const auto broken =
            copy ? (*copy)->verify() : tl::make_unexpected(StoreError(copy.error()));
        if (!broken)
            written = fail(broken.error());
        else if (*broken)
            written = fail(StoreError{Why::Damaged, "the record does not verify"});
    }
    if (written) {
        std::error_code error;
        std::filesystem::rename(part, file, error);
        if (error) written = fail(StoreError{Why::CannotOpen, error.message()});
    }
    if (!written) std::filesystem::remove(part, ignored);
    return written;
}

Result<std::unique_ptr<Store>, StoreError> SqliteStore::openCopy(
    const std::filesystem::path& file) const {
    auto copy = open(file, Options{.readOnly = true, .pageLimit = {}});
    if (!copy) return fail(std::move(copy.error()));
    return std::unique_ptr<Store>(*std::move(copy));
}

}  // namespace cinder::journal
