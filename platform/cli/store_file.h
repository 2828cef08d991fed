#pragma once

#include <memory>

#include "cli/failure.h"
#include "journal/sqlite/sqlite_store.h"

namespace cinder::cli {

/// Opens a store, saying in words what is wrong when it cannot be.
[[nodiscard]] Outcome<std::unique_ptr<journal::SqliteStore>> openStore(
    const std::filesystem::path& file, journal::SqliteStore::Options options);

/// What is wrong with a store and what to do about it.
[[nodiscard]] Failure storeFailure(const journal::StoreError& error, const std::string& file);

}  // namespace cinder::cli
