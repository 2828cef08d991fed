#pragma once

/// A copy of everything in one file; internal to journal/sqlite.

#include <SQLiteCpp/SQLiteCpp.h>

#include <filesystem>

#include "journal/sqlite/failure.h"

namespace cinder::journal {

/// Writes all that `source` holds into `file` (Store::copyTo). What is copied is what is there:
/// whether its chains are whole is another question.
[[nodiscard]] Stored<void> writeCopy(SQLite::Database& source, const std::filesystem::path& file);

}  // namespace cinder::journal
