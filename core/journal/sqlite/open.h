#pragma once

/// How a file becomes a database of ours; internal to journal/sqlite. Throws what SQLite throws.

#include <SQLiteCpp/SQLiteCpp.h>

#include <filesystem>

#include "base/id.h"
#include "journal/sqlite/sqlite_store.h"

namespace cinder::journal {

[[nodiscard]] SQLite::Database openToWrite(const std::filesystem::path& file);
/// Also where nothing can be written beside the file: on a full or a write-protected disk.
[[nodiscard]] SQLite::Database openToRead(const std::filesystem::path& file);

/// Empty, or made by this app.
[[nodiscard]] bool isOurs(SQLite::Database& database);
/// SQLite opens a write-protected file all the same, and says so only when asked.
[[nodiscard]] bool isWritable(SQLite::Database& database);
/// A newer app made these tables.
[[nodiscard]] bool isNewer(SQLite::Database& database);
/// The device the store belongs to; empty for a copy, which belongs to none.
[[nodiscard]] DeviceId deviceOf(SQLite::Database& database);

/// For writing: the log, the tables of today, and a device where the store has none yet.
void makeReady(SQLite::Database& database, const SqliteStore::Options& options);

}  // namespace cinder::journal
