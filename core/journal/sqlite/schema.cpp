#include "journal/sqlite/schema.h"

#include <array>

namespace cinder::journal {

namespace {

constexpr const char* kToVersion1 = R"sql(
CREATE TABLE device (
    id TEXT NOT NULL PRIMARY KEY
) STRICT;

CREATE TABLE operation (
    event    TEXT    NOT NULL,
    device   TEXT    NOT NULL,
    sequence INTEGER NOT NULL CHECK (sequence > 0),
    wall     INTEGER NOT NULL,   -- milliseconds since 1970, UTC
    counter  INTEGER NOT NULL,
    person   TEXT,
    kind     TEXT    NOT NULL,
    version  INTEGER NOT NULL,
    body     TEXT    NOT NULL,
    seal     BLOB    NOT NULL CHECK (length(seal) = 32),
    PRIMARY KEY (event, device, sequence)
) STRICT, WITHOUT ROWID;

CREATE TRIGGER operation_is_not_changed BEFORE UPDATE ON operation
BEGIN SELECT RAISE(ABORT, 'the journal only grows'); END;
CREATE TRIGGER operation_is_not_removed BEFORE DELETE ON operation
BEGIN SELECT RAISE(ABORT, 'the journal only grows'); END;
)sql";

constexpr std::array kMigrations = {kToVersion1};

}  // namespace

std::span<const char* const> migrations() {
    return kMigrations;
}

}  // namespace cinder::journal
