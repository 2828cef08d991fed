#include "journal/sqlite/open.h"

#include <sodium.h>
#include <sqlite3.h>

#include <array>
#include <string>

#include "journal/sqlite/schema.h"

namespace cinder::journal {

namespace {

constexpr int kBusyMillis = 2000;

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
        if (version == 0)
            database.exec("PRAGMA application_id = " + std::to_string(kApplicationId));
        database.exec("PRAGMA user_version = " + std::to_string(version + 1));
        step.commit();
    }
}

/// A new store, and a copy that is written to for the first time: two stores under one name would
/// both continue its chains, and could never be joined again.
void nameDevice(SQLite::Database& database) {
    if (!deviceOf(database).empty()) return;
    SQLite::Transaction all(database, SQLite::TransactionBehavior::IMMEDIATE);
    SQLite::Statement name(database,
                           "INSERT INTO device (id) SELECT ? WHERE NOT EXISTS (SELECT 1 FROM "
                           "device)");
    name.bind(1, newDeviceName());
    name.exec();
    all.commit();
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

/// Where the disk takes nothing more: a write-ahead log needs a file of shared memory beside it
/// even to be read, unless one reader has it for itself (SQLite documentation, "Write-Ahead
/// Logging", section 8). What holds a lock for itself must be able to write; nobody else can be
/// writing here, so it goes without. "immutable" would pass over the log, where the last touches
/// are: only where there is none.
SQLite::Database openAsItLies(const std::filesystem::path& file) {
    std::error_code none;
    const auto logged = std::filesystem::file_size(file.string() + "-wal", none);
    const bool hasLog = !none && logged > 0;
    SQLite::Database database(fileUri(file) + (hasLog ? "?vfs=unix-none" : "?immutable=1"),
                              SQLite::OPEN_READONLY | SQLite::OPEN_URI, kBusyMillis);
    if (hasLog) database.exec("PRAGMA locking_mode = EXCLUSIVE");
    database.execAndGet("SELECT count(*) FROM sqlite_schema");
    return database;
}

/// What a disk says that is full or write-protected, in one place or another.
bool isOfTheDisk(const SQLite::Exception& e) {
    const int code = e.getErrorCode() & 0xFF;
    return code == SQLITE_CANTOPEN || code == SQLITE_READONLY || code == SQLITE_FULL ||
           code == SQLITE_IOERR || code == SQLITE_PERM;
}

}  // namespace

SQLite::Database openToWrite(const std::filesystem::path& file) {
    return {file.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE, kBusyMillis};
}

SQLite::Database openToRead(const std::filesystem::path& file) {
    try {
        SQLite::Database database(file.string(), SQLite::OPEN_READONLY, kBusyMillis);
        database.execAndGet("SELECT count(*) FROM sqlite_schema");
        return database;
    } catch (const SQLite::Exception& e) {
        std::error_code none;
        if (!isOfTheDisk(e) || !std::filesystem::exists(file, none)) throw;
    }
    return openAsItLies(file);
}

bool isOurs(SQLite::Database& database) {
    const bool isEmpty = database.execAndGet("SELECT count(*) FROM sqlite_schema").getInt() == 0;
    return isEmpty || pragma(database, "application_id") == kApplicationId;
}

bool isWritable(SQLite::Database& database) {
    return sqlite3_db_readonly(database.getHandle(), "main") == 0;
}

bool isNewer(SQLite::Database& database) {
    return pragma(database, "user_version") > static_cast<int>(migrations().size());
}

DeviceId deviceOf(SQLite::Database& database) {
    SQLite::Statement query(database, "SELECT id FROM device");
    return query.executeStep() ? DeviceId{query.getColumn(0).getString()} : DeviceId{};
}

void makeReady(SQLite::Database& database, const SqliteStore::Options& options) {
    database.exec("PRAGMA journal_mode = WAL");
    database.exec("PRAGMA synchronous = FULL");
    database.exec("PRAGMA foreign_keys = ON");
    if (options.pageLimit)
        database.exec("PRAGMA max_page_count = " + std::to_string(*options.pageLimit));
    migrate(database);
    nameDevice(database);
}

}  // namespace cinder::journal
